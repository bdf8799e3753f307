import type { SourceId } from './tables/sources.ts'

/** Every step of arithmetic that an answer may show; the sentence stands in the message catalogue. */
export const STEP_CODES = [
  'rating-input-watts',
  'rating-measured-watts',
  'rating-volts-amps',
  'rating-volt-amperes',
  'rating-cooking-power-sizing',
  'rating-cooking-power-energy',
  'rating-horsepower',
  'rating-motor-output',
  'rating-cooling-sizing',
  'rating-cooling-energy',
  'rating-label-text',
  'rating-list-figure',
  'rating-apparent-power',
  'load-start',
  'load-energy',
  'demand-running',
  'demand-starting',
  'demand-energy',
  'headroom',
  'unit-limits',
  'lowest-working-voltage',
  'worst-case-current',
  'connection-limit',
  'fuse-window',
  'ampacity',
  'voltage-drop',
  'inverter-input',
  'battery-rate-law',
  'battery-resistance',
  'battery-current-at-start',
  'battery-capacity-at-current',
  'battery-run-end',
  'battery-run-time',
  'bank-size',
  'recharge',
] as const
export type StepCode = (typeof STEP_CODES)[number]

/** Values of a working that are quantities, shares or counts; each has its unit as a suffix. */
export const WORKING_FIGURES = [
  'absorptionHours',
  'ambientC',
  'ambientFactor',
  'amps',
  'ampacityA',
  'apparentVA',
  'averageA',
  'btuPerHour',
  'bundlingFactor',
  'byCurrentAh',
  'byEnergyAh',
  'cableResistanceOhm',
  'capacityAh',
  'chargeAh',
  'chargerA',
  'chargerHours',
  'conductorTempC',
  'continuousVA',
  'continuousW',
  'cookingW',
  'currentA',
  'cutOffV',
  'days',
  'dcPowerW',
  'dropFraction',
  'dropLimitFraction',
  'dropV',
  'dutyFraction',
  'eer',
  'efficiencyFraction',
  'efficiencyFullFraction',
  'endOfLifeFraction',
  'endSocFraction',
  'energyFromSourceWh',
  'energyWh',
  'energyWhPerDay',
  'exponent',
  'factor',
  'headroomFraction',
  'healthFraction',
  'horsepower',
  'hourRateH',
  'hours',
  'hoursHigh',
  'hoursLow',
  'idleW',
  'inputW',
  'insulationC',
  'internalResistanceOhm',
  'inverterV',
  'lengthM',
  'limitA',
  'limitW',
  'loadFraction',
  'lossW',
  'lowestV',
  'marginFraction',
  'maxA',
  'minA',
  'minSocFraction',
  'minutesPerDay',
  'nominalV',
  'outputW',
  'parallelPairs',
  'powerFactor',
  'quantity',
  'ratedAh',
  'ratingA',
  'requiredBreakingCapacityA',
  'requiredContinuousW',
  'requiredVoltageV',
  'resistanceOhm',
  'runningVA',
  'runningW',
  'scaleA',
  'shaftW',
  'slowChargeAh',
  'solarW',
  'startSocFraction',
  'startingS',
  'startingW',
  'sunHours',
  'surgeS',
  'surgeW',
  'tableA',
  'temperatureC',
  'temperatureFraction',
  'terminalV',
  'typicalRunningW',
  'typicalW',
  'usableFraction',
  'usableWh',
  'volts',
] as const
export type WorkingFigure = (typeof WORKING_FIGURES)[number]

/** Values that are a word of {@link WORKING_WORDS}. */
export const WORKING_CHOICES = ['basis', 'kind', 'law', 'limitedBy', 'reason', 'style'] as const
export type WorkingChoice = (typeof WORKING_CHOICES)[number]

/** Words that a value of a working may be. */
export const WORKING_WORDS = [
  // What a rating plate states
  'watts',
  'volts-amps',
  'volt-amperes',
  'cooking-watts',
  'shaft-watts',
  'horsepower',
  'cooling-watts',
  'btu',
  // The law of a battery's capacity, and what shaped it
  'generalised-peukert',
  'peukert',
  'typical-shape',
  'one-short-rate',
  'two-short-rates',
  // Connections
  'vehicle-socket',
  'quick-connector',
  'battery-terminals',
  // What ends a run
  'state-of-charge',
  'cut-off-voltage',
  'discharge-limit',
  // Styles of fuse
  'blade',
  'bolted-strip',
  'terminal-post',
  'class-t',
  // Why no fuse is named
  'conductor-too-thin',
  'voltage-rating-too-low',
  'breaking-capacity-too-low',
  'above-every-standard-rating',
  'no-standard-rating-in-window',
] as const
export type WorkingWord = (typeof WORKING_WORDS)[number]

/** Values that are yes or no. */
export const WORKING_FLAGS = ['assumed', 'collapsed'] as const
export type WorkingFlag = (typeof WORKING_FLAGS)[number]

/** Values that stand as they are: a SKU, a size of cable. */
export const WORKING_TEXTS = ['label', 'sku'] as const
export type WorkingText = (typeof WORKING_TEXTS)[number]

/** The name of a value of a working. */
export type WorkingName = WorkingFigure | WorkingChoice | WorkingFlag | WorkingText

/** What a step shows, by name. */
export type WorkingValues = Readonly<
  Partial<
    Record<WorkingFigure, number> &
      Record<WorkingChoice, WorkingWord> &
      Record<WorkingFlag, boolean> &
      Record<WorkingText, string>
  >
>

/** One step of the arithmetic behind an answer, so that anyone can check it by hand. */
export interface WorkingStep {
  readonly step: StepCode
  readonly values: WorkingValues
  readonly source?: SourceId
  /** The load that it is about, where it is about one. */
  readonly loadId?: string
}
