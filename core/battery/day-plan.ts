import { requireInRange } from '../errors.ts'
import { type BankModel, type BatteryBank, bankModel } from './bank.ts'
import { breaks, type RunLimit, runEnd, type SteadyLoad } from './discharge.ts'
import { type InverterLosses, inverterInputW } from './inverter-input.ts'
import { loadCurrentA } from './operating-point.ts'
import { capacityAtCurrentAh } from './rate-capacity.ts'
import { shareAtHours } from './temperature.ts'

/** A load of a day's plan. */
export interface PlannedLoad {
  readonly id: string
  /** Typical power at the outlet. [W] 0..1e9 */
  readonly powerW: number
  /** Time that it is switched on in a day. [min] 0..1440 */
  readonly minutes: number
  /** Share of that time in which it draws its power: a refrigerator's compressor. 0..1, default 1 */
  readonly dutyFraction?: number | undefined
}

/** A question to {@link planDay}. */
export interface DayQuestion {
  readonly bank: BatteryBank
  /** Losses of the inverter; left out when the loads hang on the battery itself. */
  readonly inverter?: InverterLosses | undefined
  /** At most 100. */
  readonly loads: readonly PlannedLoad[]
  /** Time that the inverter is on with nothing to run. [h] 0..24, default: the rest of the day */
  readonly idleHours?: number | undefined
  /** Low-voltage cut-off at the inverter's input. [V] 0..100; default: the rated end voltage of the cells */
  readonly cutOffV?: number | undefined
  /** Both ways. [ohm] 0..10, default 0 */
  readonly cableResistanceOhm?: number | undefined
}

/** A stretch of the day with the same loads on. */
export interface DayStretch {
  /** Since the start of the day. [h] */
  readonly fromH: number
  readonly hours: number
  /** Empty while the inverter idles. */
  readonly loadIds: readonly string[]
  readonly dcPowerW: number
  /** At its end. */
  readonly socFraction: number
}

/** What a day's plan does to a bank. */
export interface DayPlan {
  /** The bank carries the whole day. */
  readonly ok: boolean
  /** State of charge when the day, or the bank, is at its end. */
  readonly socLeftFraction: number
  /** Energy taken at the inverter's input. [Wh] */
  readonly energyWh: number
  /** Energy that the whole day asks for. [Wh] */
  readonly wantedWh: number
  readonly stretches: readonly DayStretch[]
  /** Where it stopped, and why; undefined when it did not. */
  readonly stopped:
    | { readonly atH: number; readonly limitedBy: RunLimit; readonly loadIds: readonly string[] }
    | undefined
  /** Days like this one from the starting charge, 0..365; below 1 when the first is not carried. */
  readonly daysOfAutonomy: number
}

const HOURS_PER_DAY = 24

/**
 * A day's plan run down on a bank: the heaviest load first, one after another, idle draw after them.
 *
 * @param question - Bank, inverter, loads, idle time
 * @returns What is left at the end, stretch by stretch; where the bank gives up when it does
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @remarks A load with a duty fraction is taken at its full power for its share of the time. Loads that don't
 * fit one after another into 24 h wrap around and run beside the first ones (McNaughton's rule), so none
 * lasts more than a day and the heavy hours are taken as the harder ones.
 * @source battery-model-fit
 */
export function planDay(question: DayQuestion): DayPlan {
  const model = bankModel(question.bank)
  const { cutOffV = model.ratedEndV, cableResistanceOhm: cableOhm = 0 } = question
  requireDay(question, cutOffV, cableOhm)
  const stretches = dayStretches(question)
  const wantedWh = stretches.reduce((sum, stretch) => sum + stretch.hours * stretch.dcPowerW, 0)
  const done: DayStretch[] = []
  let soc = model.startSocFraction
  let fromH = 0
  let energyWh = 0
  let stopped: DayPlan['stopped']
  for (const stretch of stretches) {
    const load = { powerW: stretch.dcPowerW, cutOffV, cableOhm }
    const run = runStretch(model, load, { soc, hours: stretch.hours })
    soc = run.soc
    energyWh += run.hours * stretch.dcPowerW
    done.push({ ...stretch, fromH, hours: run.hours, socFraction: soc })
    fromH += run.hours
    if (run.limitedBy !== undefined) {
      stopped = { atH: fromH, limitedBy: run.limitedBy, loadIds: stretch.loadIds }
      break
    }
  }
  return {
    ok: stopped === undefined,
    socLeftFraction: soc,
    energyWh,
    wantedWh,
    stretches: done,
    stopped,
    daysOfAutonomy: daysOfAutonomy(model, {
      socLeft: soc,
      carriedFraction: energyWh / wantedWh,
      ok: stopped === undefined,
    }),
  }
}

/** What of a day one answer is held against another by. */
export interface DayOutlook {
  readonly ok: boolean
  /** The lowest allowed where the day is not carried. */
  readonly socLeftFraction: number
}

