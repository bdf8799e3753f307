import { requireInRange } from '../errors.ts'
import { type BankModel, type BatteryBank, bankModel } from './bank.ts'
import { breaks, type RunLimit, type SteadyLoad } from './discharge.ts'
import { type InverterLosses, inverterInputW } from './inverter-input.ts'
import { loadCurrentA, operatingPoint } from './operating-point.ts'
import { capacityAtCurrentAh } from './rate-capacity.ts'
import { lowestThatHolds } from './table-lookup.ts'
import { shareAtHours } from './temperature.ts'

/** A load of a day's plan. */
export interface PlannedLoad {
  readonly id: string
  /** Typical power at the outlet. [W] 0..50,000 */
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
  readonly terminalV: number
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
    const terminalV = operatingPoint(model, soc, stretch.dcPowerW, cableOhm)?.terminalV ?? 0
    done.push({ ...stretch, fromH, hours: run.hours, socFraction: soc, terminalV })
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

function requireDay(question: DayQuestion, cutOffV: number, cableOhm: number): void {
  requireInRange('cutOffV', cutOffV, 0, 100)
  requireInRange('cableResistanceOhm', cableOhm, 0, 10)
  requireInRange('idleHours', question.idleHours ?? 0, 0, HOURS_PER_DAY)
  requireInRange('loads.length', question.loads.length, 0, 100)
  for (const load of question.loads) {
    requireInRange('powerW', load.powerW, 0, 50_000)
    requireInRange('minutes', load.minutes, 0, 1440)
    requireInRange('dutyFraction', load.dutyFraction ?? 1, 0, 1)
  }
}

interface Stretch {
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

function dayStretches(question: DayQuestion): readonly Stretch[] {
  const spans = wrappedSpans(question.loads)
  const bounds = [...new Set([0, ...spans.flatMap(({ from, to }) => [from, to])])].sort((a, b) => a - b)
  const stretches: Stretch[] = []
  for (const [index, from] of bounds.entries()) {
    const to = bounds[index + 1]
    if (to === undefined) break
    const on = spans.filter((span) => span.from <= from && span.to >= to)
    const outputW = on.reduce((sum, { powerW }) => sum + powerW, 0)
    stretches.push({ hours: to - from, loadIds: on.map(({ id }) => id), dcPowerW: inputW(question, outputW) })
  }
  const busyHours = bounds.at(-1) ?? 0
  const idleHours = Math.min(question.idleHours ?? HOURS_PER_DAY, HOURS_PER_DAY - busyHours)
  if (idleHours > 0) stretches.push({ hours: idleHours, loadIds: [], dcPowerW: inputW(question, 0) })
  return stretches
}

/** Lays the loads end to end, heaviest first, and wraps what passes 24 h to the start of the day. */
function wrappedSpans(loads: readonly PlannedLoad[]): readonly Span[] {
  const heavyFirst = [...loads].sort((a, b) => b.powerW - a.powerW || a.id.localeCompare(b.id, 'en'))
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

function inputW({ inverter }: DayQuestion, outputW: number): number {
  if (inverter === undefined) return outputW
  // Beyond ten times its rating no inverter runs; the choice refuses it long before.
  return inverterInputW({ ...inverter, outputW: Math.min(outputW, 10 * inverter.continuousW) })
}

/** Steps of the mid-point rule in one stretch; the error stays below a thousandth of its charge. */
const STEPS_PER_STRETCH = 12

interface StretchRun {
  readonly soc: number
  readonly hours: number
  readonly limitedBy: RunLimit | undefined
}

function runStretch(
  model: BankModel,
  load: SteadyLoad,
  stretch: { readonly soc: number; readonly hours: number },
): StretchRun {
  if (load.powerW === 0) return { ...stretch, limitedBy: undefined }
  const step = stretch.hours / STEPS_PER_STRETCH
  const stops = (soc: number): RunLimit | undefined =>
    soc < model.minSocFraction ? 'state-of-charge' : breaks(model, soc, load)
  let soc = stretch.soc
  const atStart = soc <= model.minSocFraction ? 'state-of-charge' : breaks(model, soc, load)
  if (atStart !== undefined) return { soc, hours: 0, limitedBy: atStart }
  for (let index = 0; index < STEPS_PER_STRETCH; index++) {
    const middle = Math.max(0, soc - (step / 2) * socPerHour(model, load, soc))
    const next = soc - step * socPerHour(model, load, middle)
    const limitedBy = stops(next)
    if (limitedBy !== undefined) {
      const lowest = Math.max(next, 0)
      const end = lowestThatHolds(lowest, soc, (fraction) => stops(fraction) === undefined)
      return {
        soc: end,
        hours: (index + (soc - end) / (soc - next)) * step,
        limitedBy: stops(end - 1e-9) ?? limitedBy,
      }
    }
    soc = next
  }
  return { soc, hours: stretch.hours, limitedBy: undefined }
}

function socPerHour(model: BankModel, load: SteadyLoad, soc: number): number {
  const currentA = loadCurrentA(model, soc, load.powerW, load.cableOhm)
  // A half step into a collapse: the whole step is then found to break, whatever stands here.
  if (!Number.isFinite(currentA)) return 1 / STEPS_PER_STRETCH
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
