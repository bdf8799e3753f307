import * as fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../server/app.ts'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { keyRing } from '../../server/store/key-ring.ts'
import { isWellFormedSecret, KEY_PREFIX, makeKeyId, makeSecret } from '../../server/store/key-secret.ts'
import { type Operation, operations } from '../../shared/contract/operations.ts'
import { KEY_SCOPES, type KeyScope } from '../../shared/contract/range-admin.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { openStaffService, type StaffService, storedKey } from '../support/staff-service.ts'

let service: StaffService
let full: string

beforeAll(async () => {
  service = await openStaffService()
  full = await service.issue('kingcup', KEY_SCOPES)
})
afterAll(() => service.close())

const RANGE = '/v1/shops/kingcup/range'

function get(headers: Record<string, string>, url = RANGE) {
  return service.app.inject({ url, headers })
}

const bearer = (secret: string) => ({ authorization: `Bearer ${secret}` })

/** Every operation that asks for a key and is served here, as a request for a shop. */
const KEYED = Object.values<Operation>(operations).filter(
  (operation): operation is Operation & { readonly scope: KeyScope } => operation.scope !== undefined,
)
const served = () =>
  KEYED.filter(({ method, path }) =>
    service.app.hasRoute({ method, url: path.replaceAll(/\{(\w+)\}/g, ':$1') }),
  )

function requestFor(operation: Operation, shopId: string, headers: Record<string, string>) {
  return service.app.inject({
    method: operation.method,
    url: operation.path.replace('{shopId}', shopId).replace('{version}', '1'),
    headers: { 'if-match': '*', ...headers },
    ...(operation.body === undefined ? {} : { payload: kingcup }),
  })
}

/** A problem without the id of its request. */
function sameness(response: { statusCode: number; headers: object; body: string }) {
  const { instance: _, ...problem } = JSON.parse(response.body)
  return { status: response.statusCode, names: Object.keys(response.headers).sort(), problem }
}

describe('a secret key', () => {
  it('has the prefix, 160 random bits in 32 characters and a check', () => {
    expect(makeSecret()).toMatch(/^tallywatt_secret_[0-9a-hjkmnp-tv-z]{39}$/)
    const secrets = new Set(Array.from({ length: 2000 }, makeSecret))
    expect(secrets.size).toBe(2000)
    // Each of 32 characters stands in each of 32 places: no bit is fixed.
    const list = [...secrets].map((secret) => secret.slice(KEY_PREFIX.length))
    for (let place = 0; place < 32; place += 1) expect(new Set(list.map((text) => text[place])).size).toBe(32)
  })

  it('is known for a typo without a look-up: any one character changed, left out or swapped', () => {
    fc.assert(
      fc.property(fc.nat(38), fc.constantFrom(...'0123456789abcdefghjkmnpqrstvwxyz'), (at, letter) => {
        const secret = makeSecret()
        const place = KEY_PREFIX.length + at
        const changed = secret.slice(0, place) + letter + secret.slice(place + 1)
        expect(isWellFormedSecret(changed)).toBe(changed === secret)
        expect(isWellFormedSecret(secret.slice(0, place) + secret.slice(place + 1))).toBe(false)
        const next = secret[place + 1]
        if (next === undefined) return
        const swapped = secret.slice(0, place) + next + secret[place] + secret.slice(place + 2)
        expect(isWellFormedSecret(swapped)).toBe(swapped === secret)
      }),
    )
  })
})

