/** What is searched: an entry of the appliance list. */
export interface Searchable {
  readonly name: string
  readonly synonyms: readonly string[]
}

interface Entry<T> {
  readonly item: T
  /** Words of the name and of each synonym. */
  readonly phrases: readonly (readonly string[])[]
}

const indexes = new WeakMap<readonly Searchable[], readonly Entry<Searchable>[]>()

/**
 * Finds entries by name or synonym, forgiving accents, plurals, word order, beginnings and small slips.
 *
 * @param items - The list; its index is made once
 * @param query - What was typed
 * @param most - Longest reply
 * @returns Best first; nothing for an empty query
 */
export function search<T extends Searchable>(items: readonly T[], query: string, most = 40): readonly T[] {
  const wanted = wordsOf(query)
  if (wanted.length === 0) return []
  // Words that are written apart here and together there: "lap top".
  const together = [wanted.join('')]
  const found: { item: T; score: number; place: number }[] = []
  for (const [place, { item, phrases }] of indexOf(items).entries()) {
    let best = 0
    for (const [rank, phrase] of phrases.entries()) {
      const score = Math.max(phraseScore(wanted, phrase), phraseScore(together, phrase))
      best = Math.max(best, score - (rank === 0 ? 0 : 0.1))
    }
    if (best > 0) found.push({ item: item as T, score: best, place })
  }
  found.sort((a, b) => b.score - a.score || a.place - b.place)
  // Beside a true hit, words that are merely similar are noise.
  const least = (found[0]?.score ?? 0) - 1.5
  return found
    .filter(({ score }) => score >= least)
    .slice(0, most)
    .map(({ item }) => item)
}

function indexOf(items: readonly Searchable[]): readonly Entry<Searchable>[] {
  const known = indexes.get(items)
  if (known !== undefined) return known
  const made = items.map((item) => ({ item, phrases: [bareName(item.name), ...item.synonyms].map(wordsOf) }))
  indexes.set(items, made)
  return made
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
function phraseScore(wanted: readonly string[], phrase: readonly string[]): number {
  let score = 0
  for (const word of wanted) {
    let best = 0
    for (const candidate of phrase) best = Math.max(best, wordScore(word, candidate))
    const joined = wordScore(word, phrase.join(''))
    best = Math.max(best, joined)
    if (best === 0) return 0
    score += best
  }
  return score / wanted.length - phrase.length / 100
}

function wordScore(word: string, candidate: string): number {
  if (word === candidate) return 4
  if (candidate.startsWith(word)) return 3
  const slips = word.length < 4 ? 0 : word.length < 8 ? 1 : 2
  if (slips > 0 && distanceToBeginning(word, candidate, slips) <= slips) return 2
  return word.length > 3 && candidate.includes(word) ? 1 : 0
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
