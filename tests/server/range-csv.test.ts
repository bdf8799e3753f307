import { parse } from 'csv-parse/sync'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { RangeDocument } from '../../core/range/range-document.ts'
import bentcreek from '../../server/demo/bentcreek.json' with { type: 'json' }
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { COLUMNS } from '../../server/range-files/columns.ts'
import { decodeText, readCsv } from '../../server/range-files/csv-text.ts'
import { isUnchanged, rangeChanges } from '../../server/range-files/diff.ts'
import { decimalSignOf, readNumber } from '../../server/range-files/numbers.ts'
import { type FileFault, readCsvList } from '../../server/range-files/read-csv-list.ts'
import { writeCsvList } from '../../server/range-files/write-csv-list.ts'
import { PART_LISTS, type PartList } from '../../shared/contract/range-admin.ts'
import { readRange } from '../../shared/range-reading.ts'

const shops = { kingcup: rangeOf(kingcup), bentcreek: rangeOf(bentcreek) }

function rangeOf(document: unknown): RangeDocument {
  const reading = readRange(document)
  if (!reading.ok) throw new Error('the demo range is faulty')
  return reading.range
}

/** A range in which no inverter refers to a part of another list, so that those may be replaced. */
const unconnected: RangeDocument = {
  ...shops.kingcup,
  inverters: shops.kingcup.inverters.map(({ includes: _, ...unit }) => unit),
}

function read(list: PartList, text: string | Uint8Array, base = unconnected) {
  return readCsvList({ bytes: typeof text === 'string' ? Buffer.from(text) : text, list, base })
}

function faultsOf(list: PartList, text: string, base = unconnected): readonly FileFault[] {
  const reading = read(list, text, base)
  return reading.ok ? [] : reading.faults
}

const CABLES = [
  'sku,name,price,inStock,areaMm2,awg,lengthM,insulationC',
  'C-1,Cable one,12.50,yes,35,,1.5,105',
]

function cable(cells: string): string {
  return [CABLES[0], cells].join('\n')
}

describe('a CSV file taken apart', () => {
  const cell = fc.string({ unit: fc.constantFrom('a', 'ü', '"', ',', ';', '\n', '\r\n', ' ', '1') })
  const table = fc
    .integer({ min: 2, max: 5 })
    .chain((width) =>
      fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }),
    )
  const quote = (text: string) => `"${text.replaceAll('"', '""')}"`

  it('reads what an independent CSV reader reads, with its line numbers', () => {
    fc.assert(
      fc.property(table, (rows) => {
        // A plain header row first, so that the separator is beyond doubt.
        const width = rows[0]?.length ?? 0
        const header = Array.from({ length: width }, (_, index) => `h${index}`)
        const text = [header, ...rows].map((cells) => cells.map(quote).join(',')).join('\n')
        const expected = parse(text, { info: true, record_delimiter: '\n', bom: false }) as unknown as {
          record: string[]
          info: { lines: number }
        }[]
        const kept = expected
          .map(({ record }, index) => ({ record, line: (expected[index - 1]?.info.lines ?? 0) + 1 }))
          .filter(({ record }) => record.some((content) => content.trim() !== ''))
        const found = readCsv(text).rows
        expect(found.map((row) => row.cells.map((content) => content.text))).toEqual(
          kept.map(({ record }) => record),
        )
        if (!text.includes('\r')) expect(found.map(({ line }) => line)).toEqual(kept.map(({ line }) => line))
      }),
      { numRuns: 500 },
    )
  })

  it('never fails, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        for (const row of readCsv(text).rows) expect(row.cells.length).toBeGreaterThan(0)
      }),
      { numRuns: 500 },
    )
  })

  it('tells comma, semicolon and tab by the header, or by a line sep=', () => {
    expect(readCsv('a;b;c\n1,5;2;3').rows[1]?.cells.map(({ text }) => text)).toEqual(['1,5', '2', '3'])
    expect(readCsv('a\tb\n1,5\t2').separator).toBe('\t')
    expect(readCsv('sep=;\r\na;b\r\n1;2').rows[1]).toMatchObject({ line: 3 })
  })

  it('counts lines through quoted line ends and skips blank rows', () => {
    const { rows } = readCsv('a,b\r\n"two\r\nlines",x\r\n,\r\n\r\ny,z\r\n')
    expect(rows.map(({ line }) => line)).toEqual([1, 2, 6])
  })
})