/** A day that would take so much more than there is, at the currents of a full battery, needs no running down. */
const SURELY_MORE = 1.01

/**
 * Whether a bank carries a day: as {@link planDay} has it, without its stretches.
 *
 * @param model - Model of the bank
 * @param stretches - The day
 * @param wire - Low-voltage cut-off [V] and resistance of the cable, both ways [ohm]
 * @returns The verdict, and what is left
 * @source battery-model-fit
 */
export function dayOutlook(
  model: BankModel,
  stretches: readonly Stretch[],
  wire: { readonly cutOffV: number; readonly cableOhm: number },
): DayOutlook {
  const { startSocFraction, minSocFraction } = model
  const stopped = { ok: false, socLeftFraction: minSocFraction }
  const most = SURELY_MORE * (startSocFraction - minSocFraction)
  let least = 0
  for (const { hours, dcPowerW } of stretches) {
    if (dcPowerW > 0) least += hours * socPerHour(model, { ...wire, powerW: dcPowerW }, startSocFraction)
    // Not a number where a load does not even run on a full battery.
    if (!(least <= most)) return stopped
  }
  let soc = startSocFraction
  for (const { hours, dcPowerW } of stretches) {
    const run = runStretch(model, { ...wire, powerW: dcPowerW }, { soc, hours })
    if (run.limitedBy !== undefined) return stopped
    soc = run.soc
  }
  return { ok: true, socLeftFraction: soc }
}

function requireDay(question: DayQuestion, cutOffV: number, cableOhm: number): void {
  requireInRange('cutOffV', cutOffV, 0, 100)
  requireInRange('cableResistanceOhm', cableOhm, 0, 10)
  requireInRange('idleHours', question.idleHours ?? 0, 0, HOURS_PER_DAY)
  requireInRange('loads.length', question.loads.length, 0, 100)
  for (const load of question.loads) {
    requireInRange('powerW', load.powerW, 0, 1e9)
    requireInRange('minutes', load.minutes, 0, 1440)
    requireInRange('dutyFraction', load.dutyFraction ?? 1, 0, 1)
  }
}

/** A stretch of the day with the same loads on, before it is run down. */
export interface Stretch {
  /** [h] */
  readonly hours: number
  readonly loadIds: readonly string[]
  readonly dcPowerW: number
}

interface Span {
  readonly id: string
  readonly powerW: number
  readonly from: number
  readonly to: number
}

/**
 * The stretches of a day, heaviest first, idle draw last.
 *
 * @param question - Inverter, loads, idle time
 * @returns Stretches whose hours come to a day at most
 * @throws CoreError `out_of_range` for losses outside their bounds
 * @source cec-inverter-tests
 */
export function dayStretches(
  question: Pick<DayQuestion, 'inverter' | 'loads' | 'idleHours'>,
): readonly Stretch[] {
  const spans = wrappedSpans(question.loads)
  const wraps = spans.some(({ from }, index) => index > 0 && from === 0)
  const stretches = wraps
    ? sharedStretches(question, spans)
    : spans.map((span) => stretchOf(question, span, [span]))
  const busyHours = spans.reduce((latest, { to }) => Math.max(latest, to), 0)
  const idleHours = Math.min(question.idleHours ?? HOURS_PER_DAY, HOURS_PER_DAY - busyHours)
  if (idleHours > 0) stretches.push({ hours: idleHours, loadIds: [], dcPowerW: inputW(question, 0) })
  return stretches
}

function stretchOf(
  question: Pick<DayQuestion, 'inverter'>,
  { from, to }: Pick<Span, 'from' | 'to'>,
  on: readonly Span[],
): Stretch {
  const outputW = on.reduce((sum, { powerW }) => sum + powerW, 0)
  return { hours: to - from, loadIds: on.map(({ id }) => id), dcPowerW: inputW(question, outputW) }
}

/** Spans of which some run beside others, cut where one begins or ends. */
function sharedStretches(question: Pick<DayQuestion, 'inverter'>, spans: readonly Span[]): Stretch[] {
  const bounds = [...new Set([0, ...spans.flatMap(({ from, to }) => [from, to])])].sort((a, b) => a - b)
  const stretches: Stretch[] = []
  for (const [index, from] of bounds.entries()) {
    const to = bounds[index + 1]
    if (to === undefined) break
    const on = spans.filter((span) => span.from <= from && span.to >= to)
    stretches.push(stretchOf(question, { from, to }, on))
  }
  return stretches
}

