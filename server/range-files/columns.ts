import {
  BATTERY_CHEMISTRIES,
  CONNECTION_KINDS,
  FUSE_STYLES,
  INVERTER_FEATURES,
  INVERTER_WAVEFORMS,
} from '../../core/index.ts'
import type { PartList } from '../../shared/contract/range-admin.ts'

/** How the cells of a column are read and written. */
export type CellKind = 'text' | 'money' | 'number' | 'yes-no' | 'word' | 'words' | 'texts' | 'rates'

/** A column of a part list's CSV file. */
export interface Column {
  /** Its header; read whatever its case, spacing and punctuation. */
  readonly name: string
  readonly kind: CellKind
  /** Where its value stands in a part. */
  readonly path: readonly string[]
  readonly required: boolean
  /** The words that a cell of words may hold. */
  readonly words?: readonly string[]
  readonly about: string
}

type Details = Partial<Omit<Column, 'name' | 'kind' | 'about'>>

function column(name: string, kind: CellKind, about: string, details: Details = {}): Column {
  return { name, kind, about, path: [name], required: false, ...details }
}

const REQUIRED = { required: true } as const

const PART_COLUMNS = [
  column('sku', 'text', 'Stock-keeping unit, once in the whole range.', REQUIRED),
  column('name', 'text', 'Name for shoppers.', REQUIRED),
  column('price', 'money', "Price in the shop's currency.", REQUIRED),
  column('inStock', 'yes-no', 'yes or no.', REQUIRED),
  column('url', 'text', 'Address of the product page.'),
  column('imageUrl', 'text', 'Address of a picture.'),
] as const

const connectionWords = { words: CONNECTION_KINDS }

/** The columns of each part list, in the order in which they are written. */
export const COLUMNS: Readonly<Record<PartList, readonly Column[]>> = {
  inverters: [
    ...PART_COLUMNS,
    column('continuousW', 'number', 'Continuous power. [W]', REQUIRED),
    column('continuousVA', 'number', 'Continuous apparent power. [VA]'),
    column('surgeW', 'number', 'Surge power. [W]', REQUIRED),
    column('surgeS', 'number', 'How long it gives its surge power. [s]', REQUIRED),
    column('waveform', 'word', 'Wave form.', { ...REQUIRED, words: INVERTER_WAVEFORMS }),
    column('inputNominalV', 'number', 'Nominal battery voltage. [V]', REQUIRED),
    column('outputV', 'number', 'Output voltage. [V]', REQUIRED),
    column('outputHz', 'number', 'Output frequency. [Hz]', REQUIRED),
    column('efficiencyFullFraction', 'number', 'Efficiency at full load, 0.5 to 0.99.'),
    column('efficiencyPeakFraction', 'number', 'Best efficiency, 0.5 to 0.99.'),
    column('idleW', 'number', 'Idle draw. [W]'),
    column('cutOffV', 'number', 'Low-voltage cut-off. [V]'),
    column('restartV', 'number', 'Voltage at which it starts again. [V]'),
    column('outlets', 'number', 'Number of outlets.', REQUIRED),
    column('features', 'words', 'Features, with | between them.', { words: INVERTER_FEATURES }),
    column('connectionKind', 'word', 'How it is connected.', {
      ...REQUIRED,
      ...connectionWords,
      path: ['connection', 'kind'],
    }),
    column('connectionLimitA', 'number', 'Current limit of that connection. [A]', {
      path: ['connection', 'limitA'],
    }),
    column('includes', 'texts', 'SKUs of parts in the box, with | between them.'),
  ],
  batteries: [
    ...PART_COLUMNS,
    column('chemistry', 'word', 'Chemistry.', { ...REQUIRED, words: BATTERY_CHEMISTRIES }),
    column('nominalV', 'number', 'Nominal voltage. [V]', REQUIRED),
    column('capacityAh', 'number', 'Rated capacity. [Ah]', REQUIRED),
    column('hourRateH', 'number', 'Hour rate of the rated capacity. [h]', REQUIRED),
    column('otherRates', 'rates', 'Capacity at other hour rates: "5 h 85 Ah | 1 h 60 Ah".'),
    column('maxDischargeA', 'number', 'Largest discharge current. [A]'),
    column('internalResistanceOhm', 'number', 'Internal resistance. [ohm]'),
  ],
  cables: [
    ...PART_COLUMNS,
    column('areaMm2', 'number', 'Cross-section, or else awg. [mm2]'),
    column('awg', 'text', 'American wire gauge, such as 4 or 2/0, or else areaMm2.'),
    column('lengthM', 'number', 'Length of the pair, one way. [m]', REQUIRED),
    column('insulationC', 'number', 'Temperature rating of the insulation. [degC]'),
  ],
  fuses: [
    ...PART_COLUMNS,
    column('ratingA', 'number', 'Rated current. [A]', REQUIRED),
    column('style', 'word', 'Style.', { ...REQUIRED, words: FUSE_STYLES }),
    column('breakingCapacityA', 'number', 'Breaking capacity. [A]'),
    column('voltageV', 'number', 'Rated voltage. [V]'),
  ],
  connectors: [
    ...PART_COLUMNS,
    column('kind', 'word', 'Kind of connection.', { ...REQUIRED, ...connectionWords }),
    column('limitA', 'number', 'Current that it carries for long. [A]', REQUIRED),
  ],
}
