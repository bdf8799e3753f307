import * as fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { COMBINATIONS } from '../../core/range/coverage/combinations.ts'
import bentcreek from '../../server/demo/bentcreek.json' with { type: 'json' }
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { cellState } from '../../server/pages/staff/client/coverage.ts'
import { adviceSentences } from '../../server/pages/staff/client/demand/advice.ts'
import { barsOf, scaleMarks } from '../../server/pages/staff/client/demand/chart.ts'
import { readAloud } from '../../server/pages/staff/client/desk/read-aloud.ts'
import { planWith, readLine, withTurns } from '../../server/pages/staff/client/desk/typed-line.ts'
import { EMPTY_PLAN, formatsFor } from '../../server/pages/staff/client/from-widget.ts'
import {
  type Draft,
  documentOf,
  draftOf,
  PART_LISTS,
  saysTheSame,
  withCell,
  withNewRow,
  withoutRow,
} from '../../server/pages/staff/client/range/draft.ts'
import { placedFaults } from '../../server/pages/staff/client/range/faults.ts'
import { fileText, withCsv, withJson } from '../../server/pages/staff/client/range/files.ts'
import { rebase } from '../../server/pages/staff/client/range/rebase.ts'
import { wordsFor } from '../../server/pages/staff/client/words.ts'
import { COLUMNS } from '../../server/range-files/columns.ts'
import { writeCsvList } from '../../server/range-files/write-csv-list.ts'
import type { SetupAppliance } from '../../shared/contract/setup.ts'
import { readRange } from '../../shared/range-reading.ts'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

const { words } = wordsFor('en-GB')
const base = draftOf(kingcup)

/** A cell of the demo range, and something to write into it. */
const anyEdit = fc.constantFrom(...PART_LISTS).chain((list) =>
  fc.record({
    list: fc.constant(list),
    key: fc.constantFrom(...base.lists[list].map(({ key }) => key)),
    column: fc.constantFrom(...COLUMNS[list].map(({ name }) => name).filter((name) => name !== 'sku')),
    text: fc.string({ maxLength: 8 }),
  }),
)
const edited = (
  draft: Draft,
  edits: readonly { list: keyof Draft['lists']; key: string; column: string; text: string }[],
) => edits.reduce((made, { text, ...place }) => withCell(made, place, text), draft)

describe('the table of a range', () => {
  it.each([
    ['kingcup', kingcup],
    ['bentcreek', bentcreek],
  ])('makes the same document that it was made from: %s', (_name, document) => {
    expect(documentOf(draftOf(document))).toEqual({ document, faults: [] })
  })

  it('leaves out what can’t be read and tells the cell; nothing else changes', () => {
    fc.assert(
      fc.property(anyEdit, (edit) => {
        const { document, faults } = documentOf(edited(base, [edit]))
        for (const fault of faults)
          expect(fault).toMatchObject({ list: edit.list, key: edit.key, column: edit.column })
        const others = PART_LISTS.filter((list) => list !== edit.list)
        for (const list of others) expect(document[list]).toEqual(kingcup[list])
      }),
    )
  })

  it('puts the service’s faults at the rows and columns that their pointers name, also after rows have gone', () => {
    const first = base.lists.inverters[0]?.key ?? ''
    const draft = withoutRow(base, 'inverters', first)
    const sku = kingcup.inverters[2]?.sku
    const errors = [
      { pointer: '/inverters/1/connection/kind', message: 'a' },
      { pointer: '/inverters/1/connection/limitA', message: 'b' },
      { pointer: '/inverters/1/features/0', message: 'c' },
      { pointer: '/inverters/1/connection', message: 'd' },
      { pointer: '/inverters/1', message: 'e' },
      { pointer: '/inverters', message: 'f' },
      { pointer: '/shop/id', message: 'g' },
    ]
    const placed = placedFaults(errors, draft)
    expect(placed.map(({ list, key, column }) => [list, key, column])).toEqual([
      ['inverters', `sku:${sku}`, 'connectionKind'],
      ['inverters', `sku:${sku}`, 'connectionLimitA'],
      ['inverters', `sku:${sku}`, 'features'],
      ['inverters', `sku:${sku}`, 'connectionKind'],
      ['inverters', `sku:${sku}`, undefined],
      ['inverters', undefined, undefined],
      [undefined, undefined, undefined],
    ])
  })

  it('tells every fault that the service finds, once, for any three spoilt cells', () => {
    fc.assert(
      fc.property(fc.array(anyEdit, { maxLength: 3 }), (edits) => {
        const draft = edited(base, edits)
        const { document, faults: own } = documentOf(draft)
        const reading = readRange(document)
        const placed = placedFaults(reading.ok ? [] : reading.faults, draft, own)
        expect(placed.length === 0).toBe(reading.ok && own.length === 0)
        // Parts may point at one another; what is told lies in a row that was edited, or in one that names it.
        for (const { list } of placed) expect(list).toBeDefined()
        const places = own.map(({ list, key, column }) => `${list} ${key} ${column}`)
        for (const place of places) {
          expect(
            placed.filter((fault) => `${fault.list} ${fault.key} ${fault.column}` === place),
          ).toHaveLength(1)
        }
      }),
      { numRuns: 60 },
    )
  })
})