describe('a call without a live key', () => {
  it('gets one and the same 401, whatever is wrong with the key', async () => {
    const revoked = await service.issue('kingcup', ['read'], { revokedAt: '2026-01-01T00:00:00.000Z' })
    const expired = await service.issue('kingcup', ['read'], { expiresAt: '2026-01-01T00:00:00.000Z' })
    const good = await service.issue('kingcup', ['read'])
    const typo = good.slice(0, -1) + (good.endsWith('0') ? '1' : '0')
    const bad: Record<string, string>[] = [
      {},
      { authorization: '' },
      { authorization: 'Bearer' },
      { authorization: good },
      { authorization: `Basic ${Buffer.from(good).toString('base64')}` },
      bearer('x'),
      bearer(typo),
      bearer(good.slice(0, -5)),
      bearer(`${good}0`),
      bearer(good.toUpperCase()),
      bearer(makeSecret()),
      bearer(revoked),
      bearer(expired),
    ]
    const answers = []
    for (const headers of bad) answers.push(await get(headers))
    const [first] = answers
    expect(first?.statusCode).toBe(401)
    expect(first?.headers['www-authenticate']).toBe('Bearer realm="tallywatt"')
    for (const answer of answers) expect(sameness(answer)).toEqual(first === undefined ? {} : sameness(first))
    expect((await get(bearer(good))).statusCode).toBe(200)
  })

  it('is turned away before its body is read', async () => {
    const response = await service.app.inject({
      method: 'PUT',
      url: RANGE,
      headers: { 'content-type': 'application/json' },
      payload: '{'.repeat(6_000_000),
    })
    expect(response.statusCode).toBe(401)
  })

  it('is turned away at every operation that asks for a key', async () => {
    expect(served().length).toBeGreaterThanOrEqual(5)
    for (const operation of served()) {
      expect((await requestFor(operation, 'kingcup', {})).statusCode, operation.id).toBe(401)
    }
  })

  it('still reaches what is public, and with a bad key does not', async () => {
    const ask = (headers: Record<string, string>) =>
      service.app.inject({
        method: 'POST',
        url: '/v1/shops/kingcup/sizing',
        payload: sizingRequestExample,
        headers,
      })
    expect((await ask({})).statusCode).toBe(200)
    expect((await ask(bearer(full))).statusCode).toBe(200)
    expect((await ask(bearer(makeSecret()))).statusCode).toBe(401)
    expect((await ask({ authorization: 'Basic eDp5' })).statusCode).toBe(200)
  })
})

describe('a key of one shop', () => {
  it('finds the other shop missing, exactly like one that does not exist', async () => {
    for (const operation of served()) {
      const others = await requestFor(operation, 'bentcreek', bearer(full))
      const missing = await requestFor(operation, 'no-such-shop', bearer(full))
      expect(others.statusCode, operation.id).toBe(404)
      expect(sameness(others)).toEqual(sameness(missing))
      expect(others.body).not.toContain('Bent Creek')
    }
    expect(service.live.ranges.current('bentcreek')?.version).toBe(1)
  })

  it('does not get round that by another way of writing the address', async () => {
    for (const id of [
      'bentcreek%2f',
      'kingcup%2f..%2fbentcreek',
      'BENTCREEK',
      'bentcreek%00',
      'kingcup;bentcreek',
    ]) {
      const response = await get(bearer(full), `/v1/shops/${id}/range`)
      expect(response.statusCode, id).toBe(404)
    }
  })
})

describe('scopes', () => {
  it('stand each for itself: 403 with the scope that is needed, at every operation', async () => {
    const keys = new Map<KeyScope, string>()
    for (const scope of KEY_SCOPES) keys.set(scope, await service.issue('kingcup', [scope]))
    for (const operation of served()) {
      for (const [scope, secret] of keys) {
        const response = await requestFor(operation, 'kingcup', bearer(secret))
        if (scope === operation.scope) {
          expect(response.statusCode, `${operation.id} with ${scope}`).toBeLessThan(400)
          continue
        }
        expect([response.statusCode, response.json().code], `${operation.id} with ${scope}`).toEqual([
          403,
          'scope-too-small',
        ])
        expect(response.headers['www-authenticate']).toContain(`scope="${operation.scope}"`)
      }
    }
  })

  it('are asked for at every address of a shop that is not for shoppers', () => {
    const keyed = Object.values<Operation>(operations).filter(({ path }) =>
      /\/(range|coverage|demand)\b/.test(path),
    )
    for (const operation of keyed) expect(operation.scope, operation.id).toBeDefined()
  })
})

