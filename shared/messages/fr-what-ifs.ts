import type { ConnectionKind } from '../../core/range/vocabulary.ts'
import type { Catalogue, LoadName } from './catalogue.ts'
import type { Formats } from './formats.ts'
import { wordsFr as words } from './fr-words.ts'
import { capital, formFor, listed, uncapital } from './grammar.ts'

const CONNECTED: Readonly<Record<ConnectionKind, string>> = {
  'vehicle-socket': 'Branché sur la prise du véhicule',
  'quick-connector': 'Avec un connecteur rapide',
  'battery-terminals': 'Raccordé aux bornes de la batterie',
}

/** French sentences on what-ifs and label limits. */
export const whatIfsFr: Pick<Catalogue, 'whatIfs' | 'whatIfGain' | 'labelLimit'> = {
  whatIfs: {
    'take-turns': ({ loads, units }, f) =>
      `En faisant fonctionner à tour de rôle ${named(loads, f)}, ${enough(units, f)}`,
    'lower-rating': ({ loads, units, values }, f) =>
      `Avec ${f.watts(values.limitW)} au plus sur la plaque (${named(loads, f)}), ${enough(units, f)}`,
    'leave-out': ({ loads, units }, f) => `Sans ${named(loads, f)}, ${enough(units, f)}`,
    'other-connection': ({ units, values }, f) => `${CONNECTED[values.connection]}, ${enough(units, f)}`,
    'shorter-cable': ({ units, values }, f) =>
      `Avec ${f.metres(values.oneWayLengthM)} de câble au plus jusqu'à la batterie, ${enough(units, f)}`,
    'larger-wire': ({ units, values }, f) =>
      `Avec un câble ${values.cable === undefined ? 'plus gros' : `de ${values.cable}`} au lieu des câbles fournis, ` +
      enough(units, f),
    'higher-voltage': ({ units, values }, f) =>
      `Avec une batterie de ${f.volts(values.nominalV)}, ${enough(units, f)}`,
    'pure-sine': ({ units }, f) => `Avec une onde sinusoïdale pure : ${listed(units, f)}`,
    'larger-battery': ({ units, values }, f) =>
      `Avec une batterie de ${f.ampHours(values.capacityAh)}, ${enough(units, f)}`,
    'other-chemistry': ({ units, values }, f) =>
      `Avec une ${words.chemistries[values.chemistry]} de même capacité, ${enough(units, f)}`,
    'two-units': ({ loads, units: [first = '', second = ''] }, f) =>
      `Deux convertisseurs : ${second} pour ${named(loads, f)}, ${first} pour le reste`,
    'soft-start': ({ loads, units, values }, f) =>
      `Avec ${f.watts(values.limitW)} au plus au démarrage (${named(loads, f)}, avec un démarreur progressif ou un modèle ` +
      `plus doux), ${enough(units, f)}`,
  },
  whatIfGain: (clause, { price, priceDifference, currency, runtimeHours, care }, f) => {
    const cost = priceDifference === undefined ? f.money(price, currency) : difference(priceDifference)
    const lasts =
      runtimeHours === undefined ? '' : ` Fonctionne environ ${f.hours(runtimeHours)} avec tout allumé.`
    return `${clause}${cost === '' ? '' : ` : ${cost}`}.${lasts}${care ? ' Quelques remarques demeurent.' : ''}`

    function difference(amount: string): string {
      const value = Number(amount)
      if (value === 0) return ''
      return `${f.money(amount.replace('-', ''), currency)} de ${value < 0 ? 'moins' : 'plus'}`
    }
  },
  labelLimit: ({ load, limitW, cookingW }, f) =>
    `${load.own ? load.name : capital(load.name)} : tout modèle jusqu'à ${f.watts(limitW)} absorbés sur sa plaque convient ` +
    'à ce convertisseur.' +
    (cookingW === undefined ? '' : ` Cela fait environ ${f.watts(cookingW)} de puissance de cuisson.`),
}

/** Without articles, which would need each name's gender; a name of the shopper's own stands as it is. */
function named(loads: readonly LoadName[], f: Formats): string {
  return listed(
    loads.map(({ name, own }) => (own ? name : uncapital(name))),
    f,
  )
}

function enough(units: readonly string[], f: Formats): string {
  return `${listed(units, f)} ${formFor(units.length, { one: 'suffit', other: 'suffisent' }, f)}`
}
