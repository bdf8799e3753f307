import type { LabelFigure, LabelQuantity, LabelRole } from './reading.ts'

/** A unit as printed: what it measures, and its size in the unit of {@link LabelFigure}. */
export interface PrintedUnit {
  readonly quantity: LabelQuantity | 'phases' | 'none'
  readonly unit: LabelFigure['unit']
  readonly factor: number
  /** How "1.200" is read before this unit: 1200 when true, 1.2 when false. */
  readonly grouped: boolean
  readonly direct?: boolean
  readonly metricHorsepower?: boolean
}

const WATT: PrintedUnit = { quantity: 'power', unit: 'W', factor: 1, grouped: true }
const KILOWATT: PrintedUnit = { quantity: 'power', unit: 'W', factor: 1000, grouped: false }
const VOLT: PrintedUnit = { quantity: 'voltage', unit: 'V', factor: 1, grouped: false }
const VOLT_DC: PrintedUnit = { ...VOLT, direct: true }
const AMPERE: PrintedUnit = { quantity: 'current', unit: 'A', factor: 1, grouped: false }
const VOLT_AMPERE: PrintedUnit = { quantity: 'apparent-power', unit: 'VA', factor: 1, grouped: true }
const HERTZ: PrintedUnit = { quantity: 'frequency', unit: 'Hz', factor: 1, grouped: false }
const HORSEPOWER: PrintedUnit = { quantity: 'horsepower', unit: 'hp', factor: 1, grouped: false }
const METRIC_HORSEPOWER: PrintedUnit = { ...HORSEPOWER, metricHorsepower: true }
const BTU: PrintedUnit = { quantity: 'cooling-capacity', unit: 'Btu/h', factor: 1, grouped: true }
const POWER_FACTOR: PrintedUnit = { quantity: 'power-factor', unit: '', factor: 1, grouped: false }
const PHASES: PrintedUnit = { quantity: 'phases', unit: '', factor: 1, grouped: false }

const UNITS: ReadonlyMap<string, PrintedUnit> = new Map([
  ...['w', 'watt', 'watts', 'watios', 'vatios', 'wattage'].map((word) => [word, WATT] as const),
  ...['kw', 'kilowatt', 'kilowatts'].map((word) => [word, KILOWATT] as const),
  ...['v', 'volt', 'volts', 'voltios', 'vac', 'vca', 'voltage'].map((word) => [word, VOLT] as const),
  ...['vdc', 'vcc'].map((word) => [word, VOLT_DC] as const),
  ['kv', { ...VOLT, factor: 1000 }],
  ['mv', { ...VOLT, factor: 0.001 }],
  ...['a', 'amp', 'amps', 'ampere', 'amperes', 'amperios', 'rla', 'fla'].map(
    (word) => [word, AMPERE] as const,
  ),
  ['ma', { ...AMPERE, factor: 0.001, grouped: true }],
  ['va', VOLT_AMPERE],
  ['kva', { ...VOLT_AMPERE, factor: 1000, grouped: false }],
  ['hz', HERTZ],
  ['khz', { ...HERTZ, factor: 1e3, grouped: true }],
  ['mhz', { ...HERTZ, factor: 1e6, grouped: true }],
  ['ghz', { ...HERTZ, factor: 1e9 }],
  ...['hp', 'bhp', 'horsepower'].map((word) => [word, HORSEPOWER] as const),
  ...['ps', 'cv', 'ch'].map((word) => [word, METRIC_HORSEPOWER] as const),
  ...['btu', 'btus', 'btuh'].map((word) => [word, BTU] as const),
  ...['cos', 'cosphi', 'pf', 'lambda', 'factor', 'facteur', 'faktor', 'leistungsfaktor'].map(
    (word) => [word, POWER_FACTOR] as const,
  ),
  ['db', { ...POWER_FACTOR, quantity: 'none' }],
  ...['ph', 'phase', 'phases', 'phasen'].map((word) => [word, PHASES] as const),
])

/**
 * The unit a word stands for. "mW" is a thousandth, "MW" a million: the only unit whose case matters.
 *
 * @param raw - As printed.
 * @param folded - The same word, folded.
 * @returns The unit, or undefined when the word is none this reader uses.
 */
export function unitOf(raw: string, folded: string): PrintedUnit | undefined {
  if (folded === 'mw') return { ...WATT, factor: raw.startsWith('M') ? 1e6 : 0.001 }
  return UNITS.get(folded)
}