describe('the encoding of a file', () => {
  const name = 'Kabel für Zündung, 5 €'

  it('is UTF-8 with or without byte order mark, Windows-1252, or UTF-16 with a mark', () => {
    const windows = Buffer.from([...name].map((letter) => (letter === '€' ? 0x80 : letter.charCodeAt(0))))
    expect(decodeText(Buffer.from(name))).toBe(name)
    expect(decodeText(Buffer.from(`\uFEFF${name}`))).toBe(name)
    expect(decodeText(windows)).toBe(name)
    expect(decodeText(Buffer.from(`\uFEFF${name}`, 'utf16le'))).toBe(name)
  })
})

describe('a number in a cell', () => {
  const english = { decimal: '.', separator: ',' } as const
  const german = { decimal: ',', separator: ';' } as const
  const unknown = { decimal: undefined, separator: ';' } as const

  it.each([
    ['1500', unknown, '1500'],
    ['12,5', unknown, '12.5'],
    ['12.5', unknown, '12.5'],
    ['0,905', unknown, '0.905'],
    ['0.905', unknown, '0.905'],
    ['1.234,5', unknown, '1234.5'],
    ['1,234.5', unknown, '1234.5'],
    ['1 500', unknown, '1500'],
    ['1\u00a0500,25', german, '1500.25'],
    ['12’500', unknown, '12500'],
    ['1,500', english, '1500'],
    ['1,500', german, '1.500'],
    ['1.500', german, '1500'],
    ['1.500', english, '1.500'],
    ['1.125', { decimal: undefined, separator: ',' } as const, '1.125'],
    ['1,5E+03', german, '1500'],
  ])('reads %s in a file of %o as %s', (cell, file, plain) => {
    expect(readNumber(cell, file)).toEqual({ ok: true, plain })
  })

  it.each(['1,500', '1.500', '-2,125'])('refuses %s where nothing tells its decimal sign', (cell) => {
    expect(readNumber(cell, unknown)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/can be read as/),
    })
  })

  it.each(['', 'abc', '12 W', '1,2,3', '1.2.3', '--1', '0x10', 'Infinity', 'NaN', '1e9999x'])(
    'refuses "%s"',
    (cell) => {
      expect(readNumber(cell, unknown).ok).toBe(false)
    },
  )

  it('tells the decimal sign of a file only where its cells agree', () => {
    expect(decimalSignOf(['1500', '12,5', '1,500'])).toBe(',')
    expect(decimalSignOf(['1500', '12.5'])).toBe('.')
    expect(decimalSignOf(['12,5', '12.5'])).toBeUndefined()
    expect(decimalSignOf(['1500', '1,500'])).toBeUndefined()
  })
})

describe('headers', () => {
  it.each([
    'SKU,NAME,PRICE,INSTOCK,AREAMM2,AWG,LENGTHM,INSULATIONC',
    ' Sku , Name , price , in stock , area mm2 , awg , length m , insulation C ',
    'sku,name,price,in_stock,Area (mm2),AWG,length-m,insulation_c',
  ])('are read whatever their case, spacing and punctuation: %s', (header) => {
    expect(read('cables', `${header}\nC-1,Cable one,12.50,yes,35,,1.5,105`)).toMatchObject({ ok: true })
  })

  it('that are unknown, double or missing are named with their column', () => {
    expect(faultsOf('cables', 'sku,nam,price,price,inStock,areaMm2\nC-1,One,1,1,yes,35')).toMatchObject([
      { line: 1, header: 'name', message: 'The column "name" is missing.' },
      { line: 1, header: 'lengthM', message: 'The column "lengthM" is missing.' },
      { line: 1, column: 2, header: 'nam' },
      { line: 1, column: 4, header: 'price', message: 'The column "price" stands twice.' },
    ])
  })

  it('may come in any order and leave out what is optional', () => {
    const reading = read('cables', 'lengthM;inStock;price;name;sku;areaMm2\n1,5;ja;12,50;Kabel;C-1;35')
    expect(reading).toMatchObject({
      ok: true,
      range: {
        cables: [{ sku: 'C-1', name: 'Kabel', price: '12.50', inStock: true, areaMm2: 35, lengthM: 1.5 }],
      },
    })
  })

  it('without any row make an empty list, or a fault where a list must not be empty', () => {
    expect(read('cables', CABLES[0] ?? '')).toMatchObject({ ok: true, range: { cables: [] } })
    expect(
      faultsOf('inverters', writeCsvList({ ...shops.kingcup, inverters: [] }, 'inverters')),
    ).toMatchObject([{ pointer: '/inverters' }])
    expect(faultsOf('cables', '')).toMatchObject([{ line: 1, message: 'The file is empty.' }])
  })
})

