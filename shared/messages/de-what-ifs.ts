import type { ConnectionKind } from '../../core/range/vocabulary.ts'
import type { Catalogue, LoadName } from './catalogue.ts'
import { wordsDe as words } from './de-words.ts'
import type { Formats } from './formats.ts'
import { formFor, listed } from './grammar.ts'
import { type Conditions, conditionsOf } from './what-if-steps.ts'

const CONNECTED: Readonly<Record<ConnectionKind, string>> = {
  'vehicle-socket': 'An der Steckdose des Fahrzeugs',
  'quick-connector': 'Mit einem Schnellverbinder',
  'battery-terminals': 'Mit Anschluss an den Batteriepolen',
}

/** What has to be done, as the beginning of a sentence. */
const CONDITIONS: Conditions = {
  'take-turns': ({ loads }, f) => `Laufen ${named(loads, f)} nur abwechselnd`,
  'lower-rating': ({ loads, values }, f) =>
    `Mit höchstens ${f.watts(values.limitW)} auf dem Typenschild (${named(loads, f)})`,
  'leave-out': ({ loads }, f) => `Ohne ${named(loads, f)}`,
  'other-connection': ({ values }) => `${CONNECTED[values.connection]}`,
  'higher-voltage': ({ values }, f) => `Mit einer Batterie mit ${f.volts(values.nominalV)}`,
  'larger-battery': ({ values }, f) => `Mit einer Batterie von ${f.ampHours(values.capacityAh)}`,
  'other-battery': ({ nominalV, capacityAh }, f) =>
    `Mit einer Batterie mit ${f.volts(nominalV)} und ${f.ampHours(capacityAh)}`,
  'other-chemistry': ({ values }) =>
    `Mit einer gleich großen Batterie anderer Art (${words.chemistries[values.chemistry]})`,
  'soft-start': ({ loads, values }, f) =>
    `Mit höchstens ${f.watts(values.limitW)} beim Anlaufen (${named(loads, f)}, mit Sanftanlauf oder als sanfteres ` +
    `Modell)`,
}

/** German sentences on what-ifs and label limits. */
export const whatIfsDe: Pick<Catalogue, 'whatIfs' | 'whatIfGain' | 'labelLimit'> = {
  whatIfs: {
    'take-turns': (told, f) => does(CONDITIONS['take-turns'](told, f), told.units, f),
    'lower-rating': (told, f) => does(CONDITIONS['lower-rating'](told, f), told.units, f),
    'leave-out': (told, f) => does(CONDITIONS['leave-out'](told, f), told.units, f),
    'other-connection': (told, f) => does(CONDITIONS['other-connection'](told, f), told.units, f),
    'shorter-cable': ({ units, values }, f) =>
      `Mit höchstens ${f.length(values.oneWayLengthM)} Kabel bis zur Batterie ${enough(units, f)}`,
    'larger-wire': ({ units, values }, f) =>
      `Mit ${values.cable === undefined ? 'dickerem Kabel' : `Kabel ${values.cable}`} statt der beiliegenden Leitungen ` +
      `${enough(units, f)}`,
    'higher-voltage': (told, f) => does(CONDITIONS['higher-voltage'](told, f), told.units, f),
    'pure-sine': ({ units }, f) => `Mit reiner Sinuswelle: ${listed(units, f)}`,
    'larger-battery': (told, f) => does(CONDITIONS['larger-battery'](told, f), told.units, f),
    'other-chemistry': (told, f) => does(CONDITIONS['other-chemistry'](told, f), told.units, f),
    'two-units': ({ loads, units: [first = '', second = ''] }, f) =>
      `Zwei Wechselrichter: ${second} für ${named(loads, f)}, ${first} für das Übrige`,
    'soft-start': (told, f) => does(CONDITIONS['soft-start'](told, f), told.units, f),
    combined: (told, f) => does(conditionsOf(told, CONDITIONS, f).join(' und '), told.units, f),
  },
  whatIfGain: (clause, { price, priceDifference, currency, runtimeHours, care }, f) => {
    const cost = priceDifference === undefined ? f.money(price, currency) : difference(priceDifference)
    const lasts =
      runtimeHours === undefined ? '' : ` Läuft etwa ${f.hours(runtimeHours)}, wenn alles eingeschaltet ist.`
    return `${clause}${cost === '' ? '' : `: ${cost}`}.${lasts}${care ? ' Einige Hinweise bleiben.' : ''}`

    function difference(amount: string): string {
      const value = Number(amount)
      if (value === 0) return ''
      return `${f.money(amount.replace('-', ''), currency)} ${value < 0 ? 'weniger' : 'mehr'}`
    }
  },
  labelLimit: ({ load, limitW, cookingW }, f) =>
    `${load.name}: Jedes Gerät mit bis zu ${f.watts(limitW)} Aufnahme auf dem Typenschild passt zu diesem Wechselrichter.` +
    (cookingW === undefined ? '' : ` Das sind ungefähr ${f.watts(cookingW)} Mikrowellenleistung.`),
}

/** Without articles: German nouns keep their capital, and a name of the shopper's own stands as it is. */
function named(loads: readonly LoadName[], f: Formats): string {
  return listed(
    loads.map(({ name }) => name),
    f,
  )
}

/** What a condition makes enough; one that is a clause of its own ends with a comma. */
function does(condition: string, units: readonly string[], f: Formats): string {
  const comma = condition.startsWith('Laufen') ? ',' : ''
  return `${condition}${comma} ${enough(units, f)}`
}

function enough(units: readonly string[], f: Formats): string {
  return `${formFor(units.length, { one: 'reicht', other: 'reichen' }, f)} ${listed(units, f)}`
}
