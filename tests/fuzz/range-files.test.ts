import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { RangeDocument } from '../../core/range/range-document.ts'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { openApiDocument } from '../../server/openapi/document.ts'
import { type FileReading, readCsvList } from '../../server/range-files/read-csv-list.ts'
import { sheetOf, writeCsvList } from '../../server/range-files/write-csv-list.ts'
import { PART_LISTS, type PartList } from '../../shared/contract/range-admin.ts'
import { readRange } from '../../shared/range-reading.ts'
import { brokenFiles, fileOf, fileStyle, meddledSheets } from './csv-files.ts'
import { nearValidTexts } from './near-valid.ts'
import { madeSound, rangeDocuments, soundRanges } from './ranges.ts'
import { schemasOf } from './schema.ts'

const RUNS = Math.ceil(Number(process.env.FUZZ_RUNS ?? 5000) / 10)
const TIMEOUT_MS = 60_000 + RUNS * 50

const schemas = schemasOf(openApiDocument())
const sound = soundRanges(schemas, 'kingcup')
const list = fc.constantFrom(...PART_LISTS)
const POINTER = /^(\/([^~/]|~[01])*)*$/su

function base(): RangeDocument {
  const reading = readRange(kingcup)
  if (!reading.ok) throw new Error('the demo range is faulty')
  return reading.range
}
const demo = base()

/** Every fault names a place; one of the file's list names its line, and its column where it is a cell's. */
function expectTold(reading: FileReading, part?: PartList): void {
  if (reading.ok) return
  expect(reading.faults.length).toBeGreaterThan(0)
  for (const { pointer, message, line, column } of reading.faults) {
    expect(pointer).toMatch(POINTER)
    expect(message.length).toBeGreaterThan(5)
    expect(message.length).toBeLessThan(2000)
    // A list without rows has no line to point at.
    if (part === undefined || !pointer.startsWith(`/${part}/`)) continue
    expect(line, `${pointer}: ${message}`).toBeGreaterThan(0)
    if (column !== undefined) expect(column).toBeGreaterThan(0)
  }
}

/**
 * What a CSV cell can't carry: blanks at its ends, the bar between entries of a list, and what a spreadsheet shows
 * in place of a value. Names and SKUs of a shop have none of these.
 */
function forCells(range: RangeDocument): RangeDocument {
  const plain = (text: string) => {
    const kept = text.replaceAll(/[\s|]+/gu, ' ').trim()
    return kept === '' || /^#|^="|^'|^\d+([.,]\d+)?E\+\d+$/i.test(kept) ? 'plain' : kept
  }
  const parts = Object.fromEntries(
    PART_LISTS.map((name) => [
      name,
      range[name].map((part) => ({
        ...part,
        sku: plain(part.sku),
        name: plain(part.name),
        ...('includes' in part && part.includes !== undefined ? { includes: part.includes.map(plain) } : {}),
      })),
    ]),
  ) as unknown as Partial<RangeDocument>
  return madeSound({ ...range, ...parts }, range.shop.id)
}

/** Lists that are there but empty are the same as those that are not. */
function withoutEmptyLists(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutEmptyLists)
  if (typeof value !== 'object' || value === null) return value
  const kept = Object.entries(value).filter(([, part]) => !(Array.isArray(part) && part.length === 0))
  return Object.fromEntries(kept.map(([name, part]) => [name, withoutEmptyLists(part)]))
}

describe('a range document', () => {
  it(
    'that keeps the schema and every rule is read as it is',
    () => {
      fc.assert(
        fc.property(sound, (document) => {
          expect(readRange(JSON.parse(JSON.stringify(document)))).toEqual({ ok: true, range: document })
        }),
        { numRuns: Math.ceil(RUNS / 2) },
      )
    },
    TIMEOUT_MS,
  )

  it(
    'that breaks one thing is read or told where, never a crash',
    () => {
      const schema = { $ref: '#/components/schemas/RangeDocument' }
      fc.assert(
        fc.property(nearValidTexts(schemas, schema, sound), ({ text, at }) => {
          const document: unknown = JSON.parse(text)
          const reading = readRange(document)
          expectTold(reading)
          if (schemas.holds(schema, document)) return
          expect(reading.ok).toBe(false)
          const pointers = reading.ok ? [] : reading.faults.map(({ pointer }) => `${pointer}/`)
          const related = pointers.some(
            (pointer) => pointer.startsWith(`${at}/`) || `${at}/`.startsWith(pointer),
          )
          expect(related, `${at}: ${pointers.join(' ')}`).toBe(true)
        }),
        { numRuns: RUNS },
      )
    },
    TIMEOUT_MS,
  )
})

describe('a list of parts as CSV', () => {
  it(
    'that was written by the service is read as it was',
    () => {
      fc.assert(
        fc.property(sound.map(forCells), list, (range, name) => {
          const reading = readCsvList({
            bytes: Buffer.from(writeCsvList(range, name)),
            list: name,
            base: range,
          })
          if (!reading.ok) throw new Error(JSON.stringify(reading.faults.slice(0, 3)))
          expect(withoutEmptyLists(reading.range)).toEqual(withoutEmptyLists(range))
        }),
        { numRuns: RUNS },
      )
    },
    TIMEOUT_MS,
  )

  it(
    'in any style of spreadsheets comes back as it was, or is told where it is in doubt',
    () => {
      fc.assert(
        fc.property(sound.map(forCells), list, fileStyle, (range, name, style) => {
          const reading = readCsvList({ bytes: fileOf(sheetOf(range, name), style), list: name, base: range })
          expectTold(reading, name)
          if (reading.ok) expect(withoutEmptyLists(reading.range)).toEqual(withoutEmptyLists(range))
        }),
        { numRuns: RUNS },
      )
    },
    TIMEOUT_MS,
  )

  it(
    'that somebody has meddled with is read or told where, never a crash',
    () => {
      const meddled = list.chain((name) =>
        fc.tuple(fc.constant(name), meddledSheets(sound.map((range) => sheetOf(range, name))), fileStyle),
      )
      fc.assert(
        fc.property(meddled, ([name, sheet, style]) => {
          const reading = readCsvList({ bytes: fileOf(sheet, style), list: name, base: demo })
          expectTold(reading, name)
          if (!reading.ok) return
          // What is taken can be written and taken again.
          const again = readCsvList({
            bytes: Buffer.from(writeCsvList(reading.range, name)),
            list: name,
            base: reading.range,
          })
          if (!again.ok) throw new Error(JSON.stringify(again.faults.slice(0, 3)))
          expect(withoutEmptyLists(again.range)).toEqual(withoutEmptyLists(reading.range))
        }),
        { numRuns: RUNS },
      )
    },
    TIMEOUT_MS,
  )

  it(
    'that is no list at all is told, never a crash',
    () => {
      const files = fc
        .tuple(rangeDocuments(schemas), list, fileStyle)
        .map(([range, name, style]) => fileOf(sheetOf(range, name), style))
      fc.assert(
        fc.property(brokenFiles(files), list, (bytes, name) => {
          expectTold(readCsvList({ bytes, list: name, base: demo }), name)
        }),
        { numRuns: RUNS },
      )
    },
    TIMEOUT_MS,
  )
})
