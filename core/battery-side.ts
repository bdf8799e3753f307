import { type Finding, finding } from './advice/findings.ts'
import type { BatteryBank } from './battery/bank.ts'
import { type BankSize, bankFor } from './battery/bank-size.ts'
import { type DayPlan, planDay } from './battery/day-plan.ts'
import { inverterInputW } from './battery/inverter-input.ts'
import { type Recharge, type RechargeWarning, rechargeFor } from './battery/recharge.ts'
import { predictRuntime, type RuntimePrediction } from './battery/runtime.ts'
import type { RuntimeWarning } from './battery/runtime-warnings.ts'
import { batteryStress, type StressFault } from './battery/stress.ts'
import { judgeUse } from './battery/use-verdict.ts'
import type { Supply } from './inverters/need.ts'
import type { Demand } from './loads/demand.ts'
import type { PreparedInverter } from './range/prepare-range.ts'
import type { BatteryChemistry, SupplyVoltage } from './range/vocabulary.ts'

/** An inverter as its battery sees it. */
export interface FedInverter {
  /** [W] */
  readonly continuousW: number
  readonly efficiencyFullFraction: number
  /** [W] */
  readonly idleW: number
  /** [V] */
  readonly cutOffV: number
}

/** What the battery side of an answer is worked out from. */
export interface BatteryQuestion {
  readonly demand: Demand
  readonly supply: Supply
  readonly inverter: FedInverter
  /** Both ways, at full power. [ohm] */
  readonly cableResistanceOhm: number
}

/** How long a battery carries a steady power, and whether it bears it. */
export interface SteadyAnswer {
  readonly runtime: RuntimePrediction
  /** Severity `fail` here is about the battery: a larger unit would not help. */
  readonly findings: readonly Finding[]
}

/** The same for a plan, with its day and how the battery is filled again. */
export interface BatteryAnswer extends SteadyAnswer {
  readonly day: DayPlan
  readonly recharge: Recharge
}

/** Capacity that a plan takes, whatever battery there is. */
export interface NeededBank {
  readonly chemistry: BatteryChemistry
  readonly nominalV: SupplyVoltage
  readonly days: number
  /** Energy at the battery in a day. [Wh] */
  readonly energyWhPerDay: number
  readonly size: BankSize
}

/** Taken for a battery that nobody has named yet: the most forgiving of the common ones. */
const UNNAMED_CHEMISTRY: BatteryChemistry = 'agm'

/** Loads wanted for at least this long a day count as steady when a bank is sized by its current. [min] */
const STEADY_MINUTES = 30

/** Hours of full sun and charger that a recharge is told for: a fair summer day, a small alternator charger. */
export const RECHARGE_WITH = { sunHours: 4, chargerA: 30 } as const

/**
 * How long the buyer's battery lasts with a plan and a unit, and whether it bears it.
 *
 * Running time is told for everything that may run together at its typical power; the day runs each load
 * its minutes, heavy ones first, with the unit switched on as long as any load is.
 *
 * @param question - Demand, supply, unit and cable
 * @param bank - The battery
 * @returns Run time, day, recharge and findings
 * @source battery-model-fit
 */
export function batteryAnswer(question: BatteryQuestion, bank: BatteryBank): BatteryAnswer {
  const { demand, inverter, cableResistanceOhm } = question
  const wire = { cutOffV: inverter.cutOffV, cableResistanceOhm }
  const steady = steadyAnswer({
    bank,
    dcPowerW: dcPower(inverter, demand.typicalRunningW),
    dcPowerRunningW: dcPower(inverter, demand.runningW),
    dcPowerStartingW: dcPower(inverter, demand.startingW),
    ...wire,
  })
  const hoursOn = hoursSwitchedOn(demand)
  const day = planDay({
    bank,
    inverter: lossesOf(inverter),
    loads: plannedLoads(demand),
    idleHours: Math.max(0, hoursOn - busyHours(demand)),
    ...wire,
  })
  const recharge = rechargeFor({ bank, energyWh: day.energyWh, ...RECHARGE_WITH })
  return {
    runtime: steady.runtime,
    day,
    recharge,
    findings: [
      ...steady.findings,
      ...recharge.warnings.flatMap(rechargeFinding),
      ...dayFindings(question, bank, day),
      ...useFindings(question, bank),
      finding('inverter-off-between', 'note', { hoursOn }),
    ],
  }
}

