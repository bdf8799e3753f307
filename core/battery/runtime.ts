import { requireInRange } from '../errors.ts'
import { type AssumedFigure, type BankModel, type BatteryBank, bankModel } from './bank.ts'
import {
  type Discharge,
  type DischargePoint,
  discharge,
  dischargeCurve,
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
  /** Power at the inverter's input. [W] 0..1e9 */
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
  const { curvePoints = 60 } = question
  requireInRange('curvePoints', curvePoints, 2, 60)
  const run = runOf(model, question)
  if (run.kind === 'none') return noRun(model, run)
  return run.kind === 'idle' ? idleRun(model, run) : loadedRun(model, run, Math.floor(curvePoints))
}

/** Hours of a run and what is told beside them. */
export type RuntimeOutlook = Pick<RuntimePrediction, 'hours' | 'warnings'>

/**
 * Hours and warnings of {@link runtimeOfModel}, for a third of its work: without low and high, and without a curve.
 *
 * @param model - Model of the bank
 * @param question - Power, cut-off, cable
 * @returns The same hours and warnings
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @source battery-model-fit
 */
export function runtimeOutlook(
  model: BankModel,
  question: Omit<RuntimeQuestion, 'bank' | 'curvePoints'>,
): RuntimeOutlook {
  const run = runOf(model, question)
  const hours = run.kind === 'idle' ? LONGEST_HOURS : Math.min(run.hours, LONGEST_HOURS)
  return { hours, warnings: warningsOf(model, run) }
}

/** A run as far as its end: that of a load, of none to speak of, or one that can't start. */
interface Run {
  readonly kind: 'loaded' | 'idle' | 'none'
  readonly load: SteadyLoad
  readonly end: RunEnd
  readonly raw: Discharge
  /** At the bank's temperature. */
  readonly hours: number
}

const NO_DISCHARGE: Discharge = { hours: 0, averageA: 0 }

function runOf(model: BankModel, question: Omit<RuntimeQuestion, 'bank' | 'curvePoints'>): Run {
  const { dcPowerW, cutOffV = model.ratedEndV, cableResistanceOhm = 0 } = question
  requireInRange('dcPowerW', dcPowerW, 0, 1e9)
  requireInRange('cutOffV', cutOffV, 0, 100)
  requireInRange('cableResistanceOhm', cableResistanceOhm, 0, 10)
  const leastW = NEGLIGIBLE_PER_H * model.bank.capacityAh * model.bank.nominalV
  const load = { powerW: Math.max(dcPowerW, leastW), cutOffV, cableOhm: cableResistanceOhm }
  const end = runEnd(model, load)
  if (model.startSocFraction - end.socFraction < LEAST_SOC_SPAN) {
    return { kind: 'none', load, end, raw: NO_DISCHARGE, hours: 0 }
  }
  const raw = discharge(model, load, end.socFraction)
  const kind = dcPowerW < leastW ? 'idle' : 'loaded'
  return { kind, load, end, raw, hours: hoursAtBankTemperature(model, raw.hours) }
}

function warningsOf(model: BankModel, { kind, load, end, hours }: Run): readonly RuntimeWarning[] {
  return kind === 'idle'
    ? runtimeWarnings(model, { load, hours: Number.POSITIVE_INFINITY, limitedBy: 'state-of-charge' })
    : runtimeWarnings(model, { load, hours, limitedBy: end.limitedBy })
}

function loadedRun(model: BankModel, run: Run, curvePoints: number): RuntimePrediction {
  const { hours, load, end } = run
  const spread = hoursSpread(model, run)
  const capped = Math.min(hours, LONGEST_HOURS)
  return {
    hours: capped,
    hoursLow: Math.min(spread.low, capped),
    hoursHigh: Math.max(Math.min(spread.high, LONGEST_HOURS), capped),
    limitedBy: end.limitedBy,
    endSocFraction: end.socFraction,
    usableWh: hours * load.powerW,
    averageA: run.raw.averageA,
    curve: told(run, dischargeCurve(model, load, end.socFraction, curvePoints)),
    warnings: warningsOf(model, run),
    assumed: model.assumed,
  }
}

/** No load empties nothing: told as the longest time, with the energy that a slow discharge would give. */
function idleRun(model: BankModel, run: Run): RuntimePrediction {
  const { load, hours } = run
  return {
    hours: LONGEST_HOURS,
    hoursLow: LONGEST_HOURS,
    hoursHigh: LONGEST_HOURS,
    limitedBy: 'state-of-charge',
    endSocFraction: model.startSocFraction,
    usableWh: hours * load.powerW,
    averageA: 0,
    curve: flatCurve(model),
    warnings: warningsOf(model, run),
    assumed: model.assumed,
  }
}

function noRun(model: BankModel, run: Run): RuntimePrediction {
  return {
    hours: 0,
    hoursLow: 0,
    hoursHigh: 0,
    limitedBy: run.end.limitedBy,
    endSocFraction: model.startSocFraction,
    usableWh: 0,
    averageA: 0,
    curve: [],
    warnings: warningsOf(model, run),
    assumed: model.assumed,
  }
}

function told({ load, hours }: Run, points: readonly DischargePoint[]): readonly CurvePoint[] {
  const curve: CurvePoint[] = []
  let last: DischargePoint | undefined
  for (const point of points) {
    if (point.timeShare * hours > LONGEST_HOURS) {
      if (last) curve.push(asTold(between(last, point, LONGEST_HOURS / hours), load, hours))
      break
    }
    curve.push(asTold(point, load, hours))
    last = point
  }
  return curve
}

function asTold(point: DischargePoint, load: SteadyLoad, hours: number): CurvePoint {
  const { currentA, socFraction, timeShare } = point
  const terminalV = load.powerW / currentA + currentA * load.cableOhm
  return { hours: timeShare * hours, socFraction, terminalV, currentA }
}

function between(from: DischargePoint, to: DischargePoint, timeShare: number): DischargePoint {
  const share = (timeShare - from.timeShare) / (to.timeShare - from.timeShare)
  return {
    timeShare,
    socFraction: from.socFraction + share * (to.socFraction - from.socFraction),
    currentA: from.currentA + share * (to.currentA - from.currentA),
  }
}

function flatCurve(model: BankModel): readonly CurvePoint[] {
  const socFraction = model.startSocFraction
  const terminalV = operatingPoint(model, socFraction, 0, 0)?.terminalV ?? model.bank.nominalV
  return [0, LONGEST_HOURS].map((hours) => ({ hours, socFraction, terminalV, currentA: 0 }))
}

/** The band of the prediction, and beyond it the spread of the resistance where a voltage ends the run. */
function hoursSpread(model: BankModel, { load, raw, end, hours }: Run): { low: number; high: number } {
  const band = errorBand(model, hours)
  const [down, up] = model.resistanceSpread
  const endSoc = end.socFraction
  const stretch = hours / raw.hours
  const worse = runEnd({ ...model, resistanceOhm: model.resistanceOhm * up }, load).socFraction
  const shortened = worse > endSoc ? discharge(model, load, worse).hours * stretch : hours
  let longer = 0
  if (end.limitedBy !== 'state-of-charge') {
    const better = runEnd({ ...model, resistanceOhm: model.resistanceOhm * down }, load).socFraction
    const lastA = loadCurrentA(model, endSoc, load.powerW, load.cableOhm)
    longer = ((endSoc - better) * model.capacityShare * model.rate.chargeAh) / lastA
  }
  return {
    low: shortened / (1 + band.overFraction),
    high: (hours + Math.max(0, longer) * stretch) / (1 - band.underFraction),
  }
}
