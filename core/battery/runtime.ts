import { requireInRange } from '../errors.ts'
import { type AssumedFigure, type BankModel, type BatteryBank, bankModel } from './bank.ts'
import {
  type DischargePoint,
  discharge,
  hoursAtBankTemperature,
  type RunEnd,
  type RunLimit,
  runEnd,
  type SteadyLoad,
} from './discharge.ts'
import { loadCurrentA, operatingPoint } from './operating-point.ts'
import { type RuntimeWarning, runtimeWarnings } from './runtime-warnings.ts'
import { errorBand } from './uncertainty.ts'

/** A question to {@link predictRuntime}. */
export interface RuntimeQuestion {
  readonly bank: BatteryBank
  /** Power at the inverter's input. [W] 0..100,000 */
  readonly dcPowerW: number
  /** Low-voltage cut-off at the inverter's input. [V] 0..100; default: the rated end voltage of the cells */
  readonly cutOffV?: number | undefined
  /** Resistance of the battery cable, both ways. [ohm] 0..10, default 0 */
  readonly cableResistanceOhm?: number | undefined
  /** Number of points of the curve. 2..60, default 60 */
  readonly curvePoints?: number | undefined
}

/** One point of a run-time curve. */
export interface CurvePoint {
  readonly hours: number
  readonly socFraction: number
  readonly terminalV: number
  readonly currentA: number
}

/** How long a bank carries a steady load. */
export interface RuntimePrediction {
  readonly hours: number
  readonly hoursLow: number
  readonly hoursHigh: number
  readonly limitedBy: RunLimit
  /** State of charge at which the run ends. */
  readonly endSocFraction: number
  /** Energy at the inverter's input until the battery ends the run, however long that takes. */
  readonly usableWh: number
  readonly averageA: number
  readonly curve: readonly CurvePoint[]
  readonly warnings: readonly RuntimeWarning[]
  readonly assumed: readonly AssumedFigure[]
}

/** Longest run time that is told. [h] One year of 365 days. */
export const LONGEST_HOURS = 8760

/** Less charge than this is none. */
const LEAST_SOC_SPAN = 1e-9

/** A load below this share of the capacity per hour is none: a year of it takes no charge that counts. [1/h] */
const NEGLIGIBLE_PER_H = 1e-15

/**
 * How long a bank carries a steady load, with its curve, its uncertainty and what ends it.
 *
 * @param question - Bank, power, cut-off, cable
 * @returns Hours with low and high, what ends the run, energy, mean current, the curve (60 points or fewer)
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @remarks A run that can't start has 0 hours. A run of more than a year, a load of 0 W among them, is told as
 * 8760 h with a warning. State of charge counts what the battery can give at this current; self-discharge
 * and recovery at rest are left out.
 * @source battery-model-fit
 */
export function predictRuntime(question: RuntimeQuestion): RuntimePrediction {
  return runtimeOfModel(bankModel(question.bank), question)
}

/**
 * {@link predictRuntime} of a bank whose model is at hand: the same answer, without building it again.
 *
 * @param model - Model of the bank
 * @param question - Power, cut-off, cable
 * @returns The prediction
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @source battery-model-fit
 */
export function runtimeOfModel(model: BankModel, question: Omit<RuntimeQuestion, 'bank'>): RuntimePrediction {
  const { dcPowerW, cutOffV = model.ratedEndV, cableResistanceOhm = 0, curvePoints = 60 } = question
  requireInRange('dcPowerW', dcPowerW, 0, 100_000)
  requireInRange('cutOffV', cutOffV, 0, 100)
  requireInRange('cableResistanceOhm', cableResistanceOhm, 0, 10)
  requireInRange('curvePoints', curvePoints, 2, 60)
  const leastW = NEGLIGIBLE_PER_H * model.bank.capacityAh * model.bank.nominalV
  const load = { powerW: Math.max(dcPowerW, leastW), cutOffV, cableOhm: cableResistanceOhm }
  const end = runEnd(model, load)
  if (model.startSocFraction - end.socFraction < LEAST_SOC_SPAN) return noRun(model, load, end.limitedBy)
  const raw = discharge(model, load, end.socFraction, Math.floor(curvePoints))
  const rawHours = raw.at(-1)?.hours ?? 0
  const hours = hoursAtBankTemperature(model, rawHours)
  const run = { raw, hours, stretch: hours / rawHours }
  return dcPowerW < leastW ? idleRun(model, load, run) : loadedRun(model, load, run, end)
}

function loadedRun(model: BankModel, load: SteadyLoad, run: Run, end: RunEnd): RuntimePrediction {
  const { hours } = run
  const spread = hoursSpread(model, load, run)
  const capped = Math.min(hours, LONGEST_HOURS)
  return {
    hours: capped,
    hoursLow: Math.min(spread.low, capped),
    hoursHigh: Math.max(Math.min(spread.high, LONGEST_HOURS), capped),
    limitedBy: end.limitedBy,
    endSocFraction: end.socFraction,
    usableWh: hours * load.powerW,
    averageA: averageCurrentA(run.raw),
    curve: told(run, load),
    warnings: runtimeWarnings(model, { load, hours, limitedBy: end.limitedBy }),
    assumed: model.assumed,
  }
}

