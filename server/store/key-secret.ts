import { createHash, randomBytes } from 'node:crypto'
import { crc32 } from 'node:zlib'

/** What every secret key begins with, so that a scanner of leaks can find one. */
export const KEY_PREFIX = 'tallywatt_secret_'

const RANDOM_BYTES = 20
const RANDOM_CHARACTERS = 32
const CHECK_CHARACTERS = 7
/** Base 32 without letters that are mistaken for digits. */
const ALPHABET = '0123456789abcdefghjkmnpqrstvwxyz'
const KEY_PATTERN = new RegExp(
  `^${KEY_PREFIX}[${ALPHABET}]{${RANDOM_CHARACTERS}}[${ALPHABET}]{${CHECK_CHARACTERS}}$`,
)

/**
 * Makes a secret key: the prefix, 160 random bits and a CRC-32 of both, so that a typo shows without a look-up.
 *
 * @returns The key; it is shown once and never kept
 */
export function makeSecret(): string {
  const body = KEY_PREFIX + base32(randomBytes(RANDOM_BYTES), RANDOM_CHARACTERS)
  return body + checkOf(body)
}

/**
 * Whether a text has the form of a secret key and its check fits.
 *
 * @param text - What came
 * @returns False for anything that can't be a key of ours
 */
export function isWellFormedSecret(text: string): boolean {
  if (!KEY_PATTERN.test(text)) return false
  return text.endsWith(checkOf(text.slice(0, -CHECK_CHARACTERS)))
}

/**
 * What a key is kept and found by. A plain hash will do: nobody guesses 160 random bits.
 *
 * @param secret - The key
 * @returns SHA-256, hexadecimal
 */
export function hashOf(secret: string): string {
  return createHash('sha256').update(secret).digest('hex')
}

/**
 * Makes the public id of a key, by which it is listed and revoked.
 *
 * @returns An id such as `key-7m2x9k4q1c`
 */
export function makeKeyId(): string {
  return `key-${base32(randomBytes(7), 10)}`
}

function checkOf(body: string): string {
  const bytes = Buffer.alloc(4)
  bytes.writeUInt32BE(crc32(body))
  return base32(bytes, CHECK_CHARACTERS)
}

function base32(bytes: Buffer, characters: number): string {
  let bits = 0n
  for (const byte of bytes) bits = (bits << 8n) | BigInt(byte)
  let text = ''
  for (let index = 0; index < characters; index += 1) {
    text = `${ALPHABET[Number(bits & 31n)]}${text}`
    bits >>= 5n
  }
  return text
}
