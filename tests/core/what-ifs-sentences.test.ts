import { describe, expect, it } from 'vitest'
import { WHAT_IF_KINDS } from '../../core/advice/vocabulary.ts'
import type { WhatIf } from '../../core/inverters/what-ifs/what-if.ts'
import { whatIfSchema } from '../../shared/contract/answers.ts'
import { en } from '../../shared/messages/en.ts'
import { writerFor } from '../../shared/messages/index.ts'
import { makeInverter, makeRange } from '../support/make.ts'

const [unit] = makeRange([makeInverter({ sku: 'T', name: 'Towpath 1500' })]).inverters
const units = unit === undefined ? [] : [unit]
const listed = (name: string) => ({ name, own: false })

const turns: WhatIf = {
  kind: 'take-turns',
  loadIds: ['kettle', 'toaster'],
  change: { takeTurns: [['kettle', 'toaster']] },
  values: {},
  outcome: 'fits',
  cares: new Set(),
  units,
  price: '250.00',
  priceDifference: '-120.00',
}

describe('sentences of what-ifs', () => {
  const writer = writerFor('en-GB')
  const plain = (sentence: string) => sentence.replaceAll('\u00a0', ' ')

  it('has one for each kind', () => {
    expect(Object.keys(en.whatIfs).sort()).toEqual([...WHAT_IF_KINDS].sort())
  })

  it('names loads, unit and what it costs less', () => {
    expect(writer.whatIf(turns, [listed('Electric kettle'), listed('Toaster')], 'GBP')).toBe(
      'If the electric kettle and the toaster take turns, the Towpath 1500 will do: £120.00 less.',
    )
  })

  it("leaves a shopper's own names alone, and tells price, run time and care where they belong", () => {
    const { priceDifference: _, ...rest } = turns
    const told: WhatIf = { ...rest, outcome: 'fits-with-care', runtimeHours: 3.2 }
    expect(plain(writer.whatIf(told, [{ name: 'Big Bertha', own: true }, listed('PA speaker')], 'GBP'))).toBe(
      'If Big Bertha and the PA speaker take turns, the Towpath 1500 will do: £250.00. Runs about 3.2 h with all on. ' +
        'Some notes remain.',
    )
  })

  it('is silent on money where the unit stays', () => {
    const told = { ...turns, priceDifference: '0.00' }
    expect(writer.whatIf(told, [listed('Kettle')], 'GBP')).toMatch(/will do\.$/)
  })

  it('speaks of one battery where both its voltage and its size change', () => {
    const { priceDifference: _, ...rest } = turns
    const both: WhatIf = {
      ...rest,
      kind: 'combined',
      loadIds: [],
      values: {
        steps: [
          { kind: 'higher-voltage', loadIds: [], values: { nominalV: 48 } },
          { kind: 'larger-battery', loadIds: [], values: { capacityAh: 100 } },
        ],
      },
    }
    const told = (locale: string) => plain(writerFor(locale).whatIf(both, [], 'GBP'))
    expect(told('en-GB')).toBe('With a 48 V battery of 100 Ah, the Towpath 1500 will do: £250.00.')
    expect(told('de-DE')).toMatch(/^Mit einer Batterie mit 48 V und 100 Ah reicht /)
    expect(told('fr-FR')).toMatch(/^Avec une batterie de 48 V et 100 Ah, /)
    expect(told('es-ES')).toMatch(/^Con una batería de 48 V y 100 Ah, /)
  })

  it('joins two changes, each with its own loads', () => {
    const { priceDifference: _, ...rest } = turns
    const both: WhatIf = {
      ...rest,
      kind: 'combined',
      loadIds: ['kettle', 'lamp', 'toaster'],
      values: {
        steps: [
          { kind: 'take-turns', loadIds: ['kettle', 'toaster'], values: {} },
          { kind: 'lower-rating', loadIds: ['kettle'], values: { limitW: 900, ratedW: 1200 } },
        ],
      },
    }
    const loads = ['Electric kettle', 'Lamp', 'Toaster'].map(listed)
    const told = (locale: string) =>
      writerFor(locale)
        .whatIf(both, loads, 'GBP')
        .replaceAll(/[\u00a0\u202f]/g, ' ')
    expect(told('en-GB')).toBe(
      'If the electric kettle and the toaster take turns and with the electric kettle of at most 900 W on the label, ' +
        'the Towpath 1500 will do: £250.00.',
    )
    expect(told('de-DE')).toMatch(
      /^Laufen Electric kettle und Toaster nur abwechselnd und mit höchstens 900 W/,
    )
    expect(told('de-DE')).toMatch(/, reicht Towpath 1500: /)
    expect(told('fr-FR')).toMatch(
      /^En faisant fonctionner .* et avec 900 W au plus sur la plaque .*, Towpath 1500/,
    )
    expect(told('es-ES')).toMatch(/^Si se usan por turnos .* y con 900 W como máximo en la placa .*, /)
  })

  it('tells a label limit, and for a microwave oven the cooking power', () => {
    expect(
      plain(writer.labelLimit({ loadId: 'm', limitW: 1180, cookingW: 590 }, listed('Microwave oven'))),
    ).toBe(
      'The microwave oven: any with up to 1,180 W input on its label fits this unit. That is roughly 590 W of cooking power.',
    )
  })

  it('refuses a change that the contract does not know', () => {
    const change = { takeTurns: [['a', 'b']], also: true }
    const answer = { kind: 'take-turns', loadIds: [], outcome: 'fits', price: '1.00', currency: 'GBP' }
    expect(whatIfSchema.safeParse({ ...answer, change, message: 'x', values: {} }).success).toBe(false)
  })
})