/**
 * How long a battery carries a steady power at the inverter's input, and whether it bears it.
 *
 * @param question - Bank, power to last with, largest running and starting power, cut-off, cable
 * @returns Run time and findings
 * @source battery-model-fit
 */
export function steadyAnswer(question: {
  readonly bank: BatteryBank
  readonly dcPowerW: number
  readonly dcPowerRunningW: number
  readonly dcPowerStartingW: number
  readonly cutOffV?: number | undefined
  readonly cableResistanceOhm?: number | undefined
}): SteadyAnswer {
  const runtime = predictRuntime(question)
  const stress = batteryStress(question)
  return {
    runtime,
    findings: [
      ...stress.faults.map(stressFinding),
      ...runtime.warnings.flatMap(runtimeFinding),
      ...runtime.assumed
        .filter(({ field }) => field !== 'cellsInSeries')
        .map(({ field, value }) => finding('battery-figure-assumed', 'note', { field, value })),
    ],
  }
}

/**
 * An inverter of a range as its battery sees it.
 *
 * @param inverter - The unit, its left-out figures filled in
 * @returns Power, losses and cut-off
 */
export function fedBy({ unit, figures }: PreparedInverter): FedInverter {
  return { ...figures, continuousW: unit.continuousW }
}

/**
 * Power that a unit takes from its battery.
 *
 * @param inverter - The unit
 * @param outputW - Power on the mains side; more than ten times its size is taken as that. [W] 0 or more
 * @returns Power at its input. [W]
 * @source cec-inverter-tests
 */
export function dcPower(inverter: FedInverter, outputW: number): number {
  return inverterInputW({ ...lossesOf(inverter), outputW: Math.min(outputW, 10 * inverter.continuousW) })
}

/**
 * The bank that a plan takes for its days without recharge.
 *
 * @param question - Demand, supply, unit and cable
 * @returns Capacity for the buyer's chemistry, or for the one taken where none is named
 * @source ieee-1013
 */
export function neededBank({
  demand,
  supply,
  inverter,
}: Omit<BatteryQuestion, 'cableResistanceOhm'>): NeededBank {
  const chemistry = supply.battery?.chemistry ?? UNNAMED_CHEMISTRY
  const days = supply.autonomyDays ?? 1
  const energyWhPerDay = dayEnergyWh(demand, inverter)
  const steadyW = demand.loads
    .filter((load) => load.minutesPerDay * load.dutyFraction >= STEADY_MINUTES)
    .reduce((sum, load) => sum + load.quantity * load.typicalW, 0)
  const size = bankFor({
    energyWhPerDay,
    days,
    chemistry,
    nominalV: supply.nominalV,
    minSocFraction: supply.battery?.minSocFraction,
    temperatureC: supply.battery?.temperatureC,
    endOfLifeFraction: supply.battery?.healthFraction,
    peakDcPowerW: steadyW === 0 ? 0 : dcPower(inverter, Math.min(steadyW, demand.typicalRunningW)),
  })
  return { chemistry, nominalV: supply.nominalV, days, energyWhPerDay, size }
}

/** Energy at the battery of a day's plan: each load through the unit, idle draw while it waits. */
function dayEnergyWh(demand: Demand, inverter: FedInverter): number {
  const idleW = dcPower(inverter, 0)
  let energyWh = idleW * Math.max(0, hoursSwitchedOn(demand) - busyHours(demand))
  for (const load of demand.loads) {
    const hours = (load.minutesPerDay * load.dutyFraction) / 60
    energyWh += hours * dcPower(inverter, load.quantity * load.typicalW)
  }
  return energyWh
}