describe('files', () => {
  it.each(PART_LISTS)('the service’s own CSV of %s changes nothing', (list) => {
    const reading = readRange(kingcup)
    if (!reading.ok) throw new Error('the demo range is faulty')
    const text = fileText(new TextEncoder().encode(writeCsvList(reading.range, list)))
    expect(saysTheSame(withCsv(base, base, { list, text }), base)).toBe(true)
  })

  it('reads decimal commas, keeps a price that is only written otherwise, and shows what it can’t read as it stands', () => {
    const sku = kingcup.cables[0]?.sku ?? ''
    const price = kingcup.cables[0]?.price ?? ''
    const text = `SKU;Name;Price;In stock;area mm2;Length M\n${sku};Cable;${Number(price)};ja;1,5;two\nNEW;x;1,25;nein;2,5;3\n`
    const made = withCsv(base, base, { list: 'cables', text })
    expect(
      made.lists.cables.map(({ key, cells }) => [
        key,
        cells.price,
        cells.inStock,
        cells.areaMm2,
        cells.lengthM,
      ]),
    ).toEqual([
      [`sku:${sku}`, price, 'yes', '1.5', 'two'],
      ['new:0', '1.25', 'no', '2.5', '3'],
    ])
  })

  it('reads Windows-1252 and UTF-16 as spreadsheets write them', () => {
    expect(fileText(Uint8Array.of(0xe9, 0x35))).toBe('é5')
    expect(fileText(Uint8Array.of(0xff, 0xfe, 0x41, 0x00))).toBe('A')
    expect(fileText(new TextEncoder().encode('\uFEFFé'))).toBe('é')
  })

  it('takes a whole range or one list as JSON, and nothing else', () => {
    expect(withJson(base, base, { list: 'fuses', value: [] })?.lists.fuses).toEqual([])
    expect(
      withJson(base, base, { list: 'fuses', value: { shop: kingcup.shop, fuses: [] } })?.lists.cables,
    ).toBe(base.lists.cables)
    for (const value of [undefined, null, 7, 'x', {}, { fuse: [] }]) {
      expect(withJson(base, base, { list: 'fuses', value })).toBeUndefined()
    }
  })
})

describe('edits on top of somebody else’s', () => {
  it('without edits of one’s own are theirs, and without theirs one’s own', () => {
    fc.assert(
      fc.property(fc.array(anyEdit, { maxLength: 6 }), (edits) => {
        const other = edited(base, edits)
        const [alone, mine] = [rebase(base, base, other), rebase(other, base, base)]
        expect([saysTheSame(alone.draft, other), alone.collisions]).toEqual([true, []])
        expect([saysTheSame(mine.draft, other), mine.collisions]).toEqual([true, []])
      }),
    )
  })

  it('hold both people’s cells; where both wrote into one, one’s own stands and is told', () => {
    fc.assert(
      fc.property(fc.array(anyEdit, { maxLength: 5 }), fc.array(anyEdit, { maxLength: 5 }), (own, others) => {
        const [mine, theirs] = [edited(base, own), edited(base, others)]
        const { draft, collisions } = rebase(mine, base, theirs)
        for (const list of PART_LISTS) {
          for (const [index, row] of draft.lists[list].entries()) {
            const at = (of: Draft) => of.lists[list][index]?.cells ?? {}
            for (const { name } of COLUMNS[list]) {
              const [before = '', one = '', two = ''] = [at(base)[name], at(mine)[name], at(theirs)[name]]
              expect(row.cells[name] ?? '').toBe(one === before ? two : one)
              const both = one !== before && two !== before && one !== two
              const told = collisions.some((each) => each.sku === row.cells.sku && each.column === name)
              expect(told).toBe(both)
            }
          }
        }
      }),
      { numRuns: 40 },
    )
  })

  it('keep rows added and taken out by either; a row that one took out and the other changed is told', () => {
    const [a, b, c] = base.lists.fuses.map(({ key }) => key)
    const mine = withoutRow(withNewRow(base, 'fuses'), 'fuses', a ?? '')
    const price = { list: 'fuses', key: a ?? '', column: 'price' } as const
    const theirs = withoutRow(withCell(base, price, '1.00'), 'fuses', b ?? '')
    const { draft, collisions } = rebase(mine, base, theirs)
    const keys = draft.lists.fuses.map(({ key }) => key)
    expect([
      keys.includes(a ?? ''),
      keys.includes(b ?? ''),
      keys.includes(c ?? ''),
      keys.includes('new:0'),
    ]).toEqual([false, false, true, true])
    expect(collisions).toEqual([{ list: 'fuses', sku: kingcup.fuses[0]?.sku, column: undefined }])
  })
})

