import { requireInRange } from '../errors.ts'
import { type AssumedFigure, type BatteryBank, bankModel, openCircuitV } from './bank.ts'
import { type OperatingPoint, operatingPoint, surgePoint } from './operating-point.ts'

/** A question to {@link batteryStress}. */
export interface StressQuestion {
  readonly bank: BatteryBank
  /** While the loads run, at the inverter's input. [W] 0..1e9 */
  readonly dcPowerRunningW: number
  /** While the hardest load starts. [W] 0..1e9 */
  readonly dcPowerStartingW: number
  /** At the inverter's input; default: the rated end voltage of the cells. [V] 0..100 */
  readonly cutOffV?: number | undefined
  /** Both ways. [ohm] 0..10, default 0 */
  readonly cableResistanceOhm?: number | undefined
}

/** What loads ask too much of. `limitAssumed`: the battery states no limit of its own. */
export type StressFault =
  | { readonly code: 'discharge-limit-running'; readonly values: LimitValues }
  | { readonly code: 'discharge-limit-starting'; readonly values: LimitValues }
  | { readonly code: 'cut-off-while-running'; readonly values: CutOffValues }
  | { readonly code: 'cut-off-while-starting'; readonly values: CutOffValues }
  | { readonly code: 'sag'; readonly values: SagValues }

interface LimitValues {
  readonly currentA: number
  readonly limitA: number
  readonly limitAssumed: boolean
}

/** `inverterV` is 0 when the voltage collapses. */
interface CutOffValues {
  readonly inverterV: number
  readonly cutOffV: number
}

interface SagValues {
  readonly sagFraction: number
  readonly sagLimitFraction: number
}

/** What a bank goes through at a load and at its start-up. A collapsed voltage is told as 0 V and 0 A. */
export interface BatteryStress {
  readonly runningA: number
  readonly startingA: number
  readonly runningTerminalV: number
  readonly startingTerminalV: number
  /** At the inverter's input, behind the cable. [V] */
  readonly startingInverterV: number
  /** Fall of the voltage at the inverter's input at start-up, over the resting voltage. 0..1 */
  readonly sagFraction: number
  readonly faults: readonly StressFault[]
  readonly assumed: readonly AssumedFigure[]
}

/** From this sag on, lamps dim and electronics may drop out. Common practice, no published source. */
export const SAG_CARE_FRACTION = 0.12

/**
 * Currents and voltages of a bank while loads run and while the hardest one starts, at its present charge.
 *
 * @param question - Bank, powers, cut-off, cable
 * @returns Currents, voltages, sag, and faults with their values
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @source elementary-circuits
 */
export function batteryStress(question: StressQuestion): BatteryStress {
  const { bank, dcPowerRunningW, dcPowerStartingW, cableResistanceOhm: cableOhm = 0 } = question
  requireInRange('dcPowerRunningW', dcPowerRunningW, 0, 1e9)
  requireInRange('dcPowerStartingW', dcPowerStartingW, 0, 1e9)
  requireInRange('cableResistanceOhm', cableOhm, 0, 10)
  const model = bankModel(bank)
  const cutOffV = question.cutOffV ?? model.ratedEndV
  requireInRange('cutOffV', cutOffV, 0, 100)
  const surge = { runningW: dcPowerRunningW, startingW: dcPowerStartingW, cableOhm }
  const soc = model.startSocFraction
  const running = operatingPoint(model, soc, dcPowerRunningW, cableOhm)
  const starting = surgePoint(model, soc, surge)
  const restingV = openCircuitV({ ...bank, socFraction: soc })
  const sagFraction = Math.max(0, 1 - (starting?.inverterV ?? 0) / restingV)
  const limit = { limitA: model.limitA, limitAssumed: bank.maxDischargeA === undefined }
  return {
    runningA: running?.currentA ?? 0,
    startingA: starting?.currentA ?? 0,
    runningTerminalV: running?.terminalV ?? 0,
    startingTerminalV: starting?.terminalV ?? 0,
    startingInverterV: starting?.inverterV ?? 0,
    sagFraction,
    faults: [
      ...limitFaults(running, starting, limit),
      ...cutOffFaults(running, starting, { cutOffV, lowestV: model.lowestV }),
      ...(sagFraction > SAG_CARE_FRACTION
        ? [{ code: 'sag', values: { sagFraction, sagLimitFraction: SAG_CARE_FRACTION } } as const]
        : []),
    ],
    assumed: model.assumed,
  }
}

type Point = OperatingPoint | undefined

function limitFaults(
  running: Point,
  starting: Point,
  limit: { readonly limitA: number; readonly limitAssumed: boolean },
): readonly StressFault[] {
  const faults: StressFault[] = []
  if (running && running.currentA > limit.limitA) {
    faults.push({ code: 'discharge-limit-running', values: { currentA: running.currentA, ...limit } })
  }
  if (starting && starting.currentA > limit.limitA) {
    faults.push({ code: 'discharge-limit-starting', values: { currentA: starting.currentA, ...limit } })
  }
  return faults
}

function cutOffFaults(
  running: Point,
  starting: Point,
  bounds: { readonly cutOffV: number; readonly lowestV: number },
): readonly StressFault[] {
  const faults: StressFault[] = []
  const { cutOffV } = bounds
  const opens = (point: Point) =>
    point === undefined || point.inverterV < cutOffV || point.terminalV < bounds.lowestV
  if (opens(running)) {
    faults.push({ code: 'cut-off-while-running', values: { inverterV: running?.inverterV ?? 0, cutOffV } })
  }
  if (opens(starting)) {
    faults.push({ code: 'cut-off-while-starting', values: { inverterV: starting?.inverterV ?? 0, cutOffV } })
  }
  return faults
}
