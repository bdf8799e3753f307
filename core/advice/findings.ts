import type { AssumedFigure } from '../battery/bank.ts'
import type { ApplianceCategory } from '../loads/vocabulary.ts'
import type { ConnectionKind, InverterFeature } from '../range/vocabulary.ts'
import type { NoFuseReason } from '../wiring/fuse.ts'
import type { CartFindingValues } from './cart-findings.ts'

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
export interface FindingValues extends CartFindingValues {
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
