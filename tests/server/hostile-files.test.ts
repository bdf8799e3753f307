import { describe, expect, it } from 'vitest'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { type FileFault, readCsvList } from '../../server/range-files/read-csv-list.ts'
import { writeCsvList } from '../../server/range-files/write-csv-list.ts'
import { sizingRequestSchema } from '../../shared/contract/plan.ts'
import { LIMITS } from '../../shared/contract/primitives.ts'
import { type PartList, RANGE_BODY_LIMIT_BYTES } from '../../shared/contract/range-admin.ts'
import { explainFaults } from '../../shared/explain.ts'
import { readRange } from '../../shared/range-reading.ts'

const reading = readRange(kingcup)
if (!reading.ok) throw new Error('the demo range is faulty')
const base = reading.range

function faultsOf(list: PartList, text: string): readonly FileFault[] {
  const read = readCsvList({ bytes: Buffer.from(text), list, base })
  return read.ok ? [] : read.faults
}

const CABLES = 'sku,name,price,inStock,areaMm2,awg,lengthM,insulationC'

// Each of these would run for hours if the time grew by the square of the length.
describe('a cell as large as a file may be', () => {
  const size = RANGE_BODY_LIMIT_BYTES - 1000

  it.each([
    ['blanks', `x${' '.repeat(size)}x`],
    ['line ends', `x${'\r\n'.repeat(size / 2)}x`],
    ['tabs before no currency', `1${'\t'.repeat(size)}x`],
    ['separators of thousands', '1,111'.repeat(size / 5)],
    ['digits', '1'.repeat(size)],
    ['apostrophes', "'".repeat(size)],
    ['quotation marks', '""'.repeat(size / 2)],
    ['blanks before no gauge', `4${'\t'.repeat(size)}awgx`],
  ])('of %s is refused where it stands', (_what, cell) => {
    for (const column of [1, 2, 4, 5]) {
      const cells = ['C-1', 'Cable', '12.50', 'yes', '35', '', '1.5', '105']
      cells[column] = `"${cell}"`
      const faults = faultsOf('cables', [CABLES, cells.join(',')].join('\n'))
      expect(faults.some(({ line, column: at }) => line === 2 && at === column + 1)).toBe(true)
      for (const { message } of faults) expect(message.length).toBeLessThan(300)
    }
  })

  it.each(['h=', '1 h ', '5 h: ', '9 h=9 Ah'])('of rates made of "%s" is refused', (piece) => {
    const faults = faultsOf('batteries', `sku,otherRates\nB-1,"${piece.repeat(size / piece.length)}"`)
    expect(faults.find(({ header }) => header === 'otherRates')?.message).toMatch(/is no rate/)
  })
})

describe('a file of more than a list may hold', () => {
  it('is told by one fault, at the first row too many', () => {
    const rows = `${CABLES}\n${'x\n'.repeat(1_000_000)}`
    expect(faultsOf('cables', rows)).toEqual([
      { pointer: '/cables', line: LIMITS.partsPerList + 2, message: expect.stringMatching(/at most 2000/) },
    ])
  })

  it('is told by one fault, at the first column too many', () => {
    const faults = faultsOf('cables', `${'x,'.repeat(1_000_000)}\n${'1,'.repeat(1000)}`)
    expect(faults).toEqual([
      { pointer: '/cables', line: 1, column: 201, message: expect.stringMatching(/at most 200 columns/) },
    ])
  })

  it('may hold as many as a list may', () => {
    const rows = Array.from({ length: LIMITS.partsPerList }, (_, at) => `C-${at},Cable,1,yes,35,,1,`)
    const read = readCsvList({ bytes: Buffer.from([CABLES, ...rows].join('\n')), list: 'connectors', base })
    expect(read.ok).toBe(false)
    const cables = readCsvList({
      bytes: Buffer.from([CABLES, ...rows].join('\n')),
      list: 'cables',
      base: { ...base, inverters: base.inverters.map(({ includes: _, ...unit }) => unit) },
    })
    expect(cables.ok && cables.range.cables.length).toBe(LIMITS.partsPerList)
  })
})

describe('a document with a list of more than it may hold', () => {
  it('is told by one fault for each such list, whatever its entries are', () => {
    const millions = new Array<number>(2_000_000).fill(0)
    const [unit] = kingcup.inverters
    const document = { ...kingcup, cables: millions, inverters: [{ ...unit, features: millions }] }
    const read = readRange(document)
    expect(read.ok ? [] : read.faults.map(({ pointer }) => pointer)).toEqual([
      '/inverters/0/features',
      '/cables',
    ])
    expect(explainFaults(sizingRequestSchema, { loads: millions })).toEqual([
      { pointer: '/loads', message: 'Must hold at most 40 entries.' },
    ])
  })
})

describe('text beyond the first 65,536 characters of Unicode', () => {
  it('is counted by characters, as the document says', () => {
    const named = (name: string) => ({
      ...kingcup,
      inverters: kingcup.inverters.map((unit, at) => (at === 0 ? { ...unit, name } : unit)),
    })
    expect(readRange(named('🔋'.repeat(120))).ok).toBe(true)
    const read = readRange(named('🔋'.repeat(121)))
    expect(read.ok ? [] : read.faults).toEqual([
      { pointer: '/inverters/0/name', message: 'Must be at most 120 characters long.' },
    ])
  })
})

describe('a price with zeros before it', () => {
  it('is written so that it is read as it was', () => {
    const [cable] = base.cables
    if (cable === undefined) throw new Error('the demo range has no cables')
    for (const price of ['00.000', '012.345', '0.500']) {
      const range = { ...base, cables: [{ ...cable, price }, ...base.cables.slice(1)] }
      const read = readCsvList({ bytes: Buffer.from(writeCsvList(range, 'cables')), list: 'cables', base })
      expect(read.ok && read.range.cables[0]?.price).toBe(price)
    }
  })
})

describe('a figure too small for plain notation', () => {
  it('is written so that it is read as it was', () => {
    const [unit] = base.inverters
    if (unit === undefined) throw new Error('the demo range is empty')
    const range = {
      ...base,
      inverters: [{ ...unit, idleW: 5e-324, surgeS: 1.5e-30 }, ...base.inverters.slice(1)],
    }
    const read = readCsvList({
      bytes: Buffer.from(writeCsvList(range, 'inverters')),
      list: 'inverters',
      base,
    })
    expect(read).toEqual({ ok: true, range })
  })
})
