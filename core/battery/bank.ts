import { requireInRange } from '../errors.ts'
import type { OtherRate } from '../range/range-document.ts'
import type { BatteryChemistry, SupplyVoltage } from '../range/vocabulary.ts'
import {
  CHEMISTRIES,
  type ChemistryFigures,
  LEAD_ACID_CELL,
  LEAD_ACID_REFERENCE_C,
  STATED_LITHIUM_RESISTANCE_FACTOR,
  STATED_RESISTANCE_SPREAD,
} from '../tables/chemistries.ts'
import type { SourceId } from '../tables/sources.ts'
import { leadAcidRate, lithiumRate, type RateCapacity } from './rate-capacity.ts'
import { interpolate } from './table-lookup.ts'
import { leadAcidShares, lithiumShare, type TimeShares } from './temperature.ts'

/** A battery, or several joined to one, as a shopper or a range describes it. */
export interface BatteryBank {
  readonly nominalV: SupplyVoltage
  readonly chemistry: BatteryChemistry
  /** [Ah] 0.5..100,000 */
  readonly capacityAh: number
  /** Discharge time for which the capacity is stated. [h] 0.1..120, default 20 */
  readonly hourRateH?: number | undefined
  /** Capacities at other discharge times. */
  readonly otherRates?: readonly OtherRate[] | undefined
  /** State of charge at which the run ends. 0..1 */
  readonly minSocFraction?: number | undefined
  /** State of charge at which it starts. 0..1, default 1 */
  readonly startSocFraction?: number | undefined
  /** [degC] -40..80, default 25 */
  readonly temperatureC?: number | undefined
  /** Capacity left by age. 0.3..1, default 1 */
  readonly healthFraction?: number | undefined
  /** Largest steady current that the battery or its protection board allows. [A] above 0 */
  readonly maxDischargeA?: number | undefined
  /** Resistance as its sheet states it. [ohm] 0..100,000 */
  readonly internalResistanceOhm?: number | undefined
}

/** A figure that the bank did not state and the value taken for it. */
export interface AssumedFigure {
  readonly field:
    | 'minSocFraction'
    | 'internalResistanceOhm'
    | 'maxDischargeA'
    | 'shortRateCapacity'
    | 'cellsInSeries'
  readonly value: number
  readonly source: SourceId
}

/** A bank with every figure that the run-time arithmetic needs. */
export interface BankModel {
  readonly bank: BatteryBank
  readonly figures: ChemistryFigures
  readonly cells: number
  readonly rate: RateCapacity
  /** What a steady load sees, age and temperature included. [ohm] */
  readonly resistanceOhm: number
  /** How far the resistance may be off, down and up. */
  readonly resistanceSpread: readonly [number, number]
  readonly minSocFraction: number
  readonly startSocFraction: number
  readonly temperatureC: number
  readonly healthFraction: number
  /** Largest steady current; infinite where there is no limit. [A] */
  readonly limitA: number
  /** Protection board's lowest voltage; 0 where there is no board. [V] */
  readonly lowestV: number
  /** Lowest voltage that a run is taken to where no inverter states its cut-off. [V] */
  readonly ratedEndV: number
  /** Share of the capacity left by age, and by temperature for lithium. */
  readonly capacityShare: number
  /** Lead-acid only: the temperature's share by discharge time; left out where it is 1 throughout. */
  readonly timeShares: TimeShares | undefined
  readonly assumed: readonly AssumedFigure[]
}

/**
 * A bank with its defaults filled in and its laws worked out.
 *
 * @param bank - The bank as described
 * @returns The model, with the figures that were assumed
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @remarks Kept until another bank is asked for, or for good by {@link keepModel}. Resistance: the sheet's figure,
 * or the chemistry's resistance times capacity, times the factor for a steady load, over health (assumption), times
 * the temperature's factor for lithium.
 * @source battery-model-fit
 */
export function bankModel(bank: BatteryBank): BankModel {
  if (lastModel?.bank === bank) return lastModel
  lastModel = models.get(bank) ?? makeBankModel(bank)
  return lastModel
}

/** Of a bank, an answer asks several things one after another. */
let lastModel: BankModel | undefined

/**
 * Makes the model of a bank that will be asked for again and again, and keeps it as long as the bank is.
 *
 * @param bank - The bank
 * @throws CoreError `out_of_range`, naming the field and its bounds
 */
export function keepModel(bank: BatteryBank): void {
  models.set(bank, makeBankModel(bank))
}

/** Not for every bank: a model names its bank, so what is held weakly goes only with a full collection of garbage. */
const models = new WeakMap<BatteryBank, BankModel>()