describe('bars over time', () => {
  const anyDays = fc
    .record({ length: fc.integer({ min: 1, max: 800 }), counts: fc.array(fc.nat(400), { maxLength: 800 }) })
    .map(({ length, counts }) => {
      const day = (index: number) => new Date(Date.UTC(2025, 0, 1 + index)).toISOString().slice(0, 10)
      const days = counts.slice(0, length).flatMap((count, index) =>
        count === 0
          ? []
          : [
              {
                day: day(index),
                requests: count < 5 ? null : count,
                outcomes: count < 5 ? [] : [{ outcome: 'fits' as const, count }],
              },
            ],
      )
      return { from: day(0), to: day(length - 1), days }
    })

  it('are few enough to see, cover every day once, and lose no request', () => {
    fc.assert(
      fc.property(anyDays, (reply) => {
        const bars = barsOf(reply)
        expect(bars.length).toBeLessThanOrEqual(62)
        const length = (Date.parse(reply.to) - Date.parse(reply.from)) / 86_400_000 + 1
        expect(bars.reduce((sum, bar) => sum + bar.days, 0)).toBe(length)
        const told = reply.days.reduce((sum, { requests }) => sum + (requests ?? 0), 0)
        expect(bars.reduce((sum, bar) => sum + bar.requests, 0)).toBe(told)
        expect(bars.reduce((sum, bar) => sum + (bar.outcomes.fits ?? 0), 0)).toBe(told)
        const few = reply.days.filter(({ requests }) => requests === null).length
        expect(bars.reduce((sum, bar) => sum + bar.fewDays, 0)).toBe(few)
      }),
    )
  })

  it('stand on a scale from 0 to no less than the highest, with two to six even marks', () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), (most) => {
        const marks = scaleMarks(most)
        expect(marks[0]).toBe(0)
        expect(marks.at(-1)).toBeGreaterThanOrEqual(most)
        expect(marks.length).toBeGreaterThanOrEqual(2)
        expect(marks.length).toBeLessThanOrEqual(6)
        const step = (marks[1] ?? 0) - (marks[0] ?? 0)
        for (const [index, mark] of marks.entries()) expect(mark).toBeCloseTo(index * step, 6)
      }),
    )
  })
})

describe('advice in sentences', () => {
  it('names sizes that serve more than fewer sizes do, what could go, and the method with its source', () => {
    const method = { name: 'exact', guaranteeFraction: 1, source: 's', sourceDocument: 'A book' } as const
    const size = { nominalV: 12, continuousW: 2000, surgeW: 4000, waveform: 'pure-sine' } as const
    const one = { most: 1, sizes: [{ ...size, served: 30 }], served: 30, method }
    const told = adviceSentences(
      {
        surgeMultiple: 2,
        newSizes: [one, { ...one, most: 2 }],
        unmetBySize: 41,
        drop: [{ skus: ['A', 'B'], lost: null, moved: 12, method }],
      },
      words,
    )
    expect(told).toEqual({
      stock: [
        '41 requests failed for want of a size.',
        '1 new size would serve 30 of them: 12\u00a0V, 2,000\u00a0W continuous, 4,000\u00a0W surge, pure sine (30).',
        'A new unit is taken to surge to 2 times its continuous power, the most that the range’s own do.',
      ],
      drop: [
        'Without A and B, one to four of the requests would go unserved and 12 would be answered with another unit.',
      ],
      methods: ['The best choice there is, found exactly. Source: A book.'],
    })
  })
})