describe('a key in the wrong place', () => {
  it('is refused beside an Origin, live or not, at every address', async () => {
    for (const secret of [full, makeSecret()]) {
      for (const url of [RANGE, '/v1/shops/kingcup/setup']) {
        const response = await get({ ...bearer(secret), origin: 'http://localhost:8787' }, url)
        expect([response.statusCode, response.json().code]).toEqual([403, 'key-in-browser'])
      }
    }
    expect((await get({ origin: 'http://localhost:8787' }, '/v1/shops/kingcup/setup')).statusCode).toBe(200)
  })

  it('comes in from a page of this very service, and from no other origin that looks like it', async () => {
    const host = 'tallywatt.example:8787'
    const ask = (origin: string) => get({ ...bearer(full), host, origin })
    expect((await ask(`http://${host}`)).statusCode).toBe(200)
    const others = [
      `https://${host}`,
      'http://tallywatt.example',
      'http://tallywatt.example:8788',
      `http://evil.${host}`,
      `http://${host}.evil.example`,
      `http://${host}/`,
      'http://TALLYWATT.example:8787',
      'null',
      '',
    ]
    for (const origin of others) {
      const response = await ask(origin)
      expect([response.statusCode, response.json().code], origin).toEqual([403, 'key-in-browser'])
    }
  })

  it('comes in at the address that the service is told to be reached at, behind a proxy', async () => {
    const { store, live } = service
    const app = await buildApp({
      ranges: live.ranges,
      services: { store, live },
      settings: { publicUrl: 'https://sizing.shop.example/tally' },
    })
    const ask = (origin: string) =>
      app.inject({ url: RANGE, headers: { ...bearer(full), host: 'inner:8787', origin } })
    expect((await ask('https://sizing.shop.example')).statusCode).toBe(200)
    expect((await ask('http://sizing.shop.example')).statusCode).toBe(403)
    await app.close()
  })

  it('leaves a line in the log where another page has sent it', async () => {
    const from = service.logged.length
    await get({ ...bearer(full), origin: 'https://elsewhere.example' })
    expect(service.logged.slice(from).join('')).toMatch(/"event":"key refused","code":"key-in-browser"/)
  })

  it('is refused in the address, and never logged', async () => {
    for (const query of [`key=${full}`, `api_key=x`, `Token=${full}`, `x=${full}`]) {
      const response = await get({}, `${RANGE}?${query}`)
      expect([response.statusCode, response.json().code], query).toEqual([400, 'key-in-address'])
      expect(response.body).not.toContain(full)
    }
    await get(bearer(full))
    await get(bearer(makeSecret()))
    expect(service.logged.join('')).not.toMatch(/tallywatt_secret_[0-9a-z]/)
  })

  it('leaves a line in the log, with shop and key id where they are known', async () => {
    const from = service.logged.length
    await get(bearer(full))
    await get(bearer(makeSecret()))
    await get(bearer(full), '/v1/shops/bentcreek/range')
    const lines = service.logged.slice(from).join('')
    expect(lines).toMatch(/"event":"key used","shopId":"kingcup","keyId":"key-[0-9a-z]{10}"/)
    expect(lines).toMatch(/"event":"key refused","code":"unauthorised"/)
    expect(lines).toMatch(/"event":"key refused","code":"unknown-shop".*"shopId":"kingcup","keyId":"key-/)
  })
})

describe('the life of a key', () => {
  it('lets several be live at once, so that one can follow another without a gap', async () => {
    const old = await service.issue('kingcup', ['read'])
    const next = await service.issue('kingcup', ['read'])
    expect((await get(bearer(old))).statusCode).toBe(200)
    expect((await get(bearer(next))).statusCode).toBe(200)
  })

  it('ends within a second of its being revoked by another process, without a restart', async () => {
    const id = makeKeyId()
    const secret = await service.issue('kingcup', ['read'], { id })
    expect((await get(bearer(secret))).statusCode).toBe(200)
    // The service isn't told: it finds out by itself.
    await service.store.revokeKey(id, new Date().toISOString())
    await expect.poll(async () => (await get(bearer(secret))).statusCode, { timeout: 1900 }).toBe(401)
  })

  it('ends at its expiry, by the clock of the service', () => {
    let now = Date.parse('2026-06-01T00:00:00Z')
    const ring = keyRing(() => now)
    const secret = makeSecret()
    ring.replace([storedKey(secret, { expiresAt: '2026-06-02T00:00:00.000Z' })])
    expect(ring.find(secret)).toBeDefined()
    now = Date.parse('2026-06-02T00:00:00Z')
    expect(ring.find(secret)).toBeUndefined()
  })

  it('remembers when it was last used, also over a restart', async () => {
    const other = await openStaffService()
    const id = makeKeyId()
    const secret = await other.issue('kingcup', ['read'], { id })
    await other.app.inject({ url: RANGE, headers: bearer(secret) })
    await other.live.close()
    const stored = (await other.store.keys()).find((key) => key.id === id)
    expect(stored?.lastUsedAt).toMatch(/^20\d\d-.*Z$/)
    await other.close()
  })
})
