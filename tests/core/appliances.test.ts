import { describe, expect, it } from 'vitest'
import type { Appliance, Band } from '../../core/loads/appliance.ts'
import { APPLIANCE_CATEGORIES, MAINS_FAMILIES } from '../../core/loads/vocabulary.ts'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'
import { SOURCES, type SourceId } from '../../core/tables/sources.ts'

interface NamedBand extends Band {
  readonly figure: string
}

const wattBandsOf = ({ id, inputW, standbyW, start }: Appliance): readonly NamedBand[] => [
  ...MAINS_FAMILIES.map((family) => ({ figure: `${id} inputW ${family}`, ...inputW[family] })),
  ...MAINS_FAMILIES.flatMap((family) =>
    start.startingW === undefined
      ? []
      : [{ figure: `${id} startingW ${family}`, ...start.startingW[family] }],
  ),
  { figure: `${id} standbyW`, ...standbyW },
]

const bandsOf = (appliance: Appliance): readonly NamedBand[] => [
  ...wattBandsOf(appliance),
  { figure: `${appliance.id} powerFactor`, ...appliance.powerFactor },
  { figure: `${appliance.id} start multiple`, ...appliance.start.multiple },
  { figure: `${appliance.id} minutesPerDay`, ...appliance.use.minutesPerDay },
  { figure: `${appliance.id} dutyFraction`, ...appliance.use.dutyFraction },
]

const everyBand = BUILT_IN_APPLIANCES.flatMap(bandsOf)
const figuresWhere = (bands: readonly NamedBand[], test: (band: NamedBand) => boolean) =>
  bands.filter(test).map(({ figure }) => figure)
const idsWhere = (test: (appliance: Appliance) => boolean) =>
  BUILT_IN_APPLIANCES.filter(test).map(({ id }) => id)
const repeated = (values: readonly string[]) => values.filter((value, at) => values.indexOf(value) !== at)
const byId = (id: string): Appliance => {
  const found = BUILT_IN_APPLIANCES.find((appliance) => appliance.id === id)
  if (found === undefined) throw new Error(`no appliance ${id}`)
  return found
}

