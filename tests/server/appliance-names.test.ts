import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'
import { buildApp } from '../../server/app.ts'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { fixedRanges } from '../../server/store/ranges.ts'
import type { ApplianceNames } from '../../shared/appliance-names/appliance-name.ts'
import { namesDe } from '../../shared/appliance-names/de.ts'
import { namesEs } from '../../shared/appliance-names/es.ts'
import { namesFr } from '../../shared/appliance-names/fr.ts'
import { applianceListSchema } from '../../shared/contract/appliances.ts'
import { problemSchema } from '../../shared/contract/problem.ts'
import { setupSchema } from '../../shared/contract/setup.ts'
import { search } from '../../widget/search.ts'

interface Names {
  readonly tag: string
  readonly names: ApplianceNames
  /** Ids whose name is the same word in English. */
  readonly same: readonly string[]
  /** What people type, and the entry that they mean. */
  readonly typed: readonly (readonly [string, string])[]
}

const languages: readonly Names[] = [
  {
    tag: 'de',
    names: namesDe,
    same: ['toaster', 'laptop', 'radio'],
    typed: [
      ['wasserkocher', 'electric-kettle'],
      ['Föhn', 'hair-dryer'],
      ['Spülmaschine', 'dishwasher'],
      ['Kaffeevollautomat', 'bean-to-cup-coffee-machine'],
      ['Trennschleifer', 'angle-grinder'],
      ['Beamer', 'projector'],
      ['Akkuschrauber', 'tool-battery-charger'],
      ['Schlafapnoe', 'cpap'],
    ],
  },
  {
    tag: 'fr',
    names: namesFr,
    same: ['blender', 'radio'],
    typed: [
      ['bouilloire', 'electric-kettle'],
      ['seche cheveux', 'hair-dryer'],
      ['lave vaisselle', 'dishwasher'],
      ['frigo', 'fridge'],
      ['disqueuse', 'angle-grinder'],
      ['micro-ondes', 'microwave-oven'],
      ['visseuse', 'tool-battery-charger'],
      ['apnée du sommeil', 'cpap'],
    ],
  },
  {
    tag: 'es',
    names: namesEs,
    same: ['radio'],
    typed: [
      ['hervidor', 'electric-kettle'],
      ['secador de pelo', 'hair-dryer'],
      ['lavaplatos', 'dishwasher'],
      ['nevera', 'fridge'],
      ['radial', 'angle-grinder'],
      ['microondas', 'microwave-oven'],
      ['atornillador', 'tool-battery-charger'],
      ['apnea del sueño', 'cpap'],
    ],
  },
]

describe.each(languages)('appliance names $tag', ({ names, same, typed }) => {
  const entries = Object.entries(names)

  it('name every built-in appliance and no other', () => {
    expect(Object.keys(names).sort()).toEqual(BUILT_IN_APPLIANCES.map(({ id }) => id).sort())
  })

  it('keep the contract’s lengths, and have no name twice', () => {
    for (const [id, { name, synonyms }] of entries) {
      expect(name.length, id).toBeLessThanOrEqual(120)
      expect(synonyms.length, id).toBeGreaterThanOrEqual(2)
      expect(synonyms.length, id).toBeLessThanOrEqual(40)
      const bare = [name, ...synonyms].map((text) => text.trim().toLowerCase())
      expect(bare.length, id).toBe(new Set(bare).size)
      expect(
        bare.every((text) => text.length > 1),
        id,
      ).toBe(true)
    }
    const all = entries.map(([, { name }]) => name.toLowerCase())
    expect(all.length).toBe(new Set(all).size)
  })

  it('differ from the English ones, but for words that are the same', () => {
    const repeated = BUILT_IN_APPLIANCES.filter(({ id, name }) => names[id]?.name === name)
    expect(repeated.map(({ id }) => id).sort()).toEqual([...same].sort())
  })

  it('have a note, with the same figures, where the built-in entry has one', () => {
    const figures = (note: string | undefined) =>
      (note ?? '')
        .replaceAll(/(?<=\d)[\s\u00a0\u202f](?=\d)/g, '')
        .replaceAll(',', '.')
        .match(/\d+(?:\.\d+)?/g)
        ?.sort()
    for (const { id, note } of BUILT_IN_APPLIANCES) {
      expect(names[id]?.note === undefined, id).toBe(note === undefined)
      expect(figures(names[id]?.note), id).toEqual(figures(note))
    }
  })

  it.each(typed)('come first for "%s"', (query, id) => {
    const items = entries.map(([key, { name, synonyms }]) => ({ id: key, name, synonyms }))
    expect(search(items, query)[0]?.id).toBe(id)
  })
})

