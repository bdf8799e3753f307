import type { DescribedSourceId } from '../../core/tables/sources.ts'
import {
  WORKING_WORDS,
  type WorkingFigure,
  type WorkingName,
  type WorkingValues,
  type WorkingWord,
} from '../../core/working.ts'
import type { Formats } from './formats.ts'

/** What the working of an answer is written with in one language; a name that lacks does not compile. */
export interface WorkingCatalogue {
  readonly names: Readonly<Record<WorkingName, string>>
  readonly words: Readonly<Record<WorkingWord, string>>
  readonly yes: string
  readonly no: string
  /** What sources without a title of their own are. */
  readonly sources: Readonly<Record<DescribedSourceId, string>>
}

/** A value of a working as people read it. */
export interface ShownValue {
  /** Its name in `values`. */
  readonly key: string
  readonly name: string
  readonly text: string
}

/**
 * The values of a step under names of a language, with their units.
 *
 * @param values - Of the step, rounded
 * @param words - The language
 * @param formats - Numbers of the locale, lengths in the shop's system
 * @returns One entry a value, in the order of the step
 */
export function shownValues(
  values: WorkingValues,
  words: WorkingCatalogue,
  formats: Formats,
): readonly ShownValue[] {
  return Object.entries(values).flatMap(([key, value]) =>
    isName(key, words) && value !== undefined
      ? [{ key, name: words.names[key], text: textOf(key, value, { words, formats }) }]
      : [],
  )
}

function textOf(
  name: WorkingName,
  value: number | string | boolean,
  { words, formats }: { readonly words: WorkingCatalogue; readonly formats: Formats },
): string {
  if (typeof value === 'boolean') return value ? words.yes : words.no
  if (typeof value === 'string') return isWord(value) ? words.words[value] : value
  return isFigure(name) ? UNITS[name](value, formats) : formats.exact(value)
}

function isName(name: string, words: WorkingCatalogue): name is WorkingName {
  return Object.hasOwn(words.names, name)
}

function isWord(value: string): value is WorkingWord {
  return (WORKING_WORDS as readonly string[]).includes(value)
}

function isFigure(name: WorkingName): name is WorkingFigure {
  return Object.hasOwn(UNITS, name)
}

type Unit = (value: number, formats: Formats) => string

const plain: Unit = (value, f) => f.exact(value)
const share: Unit = (value, f) => f.exactPercent(value)
const length: Unit = (value, f) => f.length(value)
const unit =
  (symbol: string): Unit =>
  (value, f) =>
    `${f.exact(value)}\u00a0${symbol}`
const watts = unit('W')
const voltAmperes = unit('VA')
const volts = unit('V')
const amps = unit('A')
const ampHours = unit('Ah')
const wattHours = unit('Wh')
const ohms = unit('Ω')
const celsius = unit('°C')
const hours = unit('h')
const seconds = unit('s')

/** The unit that each figure's name ends in. */
const UNITS: Readonly<Record<WorkingFigure, Unit>> = {
  absorptionHours: hours,
  ambientC: celsius,
  ambientFactor: plain,
  amps,
  ampacityA: amps,
  apparentVA: voltAmperes,
  averageA: amps,
  btuPerHour: unit('Btu/h'),
  bundlingFactor: plain,
  byCurrentAh: ampHours,
  byEnergyAh: ampHours,
  cableResistanceOhm: ohms,
  capacityAh: ampHours,
  chargeAh: ampHours,
  chargerA: amps,
  chargerHours: hours,
  conductorTempC: celsius,
  continuousVA: voltAmperes,
  continuousW: watts,
  cookingW: watts,
  currentA: amps,
  cutOffV: volts,
  days: plain,
  dcPowerW: watts,
  dropFraction: share,
  dropLimitFraction: share,
  dropV: volts,
  dutyFraction: share,
  eer: unit('Btu/Wh'),
  efficiencyFraction: share,
  efficiencyFullFraction: share,
  endOfLifeFraction: share,
  endSocFraction: share,
  energyFromSourceWh: wattHours,
  energyWh: wattHours,
  energyWhPerDay: wattHours,
  exponent: plain,
  factor: plain,
  headroomFraction: share,
  healthFraction: share,
  horsepower: unit('hp'),
  hourRateH: hours,
  hours,
  hoursHigh: hours,
  hoursLow: hours,
  idleW: watts,
  inputW: watts,
  insulationC: celsius,
  internalResistanceOhm: ohms,
  inverterV: volts,
  lengthM: length,
  limitA: amps,
  limitW: watts,
  loadFraction: share,
  lossW: watts,
  lowestV: volts,
  marginFraction: share,
  maxA: amps,
  minA: amps,
  minSocFraction: share,
  minutesPerDay: unit('min'),
  nominalV: volts,
  outputW: watts,
  parallelPairs: plain,
  powerFactor: plain,
  quantity: plain,
  ratedAh: ampHours,
  ratingA: amps,
  requiredBreakingCapacityA: amps,
  requiredContinuousW: watts,
  requiredVoltageV: volts,
  resistanceOhm: ohms,
  runningVA: voltAmperes,
  runningW: watts,
  scaleA: amps,
  shaftW: watts,
  slowChargeAh: ampHours,
  solarW: watts,
  startSocFraction: share,
  startingS: seconds,
  startingW: watts,
  sunHours: hours,
  surgeS: seconds,
  surgeW: watts,
  tableA: amps,
  temperatureC: celsius,
  temperatureFraction: share,
  terminalV: volts,
  typicalRunningW: watts,
  typicalW: watts,
  usableFraction: share,
  usableWh: wattHours,
  volts,
}
