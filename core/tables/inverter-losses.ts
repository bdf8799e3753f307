import type { SourceId } from './sources.ts'

/**
 * Loss of an inverter by load, per unit of its continuous power: `a + b y + c y^2`, with `y` the output
 * over the continuous power. Medians of nine tested units from 5 to 100 % load.
 */
export const TYPICAL_INVERTER_LOSS = {
  a: 0.0147,
  b: 0.0119,
  c: 0.0963,
  source: 'cec-inverter-tests',
} as const satisfies { a: number; b: number; c: number; source: SourceId }

/**
 * Low-voltage cut-off of an inverter that states none, per volt of nominal voltage: 10.5 V of 12 V,
 * 1.75 V per lead-acid cell. Common practice, no published source.
 */
export const TYPICAL_CUT_OFF_FRACTION = 10.5 / 12