describe('appliances in a language', () => {
  let app: FastifyInstance
  const austrian = {
    ...kingcup,
    shop: { ...kingcup.shop, id: 'austrian', locale: 'de-AT' },
  }
  beforeAll(async () => {
    app = await buildApp({ ranges: fixedRanges({ kingcup, austrian }) })
  })
  afterAll(() => app.close())

  const list = async (query: string) => {
    const reply = await app.inject(`/v1/appliances${query}`)
    const { appliances } = applianceListSchema.parse(reply.json())
    return { reply, kettle: appliances.find(({ id }) => id === 'electric-kettle') }
  }
  const setup = async (shopId: string, query: string) => {
    const reply = await app.inject(`/v1/shops/${shopId}/setup${query}`)
    const { appliances } = setupSchema.parse(reply.json())
    return {
      reply,
      kettle: appliances.find(({ id }) => id === 'electric-kettle')?.name,
      own: appliances.filter(({ id }) => !BUILT_IN_APPLIANCES.some((builtIn) => builtIn.id === id)),
    }
  }

  it('GET /v1/appliances names them in the language asked for, figures unchanged', async () => {
    const { kettle, reply } = await list('?locale=de-CH')
    expect(reply.headers['content-language']).toBe('de')
    expect(kettle?.name).toBe('Wasserkocher')
    expect(kettle?.synonyms).toContain('Elektrokocher')
    const { kettle: english } = await list('')
    expect({ ...kettle, name: '', synonyms: [] }).toEqual({ ...english, name: '', synonyms: [] })
    expect((await list('?locale=fr')).kettle?.name).toBe('Bouilloire électrique')
    expect((await list('?locale=es-MX')).kettle?.name).toBe('Hervidor eléctrico')
  })

  it('GET /v1/appliances falls back to English', async () => {
    const { kettle, reply } = await list('?locale=it')
    expect([kettle?.name, reply.headers['content-language']]).toEqual(['Electric kettle', 'en'])
  })

  it.each(['/v1/appliances', '/v1/shops/kingcup/setup'])('%s has an ETag a language', async (path) => {
    const tagOf = async (locale: string) => (await app.inject(`${path}?locale=${locale}`)).headers.etag
    const tags = await Promise.all(['en', 'de', 'fr', 'es'].map(tagOf))
    expect(new Set(tags).size).toBe(4)
    expect(await tagOf('de-AT')).toBe(await tagOf('de'))
    const headers = { 'if-none-match': String(await tagOf('fr')) }
    expect((await app.inject({ url: `${path}?locale=fr`, headers })).statusCode).toBe(304)
    expect((await app.inject({ url: `${path}?locale=es`, headers })).statusCode).toBe(200)
  })

  it.each(['/v1/appliances', '/v1/shops/kingcup/setup'])(
    '%s refuses what is no language tag',
    async (path) => {
      for (const query of ['locale=de_DE', 'locale=', 'locale=de&locale=fr', 'language=de']) {
        const reply = await app.inject(`${path}?${query}`)
        expect(reply.statusCode, query).toBe(422)
        expect(problemSchema.parse(reply.json()).errors?.[0]?.message).toMatch(
          /^Query parameter "(locale|language)/,
        )
      }
    },
  )

  it('GET setup takes the shop’s locale where none is asked for', async () => {
    expect((await setup('austrian', '')).kettle).toBe('Wasserkocher')
    expect((await setup('austrian', '?locale=fr-BE')).kettle).toBe('Bouilloire électrique')
    expect((await setup('kingcup', '')).kettle).toBe('Electric kettle')
    expect((await setup('kingcup', '?locale=de')).kettle).toBe('Wasserkocher')
  })

  it('GET setup leaves the shop’s own entries as the shop has written them', async () => {
    const { own } = await setup('kingcup', '?locale=de')
    expect(own.map(({ name }) => name)).toEqual(kingcup.shop.appliances.map(({ name }) => name))
  })

  it('POST sizing names loads and writes every message in the language asked for', async () => {
    const payload = {
      loads: [
        { id: 'k', appliance: 'electric-kettle' },
        { id: 't', appliance: 'toaster', rating: { basis: 'label-text', text: '230 V 850 W' } },
        { id: 'f', appliance: 'fridge' },
      ],
      supply: { nominalV: 12, battery: { chemistry: 'agm', capacityAh: 200 } },
      detail: 'full',
    }
    const ask = async (shopId: string, locale?: string) =>
      (
        await app.inject({
          method: 'POST',
          url: `/v1/shops/${shopId}/sizing`,
          payload: { ...payload, locale },
        })
      ).json()
    const [english, german, austrianAnswer] = await Promise.all([
      ask('kingcup', 'en'),
      ask('kingcup', 'de'),
      ask('austrian'),
    ])
    expect(german.demand.loads.map(({ name }: { name: string }) => name)).toEqual([
      'Wasserkocher',
      'Toaster',
      'Kühlschrank (ohne Gefrierfach)',
    ])
    const messages = messagesIn(german)
    expect(messages.length).toBeGreaterThan(30)
    expect(messages.length).toBe(messagesIn(english).length)
    const shared = new Set(messagesIn(english))
    expect(messages.filter((message) => shared.has(message))).toEqual([])
    expect(messagesIn(austrianAnswer)).not.toContain(messagesIn(english)[0])
    expect(austrianAnswer.demand.loads[0].name).toBe('Wasserkocher')
  })
})

/** Every `message` and `title` of an answer, at whatever depth. */
function messagesIn(node: unknown): readonly string[] {
  if (typeof node !== 'object' || node === null) return []
  return Object.entries(node).flatMap(([key, value]) =>
    (key === 'message' || key === 'title') && typeof value === 'string' ? [value] : messagesIn(value),
  )
}