describe('a line typed at the phone desk', () => {
  it.each([
    ['kettle', 1, 'kettle', undefined],
    ['2 led lamp', 2, 'led lamp', undefined],
    ['3x phone charger 20 w', 3, 'phone charger', 20],
    ['microwave 800W', 1, 'microwave', 800],
    ['heater 1.5 kW', 1, 'heater', 1500],
    ['heater 1,5kw', 1, 'heater', 1500],
    ['12 v fridge', 1, '12 v fridge', undefined],
    ['400 lamps', 1, '400 lamps', undefined],
    ['saw 0 w', 1, 'saw 0 w', undefined],
    ['800w', 1, '800w', undefined],
    ['', 1, '', undefined],
  ])('"%s" is %i of "%s" with %s W', (text, quantity, query, watts) => {
    expect(readLine(text)).toEqual({ quantity, query, watts })
  })

  it('adds to what is there, states cooking power where a thing is sold by it, and needs watts for the unlisted', () => {
    const oven = { id: 'microwave-oven', ratedByCookingPower: true } as SetupAppliance
    const one = planWith(EMPTY_PLAN, readLine('microwave'), oven)
    const two = planWith(one, readLine('2 microwave'), oven)
    const three = planWith(two, readLine('microwave 700 w'), oven)
    expect(three.loads.map(({ quantity, rating }) => [quantity, rating])).toEqual([
      [3, undefined],
      [1, { basis: 'cooking-watts', watts: 700 }],
    ])
    expect(new Set(three.loads.map(({ id }) => id)).size).toBe(2)
    expect(planWith(three, readLine('thing'), undefined)).toBe(three)
    expect(planWith(three, readLine('thing 9 w'), undefined).loads.at(-1)).toMatchObject({
      name: 'thing',
      rating: { basis: 'input-watts', watts: 9 },
    })
  })

  it('a group of one takes no turns', () => {
    const loads = ['a', 'b', 'c'].map((id) => ({ id, quantity: 1 }))
    expect(withTurns({ ...EMPTY_PLAN, loads }, { a: 1, b: 1, c: 2 }).takeTurns).toEqual([['a', 'b']])
    expect(withTurns({ ...EMPTY_PLAN, loads }, { a: 1, b: 0 }).takeTurns).toEqual([])
  })
})

describe('what is read out', () => {
  let service: StaffService
  beforeAll(async () => {
    service = await openStaffService()
  })
  afterAll(() => service.close())

  it.each([
    ['kingcup', 'en-GB', false],
    ['bentcreek', 'en-US', true],
  ])(
    'is one paragraph of whole sentences for every everyday plan, with the danger and the figures: %s',
    async (shopId, locale, feet) => {
      const formats = formatsFor(locale, feet)
      const seen = new Set<string>()
      for (const plan of COMBINATIONS) {
        for (const battery of [undefined, { chemistry: 'agm', capacityAh: 150 }]) {
          const response = await service.app.inject({
            method: 'POST',
            url: `/v1/shops/${shopId}/sizing`,
            payload: {
              loads: plan.loads.map(({ appliance, quantity }) => ({ id: appliance, appliance, quantity })),
              takeTurns: plan.takeTurns,
              supply: { nominalV: 12, battery },
            },
          })
          const answer = response.json()
          seen.add(answer.outcome)
          const text = readAloud({ answer, words, formats, headroomFraction: 0.2 })
          expect(text, plan.id).not.toMatch(/undefined|null|NaN|\n| {2}|\.\.|,,/)
          for (const sentence of text.split(/(?<=[.!?]) (?=\p{Lu})/u))
            expect(sentence).toMatch(/^\p{Lu}.*[.!?]$/u)
          if (answer.recommended === null) continue
          expect(text).toContain(answer.recommended.name)
          expect(text).toContain(
            `${new Intl.NumberFormat('en').format(answer.recommended.continuousW)} watts`,
          )
          const dangers = answer.cautions.filter(
            ({ severity }: { severity: string }) => severity === 'danger',
          )
          expect(dangers.length).toBeGreaterThan(0)
          for (const { message } of dangers) expect(text).toContain(message)
        }
      }
      expect(seen.has('fits') && seen.has('none-fits')).toBe(true)
    },
  )
})

describe('the words', () => {
  it('name every column and every word that a cell may hold', () => {
    const columns = PART_LISTS.flatMap((list) => COLUMNS[list])
    for (const { name } of columns) expect(words.columns[name], name).toBeDefined()
    for (const { kind, words: values = [] } of columns) {
      if (kind === 'word') for (const value of values) expect(words.values[value], value).toBeDefined()
    }
  })

  it('are English where a language is not there', () => {
    expect(wordsFor('tlh').tag).toBe('en')
  })

  it('over twice the need is a state of its own, but not of what doesn’t fit', () => {
    expect(cellState({ outcome: 'fits', overTwice: true })).toBe('over-twice')
    expect(cellState({ outcome: 'none-fits', overTwice: true })).toBe('none-fits')
    expect(cellState({ outcome: 'fits-with-care', overTwice: false })).toBe('fits-with-care')
  })
})
