import type { SourceId } from './tables/sources.ts'

/** Every step of arithmetic that an answer may show; the sentence stands in the message catalogue. */
export const STEP_CODES = [
  'rating-input-watts',
  'rating-measured-watts',
  'rating-volts-amps',
  'rating-volt-amperes',
  'rating-cooking-power-sizing',
  'rating-cooking-power-energy',
  'rating-horsepower',
  'rating-motor-output',
  'rating-cooling-sizing',
  'rating-cooling-energy',
  'rating-label-text',
  'rating-list-figure',
  'rating-apparent-power',
  'load-start',
  'load-energy',
  'demand-running',
  'demand-starting',
  'demand-energy',
  'headroom',
  'unit-limits',
  'lowest-working-voltage',
  'worst-case-current',
  'connection-limit',
  'fuse-window',
  'ampacity',
  'voltage-drop',
  'inverter-input',
  'battery-rate-law',
  'battery-resistance',
  'battery-current-at-start',
  'battery-capacity-at-current',
  'battery-run-end',
  'battery-run-time',
  'bank-size',
  'recharge',
] as const
export type StepCode = (typeof STEP_CODES)[number]

/** A value shown in a working: a number with its unit in the name, a word, or yes/no. */
export type WorkingValue = number | string | boolean

/**
 * One step of the arithmetic behind an answer, so that anyone can check it by hand. Names in `values` carry
 * their unit as a suffix.
 */
export interface WorkingStep {
  readonly step: StepCode
  readonly values: Readonly<Record<string, WorkingValue>>
  readonly source?: SourceId
  /** The load that it is about, where it is about one. */
  readonly loadId?: string
}