/** No load empties nothing: told as the longest time, with the energy that a slow discharge would give. */
function idleRun(model: BankModel, load: SteadyLoad, run: Run): RuntimePrediction {
  const limitedBy = 'state-of-charge'
  return {
    hours: LONGEST_HOURS,
    hoursLow: LONGEST_HOURS,
    hoursHigh: LONGEST_HOURS,
    limitedBy,
    endSocFraction: model.startSocFraction,
    usableWh: run.hours * load.powerW,
    averageA: 0,
    curve: flatCurve(model),
    warnings: runtimeWarnings(model, { load, hours: Number.POSITIVE_INFINITY, limitedBy }),
    assumed: model.assumed,
  }
}

function noRun(model: BankModel, load: SteadyLoad, limitedBy: RunLimit): RuntimePrediction {
  return {
    hours: 0,
    hoursLow: 0,
    hoursHigh: 0,
    limitedBy,
    endSocFraction: model.startSocFraction,
    usableWh: 0,
    averageA: 0,
    curve: [],
    warnings: runtimeWarnings(model, { load, hours: 0, limitedBy }),
    assumed: model.assumed,
  }
}

/** Time-weighted mean current of a discharge. */
function averageCurrentA(raw: readonly DischargePoint[]): number {
  let charge = 0
  let last: DischargePoint | undefined
  for (const point of raw) {
    if (last) charge += ((last.currentA + point.currentA) / 2) * (point.hours - last.hours)
    last = point
  }
  return last === undefined || last.hours === 0 ? 0 : charge / last.hours
}

function told({ raw, stretch }: Run, load: SteadyLoad): readonly CurvePoint[] {
  const curve: CurvePoint[] = []
  let last: DischargePoint | undefined
  for (const point of raw) {
    const hours = point.hours * stretch
    if (hours > LONGEST_HOURS) {
      if (last) curve.push(asTold(between(last, point, LONGEST_HOURS / stretch), load, stretch))
      break
    }
    curve.push(asTold(point, load, stretch))
    last = point
  }
  return curve
}

function asTold(point: DischargePoint, load: SteadyLoad, stretch: number): CurvePoint {
  const { currentA, socFraction } = point
  const terminalV = load.powerW / currentA + currentA * load.cableOhm
  return { hours: point.hours * stretch, socFraction, terminalV, currentA }
}

function between(from: DischargePoint, to: DischargePoint, hours: number): DischargePoint {
  const share = (hours - from.hours) / (to.hours - from.hours)
  return {
    hours,
    socFraction: from.socFraction + share * (to.socFraction - from.socFraction),
    currentA: from.currentA + share * (to.currentA - from.currentA),
  }
}

function flatCurve(model: BankModel): readonly CurvePoint[] {
  const socFraction = model.startSocFraction
  const terminalV = operatingPoint(model, socFraction, 0, 0)?.terminalV ?? model.bank.nominalV
  return [0, LONGEST_HOURS].map((hours) => ({ hours, socFraction, terminalV, currentA: 0 }))
}

interface Run {
  readonly raw: readonly DischargePoint[]
  readonly hours: number
  readonly stretch: number
}

/** The band of the prediction, and beyond it the spread of the resistance where a voltage ends the run. */
function hoursSpread(model: BankModel, load: SteadyLoad, run: Run): { low: number; high: number } {
  const band = errorBand(model, run.hours)
  const [down, up] = model.resistanceSpread
  const worse = runEnd({ ...model, resistanceOhm: model.resistanceOhm * up }, load).socFraction
  const better = runEnd({ ...model, resistanceOhm: model.resistanceOhm * down }, load).socFraction
  const last = run.raw.at(-1)
  const endSoc = last?.socFraction ?? 0
  const shortened = worse > endSoc ? hoursDownTo(run.raw, worse) * run.stretch : run.hours
  const lastA = last?.currentA ?? loadCurrentA(model, endSoc, load.powerW, load.cableOhm)
  const longer = ((endSoc - better) * model.capacityShare * model.rate.chargeAh) / lastA
  return {
    low: shortened / (1 + band.overFraction),
    high: (run.hours + Math.max(0, longer) * run.stretch) / (1 - band.underFraction),
  }
}

/** Time at which a discharge comes down to a state of charge, on straight lines between its points. */
function hoursDownTo(raw: readonly DischargePoint[], soc: number): number {
  let last: DischargePoint | undefined
  for (const point of raw) {
    if (point.socFraction <= soc) {
      if (last === undefined) return 0
      const share = (last.socFraction - soc) / (last.socFraction - point.socFraction)
      return last.hours + share * (point.hours - last.hours)
    }
    last = point
  }
  return last?.hours ?? 0
}
