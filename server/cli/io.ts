import { PART_LISTS, type PartList } from '../../shared/contract/range-admin.ts'
import type { Store } from '../store/store.ts'

/** Where a command's settings come from and its texts go to. */
export interface Io {
  readonly environment: Readonly<Record<string, string | undefined>>
  readonly out: (text: string) => void
  readonly complain: (text: string) => void
}

/** Options as they stand on the command line. */
export type Options = Readonly<Record<string, string | boolean | undefined>>

/** What a command runs with. */
export interface CommandContext {
  /** Opens the store that the settings name, once. */
  readonly store: () => Promise<Store>
  readonly io: Io
  readonly operands: readonly string[]
  readonly options: Options
}

/** Exit status of a command line that wasn't understood. */
export const USAGE_STATUS = 2

/** Thrown where a command can't be done; its message is for the person at the keyboard. */
export class CommandError extends Error {
  readonly status: number

  constructor(message: string, status = 1) {
    super(message)
    this.name = 'CommandError'
    this.status = status
  }
}

/**
 * An option that must be there.
 *
 * @param options - Options of the command line
 * @param name - Its name
 * @returns Its text
 * @throws CommandError where it is left out or empty
 */
export function neededOption(options: Options, name: string): string {
  const value = options[name]
  if (typeof value !== 'string' || value === '') throw new CommandError(`Say --${name}.`, USAGE_STATUS)
  return value
}

/**
 * The one operand of a command.
 *
 * @param operands - What follows the command's words
 * @param what - What it is, for the complaint
 * @returns Its text
 * @throws CommandError where there is none, or more than one
 */
export function oneOperand(operands: readonly string[], what: string): string {
  const [first, ...more] = operands
  if (first === undefined || more.length > 0) throw new CommandError(`Name one ${what}.`, USAGE_STATUS)
  return first
}

/**
 * The list of parts that `--part` names.
 *
 * @param options - Options of the command line
 * @returns The list, or undefined where the option is left out
 * @throws CommandError where there is no such list
 */
export function partOption(options: Options): PartList | undefined {
  if (options.part === undefined) return undefined
  const part = PART_LISTS.find((list) => list === options.part)
  if (part === undefined) throw new CommandError(`--part is one of ${PART_LISTS.join(', ')}.`, USAGE_STATUS)
  return part
}
