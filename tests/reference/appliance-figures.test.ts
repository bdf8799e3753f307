import { describe, expect, it } from 'vitest'
import type { Appliance, Band } from '../../core/loads/appliance.ts'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'
import { APPLIANCE_FIGURES, DOCUMENTS, type FigureName } from './data/appliance-figures.ts'

const BAND_OF: Readonly<Record<FigureName, (appliance: Appliance) => Band>> = {
  'watts at 120 V': ({ inputW }) => inputW.at120V,
  'watts at 230 V': ({ inputW }) => inputW.at230V,
  'power factor': ({ powerFactor }) => powerFactor,
  'start multiple': ({ start }) => start.multiple,
  duty: ({ use }) => use.dutyFraction,
  'standby watts': ({ standbyW }) => standbyW,
}

describe('the appliance list holds figures as they were taken from published documents', () => {
  it.each(
    APPLIANCE_FIGURES.map(([id, figure, low, typical, high, documents]) => ({
      id,
      figure,
      expected: { low, typical, high },
      from: documents.map((name) => DOCUMENTS[name]).join('; '),
    })),
  )('$id, $figure: $expected.low, $expected.typical, $expected.high ($from)', ({ id, figure, expected }) => {
    const appliance = BUILT_IN_APPLIANCES.find((entry) => entry.id === id)
    if (appliance === undefined) throw new Error(`no appliance ${id}`)
    const { low, typical, high } = BAND_OF[figure](appliance)
    expect({ low, typical, high }).toEqual(expected)
  })
})
