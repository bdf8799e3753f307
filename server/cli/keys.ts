import { KEY_SCOPES } from '../../shared/contract/range-admin.ts'
import { hashOf, makeKeyId, makeSecret } from '../store/key-secret.ts'
import type { StoredKey } from '../store/store.ts'
import { type CommandContext, CommandError, neededOption, oneOperand, USAGE_STATUS } from './io.ts'

/** Live keys that one shop may have. */
const KEYS_PER_SHOP = 20
const DAY_MS = 24 * 60 * 60 * 1000
const LONGEST_DAYS = 3650

/** `key issue`: makes a key and shows it, once. */
export async function issueKey({ store, io, options }: CommandContext): Promise<void> {
  const shopId = neededOption(options, 'shop')
  const name = neededOption(options, 'name')
  if (name.length > 120) throw new CommandError('--name is at most 120 characters long.', USAGE_STATUS)
  const wanted = neededOption(options, 'scopes').split(',')
  const scopes = KEY_SCOPES.filter((scope) => wanted.includes(scope))
  if (scopes.length !== new Set(wanted).size) {
    throw new CommandError(`--scopes is made of ${KEY_SCOPES.join(', ')}, with commas between.`, USAGE_STATUS)
  }
  const days = daysOption(options.days)
  const opened = await store()
  if ((await opened.version(shopId)) === undefined) throw new CommandError(`There is no shop "${shopId}".`)
  const now = Date.now()
  const live = (await opened.keys()).filter((key) => key.shopId === shopId && stateOf(key, now) === 'live')
  if (live.length >= KEYS_PER_SHOP)
    throw new CommandError(`Shop "${shopId}" has ${live.length} live keys; revoke one.`)
  const secret = makeSecret()
  const id = makeKeyId()
  await opened.addKey({
    id,
    shopId,
    name,
    secretHash: hashOf(secret),
    scopes,
    createdAt: new Date(now).toISOString(),
    expiresAt: days === undefined ? null : new Date(now + days * DAY_MS).toISOString(),
    revokedAt: null,
    lastUsedAt: null,
  })
  io.complain(
    `Key ${id} of shop "${shopId}" may ${scopes.join(', ')}. It is shown once; type it into no page but /staff of this service.\n`,
  )
  io.out(`${secret}\n`)
}

/** `key list`: a line for each key of a shop. */
export async function listKeys({ store, io, options }: CommandContext): Promise<void> {
  const shopId = neededOption(options, 'shop')
  const now = Date.now()
  const keys = (await (await store()).keys()).filter((key) => key.shopId === shopId)
  for (const key of keys.sort((a, b) => (a.createdAt < b.createdAt ? -1 : 1))) {
    const cells = [
      key.id,
      stateOf(key, now),
      key.scopes.join(','),
      `created ${key.createdAt}`,
      key.expiresAt === null ? 'no expiry' : `expires ${key.expiresAt}`,
      key.lastUsedAt === null ? 'never used' : `last used ${key.lastUsedAt}`,
      key.name,
    ]
    io.out(`${cells.join('\t')}\n`)
  }
}

/** `key revoke KEY-ID`: revokes a key for good. */
export async function revokeKey({ store, io, operands }: CommandContext): Promise<void> {
  const keyId = oneOperand(operands, 'key id')
  const revoked = await (await store()).revokeKey(keyId, new Date().toISOString())
  if (!revoked) throw new CommandError(`There is no live key "${keyId}".`)
  io.out(`Revoked ${keyId}.\n`)
}

function daysOption(text: string | boolean | undefined): number | undefined {
  if (text === undefined) return undefined
  const days = Number(text)
  if (Number.isInteger(days) && days >= 1 && days <= LONGEST_DAYS) return days
  throw new CommandError(`--days is a whole number from 1 to ${LONGEST_DAYS}.`, USAGE_STATUS)
}

function stateOf(key: StoredKey, now: number): 'live' | 'revoked' | 'expired' {
  if (key.revokedAt !== null) return 'revoked'
  return key.expiresAt !== null && Date.parse(key.expiresAt) <= now ? 'expired' : 'live'
}
