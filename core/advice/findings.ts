import type { AssumedFigure } from '../battery/bank.ts'
import type { ApplianceCategory } from '../loads/vocabulary.ts'
import type { ConnectionKind, InverterFeature } from '../range/vocabulary.ts'
import type { NoFuseReason } from '../wiring/fuse.ts'

/** `fail` rules a unit out; `care` asks the buyer to do or know something; `note` informs. */
export const SEVERITIES = ['fail', 'care', 'note'] as const
export type Severity = (typeof SEVERITIES)[number]

/** Figures of an inverter that the range may leave out. */
export const ASSUMABLE_FIGURES = [
  'continuousVA',
  'efficiencyFullFraction',
  'idleW',
  'cutOffV',
  'connectionLimitA',
] as const
export type AssumableFigure = (typeof ASSUMABLE_FIGURES)[number]

/** Every finding's code with the values that its message may show. */
export interface FindingValues {
  'continuous-power-short': {
    runningW: number
    requiredContinuousW: number
    continuousW: number
    headroomFraction: number
  }
  'apparent-power-short': { runningVA: number; continuousVA: number }
  'starting-power-short': { startingW: number; surgeW: number }
  'surge-time-short': { startingW: number; startingS: number; surgeS: number; continuousW: number }
  'wave-form-unsuitable': Record<string, never>
  'wave-form-care': Record<string, never>
  'output-voltage-mismatch': { outputV: number; mainsV: number }
  'output-frequency-mismatch': { outputHz: number; mainsHz: number }
  'input-voltage-mismatch': { inputNominalV: number; supplyNominalV: number }
  'connection-limit': {
    kind: ConnectionKind
    limitA: number
    currentA: number
    limitW: number
    runningW: number
  }
  'connection-below-full-power': { kind: ConnectionKind; limitA: number; limitW: number; continuousW: number }
  'outlets-short': { outlets: number; needed: number }
  'feature-missing': { features: readonly InverterFeature[] }
  'out-of-stock': Record<string, never>
  'over-price': { price: string; maxPrice: string; currency: string }
  'not-advised': { categories: readonly ApplianceCategory[] }
  'figure-assumed': { figure: AssumableFigure; value: number }
  'rating-estimated': { sizingW: number }
  'rating-read': { note: string; [name: string]: string | number }
  'minutes-assumed': { minutesPerDay: number }
  'start-assumed-none': Record<string, never>
  'restart-together': { startingW: number; count: number }
  'inrush-not-sized': Record<string, never>
  'supply-voltage-assumed': { nominalV: number }
  'cable-length-assumed': { lengthM: number }
  'own-leads-too-thin': { ampacityA: number; neededA: number; needed?: string }
  'own-leads-drop': { dropFraction: number; limitFraction: number }
  'own-leads-too-short': { leadsM: number; routeM: number }
  'no-standard-conductor': { worstCaseA: number }
  'no-standard-fuse': { worstCaseA: number }
  'no-safe-fuse': { minA: number; maxA: number; reason: NoFuseReason }
  'socket-fuse-stays': Record<string, never>
  'discharge-limit-running': { currentA: number; limitA: number; limitAssumed: boolean }
  'discharge-limit-starting': { currentA: number; limitA: number; limitAssumed: boolean }
  'cut-off-while-running': { inverterV: number; cutOffV: number }
  'cut-off-while-starting': { inverterV: number; cutOffV: number }
  'voltage-sag': { sagFraction: number; sagLimitFraction: number }
  'day-not-carried': { neededCapacityAh: number; capacityAh: number; atH: number }
  'occasional-use': { minutes: number; continuousMinutes: number }
  'runs-too-long': { minutes: number; continuousMinutes: number; neededCapacityAh?: number }
  'under-20-minutes': Record<string, never>
  'nothing-usable': Record<string, never>
  'heavier-than-advised': Record<string, never>
  'longer-than-a-year': Record<string, never>
  'self-discharge-not-counted': Record<string, never>
  'gel-figures-unverified': Record<string, never>
  'cold-lithium-charge': Record<string, never>
  'charge-temperature-outside-range': Record<string, never>
  'battery-figure-assumed': { field: AssumedFigure['field']; value: number }
  'inverter-off-between': { hoursOn: number }
}

/** Code of a finding: part of the contract, its message is not. */
export type FindingCode = keyof FindingValues

/** Every finding code, for the contract's enumerations. */
export const FINDING_CODES = [
  'continuous-power-short',
  'apparent-power-short',
  'starting-power-short',
  'surge-time-short',
  'wave-form-unsuitable',
  'wave-form-care',
  'output-voltage-mismatch',
  'output-frequency-mismatch',
  'input-voltage-mismatch',
  'connection-limit',
  'connection-below-full-power',
  'outlets-short',
  'feature-missing',
  'out-of-stock',
  'over-price',
  'not-advised',
  'figure-assumed',
  'rating-estimated',
  'rating-read',
  'minutes-assumed',
  'start-assumed-none',
  'restart-together',
  'inrush-not-sized',
  'supply-voltage-assumed',
  'cable-length-assumed',
  'own-leads-too-thin',
  'own-leads-drop',
  'own-leads-too-short',
  'no-standard-conductor',
  'no-standard-fuse',
  'no-safe-fuse',
  'socket-fuse-stays',
  'discharge-limit-running',
  'discharge-limit-starting',
  'cut-off-while-running',
  'cut-off-while-starting',
  'voltage-sag',
  'day-not-carried',
  'occasional-use',
  'runs-too-long',
  'under-20-minutes',
  'nothing-usable',
  'heavier-than-advised',
  'longer-than-a-year',
  'self-discharge-not-counted',
  'gel-figures-unverified',
  'cold-lithium-charge',
  'charge-temperature-outside-range',
  'battery-figure-assumed',
  'inverter-off-between',
] as const satisfies readonly FindingCode[]

/** A finding of one code. */
export interface FindingOf<C extends FindingCode> {
  readonly code: C
  readonly severity: Severity
  readonly loadIds?: readonly string[]
  readonly values: FindingValues[C]
}

/** Something that a check found, without words: the message catalogues have those. */
export type Finding = { [C in FindingCode]: FindingOf<C> }[FindingCode]

/**
 * Makes a finding; ties the values' type to the code.
 *
 * @param code - The finding's code
 * @param severity - How grave it is
 * @param values - Its values, units in their names
 * @param loadIds - The loads that it is about, where it is about loads
 * @returns The finding
 */
export function finding<C extends FindingCode>(
  code: C,
  severity: Severity,
  values: FindingValues[C],
  loadIds?: readonly string[],
): Finding {
  const made: FindingOf<C> =
    loadIds === undefined ? { code, severity, values } : { code, severity, loadIds, values }
  return made as Finding
}
