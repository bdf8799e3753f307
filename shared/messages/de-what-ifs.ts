import type { ConnectionKind } from '../../core/range/vocabulary.ts'
import type { Catalogue, LoadName } from './catalogue.ts'
import { wordsDe as words } from './de-words.ts'
import type { Formats } from './formats.ts'
import { formFor, listed } from './grammar.ts'

const CONNECTED: Readonly<Record<ConnectionKind, string>> = {
  'vehicle-socket': 'An der Steckdose des Fahrzeugs',
  'quick-connector': 'Mit einem Schnellverbinder',
  'battery-terminals': 'Mit Anschluss an den Batteriepolen',
}

/** German sentences on what-ifs and label limits. */
export const whatIfsDe: Pick<Catalogue, 'whatIfs' | 'whatIfGain' | 'labelLimit'> = {
  whatIfs: {
    'take-turns': ({ loads, units }, f) => `Laufen ${named(loads, f)} nur abwechselnd, ${enough(units, f)}`,
    'lower-rating': ({ loads, units, values }, f) =>
      `Mit höchstens ${f.watts(values.limitW)} auf dem Typenschild (${named(loads, f)}) ${enough(units, f)}`,
    'leave-out': ({ loads, units }, f) => `Ohne ${named(loads, f)} ${enough(units, f)}`,
    'other-connection': ({ units, values }, f) => `${CONNECTED[values.connection]} ${enough(units, f)}`,
    'shorter-cable': ({ units, values }, f) =>
      `Mit höchstens ${f.metres(values.oneWayLengthM)} Kabel bis zur Batterie ${enough(units, f)}`,
    'larger-wire': ({ units, values }, f) =>
      `Mit ${values.cable === undefined ? 'dickerem Kabel' : `Kabel ${values.cable}`} statt der beiliegenden Leitungen ` +
      `${enough(units, f)}`,
    'higher-voltage': ({ units, values }, f) =>
      `Mit einer Batterie mit ${f.volts(values.nominalV)} ${enough(units, f)}`,
    'pure-sine': ({ units }, f) => `Mit reiner Sinuswelle: ${listed(units, f)}`,
    'larger-battery': ({ units, values }, f) =>
      `Mit einer Batterie von ${f.ampHours(values.capacityAh)} ${enough(units, f)}`,
    'other-chemistry': ({ units, values }, f) =>
      `Mit einer gleich großen Batterie anderer Art (${words.chemistries[values.chemistry]}) ${enough(units, f)}`,
    'two-units': ({ loads, units: [first = '', second = ''] }, f) =>
      `Zwei Wechselrichter: ${second} für ${named(loads, f)}, ${first} für das Übrige`,
    'soft-start': ({ loads, units, values }, f) =>
      `Mit höchstens ${f.watts(values.limitW)} beim Anlaufen (${named(loads, f)}, mit Sanftanlauf oder als sanfteres ` +
      `Modell) ${enough(units, f)}`,
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

function enough(units: readonly string[], f: Formats): string {
  return `${formFor(units.length, { one: 'reicht', other: 'reichen' }, f)} ${listed(units, f)}`
}
