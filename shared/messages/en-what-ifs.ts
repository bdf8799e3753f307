import type { ConnectionKind } from '../../core/range/vocabulary.ts'
import type { Catalogue, LoadName } from './catalogue.ts'
import { type Conditions, conditionsOf } from './what-if-steps.ts'
import { en as words } from './words.ts'

const CONNECTED: Readonly<Record<ConnectionKind, string>> = {
  'vehicle-socket': 'Plugged into a vehicle socket',
  'quick-connector': 'With a quick connector',
  'battery-terminals': 'Connected at the battery terminals',
}

/** What has to be done, as the beginning of a sentence. */
const CONDITIONS: Conditions = {
  'take-turns': ({ loads }) => `If ${named(loads)} take turns`,
  'lower-rating': ({ loads, values }, f) =>
    `With ${named(loads)} of at most ${f.watts(values.limitW)} on the label`,
  'leave-out': ({ loads }) => `Without ${named(loads)}`,
  'other-connection': ({ values }) => `${CONNECTED[values.connection]}`,
  'higher-voltage': ({ values }, f) => `With a ${f.volts(values.nominalV)} battery`,
  'larger-battery': ({ values }, f) => `With a battery of ${f.ampHours(values.capacityAh)}`,
  'other-battery': ({ nominalV, capacityAh }, f) =>
    `With a ${f.volts(nominalV)} battery of ${f.ampHours(capacityAh)}`,
  'other-chemistry': ({ values }) => `With a ${words.chemistries[values.chemistry]} battery of the same size`,
  'soft-start': ({ loads, values }, f) =>
    `If ${named(loads)} takes at most ${f.watts(values.limitW)} to start (a soft starter or a gentler model)`,
}

/** English sentences on what-ifs and label limits. */
export const whatIfsEn: Pick<Catalogue, 'whatIfs' | 'whatIfGain' | 'labelLimit'> = {
  whatIfs: {
    'take-turns': (told, f) => does(CONDITIONS['take-turns'](told, f), told.units),
    'lower-rating': (told, f) => does(CONDITIONS['lower-rating'](told, f), told.units),
    'leave-out': (told, f) => does(CONDITIONS['leave-out'](told, f), told.units),
    'other-connection': (told, f) => does(CONDITIONS['other-connection'](told, f), told.units),
    'shorter-cable': ({ units, values }, f) =>
      `At most ${f.length(values.oneWayLengthM)} of cable from the battery, ${the(units)} will do`,
    'larger-wire': ({ units, values }) =>
      `With ${values.cable ?? 'larger'} cable instead of the leads in the box, ${the(units)} will do`,
    'higher-voltage': (told, f) => does(CONDITIONS['higher-voltage'](told, f), told.units),
    'pure-sine': ({ units }) => `With a pure sine wave: ${the(units)}`,
    'larger-battery': (told, f) => does(CONDITIONS['larger-battery'](told, f), told.units),
    'other-chemistry': (told, f) => does(CONDITIONS['other-chemistry'](told, f), told.units),
    'two-units': ({ loads, units: [first = '', second = ''] }) =>
      `Two units: the ${second} for ${named(loads)}, the ${first} for the rest`,
    'soft-start': (told, f) => does(CONDITIONS['soft-start'](told, f), told.units),
    combined: (told, f) => does(conditionsOf(told, CONDITIONS, f).join(' and '), told.units),
  },
  whatIfGain: (clause, { price, priceDifference, currency, runtimeHours, care }, f) => {
    const cost = priceDifference === undefined ? f.money(price, currency) : difference(priceDifference)
    const time =
      runtimeHours !== undefined && (runtimeHours < 1 ? f.minutes(runtimeHours * 60) : f.hours(runtimeHours))
    const lasts = time === false ? '' : ` Runs about ${time} with all on.`
    return `${clause}${cost === '' ? '' : `: ${cost}`}.${lasts}${care ? ' Some notes remain.' : ''}`

    function difference(amount: string): string {
      const value = Number(amount)
      if (value === 0) return ''
      return `${f.money(amount.replace('-', ''), currency)} ${value < 0 ? 'less' : 'more'}`
    }
  },
  labelLimit: ({ load, limitW, cookingW }, f) => {
    const limit = `${capital(named([load]))}: any with up to ${f.watts(limitW)} input on its label fits this unit`
    return cookingW === undefined
      ? `${limit}.`
      : `${limit}. That is roughly ${f.watts(cookingW)} of cooking power.`
  },
}

/** What a condition makes enough. */
function does(condition: string, units: readonly string[]): string {
  return `${condition}, ${the(units)} will do`
}

/** `the kettle and the toaster`; a name of the shopper's own stands as it is. */
function named(loads: readonly LoadName[]): string {
  return listed(loads.map(({ name, own }) => (own ? name : `the ${uncapital(name)}`)))
}

function the(units: readonly string[]): string {
  return listed(units.map((name) => `the ${name}`))
}

function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? ''
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`
}

/** Leaves abbreviations such as `PA speaker` alone. */
function uncapital(name: string): string {
  return /^[A-Z][a-z]/.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