/** Words that name a role by their whole; compounds are in {@link ROLE_STEMS}. */
const ROLE_WORDS: ReadonlyMap<string, LabelRole> = new Map<string, LabelRole>([
  ...['input', 'inputs', 'entree', 'entrada', 'ingresso', 'pri', 'prim', 'primary', 'in', 'pin', 'p1'].map(
    (word) => [word, 'input'] as const,
  ),
  ...['consumption', 'consommation', 'consumo', 'absorbee', 'absorbida', 'absorbed', 'verbrauch'].map(
    (word) => [word, 'input'] as const,
  ),
  ...['output', 'outputs', 'sortie', 'salida', 'uscita', 'sec', 'secondary', 'out', 'pout', 'utile'].map(
    (word) => [word, 'output'] as const,
  ),
  ...['microwave', 'microwaves', 'ondes', 'microondas', 'restituee', 'cooking', 'coccion', 'cuisson'].map(
    (word) => [word, 'cooking'] as const,
  ),
  ...['p2', 'shaft', 'arbre', 'eje'].map((word) => [word, 'shaft'] as const),
  ...['standby', 'stand', 'veille', 'espera', 'noload', 'fuse', 'fusible', 'lra', 'breaker'].map(
    (word) => [word, 'other'] as const,
  ),
])

/** Parts of German compounds that name a role: "Eingangsleistung", "Mikrowellenleistung". */
const ROLE_STEMS: readonly (readonly [string, LabelRole])[] = [
  ['eingang', 'input'],
  ['aufnahme', 'input'],
  ['ausgang', 'output'],
  ['abgabe', 'output'],
  ['mikrowelle', 'cooking'],
  ['garleistung', 'cooking'],
  ['wellenleistung', 'shaft'],
  ['kuhlleistung', 'cooling'],
  ['bereitschaft', 'other'],
  ['sicherung', 'other'],
]

/** The longest word a plate's vocabulary holds; longer ones are not searched. */
const LONGEST_WORD = 40

/** @returns the role a folded word names, or undefined */
export function roleOf(folded: string): LabelRole | undefined {
  const whole = ROLE_WORDS.get(folded)
  if (whole !== undefined || folded.length < 7 || folded.length > LONGEST_WORD) return whole
  return ROLE_STEMS.find(([stem]) => folded.includes(stem))?.[1]
}

/** Pairs of words that name cooling power; either word alone also names a fan or a refrigerator. */
const COOLING_PAIRS: ReadonlyMap<string, string> = new Map([
  ['capacity', 'cooling'],
  ['refrigeracion', 'capacidad'],
  ['frigorifique', 'puissance'],
])

/** @returns true when a folded word after an earlier word of its phrase names cooling power */
export function namesCooling(folded: string, earlier: readonly string[]): boolean {
  const partner = COOLING_PAIRS.get(folded)
  return partner !== undefined && earlier.includes(partner)
}

/** Words that make "microwave" the name of the appliance and not of a power. */
const OVEN_WORDS: ReadonlySet<string> = new Set(['oven', 'ofen', 'four', 'horno', 'forno', 'herd'])

/** @returns true when the word says that the appliance itself is meant, as in "microwave oven" */
export function isOvenWord(folded: string): boolean {
  return OVEN_WORDS.has(folded) || (folded.startsWith('mikrowellen') && !folded.includes('leistung'))
}

const RATED_WORDS: ReadonlySet<string> = new Set(['rated', 'nennleistung', 'total', 'nominale', 'nominal'])
const POWER_WORDS: ReadonlySet<string> = new Set([
  'power',
  'leistung',
  'puissance',
  'potencia',
  'potenza',
  'p',
])

/** @returns `rated` for a word that begins a new statement, `power` for one that may, else undefined */
export function neutralOf(folded: string): 'rated' | 'power' | undefined {
  if (RATED_WORDS.has(folded)) return 'rated'
  return POWER_WORDS.has(folded) ? 'power' : undefined
}

const IDENTITY_WORDS: ReadonlySet<string> = new Set([
  ...['model', 'mod', 'modell', 'modele', 'modelo', 'type', 'typ', 'tipo', 'serial', 'serie', 'sn'],
  ...[
    'no',
    'nr',
    'num',
    'number',
    'nummer',
    'art',
    'artikel',
    'item',
    'ref',
    'lot',
    'batch',
    'date',
    'datum',
  ],
  ...['code', 'ean', 'fd', 'iec', 'en', 'ip', 'class'],
])

/** @returns true for a word after which a run with digits names something and measures nothing */
export function isIdentityWord(folded: string): boolean {
  return IDENTITY_WORDS.has(folded)
}

const GLUED_WORDS: ReadonlySet<string> = new Set(['ac', 'dc', 'ca', 'cc', 'max', 'x', 'to', 'bis', 'approx'])

/** @returns true for a word that may touch the number after it ("AC230V", "INPUT230V") */
export function mayTouchNumber(folded: string): boolean {
  if (folded === 'p1' || folded === 'p2') return true
  const role = roleOf(folded)
  return (
    GLUED_WORDS.has(folded) || role !== undefined || neutralOf(folded) !== undefined || isPowerFactor(folded)
  )
}

function isPowerFactor(folded: string): boolean {
  return UNITS.get(folded)?.quantity === 'power-factor'
}

/** @returns true for any word this reader gives a meaning */
export function isKnownWord(folded: string): boolean {
  return mayTouchNumber(folded) || folded === 'mw' || UNITS.has(folded)
}