function makeBankModel(bank: BatteryBank): BankModel {
  requireBank(bank)
  const figures = CHEMISTRIES[bank.chemistry]
  const { kind } = figures
  const cells = figures.cellsInSeries[bank.nominalV]
  const temperatureC = bank.temperatureC ?? 25
  const healthFraction = bank.healthFraction ?? 1
  const rated = { hourRateH: bank.hourRateH ?? 20, capacityAh: bank.capacityAh }
  const others = bank.otherRates ?? []
  const lithium = kind.family === 'lithium'
  const rate = lithium ? lithiumRate(kind, rated, others) : leadAcidRate(kind, rated, others)
  const assumedLimitA = lithium ? kind.assumedLimitPerH * bank.capacityAh : Number.POSITIVE_INFINITY
  const sheetOhm = bank.internalResistanceOhm ?? (figures.cellResistanceOhmAh * cells) / bank.capacityAh
  const coldFactor = lithium ? interpolate(kind.resistanceByTemperatureC, temperatureC) : 1
  return {
    bank,
    figures,
    cells,
    rate,
    resistanceOhm: (sheetOhm * loadFactor(bank, figures) * coldFactor) / healthFraction,
    resistanceSpread:
      bank.internalResistanceOhm === undefined ? figures.resistanceSpread : STATED_RESISTANCE_SPREAD,
    minSocFraction: bank.minSocFraction ?? figures.minSocFraction,
    startSocFraction: bank.startSocFraction ?? 1,
    temperatureC,
    healthFraction,
    limitA: bank.maxDischargeA ?? assumedLimitA,
    lowestV: lithium ? kind.lowestCellV * cells : 0,
    ratedEndV: (lithium ? kind.lowestCellV : LEAD_ACID_CELL.ratedEndV) * cells,
    capacityShare: healthFraction * (lithium ? lithiumShare(kind, temperatureC) : 1),
    timeShares: lithium || temperatureC === LEAD_ACID_REFERENCE_C ? undefined : leadAcidShares(temperatureC),
    assumed: assumedFigures(bank, figures, { sheetOhm, assumedLimitA, rate, cells }),
  }
}

/**
 * Voltage of a bank at rest, by state of charge.
 *
 * @param bank.chemistry - Chemistry
 * @param bank.nominalV - Nominal voltage. [V]
 * @param bank.socFraction - State of charge. 0..1
 * @returns Open-circuit voltage at 25 C. [V]
 * @throws CoreError `out_of_range` for a state of charge outside 0..1
 * @source bode-1977 (lead-acid), lithium-ocv-2025 (lithium)
 * @example openCircuitV({ chemistry: 'flooded', nominalV: 12, socFraction: 0.5 }) //=> 12.27
 */
export function openCircuitV(bank: {
  readonly chemistry: BatteryChemistry
  readonly nominalV: SupplyVoltage
  readonly socFraction: number
}): number {
  requireInRange('socFraction', bank.socFraction, 0, 1)
  const figures = CHEMISTRIES[bank.chemistry]
  return figures.cellsInSeries[bank.nominalV] * interpolate(figures.openCircuitCellV, bank.socFraction)
}

function requireBank(bank: BatteryBank): void {
  requireInRange('capacityAh', bank.capacityAh, 0.5, 100_000)
  requireInRange('hourRateH', bank.hourRateH ?? 20, 0.1, 120)
  requireInRange('minSocFraction', bank.minSocFraction ?? 0, 0, 1)
  requireInRange('startSocFraction', bank.startSocFraction ?? 1, 0, 1)
  requireInRange('temperatureC', bank.temperatureC ?? 25, -40, 80)
  requireInRange('healthFraction', bank.healthFraction ?? 1, 0.3, 1)
  requireInRange('maxDischargeA', bank.maxDischargeA ?? 1, Number.MIN_VALUE, Number.MAX_VALUE)
  requireInRange('internalResistanceOhm', bank.internalResistanceOhm ?? 0, 0, 1e5)
  for (const other of bank.otherRates ?? []) {
    requireInRange('otherRates.hourRateH', other.hourRateH, 0.05, 240)
    requireInRange('otherRates.capacityAh', other.capacityAh, 1e-6, Number.MAX_VALUE)
  }
}

function loadFactor(bank: BatteryBank, figures: ChemistryFigures): number {
  const statedLithium = figures.kind.family === 'lithium' && bank.internalResistanceOhm !== undefined
  return statedLithium ? STATED_LITHIUM_RESISTANCE_FACTOR : figures.loadResistanceFactor
}

interface Taken {
  readonly sheetOhm: number
  readonly assumedLimitA: number
  readonly rate: RateCapacity
  readonly cells: number
}

function assumedFigures(
  bank: BatteryBank,
  figures: ChemistryFigures,
  taken: Taken,
): readonly AssumedFigure[] {
  const assumed: AssumedFigure[] = []
  const note = (field: AssumedFigure['field'], value: number, table: string): void => {
    assumed.push({ field, value, source: figures.sources[table] ?? 'common-practice' })
  }
  if (bank.minSocFraction === undefined) note('minSocFraction', figures.minSocFraction, 'minSocFraction')
  if (bank.internalResistanceOhm === undefined) {
    note('internalResistanceOhm', taken.sheetOhm, 'cellResistanceOhmAh')
  }
  if (bank.maxDischargeA === undefined && Number.isFinite(taken.assumedLimitA)) {
    note('maxDischargeA', taken.assumedLimitA, 'advisedLimitPerH')
  }
  if (figures.kind.family === 'lead-acid' && taken.rate.basis === 'typical-shape') {
    note('shortRateCapacity', figures.kind.halfRatePerH, 'kind')
  }
  if (bank.chemistry === 'nmc') note('cellsInSeries', taken.cells, 'cellsInSeries')
  return assumed
}