describe('what spreadsheets do to cells', () => {
  it.each([
    ['TRUE', true],
    ['WAHR', true],
    ['x', true],
    ['1', true],
    ['FALSCH', false],
    ['no', false],
  ])('takes %s for %s', (word, inStock) => {
    expect(read('cables', cable(`C-1,One,1,${word},35,,1,`))).toMatchObject({
      range: { cables: [{ inStock }] },
    })
  })

  it('reads a SKU that is written as a formula, so that it keeps its zeros', () => {
    expect(read('cables', cable('"=""00123""",One,1,yes,35,,1,'))).toMatchObject({
      range: { cables: [{ sku: '00123' }] },
    })
  })

  it('refuses a SKU that was made a number, an error cell, and an unreadable word', () => {
    expect(faultsOf('cables', cable('"1,23457E+12",#REF!,1,perhaps,35,,1,'))).toMatchObject([
      { line: 2, column: 1, message: expect.stringContaining('made a number of this SKU') },
      { line: 2, column: 2, message: expect.stringContaining('#REF!') },
      { line: 2, column: 4, message: '"perhaps" is neither yes nor no.' },
    ])
  })

  it('reads prices with a currency beside them', () => {
    for (const price of ['£12.50', '"12,50 €"', 'GBP 12.50', '$ 12.50']) {
      expect(read('cables', cable(`C-1,One,${price},yes,35,,1,`))).toMatchObject({
        range: { cables: [{ price: '12.50' }] },
      })
    }
  })

  it('leaves a price as it was where a spreadsheet has only cut a zero off', () => {
    const text = writeCsvList(shops.kingcup, 'inverters').replace(',24.50,', ',24.5,')
    expect(text).not.toBe(writeCsvList(shops.kingcup, 'inverters'))
    const reading = read('inverters', text, shops.kingcup)
    expect(reading).toMatchObject({ ok: true, range: shops.kingcup })
  })

  it('names a row that has more cells than there are headers, and a quotation mark that stays open', () => {
    expect(faultsOf('cables', cable('C-1,One,12,50,yes,35,,1,5,'))).toContainEqual(
      expect.objectContaining({ line: 2, column: 9, message: expect.stringContaining('more cells') }),
    )
    expect(faultsOf('cables', cable('C-1,"One,1,yes,35,,1,'))[0]).toMatchObject({
      line: 2,
      message: expect.stringContaining('never closed'),
    })
  })
})

describe('ten faults in one file', () => {
  /** Each changes one row of the export of the first demo shop; line 1 is the header. */
  const header = COLUMNS.inverters.map(({ name }) => name)
  const SEEDED = [
    { line: 2, header: 'price', cell: 'twelve', says: /is not a number/ },
    { line: 4, header: 'continuousW', cell: '5', says: /at least 10/ },
    { line: 5, header: 'waveform', cell: 'square', says: /one of pure-sine, modified-sine/ },
    { line: 5, header: 'outputHz', cell: '55', says: /50|60/ },
    { line: 7, header: 'sku', cell: '', says: /empty/ },
    { line: 8, header: 'cutOffV', cell: '8', says: /cut-off of 8 V/ },
    { line: 9, header: 'features', cell: 'usb-outlet | warp-drive', says: /warp-drive/ },
    { line: 10, header: 'includes', cell: 'NO-SUCH-SKU', says: /No part of the range has the SKU/ },
    { line: 11, header: 'surgeW', cell: '20', says: /below continuous power/ },
    { line: 12, header: 'inStock', cell: 'maybe', says: /neither yes nor no/ },
  ] as const

  function seeded(separator: string): string {
    const rows = parse(writeCsvList(shops.kingcup, 'inverters'), { bom: true }) as string[][]
    for (const { line, header: name, cell } of SEEDED) {
      const row = rows[line - 1]
      if (row === undefined) throw new Error('the demo range is too short')
      row[header.indexOf(name)] = cell
    }
    return rows.map((row) => row.map((text) => `"${text}"`).join(separator)).join('\r\n')
  }

  it.each([',', ';', '\t'])(
    'come back as exactly those, in file order, with "%s" between cells',
    (separator) => {
      const faults = faultsOf('inverters', seeded(separator), shops.kingcup)
      expect(faults.map(({ line, header: name }) => ({ line, header: name }))).toEqual(
        SEEDED.map(({ line, header: name }) => ({ line, header: name })),
      )
      for (const [index, fault] of faults.entries()) {
        const expected = SEEDED[index]
        expect(fault.message).toMatch(expected?.says ?? /^$/)
        expect(fault.column).toBe(header.indexOf(expected?.header ?? 'sku') + 1)
        expect(fault.pointer).toMatch(new RegExp(`^/inverters/${(expected?.line ?? 0) - 2}/`))
      }
    },
  )
})

