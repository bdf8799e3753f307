/** Stable codes of {@link CoreError}. */
export type CoreErrorCode = 'out_of_range' | 'inconsistent'

/**
 * A call of a core function that its contract forbids: a bug of the caller, never a shopper's mistake.
 * What a shopper can get wrong comes back as a value (a finding or a typed refusal).
 */
export class CoreError extends Error {
  readonly code: CoreErrorCode
  readonly field: string

  constructor(code: CoreErrorCode, field: string, message: string) {
    super(message)
    this.name = 'CoreError'
    this.code = code
    this.field = field
  }
}

/**
 * Refuses a number outside its documented bounds, NaN included.
 *
 * @param field - Name of the argument, as its docstring has it.
 * @param value - The number to test.
 * @param low - Smallest allowed value.
 * @param high - Largest allowed value.
 * @throws CoreError `out_of_range`, naming the field and its bounds
 */
export function requireInRange(field: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) {
    throw new CoreError('out_of_range', field, `${field} must be between ${low} and ${high}, got ${value}`)
  }
}
