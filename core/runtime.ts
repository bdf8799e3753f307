import { typicalCutOffV } from './battery/inverter-input.ts'
import {
  type BatteryAnswer,
  batteryAnswer,
  type SteadyAnswer,
  steadyAnswer,
} from './battery-side/battery-answer.ts'
import { dcPower, type FedInverter, fedBy } from './battery-side/fed-inverter.ts'
import { circuitAnswer } from './circuit-side.ts'
import { ASSUMED_FIGURES } from './inverters/figures.ts'
import type { Supply } from './inverters/need.ts'
import type { PreparedRange } from './range/prepare-range.ts'
import { type PlanFault, planFor, type SizingInput } from './sizing.ts'

/** What is to run: watts at the outlets or at the battery, or loads. */
export type RuntimePower =
  | { readonly basis: 'mains'; readonly watts: number }
  | { readonly basis: 'battery'; readonly watts: number }
  | ({ readonly basis: 'loads' } & Pick<SizingInput, 'loads' | 'takeTurns'>)

/** An inverter as its figures are stated. */
export interface StatedInverter {
  /** [W] */
  readonly continuousW: number
  readonly efficiencyFullFraction?: number | undefined
  /** [W] */
  readonly idleW?: number | undefined
  /** [V] */
  readonly cutOffV?: number | undefined
}

/** A question of run time alone. */
export interface RuntimeInput {
  readonly power: RuntimePower
  /** A unit of the range. */
  readonly sku?: string | undefined
  readonly inverter?: StatedInverter | undefined
  readonly supply: Supply & { readonly battery: NonNullable<Supply['battery']> }
}

/** Why a run time can't be told. */
export type RuntimeFault =
  | PlanFault
  | { readonly path: readonly (string | number)[]; readonly code: 'inverter-needed' }
  | { readonly path: readonly (string | number)[]; readonly code: 'unknown-unit'; readonly sku: string }
  | {
      readonly path: readonly (string | number)[]
      readonly code: 'inverter-too-small'
      readonly runningW: number
      readonly continuousW: number
    }

/** The run time, of loads with their day, or every fault. */
export type RuntimeResult =
  | { readonly ok: true; readonly answer: BatteryAnswer | SteadyAnswer }
  | { readonly ok: false; readonly faults: readonly RuntimeFault[] }

/**
 * How long a battery carries watts or loads, by a unit of the range or one whose figures are stated.
 *
 * Cable losses are counted with a unit of the range, whose circuit is known; left out with stated figures.
 *
 * @param range - The shop's range, prepared
 * @param input - Power, inverter, supply with its battery
 * @returns The run time, or all faults at once
 * @source battery-model-fit
 */
export function runtimeFor(range: PreparedRange, input: RuntimeInput): RuntimeResult {
  const { power, supply } = input
  const bank = { ...supply.battery, nominalV: supply.nominalV }
  if (power.basis === 'battery') {
    const { watts } = power
    return {
      ok: true,
      answer: steadyAnswer({ bank, dcPowerW: watts, dcPowerRunningW: watts, dcPowerStartingW: watts }),
    }
  }
  const fed = feeding(range, input)
  if ('code' in fed) return { ok: false, faults: [fed] }
  if (power.basis === 'mains') {
    if (power.watts > fed.inverter.continuousW) return tooSmall(input, fed.inverter, power.watts)
    const dcPowerW = dcPower(fed.inverter, power.watts)
    const { cutOffV } = fed.inverter
    const { cableResistanceOhm } = fed
    const alike = { dcPowerW, dcPowerRunningW: dcPowerW, dcPowerStartingW: dcPowerW }
    return { ok: true, answer: steadyAnswer({ bank, ...alike, cutOffV, cableResistanceOhm }) }
  }
  const { loads, takeTurns } = power
  const planned = planFor(range, { loads, takeTurns, supply, preferences: { inStockOnly: false } })
  if (!planned.ok) {
    return {
      ok: false,
      faults: planned.faults.map((fault) => ({ ...fault, path: ['power', ...fault.path] })),
    }
  }
  const { demand } = planned.plan
  if (demand.runningW > fed.inverter.continuousW) return tooSmall(input, fed.inverter, demand.runningW)
  return { ok: true, answer: batteryAnswer({ demand, supply, ...fed }, bank) }
}

/** A unit can't give more than its continuous power, so there is no run time to tell. */
function tooSmall({ sku }: RuntimeInput, { continuousW }: FedInverter, runningW: number): RuntimeResult {
  const path = sku === undefined ? ['inverter', 'continuousW'] : ['sku']
  return { ok: false, faults: [{ path, code: 'inverter-too-small', runningW, continuousW }] }
}

function feeding(
  range: PreparedRange,
  { sku, inverter, supply }: RuntimeInput,
): { readonly inverter: FedInverter; readonly cableResistanceOhm: number } | RuntimeFault {
  if (sku !== undefined) {
    const unit = range.inverters.find((prepared) => prepared.unit.sku === sku)
    if (unit === undefined) return { path: ['sku'], code: 'unknown-unit', sku }
    const { design } = circuitAnswer(range, unit, supply)
    return { inverter: fedBy(unit), cableResistanceOhm: design.ok ? design.conductor.resistanceOhm : 0 }
  }
  if (inverter === undefined) return { path: ['inverter'], code: 'inverter-needed' }
  const { continuousW } = inverter
  return {
    cableResistanceOhm: 0,
    inverter: {
      continuousW,
      efficiencyFullFraction: inverter.efficiencyFullFraction ?? ASSUMED_FIGURES.efficiencyFullFraction,
      idleW: inverter.idleW ?? ASSUMED_FIGURES.idleFraction * continuousW,
      cutOffV: inverter.cutOffV ?? typicalCutOffV(supply.nominalV),
    },
  }
}