describe('the built-in appliances', () => {
  it('are at least 100', () => {
    expect(BUILT_IN_APPLIANCES.length).toBeGreaterThanOrEqual(100)
  })

  it('have unique ids of lower-case words joined by hyphens', () => {
    expect(repeated(BUILT_IN_APPLIANCES.map(({ id }) => id))).toEqual([])
    expect(idsWhere(({ id }) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([])
  })

  it('have unique names, and no synonym or name stands for two of them', () => {
    const words = BUILT_IN_APPLIANCES.flatMap(({ name, synonyms }) => [name.toLowerCase(), ...synonyms])
    expect(repeated(words)).toEqual([])
  })

  it('have lower-case synonyms without spaces at their ends', () => {
    const words = BUILT_IN_APPLIANCES.flatMap(({ synonyms }) => synonyms)
    expect(words.length).toBeGreaterThan(200)
    expect(words.filter((word) => word === '' || word !== word.trim().toLowerCase())).toEqual([])
  })

  it.each(APPLIANCE_CATEGORIES)('hold something of the category %s', (category) => {
    expect(idsWhere((appliance) => appliance.category === category)).not.toEqual([])
  })

  it.each([
    ['jug', 'electric-kettle'],
    ['hair drier', 'hair-dryer'],
    ['breathing machine', 'cpap'],
    ['sleep apnoea machine', 'cpap'],
    ['telly', 'television'],
    ['card terminal', 'card-reader'],
    ['cash register', 'till'],
    ['refrigerator', 'fridge'],
    ['notebook', 'laptop'],
    ['cordless drill charger', 'tool-battery-charger'],
  ])('are found by the word %s', (word, id) => {
    expect(byId(id).synonyms).toContain(word)
  })
})

describe('the figures of the built-in appliances', () => {
  it('each name at least one source', () => {
    expect(figuresWhere(everyBand, ({ sourceIds }) => sourceIds.length === 0)).toEqual([])
    expect(idsWhere(({ waveform }) => waveform.sourceIds.length === 0)).toEqual([])
  })

  it('name only sources that exist, each once', () => {
    const unknown = (ids: readonly SourceId[]) => ids.some((id) => !Object.hasOwn(SOURCES, id))
    expect(figuresWhere(everyBand, ({ sourceIds }) => unknown(sourceIds))).toEqual([])
    expect(idsWhere(({ waveform }) => unknown(waveform.sourceIds))).toEqual([])
    expect(figuresWhere(everyBand, ({ sourceIds }) => repeated(sourceIds).length > 0)).toEqual([])
  })

  it('are finite and run from low over typical to high', () => {
    const disordered = ({ low, typical, high }: Band) => !(low <= typical && typical <= high)
    expect(figuresWhere(everyBand, disordered)).toEqual([])
    expect(figuresWhere(everyBand, ({ low, high }) => !(low >= 0 && Number.isFinite(high)))).toEqual([])
  })

  it('run on more than nothing', () => {
    expect(idsWhere(({ inputW }) => MAINS_FAMILIES.some((family) => inputW[family].low <= 0))).toEqual([])
  })

  it('wait on less than they run on', () => {
    const waitsOnMore = ({ inputW, standbyW }: Appliance) =>
      MAINS_FAMILIES.some((family) => standbyW.typical > inputW[family].typical)
    expect(idsWhere(waitsOnMore)).toEqual([])
  })

  it('keep power factor above 0 and up to 1, duty within 0..1, minutes within 0..1440', () => {
    expect(idsWhere(({ powerFactor }) => powerFactor.low <= 0 || powerFactor.high > 1)).toEqual([])
    expect(idsWhere(({ use }) => use.dutyFraction.low < 0 || use.dutyFraction.high > 1)).toEqual([])
    expect(idsWhere(({ use }) => use.minutesPerDay.low < 0 || use.minutesPerDay.high > 1440)).toEqual([])
  })
})

describe('the starts of the built-in appliances', () => {
  it('never take less than running power', () => {
    expect(idsWhere(({ start }) => start.multiple.low < 1)).toEqual([])
  })

  it('of kind none stay within 1.6 times running power', () => {
    expect(idsWhere(({ start }) => start.kind === 'none' && start.multiple.high > 1.6)).toEqual([])
  })

  it('of electronics are over within a cycle of 50 Hz, of filaments within 50 ms', () => {
    const limitS = ({ waveform, category }: Appliance) =>
      category === 'lighting' && waveform.reason === 'resistive-heat' ? 0.05 : 0.02
    const lasting = (appliance: Appliance) =>
      appliance.start.kind === 'electronic-inrush' && !(appliance.start.durationS <= limitS(appliance))
    expect(idsWhere(lasting)).toEqual([])
  })

  it('of compressors last 0.3 s or more, of motors more than a cycle', () => {
    expect(idsWhere(({ start }) => start.kind === 'compressor' && start.durationS < 0.3)).toEqual([])
    expect(idsWhere(({ start }) => start.kind === 'motor' && start.durationS <= 0.02)).toEqual([])
  })

  it('are given in watts only where a compressor cools', () => {
    const odd = ({ start, thermal }: Appliance) =>
      start.startingW !== undefined && (start.kind !== 'compressor' || thermal !== 'cools')
    expect(idsWhere(odd)).toEqual([])
  })

  it('of a machine with a heater ask for no more than that heater', () => {
    // The drum of a washing machine starts beside a heater that is off: the multiple must not be the drum's.
    expect(byId('washing-machine').start.multiple.typical).toBe(1)
    expect(byId('hair-dryer').start.kind).toBe('none')
  })
})

describe('the traps of published tables', () => {
  const household = ['fridge', 'fridge-freezer', 'chest-freezer', 'wine-cooler', 'medicine-fridge']

  it.each(household)('%s runs below 300 W and yet starts above 300 W', (id) => {
    const { inputW, start } = byId(id)
    for (const family of MAINS_FAMILIES) {
      expect(inputW[family].high).toBeLessThan(300)
      expect(start.startingW?.[family].low).toBeGreaterThanOrEqual(300)
      expect(start.startingW?.[family].high).toBeLessThanOrEqual(1600)
    }
  })

  it('give a microwave oven the input that was measured, not its cooking power', () => {
    const { inputW, ratedByCookingPower } = byId('microwave-oven')
    expect(ratedByCookingPower).toBe(true)
    expect(inputW.at230V.typical).toBeGreaterThanOrEqual(983)
    expect(inputW.at230V.typical).toBeLessThanOrEqual(1463)
    expect(inputW.at120V.low).toBeGreaterThanOrEqual(1260)
    expect(idsWhere((appliance) => appliance.ratedByCookingPower === true)).toEqual(['microwave-oven'])
  })

  it('size a laptop without a plate for 150 W (common practice, no published source)', () => {
    const { inputW } = byId('laptop')
    expect(inputW.at120V.high).toBe(150)
    expect(inputW.at120V.sourceIds).toContain('common-practice')
  })

  it('never rest a refrigerator on the utility table that overstates them', () => {
    const refrigeration = BUILT_IN_APPLIANCES.filter(({ category }) => category === 'refrigeration')
    const used = refrigeration
      .flatMap(wattBandsOf)
      .filter(({ sourceIds }) => sourceIds.includes('cooperative-generator-table'))
    expect(used).toEqual([])
  })
})

describe('the wave form that built-in appliances need', () => {
  it('is a pure sine wave for every medical device, because it is one', () => {
    expect(idsWhere(({ medical }) => medical).length).toBeGreaterThanOrEqual(10)
    const lenient = ({ medical, waveform }: Appliance) =>
      medical && (waveform.need !== 'pure-sine-required' || waveform.reason !== 'medical-device')
    expect(idsWhere(lenient)).toEqual([])
    expect(idsWhere(({ medical, category }) => medical !== (category === 'medical'))).toEqual([])
  })

  it.each(['laptop', 'gaming-laptop', 'phone-charger', 'tool-battery-charger'])(
    'is either for %s (common practice, no published source)',
    (id) => {
      expect(byId(id).waveform.need).toBe('either')
      expect(byId(id).waveform.sourceIds).toContain('common-practice')
    },
  )

  it('is a pure sine wave for every compressor start', () => {
    const lenient = ({ start, waveform }: Appliance) =>
      start.kind === 'compressor' && waveform.need !== 'pure-sine-required'
    expect(idsWhere(lenient)).toEqual([])
  })

  it('is either for a plain heater', () => {
    const strict = ({ waveform }: Appliance) =>
      waveform.reason === 'resistive-heat' && waveform.need !== 'either'
    expect(idsWhere(strict)).toEqual([])
  })
})

describe('the sources of the load figures', () => {
  it('carry the attribution that the tracebase licence asks for', () => {
    expect(SOURCES.tracebase.note).toContain(
      'Contains information from the tracebase data set, which is made available at http://www.tracebase.org under the Open Database License (ODbL).',
    )
  })

  it('call judgement memory, and never pass it off as read', () => {
    expect(SOURCES['load-judgement'].standing).toBe('memory')
  })
})
