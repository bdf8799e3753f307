import type { ConnectionKind } from '../../core/range/vocabulary.ts'
import type { Catalogue, LoadName } from './catalogue.ts'
import { wordsEs as words } from './es-words.ts'
import type { Formats } from './formats.ts'
import { capital, formFor, listed, uncapital } from './grammar.ts'

const CONNECTED: Readonly<Record<ConnectionKind, string>> = {
  'vehicle-socket': 'Enchufado a la toma del vehículo',
  'quick-connector': 'Con un conector rápido',
  'battery-terminals': 'Conectado a los bornes de la batería',
}

/** Spanish sentences on what-ifs and label limits. */
export const whatIfsEs: Pick<Catalogue, 'whatIfs' | 'whatIfGain' | 'labelLimit'> = {
  whatIfs: {
    'take-turns': ({ loads, units }, f) => `Si se usan por turnos ${named(loads, f)}, ${enough(units, f)}`,
    'lower-rating': ({ loads, units, values }, f) =>
      `Con ${f.watts(values.limitW)} como máximo en la placa (${named(loads, f)}), ${enough(units, f)}`,
    'leave-out': ({ loads, units }, f) => `Sin ${named(loads, f)}, ${enough(units, f)}`,
    'other-connection': ({ units, values }, f) => `${CONNECTED[values.connection]}, ${enough(units, f)}`,
    'shorter-cable': ({ units, values }, f) =>
      `Con ${f.metres(values.oneWayLengthM)} de cable como máximo hasta la batería, ${enough(units, f)}`,
    'larger-wire': ({ units, values }, f) =>
      `Con cable ${values.cable === undefined ? 'más grueso' : `de ${values.cable}`} en lugar de los cables de la caja, ` +
      enough(units, f),
    'higher-voltage': ({ units, values }, f) =>
      `Con una batería de ${f.volts(values.nominalV)}, ${enough(units, f)}`,
    'pure-sine': ({ units }, f) => `Con onda sinusoidal pura: ${listed(units, f)}`,
    'larger-battery': ({ units, values }, f) =>
      `Con una batería de ${f.ampHours(values.capacityAh)}, ${enough(units, f)}`,
    'other-chemistry': ({ units, values }, f) =>
      `Con una ${words.chemistries[values.chemistry]} de la misma capacidad, ${enough(units, f)}`,
    'two-units': ({ loads, units: [first = '', second = ''] }, f) =>
      `Dos inversores: ${second} para ${named(loads, f)}, ${first} para lo demás`,
    'soft-start': ({ loads, units, values }, f) =>
      `Con ${f.watts(values.limitW)} como máximo al arrancar (${named(loads, f)}, con un arrancador suave o un modelo más ` +
      `suave), ${enough(units, f)}`,
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

function enough(units: readonly string[], f: Formats): string {
  return `${formFor(units.length, { one: 'basta', other: 'bastan' }, f)} ${listed(units, f)}`
}
