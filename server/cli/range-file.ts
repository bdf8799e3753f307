import { readFileSync } from 'node:fs'
import type { RangeDocument } from '../../core/index.ts'
import { type PartList, RANGE_BODY_LIMIT_BYTES } from '../../shared/contract/range-admin.ts'
import { readRange } from '../../shared/range-reading.ts'
import { type FileFault, type FileReading, readCsvList } from '../range-files/read-csv-list.ts'
import { CommandError, type Io } from './io.ts'

/**
 * Reads a whole range from a JSON file.
 *
 * @param file - Path of the file
 * @returns The range, or all its faults
 * @throws CommandError where there is no such file, or no JSON in it
 */
export function readJsonFile(file: string): FileReading {
  const text = bytesOf(file).toString('utf8')
  let document: unknown
  try {
    document = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    throw new CommandError(`${file} is not readable JSON: ${error instanceof Error ? error.message : ''}`)
  }
  return readRange(document)
}

/**
 * Reads one list of parts from a CSV file.
 *
 * @param file - Path of the file
 * @param list - Which list it holds
 * @param base - The range that the rest comes from
 * @returns The range with that list replaced, or all faults
 * @throws CommandError where there is no such file
 */
export function readCsvFile(file: string, list: PartList, base: RangeDocument): FileReading {
  return readCsvList({ bytes: bytesOf(file), list, base })
}

/**
 * Names every fault of a file, a line each, and gives up.
 *
 * @param io - Where the lines go
 * @param file - Path of the file
 * @param faults - Its faults
 * @throws CommandError always
 */
export function refuseFaults(io: Io, file: string, faults: readonly FileFault[]): never {
  for (const { pointer, message, line, column, header } of faults) {
    const place = line === undefined ? pointer : `:${line}${column === undefined ? '' : `:${column}`}`
    io.complain(`${file}${place} ${header === undefined ? '' : `${header}: `}${message}\n`)
  }
  throw new CommandError(`${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}; nothing was changed.`)
}

function bytesOf(file: string): Buffer {
  try {
    const bytes = readFileSync(file)
    if (bytes.length <= RANGE_BODY_LIMIT_BYTES) return bytes
  } catch (error) {
    throw new CommandError(`${file} can't be read: ${error instanceof Error ? error.message : ''}`)
  }
  throw new CommandError(`${file} is larger than ${RANGE_BODY_LIMIT_BYTES} bytes.`)
}
