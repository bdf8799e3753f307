/** Deepest nesting of arrays and objects that is read. */
const DEPTH_LIMIT = 20
/** Most keys of one object: the contract knows none with half as many, and to tell of each would take long. */
const KEYS_LIMIT = 100
/** From so many keys on, a set finds a duplicate sooner than a look at each. */
const SET_FROM = 12

const QUOTE = 34
const COLON = 58
const BACKSLASH = 92

/**
 * Finds what JSON allows but readers don't agree on, or can't hold (RFC 8259, 4, 8.2 and 9; RFC 7493): a key
 * that stands twice in an object, half of a surrogate pair, NUL, deep nesting, more keys than any object of the
 * contract has, and keys that mean something to JavaScript itself. Numbers beyond a double are left to the
 * contract, which says where they stand.
 *
 * @param text - Text that JSON.parse has read without error
 * @returns A sentence about the first fault, or undefined where there is none
 */
export function jsonFault(text: string): string | undefined {
  /** The keys of each open object; undefined for an open array. */
  const open: (Keys | undefined)[] = []
  let escapeAt = text.indexOf('\\u')
  let at = 0
  while (at < text.length) {
    const char = text.charCodeAt(at)
    if (char === QUOTE) {
      const end = endOfString(text, at)
      const next = skipSpace(text, end + 1)
      // Looked for once for the whole text, not once a string: most bodies have none.
      if (escapeAt !== -1 && escapeAt < at) escapeAt = text.indexOf('\\u', at)
      if (escapeAt !== -1 && escapeAt < end && isUnsound(String(JSON.parse(text.slice(at, end + 1))))) {
        return 'A string holds NUL or half of a surrogate pair.'
      }
      const fault =
        text.charCodeAt(next) === COLON ? keyFault(text.slice(at, end + 1), open.at(-1)) : undefined
      if (fault !== undefined) return fault
      at = next
    } else if (char === 0x7b || char === 0x5b) {
      open.push(char === 0x7b ? new Keys() : undefined)
      if (open.length > DEPTH_LIMIT) return `This is nested deeper than ${DEPTH_LIMIT} levels.`
      at += 1
    } else if (char === 0x7d || char === 0x5d) {
      open.pop()
      at += 1
    } else {
      at += 1
    }
  }
  return undefined
}

/** Keys seen in one object. */
class Keys {
  private readonly list: string[] = []
  private set: Set<string> | undefined

  get count(): number {
    return this.set?.size ?? this.list.length
  }

  /** False where the key has been added before. */
  add(key: string): boolean {
    if (this.set !== undefined) {
      const before = this.set.size
      this.set.add(key)
      return this.set.size > before
    }
    if (this.list.includes(key)) return false
    this.list.push(key)
    if (this.list.length === SET_FROM) this.set = new Set(this.list)
    return true
  }
}

function keyFault(quoted: string, keys: Keys | undefined): string | undefined {
  const key = quoted.includes('\\') ? String(JSON.parse(quoted)) : quoted.slice(1, -1)
  if (key === '__proto__' || key === 'constructor') return `The key "${key}" is not allowed.`
  if (keys === undefined) return undefined
  if (!keys.add(key)) return `The key "${key.slice(0, 64)}" stands twice in one object.`
  return keys.count > KEYS_LIMIT ? `An object has more than ${KEYS_LIMIT} keys.` : undefined
}

function isUnsound(text: string): boolean {
  return text.includes('\0') || /\p{Surrogate}/u.test(text)
}

/** Where the quote stands that closes a string. */
function endOfString(text: string, start: number): number {
  let end = text.indexOf('"', start + 1)
  while (isEscaped(text, end)) end = text.indexOf('"', end + 1)
  return end
}

function isEscaped(text: string, quote: number): boolean {
  let slashes = 0
  while (text.charCodeAt(quote - 1 - slashes) === BACKSLASH) slashes += 1
  return slashes % 2 === 1
}

function skipSpace(text: string, from: number): number {
  let at = from
  while (text.charCodeAt(at) <= 0x20) at += 1
  return at
}
