import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type SizingAnswer, sizingAnswerSchema } from '../../shared/contract/answers.ts'
import { demoService } from '../support/service.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await demoService()
})
afterAll(() => app.close())

async function answerOf(shopId: string, changes: Record<string, unknown>): Promise<SizingAnswer> {
  const reply = await app.inject({
    method: 'POST',
    url: `/v1/shops/${shopId}/sizing`,
    payload: { loads: LOADS, detail: 'full', ...changes },
  })
  expect(reply.statusCode).toBe(200)
  return sizingAnswerSchema.parse(reply.json())
}

const LOADS = [
  { id: 'fridge', appliance: 'fridge' },
  { id: 'lamp', rating: { basis: 'label-text', text: '500 W' } },
]

/** Everything of an answer that people read, names of the shop's own parts apart. */
function textsOf(answer: SizingAnswer): readonly string[] {
  const { kit, circuit, assumptions, considered, whatIfs, labelLimits, working = [], recommended } = answer
  return [
    ...kit.flatMap(({ specification, why }) => [specification, why]),
    ...[circuit, recommended, ...considered]
      .flatMap((part) => part?.findings ?? [])
      .map((each) => each.message),
    ...[...assumptions, ...whatIfs, ...labelLimits].map(({ message }) => message),
    ...working.flatMap(({ title, shown }) => [title, ...shown.map(({ text }) => text)]),
  ]
}

describe('lengths in an answer', () => {
  it('are told in feet by a shop that counts in AWG, and stay metres as data', async () => {
    const answer = await answerOf('bentcreek', {
      locale: 'en-US',
      supply: { nominalV: 12, oneWayLengthM: 3 },
    })
    const texts = textsOf(answer)
    expect(texts.filter((text) => /\d\u00a0m\b/.test(text))).toEqual([])
    expect(texts.filter((text) => /9\.8\u00a0ft/.test(text)).length).toBeGreaterThan(1)
    expect(answer.circuit?.oneWayLengthM).toBe(3)
  })

  it('are told in metres by a shop that counts in square millimetres', async () => {
    const texts = textsOf(await answerOf('kingcup', { supply: { nominalV: 12, oneWayLengthM: 3 } }))
    expect(texts.filter((text) => /\d\u00a0ft\b/.test(text))).toEqual([])
    expect(texts.filter((text) => /3\u00a0m\b/.test(text)).length).toBeGreaterThan(1)
  })
})

describe('sizes of cable in an answer', () => {
  it('name the insulation that each is for where the kit’s differs from the circuit’s', async () => {
    const { circuit, kit } = await answerOf('kingcup', { supply: { nominalV: 12, oneWayLengthM: 1 } })
    const cable = kit.find(({ role }) => role === 'cable')
    expect(circuit?.conductor.insulationC).toBe(75)
    expect(cable?.note).toMatchObject({
      code: 'hotter-insulation',
      values: { otherInsulationC: 75, otherSize: circuit?.conductor.label },
    })
    expect(cable?.why).toContain(`75\u00a0°C cable would have to be ${circuit?.conductor.label}`)
  })
})

describe('the working of an answer', () => {
  it.each(['en', 'de', 'fr', 'es'])('shows every value under a name, in %s', async (locale) => {
    const supply = { nominalV: 12, battery: { chemistry: 'agm', capacityAh: 400 } }
    const { working = [] } = await answerOf('kingcup', { locale, supply })
    expect(working.length).toBeGreaterThan(15)
    for (const { step, values, shown } of working) {
      expect(
        shown.map(({ key }) => key),
        step,
      ).toEqual(Object.keys(values))
      for (const { name, text } of shown) {
        // An identifier has a capital inside a word, a word of the contract hyphens between small letters.
        expect(name).toMatch(/^\p{Lu}/u)
        expect(name).not.toMatch(/\p{Ll}\p{Lu}/u)
        expect(text).not.toMatch(/^[a-z0-9]+(-[a-z0-9]+)+$|undefined|NaN|true|false/)
      }
    }
  })

  it('tells in the reader’s language what a source without a title is', async () => {
    const titles = async (locale: string) => {
      const { working = [] } = await answerOf('kingcup', { locale })
      return new Map(working.map(({ source, sourceDocument }) => [source, sourceDocument]))
    }
    const [english, german] = [await titles('en'), await titles('de')]
    expect(german.get('shop-stated')).toBe('Angabe des Händlers in seinem Sortiment')
    expect(english.get('shop-stated')).toBe('Stated by the shop in its range document')
    expect(german.get('nec-125-percent')).toBe(english.get('nec-125-percent'))
  })
})