function lossesOf({ continuousW, efficiencyFullFraction, idleW }: FedInverter) {
  // A unit can't idle on more than the model allows; a range that says so is held to it.
  return { continuousW, efficiencyFullFraction, idleW: Math.min(idleW, continuousW / 2) }
}

function plannedLoads(demand: Demand) {
  return demand.loads.map((load) => ({
    id: load.id,
    powerW: load.quantity * load.typicalW,
    minutes: load.minutesPerDay,
    dutyFraction: load.dutyFraction,
  }))
}

/** The unit is on as long as the load that is on for longest. */
function hoursSwitchedOn(demand: Demand): number {
  return Math.min(24, Math.max(...demand.loads.map((load) => load.minutesPerDay)) / 60)
}

function busyHours(demand: Demand): number {
  return demand.loads.reduce((sum, load) => sum + (load.minutesPerDay * load.dutyFraction) / 60, 0)
}

function dayFindings(question: BatteryQuestion, bank: BatteryBank, day: DayPlan): readonly Finding[] {
  if (day.ok) return []
  const { size } = neededBank(question)
  // What the energy alone calls for can be less than a tired or cold bank that just failed: never name less.
  const neededCapacityAh = Math.max(
    size.capacityAh,
    (bank.capacityAh * day.wantedWh) / Math.max(day.energyWh, 1),
  )
  return [
    finding('day-not-carried', 'care', {
      neededCapacityAh,
      capacityAh: bank.capacityAh,
      atH: day.stopped?.atH ?? 0,
    }),
  ]
}

/** A verdict on the heaviest load: fine for its minutes, or too long for this battery. */
function useFindings(question: BatteryQuestion, bank: BatteryBank): readonly Finding[] {
  const { demand, inverter, cableResistanceOhm } = question
  const [first, ...rest] = demand.loads
  if (first === undefined) return []
  const drawn = (load: typeof first) => load.quantity * load.typicalW
  const heaviest = rest.reduce((most, load) => (drawn(load) > drawn(most) ? load : most), first)
  const minutes = heaviest.minutesPerDay * heaviest.dutyFraction
  const dcPowerW = dcPower(inverter, drawn(heaviest))
  const asked = { bank, dcPowerW, cutOffV: inverter.cutOffV, cableResistanceOhm }
  const use = judgeUse(asked, minutes / 60)
  const continuousMinutes = use.continuousHoursLow * 60
  const ids = [heaviest.id]
  if (use.verdict === 'occasional') {
    return [finding('occasional-use', 'note', { minutes, continuousMinutes }, ids)]
  }
  if (use.verdict !== 'too-long') return []
  const { neededCapacityAh } = use
  const values =
    neededCapacityAh === undefined
      ? { minutes, continuousMinutes }
      : { minutes, continuousMinutes, neededCapacityAh }
  return [finding('runs-too-long', 'care', values, ids)]
}

function stressFinding(fault: StressFault): Finding {
  switch (fault.code) {
    case 'discharge-limit-running':
    case 'discharge-limit-starting':
      return finding(fault.code, 'fail', fault.values)
    case 'cut-off-while-running':
    case 'cut-off-while-starting':
      return finding(fault.code, 'fail', fault.values)
    case 'sag':
      return finding('voltage-sag', 'care', fault.values)
  }
}

/** Warnings that a stress finding tells already are left to it. */
function runtimeFinding(warning: RuntimeWarning): readonly Finding[] {
  switch (warning) {
    case 'voltage-collapse':
    case 'cut-off-at-once':
    case 'discharge-limit-exceeded':
      return []
    case 'nothing-usable':
      return [finding(warning, 'fail', {})]
    case 'under-20-minutes':
    case 'heavier-than-advised':
    case 'cold-lithium-charge':
      return [finding(warning, 'care', {})]
    default:
      return [finding(warning, 'note', {})]
  }
}

/** Of the recharge's warnings, those that the run time's do not tell. */
function rechargeFinding(warning: RechargeWarning): readonly Finding[] {
  return warning === 'charge-temperature-outside-range' ? [finding(warning, 'note', {})] : []
}