describe('an export', () => {
  it.each(PART_LISTS.flatMap((list) => [['kingcup', list] as const, ['bentcreek', list] as const]))(
    'of %s, %s, that is read again changes nothing',
    (shop, list) => {
      const reading = read(list, writeCsvList(shops[shop], list), shops[shop])
      expect(reading).toEqual({ ok: true, range: shops[shop] })
      if (reading.ok) expect(isUnchanged(rangeChanges(shops[shop], reading.range))).toBe(true)
    },
  )

  const trimmed = (text: string) => text.trim() === text && text.length > 0 && !/^#/.test(text)
  const text = fc
    .string({
      unit: fc.constantFrom('=', '+', '-', '@', '\t', "'", '"', ',', ';', '|', 'x', 'é', '1', ' ', '\n'),
      minLength: 1,
      maxLength: 12,
    })
    .filter(trimmed)
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

  it('gives names and figures back as they were, whatever they are made of', () => {
    const battery = fc.record({
      name: text,
      price: fc.tuple(fc.nat(99_999), fc.nat(999)).map(([whole, rest]) => `${whole}.${rest}`),
      capacityAh: number(1, 5000),
      internalResistanceOhm: number(0.00001, 1),
    })
    fc.assert(
      fc.property(fc.array(battery, { maxLength: 6 }), (batteries) => {
        const base: RangeDocument = {
          ...unconnected,
          batteries: batteries.map((change, index) => ({
            sku: `B${index}`,
            inStock: true,
            chemistry: 'agm',
            nominalV: 12,
            hourRateH: 20,
            otherRates: [{ hourRateH: 5, capacityAh: change.capacityAh }],
            ...change,
          })),
        }
        const reading = read('batteries', writeCsvList(base, 'batteries'), { ...base, batteries: [] })
        expect(reading).toEqual({ ok: true, range: base })
      }),
      { numRuns: 300 },
    )
  })

  it('holds no cell that a spreadsheet would run', () => {
    fc.assert(
      fc.property(text, (name) => {
        const cables = [
          { sku: `=cmd|' /C calc'!A0`, name, price: '1', inStock: true, areaMm2: 35, lengthM: 1 },
        ]
        const rows = parse(writeCsvList({ ...shops.kingcup, cables }, 'cables'), { bom: true }) as string[][]
        for (const cell of rows.flat()) expect(cell).not.toMatch(/^[=+\-@\t\0]/)
      }),
      { numRuns: 300 },
    )
  })
})

describe('what differs between two ranges', () => {
  it('is told part by part and field by field', () => {
    const [first, second, ...rest] = shops.kingcup.inverters
    if (first === undefined || second === undefined) throw new Error('the demo range is too short')
    const { idleW: _, ...withoutIdle } = second
    const extra = { ...first, sku: 'NEW-1', name: 'New' }
    const changed: RangeDocument = {
      ...shops.kingcup,
      shop: { ...shops.kingcup.shop, name: 'Renamed' },
      inverters: [{ ...first, price: '99.00' }, withoutIdle, ...rest.slice(1), extra],
      cables: [...shops.kingcup.cables].reverse(),
    }
    expect(rangeChanges(shops.kingcup, changed)).toEqual({
      added: [{ list: 'inverters', sku: 'NEW-1', name: 'New' }],
      removed: [{ list: 'inverters', sku: rest[0]?.sku, name: rest[0]?.name }],
      changed: [
        {
          list: 'inverters',
          sku: first.sku,
          name: first.name,
          fields: [{ field: 'price', from: first.price, to: '99.00' }],
        },
        {
          list: 'inverters',
          sku: second.sku,
          name: second.name,
          fields: [{ field: 'idleW', from: String(second.idleW), to: null }],
        },
      ],
      reordered: ['cables'],
      shop: ['name'],
    })
  })
})
