import { parseArgs } from 'node:util'
import { readConfig } from '../config.ts'
import { NewerStoreError } from '../store/migrations/index.ts'
import { openStore } from '../store/open.ts'
import { type Store, StoreUnavailableError } from '../store/store.ts'
import { type CommandContext, CommandError, type Io, USAGE_STATUS } from './io.ts'
import { issueKey, listKeys, revokeKey } from './keys.ts'
import { checkRangeFile, exportRange, importRange } from './ranges.ts'
import { createShop, listShops } from './shops.ts'

interface Command {
  readonly words: string
  readonly takes: string
  readonly about: string
  readonly run: (context: CommandContext) => Promise<void>
}

const COMMANDS: readonly Command[] = [
  { words: 'shop list', takes: '', about: 'List the shops and their version in force.', run: listShops },
  {
    words: 'shop create',
    takes: 'RANGE.json',
    about: 'Create the shop that a range file describes.',
    run: createShop,
  },
  {
    words: 'key issue',
    takes: '--shop ID --name NAME --scopes read,range,demand [--days N]',
    about: 'Issue a secret key; it is shown once.',
    run: issueKey,
  },
  { words: 'key list', takes: '--shop ID', about: 'List the keys of a shop.', run: listKeys },
  { words: 'key revoke', takes: 'KEY-ID', about: 'Revoke a key at once and for good.', run: revokeKey },
  {
    words: 'range check',
    takes: 'FILE [--part LIST --shop ID]',
    about: 'Name every fault of a range file: JSON, or CSV of one list against the rest of a shop.',
    run: checkRangeFile,
  },
  {
    words: 'range import',
    takes: 'FILE --shop ID [--part LIST] [--dry-run]',
    about: 'Put a range file in force.',
    run: importRange,
  },
  {
    words: 'range export',
    takes: '--shop ID [--part LIST] [--version N] [--to FILE]',
    about: 'Write the range as JSON, or one list as CSV.',
    run: exportRange,
  },
]

const OPTIONS = {
  shop: { type: 'string' },
  name: { type: 'string' },
  scopes: { type: 'string' },
  days: { type: 'string' },
  part: { type: 'string' },
  version: { type: 'string' },
  to: { type: 'string' },
  'dry-run': { type: 'boolean' },
  help: { type: 'boolean' },
} as const

/**
 * Runs one command of the operators' command line.
 *
 * @param args - Words and options after the program's name
 * @param io - Where settings come from and texts go to
 * @returns The exit status: 0 done, 1 could not be done, 2 not understood
 */
export async function runCommand(args: readonly string[], io: Io): Promise<number> {
  let opened: Store | undefined
  try {
    const { values, positionals } = parsedArgs(args)
    if (values.help === true || positionals.length === 0 || positionals[0] === 'help') {
      io.out(usage())
      return 0
    }
    const words = positionals.slice(0, 2).join(' ')
    const command = COMMANDS.find((candidate) => candidate.words === words)
    if (command === undefined)
      throw new CommandError(`There is no command "${words}".\n\n${usage()}`, USAGE_STATUS)
    const store = async () => {
      opened ??= await openConfigured(io)
      return opened
    }
    await command.run({ store, io, operands: positionals.slice(2), options: values })
    return 0
  } catch (error) {
    if (!(error instanceof CommandError || isStoreRefusal(error))) throw error
    io.complain(`${error.message}\n`)
    return error instanceof CommandError ? error.status : 1
  } finally {
    await opened?.close()
  }
}

function isStoreRefusal(error: unknown): error is StoreUnavailableError | NewerStoreError {
  return error instanceof StoreUnavailableError || error instanceof NewerStoreError
}

function parsedArgs(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true, strict: true })
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error)
    throw new CommandError(`${message}\n\n${usage()}`, USAGE_STATUS)
  }
}

async function openConfigured({ environment }: Io): Promise<Store> {
  const result = readConfig(environment)
  if (!result.ok) throw new CommandError(`Faulty settings:\n${result.faults.join('\n')}`)
  return openStore(result.config.storeUrl, 0)
}

function usage(): string {
  const lines = COMMANDS.map(({ words, takes, about }) =>
    `  tallywatt ${words} ${takes}`.trimEnd().concat(`\n      ${about}`),
  )
  return `Usage:\n${lines.join('\n')}\n\nLIST is inverters, batteries, cables, fuses or connectors.\nThe store is the one that STORE_URL names; sqlite:data/tallywatt.db where it is not set.\n`
}
