import { CoreError, requireInRange } from '../errors.ts'
import { type BatteryChemistry, SUPPLY_VOLTAGES, type SupplyVoltage } from '../range/vocabulary.ts'
import { CHEMISTRIES } from '../tables/chemistries.ts'
import { type BatteryBank, bankModel } from './bank.ts'
import { type RuntimeQuestion, runtimeOfModel } from './runtime.ts'
import { firstNotBelow } from './table-lookup.ts'
import { leadAcidShares, lithiumShare, shareAtHours } from './temperature.ts'

/** A question to {@link bankFor}. */
export interface BankSizeQuestion {
  /** Energy at the battery in a day. [Wh] 0..1e9 */
  readonly energyWhPerDay: number
  /** Days without a recharge. 0.1..30 */
  readonly days: number
  readonly chemistry: BatteryChemistry
  readonly nominalV: SupplyVoltage
  /** Default: the chemistry's. 0..0.95 */
  readonly minSocFraction?: number | undefined
  /** [degC] -40..80, default 25 */
  readonly temperatureC?: number | undefined
  /** Capacity left when the bank is to be replaced. 0.3..1, default 1 */
  readonly endOfLifeFraction?: number | undefined
  /** Added to the capacity. 0..1, default 0 */
  readonly marginFraction?: number | undefined
  /** Largest steady power at the inverter's input. [W] 0..1e9, default 0 */
  readonly peakDcPowerW?: number | undefined
}

/** Capacity that a need calls for. */
export interface BankSize {
  readonly capacityAh: number
  readonly byEnergyAh: number
  /** So that the largest steady current does the bank no harm. */
  readonly byCurrentAh: number
  readonly boundBy: 'energy' | 'current'
  readonly usableFraction: number
  readonly temperatureFraction: number
}

/** Discharge time for which the temperature's share is read when a bank is sized in days. [h] */
const SLOW_HOURS = 20

/**
 * Capacity of a bank for a number of days.
 *
 * @param question - Energy a day, days, chemistry, voltage, allowances
 * @returns Capacity at the 20 h rate by energy and by current, the larger of the two, and which it was
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @remarks `Ah = Wh/day x days / V / usable depth / temperature share / end of life x (1 + margin)`; nothing is
 * added that the caller did not ask for. By current: peak power over nominal voltage over the chemistry's
 * advised current.
 * @source ieee-1013
 * @example bankFor({ energyWhPerDay: 300, days: 2, chemistry: 'lifepo4', nominalV: 12 }).capacityAh //=> 62.5
 */
export function bankFor(question: BankSizeQuestion): BankSize {
  const { temperatureC = 25, endOfLifeFraction = 1, marginFraction = 0, peakDcPowerW = 0 } = question
  const figures = CHEMISTRIES[question.chemistry]
  const minSocFraction = question.minSocFraction ?? figures.minSocFraction
  requireInRange('energyWhPerDay', question.energyWhPerDay, 0, 1e9)
  requireInRange('days', question.days, 0.1, 30)
  requireInRange('minSocFraction', minSocFraction, 0, 0.95)
  requireInRange('temperatureC', temperatureC, -40, 80)
  requireInRange('endOfLifeFraction', endOfLifeFraction, 0.3, 1)
  requireInRange('marginFraction', marginFraction, 0, 1)
  requireInRange('peakDcPowerW', peakDcPowerW, 0, 1e9)
  const usableFraction = 1 - minSocFraction
  const temperatureFraction =
    figures.kind.family === 'lithium'
      ? lithiumShare(figures.kind, temperatureC)
      : shareAtHours(leadAcidShares(temperatureC), SLOW_HOURS)
  const plainAh = (question.energyWhPerDay * question.days) / question.nominalV / usableFraction
  const byEnergyAh = (plainAh / temperatureFraction / endOfLifeFraction) * (1 + marginFraction)
  const byCurrentAh = peakDcPowerW / question.nominalV / figures.advisedLimitPerH
  return {
    capacityAh: Math.max(byEnergyAh, byCurrentAh),
    byEnergyAh,
    byCurrentAh,
    boundBy: byCurrentAh > byEnergyAh ? 'current' : 'energy',
    usableFraction,
    temperatureFraction,
  }
}

/** Largest bank that is looked for. [Ah] */
const LARGEST_AH = 10_000

/**
 * Capacity with which a steady load runs for a wanted time.
 *
 * @param question - As for a run time; the bank's capacity and stated limit are scaled, the rest is kept
 * @param hours - Wanted time. [h] 0.01..1000
 * @returns The least capacity whose careful run time (`hoursLow`) reaches it, 1..10,000; undefined when none
 * of them does. [Ah]
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @source battery-model-fit
 */
