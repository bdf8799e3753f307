import type { ConnectionKind } from '../../core/range/vocabulary.ts'
import type { Catalogue, LoadName } from './catalogue.ts'
import type { Formats } from './formats.ts'
import { wordsFr as words } from './fr-words.ts'
import { capital, formFor, listed, uncapital } from './grammar.ts'
import { type Conditions, conditionsOf } from './what-if-steps.ts'

const CONNECTED: Readonly<Record<ConnectionKind, string>> = {
  'vehicle-socket': 'Branché sur la prise du véhicule',
  'quick-connector': 'Avec un connecteur rapide',
  'battery-terminals': 'Raccordé aux bornes de la batterie',
}

/** What has to be done, as the beginning of a sentence. */
const CONDITIONS: Conditions = {
  'take-turns': ({ loads }, f) => `En faisant fonctionner à tour de rôle ${named(loads, f)}`,
  'lower-rating': ({ loads, values }, f) =>
    `Avec ${f.watts(values.limitW)} au plus sur la plaque (${named(loads, f)})`,
  'leave-out': ({ loads }, f) => `Sans ${named(loads, f)}`,
  'other-connection': ({ values }) => `${CONNECTED[values.connection]}`,
  'higher-voltage': ({ values }, f) => `Avec une batterie de ${f.volts(values.nominalV)}`,
  'larger-battery': ({ values }, f) => `Avec une batterie de ${f.ampHours(values.capacityAh)}`,
  'other-battery': ({ nominalV, capacityAh }, f) =>
    `Avec une batterie de ${f.volts(nominalV)} et ${f.ampHours(capacityAh)}`,
  'other-chemistry': ({ values }) => `Avec une ${words.chemistries[values.chemistry]} de même capacité`,
  'soft-start': ({ loads, values }, f) =>
    `Avec ${f.watts(values.limitW)} au plus au démarrage (${named(loads, f)}, avec un démarreur progressif ou un modèle ` +
    `plus doux)`,
}

/** French sentences on what-ifs and label limits. */
export const whatIfsFr: Pick<Catalogue, 'whatIfs' | 'whatIfGain' | 'labelLimit'> = {
  whatIfs: {
    'take-turns': (told, f) => does(CONDITIONS['take-turns'](told, f), told.units, f),
    'lower-rating': (told, f) => does(CONDITIONS['lower-rating'](told, f), told.units, f),
    'leave-out': (told, f) => does(CONDITIONS['leave-out'](told, f), told.units, f),
    'other-connection': (told, f) => does(CONDITIONS['other-connection'](told, f), told.units, f),
    'shorter-cable': ({ units, values }, f) =>
      `Avec ${f.length(values.oneWayLengthM)} de câble au plus jusqu'à la batterie, ${enough(units, f)}`,
    'larger-wire': ({ units, values }, f) =>
      `Avec un câble ${values.cable === undefined ? 'plus gros' : `de ${values.cable}`} au lieu des câbles fournis, ` +
      enough(units, f),
    'higher-voltage': (told, f) => does(CONDITIONS['higher-voltage'](told, f), told.units, f),
    'pure-sine': ({ units }, f) => `Avec une onde sinusoïdale pure : ${listed(units, f)}`,
    'larger-battery': (told, f) => does(CONDITIONS['larger-battery'](told, f), told.units, f),
    'other-chemistry': (told, f) => does(CONDITIONS['other-chemistry'](told, f), told.units, f),
    'two-units': ({ loads, units: [first = '', second = ''] }, f) =>
      `Deux convertisseurs : ${second} pour ${named(loads, f)}, ${first} pour le reste`,
    'soft-start': (told, f) => does(CONDITIONS['soft-start'](told, f), told.units, f),
    combined: (told, f) => does(conditionsOf(told, CONDITIONS, f).join(' et '), told.units, f),
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

/** What a condition makes enough. */
function does(condition: string, units: readonly string[], f: Formats): string {
  return `${condition}, ${enough(units, f)}`
}

function enough(units: readonly string[], f: Formats): string {
  return `${listed(units, f)} ${formFor(units.length, { one: 'suffit', other: 'suffisent' }, f)}`
}
