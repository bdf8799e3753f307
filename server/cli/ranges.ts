import { writeFileSync } from 'node:fs'
import type { RangeDocument } from '../../core/index.ts'
import type { RangeChanges } from '../../shared/contract/range-admin.ts'
import { isUnchanged, rangeChanges } from '../range-files/diff.ts'
import { writeCsvList } from '../range-files/write-csv-list.ts'
import type { Store, StoredVersion } from '../store/store.ts'
import { newVersion } from '../store/versions.ts'
import {
  type CommandContext,
  CommandError,
  neededOption,
  oneOperand,
  partOption,
  USAGE_STATUS,
} from './io.ts'
import { readCsvFile, readJsonFile, refuseFaults } from './range-file.ts'

/** `range check FILE`: names every fault of a file. */
export async function checkRangeFile({ store, io, operands, options }: CommandContext): Promise<void> {
  const file = oneOperand(operands, 'range file')
  const part = partOption(options)
  const reading =
    part === undefined
      ? readJsonFile(file)
      : readCsvFile(file, part, documentOf(await versionOf(await store(), neededOption(options, 'shop'))))
  if (!reading.ok) return refuseFaults(io, file, reading.faults)
  io.out(`${file} has no faults.\n`)
}

/** `range import FILE`: puts a file in force, or says what it would change. */
export async function importRange({ store, io, operands, options }: CommandContext): Promise<void> {
  const file = oneOperand(operands, 'range file')
  const shopId = neededOption(options, 'shop')
  const part = partOption(options)
  const opened = await store()
  const inForce = await versionOf(opened, shopId)
  const base = documentOf(inForce)
  const reading = part === undefined ? readJsonFile(file) : readCsvFile(file, part, base)
  if (!reading.ok) return refuseFaults(io, file, reading.faults)
  if (reading.range.shop.id !== shopId) {
    throw new CommandError(`${file} is the range of "${reading.range.shop.id}", not of "${shopId}".`)
  }
  const changes = rangeChanges(base, reading.range)
  io.out(summaryOf(changes))
  if (isUnchanged(changes)) return io.out(`Version ${inForce.version} stays in force.\n`)
  if (options['dry-run'] === true) return io.out('Nothing was written.\n')
  const version = newVersion(reading.range, { author: 'command line', origin: 'imported' })
  const outcome = await opened.writeRange(version, inForce.version)
  if (!outcome.ok) throw new CommandError('Somebody else has just changed the range; run it again.')
  io.out(`Version ${outcome.stored.version} is in force.\n`)
}

/** `range export`: writes the range as JSON, or one list as CSV. */
export async function exportRange({ store, io, options }: CommandContext): Promise<void> {
  const part = partOption(options)
  const { version } = options
  if (version !== undefined && !/^[1-9]\d{0,8}$/.test(String(version))) {
    throw new CommandError('--version is a whole number from 1.', USAGE_STATUS)
  }
  const number = version === undefined ? undefined : Number(version)
  const document = documentOf(await versionOf(await store(), neededOption(options, 'shop'), number))
  const text = part === undefined ? `${JSON.stringify(document, null, 2)}\n` : writeCsvList(document, part)
  if (typeof options.to !== 'string') return io.out(text)
  try {
    writeFileSync(options.to, text)
  } catch (error) {
    throw new CommandError(`${options.to} can't be written: ${error instanceof Error ? error.message : ''}`)
  }
}

async function versionOf(store: Store, shopId: string, version?: number): Promise<StoredVersion> {
  const stored = await store.version(shopId, version)
  if (stored !== undefined) return stored
  throw new CommandError(
    version === undefined ? `There is no shop "${shopId}".` : `Shop "${shopId}" has no version ${version}.`,
  )
}

function documentOf(stored: StoredVersion): RangeDocument {
  return JSON.parse(stored.text)
}

function summaryOf({ added, removed, changed, reordered, shop }: RangeChanges): string {
  const lines = [
    ...added.map(({ list, sku, name }) => `+ ${list} ${sku} ${name}`),
    ...removed.map(({ list, sku, name }) => `- ${list} ${sku} ${name}`),
    ...changed.flatMap(({ list, sku, fields }) =>
      fields.map(
        ({ field, from, to }) => `~ ${list} ${sku} ${field}: ${from ?? '(none)'} -> ${to ?? '(none)'}`,
      ),
    ),
    ...reordered.map((list) => `~ ${list} in another order`),
    ...shop.map((field) => `~ shop ${field}`),
  ]
  return lines.length === 0 ? 'No changes.\n' : `${lines.join('\n')}\n`
}
