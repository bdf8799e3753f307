import { BATTERY_SOURCES } from './battery-sources.ts'
import { GENERAL_SOURCES } from './general-sources.ts'
import { LOAD_SOURCES } from './load-sources.ts'
import { RATING_SOURCES } from './rating-sources.ts'
import type { Source } from './source.ts'
import { WIRING_SOURCES } from './wiring-sources.ts'

/** Every source that a figure of this project names, by id. */
export const SOURCES = {
  ...GENERAL_SOURCES,
  ...LOAD_SOURCES,
  ...RATING_SOURCES,
  ...WIRING_SOURCES,
  ...BATTERY_SOURCES,
} as const satisfies Readonly<Record<string, Source>>

/** The id of a source in {@link SOURCES}. */
export type SourceId = keyof typeof SOURCES

/** Sources whose `document` describes them, since they have no title: readers are told in their own language. */
export const DESCRIBED_SOURCES = [
  'exhaustive-search',
  'common-practice',
  'shop-stated',
  'agm-block-sheets',
  'flooded-block-sheet',
  'lfp-block-sheets',
  'lfp-cell-sheets',
  'nmc-cell-sheet',
  'lin-lfp-simulation',
  'jeon-baek-nmc',
  'battery-model-fit',
  'low-voltage-disconnect-guidance',
  'vrla-guidance',
  'cec-inverter-tests',
  'quasi-square-fourier',
  'elementary-circuits',
  'lab-appliance-recordings',
  'australian-television-register',
  'cooperative-usage-table-2021',
  'cooperative-monthly-worksheet',
  'cooperative-generator-table',
  'tacoma-power-generator',
  'central-maine-power-generator',
  'ndsu-standby-generators',
  'six-times-rated-current',
  'e-bike-charger-survey',
  'microwave-plug-meter-2007',
  'motor-textbook',
  'power-supply-practice',
  'cpap-humidifier-power',
  'satellite-terminal-readings',
  'load-judgement',
  'waveform-arithmetic',
  'load-arithmetic',
  'microwave-encyclopaedia',
  'rating-judgement',
] as const satisfies readonly SourceId[]
export type DescribedSourceId = (typeof DESCRIBED_SOURCES)[number]