export function capacityForRunAh(question: RuntimeQuestion, hours: number): number | undefined {
  requireInRange('hours', hours, 0.01, 1000)
  const over = (logAh: number) => {
    const model = bankModel(scaledBank(question.bank, Math.exp(logAh)))
    return Math.log(runtimeOfModel(model, { ...question, curvePoints: 2 }).hoursLow / hours)
  }
  const most = Math.log(LARGEST_AH)
  let low = 0
  let high = Math.min(most, Math.log(question.bank.capacityAh))
  // Time grows a little faster than capacity: a few steps from this bank lead just past the wanted one.
  for (let short = over(high); short < 0; short = over(high)) {
    if (high === most) return undefined
    low = high
    high = Math.min(most, high + Math.min(LARGEST_STEP, LEAST_STEP - short))
  }
  if (low === 0 && over(0) >= 0) return 1
  return Math.exp(firstNotBelow({ low, high, value: over, within: CAPACITY_PRECISION }))
}

/** Steps of the capacity's logarithm in which a bank that is large enough is looked for. */
const LEAST_STEP = 0.02
const LARGEST_STEP = 1

/** The capacity is found to a part in ten thousand: its logarithm to this. */
const CAPACITY_PRECISION = 1e-4

/** The same battery, larger or smaller: what grows with the capacity grows along. */
function scaledBank(bank: BatteryBank, capacityAh: number): BatteryBank {
  const factor = capacityAh / bank.capacityAh
  return {
    ...bank,
    capacityAh,
    otherRates: bank.otherRates?.map((rate) => ({ ...rate, capacityAh: rate.capacityAh * factor })),
    maxDischargeA: bank.maxDischargeA === undefined ? undefined : bank.maxDischargeA * factor,
    internalResistanceOhm:
      bank.internalResistanceOhm === undefined ? undefined : bank.internalResistanceOhm / factor,
  }
}

/** A question to {@link blocksFor}. */
export interface BlocksQuestion {
  readonly block: { readonly nominalV: number; readonly capacityAh: number }
  readonly nominalV: SupplyVoltage
  readonly capacityAh: number
  /** 1..100, default 4: more strings share current badly. Common practice, no published source. */
  readonly maxParallel?: number | undefined
}

/** How blocks make a bank. */
export type Blocks =
  | {
      readonly ok: true
      readonly inSeries: number
      readonly inParallel: number
      readonly blocks: number
      readonly capacityAh: number
    }
  | {
      readonly ok: false
      readonly reason: 'voltage-not-a-multiple' | 'too-many-in-parallel'
      readonly inParallel: number
    }

/**
 * How many equal blocks, in series and in parallel, make a bank.
 *
 * @param question - The block, the bank's voltage and least capacity, most strings side by side
 * @returns Blocks in series (voltages add) and in parallel (capacities add), or why it can't be done
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @source elementary-circuits
 * @example blocksFor({ block: { nominalV: 6, capacityAh: 225 }, nominalV: 24, capacityAh: 675 }) //=> 4 by 3
 */
export function blocksFor(question: BlocksQuestion): Blocks {
  const { block, nominalV, capacityAh, maxParallel = 4 } = question
  requireInRange('block.nominalV', block.nominalV, 1, 48)
  requireInRange('block.capacityAh', block.capacityAh, 0.5, 100_000)
  requireInRange('capacityAh', capacityAh, 0, 1_000_000)
  requireInRange('maxParallel', maxParallel, 1, 100)
  // A whole number of strings, not one more for a rounding error in the last digit.
  const inParallel = Math.max(1, Math.ceil(capacityAh / block.capacityAh - 1e-9))
  const inSeries = Math.round(nominalV / block.nominalV)
  if (inSeries < 1 || Math.abs(inSeries * block.nominalV - nominalV) > 1e-6) {
    return { ok: false, reason: 'voltage-not-a-multiple', inParallel }
  }
  if (inParallel > maxParallel) return { ok: false, reason: 'too-many-in-parallel', inParallel }
  return {
    ok: true,
    inSeries,
    inParallel,
    blocks: inSeries * inParallel,
    capacityAh: inParallel * block.capacityAh,
  }
}

/**
 * A bank joined from equal banks.
 *
 * @param block - One of them; its nominal voltage times `inSeries` must be a bank voltage
 * @param joined.inSeries - Banks in a string. 1..4
 * @param joined.inParallel - Strings side by side. 1..100
 * @returns The bank: voltages and resistances add in series, capacities and currents in parallel
 * @throws CoreError `inconsistent` when no bank has that voltage
 * @source elementary-circuits
 */
export function joinedBank(
  block: BatteryBank,
  joined: { readonly inSeries: number; readonly inParallel: number },
): BatteryBank {
  const { inSeries, inParallel } = joined
  const nominalV = SUPPLY_VOLTAGES.find((volts) => volts === block.nominalV * inSeries)
  if (nominalV === undefined) {
    throw new CoreError('inconsistent', 'inSeries', `${inSeries} x ${block.nominalV} V is no bank voltage`)
  }
  const scaled = scaledBank(block, block.capacityAh * inParallel)
  const ohm = scaled.internalResistanceOhm
  return { ...scaled, nominalV, internalResistanceOhm: ohm === undefined ? undefined : ohm * inSeries }
}