/** Lays the loads end to end, heaviest first, and wraps what passes 24 h to the start of the day. */
function wrappedSpans(loads: readonly PlannedLoad[]): readonly Span[] {
  const heavyFirst = [...loads].sort((a, b) => b.powerW - a.powerW || (a.id < b.id ? -1 : 1))
  const spans: Span[] = []
  let at = 0
  for (const { id, powerW, minutes, dutyFraction = 1 } of heavyFirst) {
    const hours = (minutes / 60) * dutyFraction
    if (hours === 0) continue
    const end = at + hours
    spans.push({ id, powerW, from: at, to: Math.min(end, HOURS_PER_DAY) })
    if (end > HOURS_PER_DAY) spans.push({ id, powerW, from: 0, to: end - HOURS_PER_DAY })
    at = end >= HOURS_PER_DAY ? end - HOURS_PER_DAY : end
  }
  return spans
}

function inputW({ inverter }: Pick<DayQuestion, 'inverter'>, outputW: number): number {
  if (inverter === undefined) return outputW
  // Beyond ten times its rating no inverter runs; the choice refuses it long before.
  const { continuousW, efficiencyFullFraction, idleW } = inverter
  const givenW = Math.min(outputW, 10 * continuousW)
  return inverterInputW({ continuousW, efficiencyFullFraction, idleW, outputW: givenW })
}

/** Steps are no longer than this share of the charge there is, and no shorter than this: finer down the knee. */
const STEP_SHARE = 0.25
const LEAST_STEP_SOC = 0.02

interface StretchRun {
  readonly soc: number
  readonly hours: number
  readonly limitedBy: RunLimit | undefined
}

/** The charge steps down by the rule of Runge and Kutta, small steps by that of the middle; the error stays below a thousandth of the day's charge. */
function runStretch(
  model: BankModel,
  load: SteadyLoad,
  stretch: { readonly soc: number; readonly hours: number },
): StretchRun {
  if (load.powerW === 0) return { ...stretch, limitedBy: undefined }
  let { soc } = stretch
  const atStart = soc <= model.minSocFraction ? 'state-of-charge' : breaks(model, soc, load)
  if (atStart !== undefined) return { soc, hours: 0, limitedBy: atStart }
  let leftH = stretch.hours
  while (leftH > 0) {
    const perHour = socPerHour(model, load, soc)
    const stepH = Math.min(leftH, Math.max(LEAST_STEP_SOC, STEP_SHARE * soc) / perHour)
    const small = stepH * perHour <= LEAST_STEP_SOC
    const next = small
      ? soc - stepH * socPerHour(model, load, soc - (stepH / 2) * perHour)
      : steppedSoc(model, load, { soc, perHour, stepH })
    if (next >= model.minSocFraction && breaks(model, next, load) === undefined) {
      soc = next
    } else {
      const end = runEnd(model, load, soc)
      const hoursToEnd = hoursBetween(model, load, soc, end.socFraction)
      if (hoursToEnd <= leftH) {
        return { soc: end.socFraction, hours: stretch.hours - leftH + hoursToEnd, limitedBy: end.limitedBy }
      }
      // A step that reaches past the end only on its way.
      soc -= ((soc - end.socFraction) * stepH) / hoursToEnd
    }
    leftH -= stepH
  }
  return { soc, hours: stretch.hours, limitedBy: undefined }
}

/** One step of the fourth order; not a number where it reaches where the load does not run. */
function steppedSoc(
  model: BankModel,
  load: SteadyLoad,
  { soc, perHour, stepH }: { readonly soc: number; readonly perHour: number; readonly stepH: number },
): number {
  const second = socPerHour(model, load, soc - (stepH / 2) * perHour)
  const third = socPerHour(model, load, soc - (stepH / 2) * second)
  const fourth = socPerHour(model, load, soc - stepH * third)
  return soc - (stepH / 6) * (perHour + 2 * second + 2 * third + fourth)
}

/** Simpson's rule over at most one step. */
function hoursBetween(model: BankModel, load: SteadyLoad, from: number, to: number): number {
  const hoursPerSoc = (soc: number) => 1 / socPerHour(model, load, soc)
  return ((from - to) * (hoursPerSoc(from) + 4 * hoursPerSoc((from + to) / 2) + hoursPerSoc(to))) / 6
}

function socPerHour(model: BankModel, load: SteadyLoad, soc: number): number {
  if (!(soc >= 0)) return Number.NaN
  const currentA = loadCurrentA(model, soc, load.powerW, load.cableOhm)
  if (!Number.isFinite(currentA)) return Number.NaN
  const capacityAh = capacityAtCurrentAh(model.rate, currentA) * model.capacityShare
  const share = model.timeShares === undefined ? 1 : shareAtHours(model.timeShares, capacityAh / currentA)
  return currentA / (capacityAh * share)
}

function daysOfAutonomy(
  model: BankModel,
  day: { readonly socLeft: number; readonly carriedFraction: number; readonly ok: boolean },
): number {
  if (!day.ok) return Number.isFinite(day.carriedFraction) ? Math.min(1, day.carriedFraction) : 0
  const used = model.startSocFraction - day.socLeft
  const usable = Math.max(0, model.startSocFraction - model.minSocFraction)
  return used <= usable / 365 ? 365 : usable / used
}
