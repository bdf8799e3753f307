/** What is searched: an entry of the appliance list. */
export interface Searchable {
  readonly name: string
  readonly synonyms: readonly string[]
}

/** A word, and which letters it holds: one bit each, where two rare letters may share one. */
interface Word {
  readonly text: string
  readonly letters: number
}

interface Entry<T> {
  readonly item: T
  /** Words of the name and of each synonym, and last all of them written together. */
  readonly phrases: readonly (readonly Word[])[]
}

/** The list that was searched last, its index, and the last search: a screen asks the same more than once. */
let entries: readonly Entry<Searchable>[] = []
let indexed: readonly Searchable[] | undefined
let last: { readonly query: string; readonly found: readonly Searchable[] } | undefined

/**
 * Makes the index of a list, so that the first letter typed needn't wait for it.
 *
 * @param items - The list
 */
export function indexFor(items: readonly Searchable[]): void {
  if (indexed === items) return
  indexed = items
  last = undefined
  entries = items.map((item) => ({
    item,
    phrases: [bareName(item.name), ...item.synonyms].map((text) => {
      const words = wordsOf(text)
      return [...words, words.join('')].map(word)
    }),
  }))
}

/**
 * Finds entries by name or synonym, forgiving accents, plurals, word order, beginnings and small slips.
 *
 * @param items - The list; its index is made once
 * @param query - What was typed
 * @param most - Longest reply
 * @returns Best first; nothing for an empty query
 */
export function search<T extends Searchable>(items: readonly T[], query: string, most = 40): readonly T[] {
  if (query.trim() === '') return []
  indexFor(items)
  if (last?.query !== query) last = { query, found: searched(query) }
  return last.found.slice(0, most) as readonly Searchable[] as readonly T[]
}

function searched(query: string): readonly Searchable[] {
  const wanted = wordsOf(query).map(word)
  if (wanted.length === 0) return []
  // Words that are written apart here and together there: "lap top".
  const together = wanted.length > 1 ? [word(wanted.map(({ text }) => text).join(''))] : undefined
  const found: { item: Searchable; score: number; place: number }[] = []
  for (const [place, { item, phrases }] of entries.entries()) {
    let best = 0
    for (const [rank, phrase] of phrases.entries()) {
      const score = Math.max(phraseScore(wanted, phrase), together ? phraseScore(together, phrase) : 0)
      best = Math.max(best, score - (rank === 0 ? 0 : 0.1))
    }
    if (best > 0) found.push({ item, score: best, place })
  }
  found.sort((a, b) => b.score - a.score || a.place - b.place)
  // Beside a true hit, words that are merely similar are noise.
  const least = (found[0]?.score ?? 0) - 1.5
  return found.filter(({ score }) => score >= least).map(({ item }) => item)
}

function word(text: string): Word {
  let letters = 0
  for (let at = 0; at < text.length; at += 1) letters |= 1 << (text.charCodeAt(at) & 31)
  return { text, letters }
}

/** A name without what stands in brackets: that tells apart and is seldom typed. */
function bareName(name: string): string {
  return name.replace(/\(.*?\)/g, '')
}

/**
 * Words of a text, bare of case, accents, punctuation and plural endings.
 *
 * @param text - Any text
 * @returns Its words
 */
export function wordsOf(text: string): readonly string[] {
  const bare = text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()
  return (bare.match(/[\p{L}\p{N}]+/gu) ?? []).map(singular)
}

function singular(word: string): string {
  if (word.length < 4) return word
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`
  if (/(s|x|z|ch|sh)es$/.test(word)) return word.slice(0, -2)
  return /[^s]s$/.test(word) ? word.slice(0, -1) : word
}

/** Sum over the wanted words of their best match, 0 where one has none; shorter phrases win. */
function phraseScore(wanted: readonly Word[], phrase: readonly Word[]): number {
  let score = 0
  for (const one of wanted) {
    let best = 0
    for (const candidate of phrase) best = Math.max(best, wordScore(one, candidate))
    if (best === 0) return 0
    score += best
  }
  return score / wanted.length - (phrase.length - 1) / 100
}

function wordScore({ text, letters }: Word, candidate: Word): number {
  if (text === candidate.text) return 4
  if (candidate.text.startsWith(text)) return 3
  const slips = text.length < 4 ? 0 : text.length < 8 ? 1 : 2
  // A slip brings one letter that the other word lacks at most, which rules out nearly all without counting slips.
  let strange = letters & ~candidate.letters
  for (let left = slips; left > 0; left -= 1) strange &= strange - 1
  if (strange !== 0) return 0
  if (slips > 0 && distanceToBeginning(text, candidate.text, slips) <= slips) return 2
  return text.length > 3 && candidate.text.includes(text) ? 1 : 0
}

/** Slips (wrong, missing, spare or swapped letters) from a word to the nearest beginning of another. */
function distanceToBeginning(word: string, candidate: string, most: number): number {
  if (word.length > candidate.length + most) return most + 1
  const target = candidate.slice(0, word.length + most)
  let before: number[] = []
  let row = Array.from({ length: target.length + 1 }, (_, index) => index)
  for (let i = 1; i <= word.length; i += 1) {
    const next = [i]
    for (let j = 1; j <= target.length; j += 1) {
      const same = word[i - 1] === target[j - 1]
      let cost = Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + (same ? 0 : 1))
      const swapped = i > 1 && j > 1 && word[i - 1] === target[j - 2] && word[i - 2] === target[j - 1]
      if (swapped) cost = Math.min(cost, (before[j - 2] ?? 0) + 1)
      next.push(cost)
    }
    before = row
    row = next
  }
  return Math.min(...row.slice(Math.max(1, word.length - most)))
}
