import type { ConnectionKind } from '../../core/range/vocabulary.ts'
import type { Catalogue, LoadName } from './catalogue.ts'
import { wordsEs as words } from './es-words.ts'
import type { Formats } from './formats.ts'
import { capital, formFor, listed, uncapital } from './grammar.ts'
import { type Conditions, conditionsOf } from './what-if-steps.ts'

const CONNECTED: Readonly<Record<ConnectionKind, string>> = {
  'vehicle-socket': 'Enchufado a la toma del vehículo',
  'quick-connector': 'Con un conector rápido',
  'battery-terminals': 'Conectado a los bornes de la batería',
}

/** What has to be done, as the beginning of a sentence. */
const CONDITIONS: Conditions = {
  'take-turns': ({ loads }, f) => `Si se usan por turnos ${named(loads, f)}`,
  'lower-rating': ({ loads, values }, f) =>
    `Con ${f.watts(values.limitW)} como máximo en la placa (${named(loads, f)})`,
  'leave-out': ({ loads }, f) => `Sin ${named(loads, f)}`,
  'other-connection': ({ values }) => `${CONNECTED[values.connection]}`,
  'higher-voltage': ({ values }, f) => `Con una batería de ${f.volts(values.nominalV)}`,
  'larger-battery': ({ values }, f) => `Con una batería de ${f.ampHours(values.capacityAh)}`,
  'other-battery': ({ nominalV, capacityAh }, f) =>
    `Con una batería de ${f.volts(nominalV)} y ${f.ampHours(capacityAh)}`,
  'other-chemistry': ({ values }) => `Con una ${words.chemistries[values.chemistry]} de la misma capacidad`,
  'soft-start': ({ loads, values }, f) =>
    `Con ${f.watts(values.limitW)} como máximo al arrancar (${named(loads, f)}, con un arrancador suave o un modelo más ` +
    `suave)`,
}

/** Spanish sentences on what-ifs and label limits. */
export const whatIfsEs: Pick<Catalogue, 'whatIfs' | 'whatIfGain' | 'labelLimit'> = {
  whatIfs: {
    'take-turns': (told, f) => does(CONDITIONS['take-turns'](told, f), told.units, f),
    'lower-rating': (told, f) => does(CONDITIONS['lower-rating'](told, f), told.units, f),
    'leave-out': (told, f) => does(CONDITIONS['leave-out'](told, f), told.units, f),
    'other-connection': (told, f) => does(CONDITIONS['other-connection'](told, f), told.units, f),
    'shorter-cable': ({ units, values }, f) =>
      `Con ${f.length(values.oneWayLengthM)} de cable como máximo hasta la batería, ${enough(units, f)}`,
    'larger-wire': ({ units, values }, f) =>
      `Con cable ${values.cable === undefined ? 'más grueso' : `de ${values.cable}`} en lugar de los cables de la caja, ` +
      enough(units, f),
    'higher-voltage': (told, f) => does(CONDITIONS['higher-voltage'](told, f), told.units, f),
    'pure-sine': ({ units }, f) => `Con onda sinusoidal pura: ${listed(units, f)}`,
    'larger-battery': (told, f) => does(CONDITIONS['larger-battery'](told, f), told.units, f),
    'other-chemistry': (told, f) => does(CONDITIONS['other-chemistry'](told, f), told.units, f),
    'two-units': ({ loads, units: [first = '', second = ''] }, f) =>
      `Dos inversores: ${second} para ${named(loads, f)}, ${first} para lo demás`,
    'soft-start': (told, f) => does(CONDITIONS['soft-start'](told, f), told.units, f),
    combined: (told, f) => does(conditionsOf(told, CONDITIONS, f).join(' y '), told.units, f),
  },
  whatIfGain: (clause, { price, priceDifference, currency, runtimeHours, care }, f) => {
    const cost = priceDifference === undefined ? f.money(price, currency) : difference(priceDifference)
    const lasts =
      runtimeHours === undefined ? '' : ` Funciona unas ${f.hours(runtimeHours)} con todo encendido.`
    return `${clause}${cost === '' ? '' : `: ${cost}`}.${lasts}${care ? ' Quedan algunas observaciones.' : ''}`

    function difference(amount: string): string {
      const value = Number(amount)
      if (value === 0) return ''
      return `${f.money(amount.replace('-', ''), currency)} ${value < 0 ? 'menos' : 'más'}`
    }
  },
  labelLimit: ({ load, limitW, cookingW }, f) =>
    `${load.own ? load.name : capital(load.name)}: cualquiera de hasta ${f.watts(limitW)} absorbidos según su placa sirve ` +
    'con este inversor.' +
    (cookingW === undefined ? '' : ` Equivale más o menos a ${f.watts(cookingW)} de potencia de cocción.`),
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
  return `${formFor(units.length, { one: 'basta', other: 'bastan' }, f)} ${listed(units, f)}`
}
