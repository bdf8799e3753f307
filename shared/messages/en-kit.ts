import type { CartFindingValues } from '../../core/advice/cart-findings.ts'
import type { KitRole } from '../../core/advice/vocabulary.ts'
import type { ConnectionKind } from '../../core/range/vocabulary.ts'
import type { Catalogue } from './catalogue.ts'
import type { Formats } from './formats.ts'
import { en as words } from './words.ts'

type CartWriters = { readonly [C in keyof CartFindingValues]: Catalogue['findings'][C] }

const CONNECTORS: Readonly<Record<ConnectionKind, string>> = {
  'vehicle-socket': 'a lead for the vehicle socket',
  'quick-connector': 'a quick connector',
  'battery-terminals': 'a set of lugs for the battery terminals',
}

const ROLES: Readonly<Record<KitRole, string>> = {
  inverter: 'inverter',
  cable: 'cable',
  fuse: 'fuse',
  connector: 'connector',
  battery: 'battery',
}

/** Sentences about a cart, in English. */
export const cartFindingsEn: CartWriters = {
  'inverter-missing': (v) => `There is no inverter in the cart.${instead(v, 'would do')}`,
  'unit-voltage-mismatch': (v, f) =>
    `${v.sku} is for a ${f.volts(v.inputNominalV)} battery; yours is ${f.volts(v.supplyNominalV)}.${instead(v)}`,
  'battery-string-mismatch': (v, f) =>
    `${f.number(v.quantity)} × ${v.sku} (${f.volts(v.blockV)}) can't make a ${f.volts(v.wantedV)} battery without ` +
    `any left over.${instead(v)}`,
  'unlike-batteries': (v) =>
    `${v.sku} and ${v.otherSku} are different batteries: never join them in series or in parallel. Take one model.`,
  'too-many-strings': (v, f) =>
    `${f.number(v.strings)} strings of ${v.sku} side by side share the current badly; take larger batteries and at ` +
    `most ${f.number(v.mostStrings)} strings.`,
  'battery-missing': (v) => `There is no battery for ${v.sku} here, and none is stated.`,
  'battery-below-full-power': (v, f) =>
    `At full power the unit takes ${f.amps(v.currentA)}; the battery may give ${f.amps(v.limitA)}` +
    `${v.limitAssumed ? ' (its maker states no limit; a usual one is taken)' : ''}. Keep below that or take a larger one.`,
  'cut-off-below-battery': (v, f) =>
    `${v.sku} switches off at ${f.volts(v.cutOffV)}, lower than this battery should be taken (${f.volts(v.lowestV)}): ` +
    'watch the charge yourself, or fit a cut-off.',
  'cut-off-above-battery': (v, f) =>
    `${v.sku} switches off at ${f.volts(v.cutOffV)}, but this battery rests at ${f.volts(v.restingV)} with charge left: ` +
    'part of it stays out of reach.',
  'cable-missing': (v, f) =>
    `There is no battery cable for ${v.sku}: it takes a pair that carries ${f.amps(v.neededA)}.${instead(v)}`,
  'cable-too-thin': (v, f) =>
    `Cable ${v.sku} carries ${f.amps(v.ampacityA)}; ${f.amps(v.neededA)} are needed: it would overheat.${instead(v)}`,
  'cable-drop': (v, f) =>
    `Cable ${v.sku} loses ${f.percent(v.dropFraction)} of the voltage at full power; at most ` +
    `${f.percent(v.limitFraction)} should be lost.${instead(v)}`,
  'cable-too-short': (v, f) =>
    `Cable ${v.sku} is ${f.length(v.lengthM)} long; your way is ${f.length(v.routeM)}.${instead(v)}`,
  'fuse-missing': (v, f) =>
    `There is no fuse for ${v.sku}: it takes one from ${f.amps(v.minA)} to ${f.amps(v.maxA)} near the battery.` +
    instead(v),
  'fuse-too-small': (v, f) =>
    `Fuse ${v.sku} (${f.amps(v.ratingA)}) would blow in ordinary use: at least ${f.amps(v.minA)} are needed.${instead(v)}`,
  'fuse-too-large': (v, f) =>
    `Fuse ${v.sku} (${f.amps(v.ratingA)}) does not protect the cable, which carries ${f.amps(v.maxA)}.${instead(v)}`,
  'fuse-voltage-short': (v, f) =>
    `Fuse ${v.sku} is made for ${f.volts(v.voltageV)}; this battery reaches ${f.volts(v.requiredVoltageV)} while ` +
    `charging.${instead(v)}`,
  'fuse-breaking-short': (v, f) =>
    `Fuse ${v.sku} can break ${f.amps(v.breakingCapacityA)}; a short circuit at this battery may reach ` +
    `${f.amps(v.requiredBreakingCapacityA)}.${instead(v)}`,
  'connector-missing': (v, f) =>
    `${v.sku} takes ${CONNECTORS[v.kind]} that carries ${f.amps(v.neededA)}.${instead(v)}`,
  'connector-under-rated': (v, f) =>
    `Connector ${v.sku} carries ${f.amps(v.limitA)}; ${f.amps(v.neededA)} are needed.${instead(v)}`,
  'owned-unchecked': (v) => `Your own ${ROLES[v.role]} was not checked: compare it with the specification.`,
  'part-left-over': (v) => `${v.sku} is not needed for this unit; keep it out of this circuit.`,
}

function instead({ useSku }: { readonly useSku?: string }, verb = 'is right'): string {
  return useSku === undefined ? '' : ` ${useSku} ${verb}.`
}

/** Why a line is in the kit, in English. */
export const kitReasonsEn: Catalogue['kitReasons'] = {
  'smallest-that-fits': (v, f) =>
    `The smallest that fits: ${f.watts(v.requiredContinuousW)} are needed, it gives ${f.watts(v.continuousW)}.`,
  'unit-asked-for': (v, f) =>
    `The one you chose: ${f.watts(v.requiredContinuousW)} are needed, it gives ${f.watts(v.continuousW)}.`,
  'carries-full-power': (v, f) =>
    `Carries ${f.amps(v.ampacityA)}; the unit takes up to ${f.amps(v.worstCaseA)}, and ${f.percent(v.dropFraction)} of the ` +
    `voltage is lost over ${f.length(v.lengthM)}.`,
  'protects-cable': (v, f) =>
    `Carries the unit (${f.amps(v.minA)} with a margin) and protects the cable (${f.amps(v.maxA)}). Fit it near the battery.`,
  'joins-unit': (v, f) => `Carries what the unit takes, up to ${f.amps(v.connectorA)}.`,
  'lasts-plan': (v, f) =>
    `Lasts ${v.days === 1 ? 'your day' : `${f.number(v.days)} days`}: about ${f.ampHours(v.neededCapacityAh)} are needed, ` +
    `this is ${f.ampHours(v.capacityAh)}.`,
  'in-the-box': () => 'Comes with the unit.',
  'yours-does': () => 'Yours does.',
  'yours-unchecked': () => 'You have one: compare it with what is asked for here.',
  'box-unsuitable': () => 'The one in the box does not suit your way; this one does.',
  'yours-unsuitable': () => 'Yours does not suit; this one does.',
  'your-battery-too-small': (v, f) =>
    `Your battery does not carry this plan; ${f.ampHours(v.capacityAh)} do (about ${f.ampHours(v.neededCapacityAh)} are ` +
    'needed). Use it in place of yours: never join the two.',
  'none-in-range': () => 'We have none that suits: this is what it has to be.',
  'vehicle-battery-too-small': () =>
    "The vehicle's battery is too small for this; a socket lead won't change that.",
}

/** Why a cable of the kit is of another size than the circuit names, in English. */
export const kitNotesEn: Catalogue['kitNotes'] = {
  'hotter-insulation': (v, f) =>
    `This cable's insulation is rated ${f.celsius(v.insulationC)}, so ${v.size} does; a ` +
    `${f.celsius(v.otherInsulationC)} cable would have to be ${v.otherSize}.`,
  'cooler-insulation': (v, f) =>
    `This cable's insulation is rated ${f.celsius(v.insulationC)}, so it has to be ${v.size}; of a ` +
    `${f.celsius(v.otherInsulationC)} cable ${v.otherSize} would do.`,
  'next-size-we-have': (v) =>
    `${v.otherSize} is the least; of ours ${v.size} suits best, and more copper does no harm.`,
  'does-too': (v) =>
    `${v.size} does as well as the ${v.otherSize} named for the circuit: both carry what the fuse lets through.`,
  'smaller-fuse': (v, f) =>
    `Behind this kit's ${f.amps(v.ratingA)} fuse ${v.size} does; behind ${f.amps(v.otherRatingA)} it would have to be ` +
    `${v.otherSize}.`,
  'for-this-kit': (v) =>
    `With the battery and the fuse of this kit it is ${v.size} instead of ${v.otherSize}.`,
}

/** What a part must be, in English. */
export const kitSpecificationsEn: Catalogue['kitSpecifications'] = {
  inverter: (s, f) =>
    `${s.waveform === 'pure-sine' ? 'Pure sine wave' : 'Modified sine wave'} inverter, ${f.volts(s.inputNominalV)}, ` +
    `${f.watts(s.continuousW)} continuous`,
  cable: (s, f) =>
    `${s.pairs > 1 ? `${f.number(s.pairs)} pairs of copper battery cable in parallel, together` : 'Pair of copper battery cables,'} ` +
    `${f.amps(s.carriesA)} or more, ${f.length(s.lengthM)} or longer, at most ${f.percent(s.dropLimitFraction)} lost` +
    (s.standard === undefined ? '' : ` (${s.standard} does)`),
  fuse: (s, f) =>
    `Fuse with holder, ${f.amps(s.minA)} to ${f.amps(s.maxA)}, ${f.volts(s.voltageV)} d.c. or more, breaks ` +
    `${f.amps(s.breakingCapacityA)} or more`,
  connector: (s, f) => `${upper(CONNECTORS[s.kind])}, ${f.amps(s.limitA)} or more`,
  battery: (s, f) =>
    `${upper(words.chemistries[s.chemistry])} battery, ${f.volts(s.nominalV)}, ${f.ampHours(s.capacityAh)} in all` +
    joinedAs(s, f),
}

function joinedAs(
  { inSeries = 1, inParallel = 1 }: { readonly inSeries?: number; readonly inParallel?: number },
  f: Formats,
): string {
  const ways = [
    ...(inSeries > 1 ? [`${f.number(inSeries)} in series`] : []),
    ...(inParallel > 1 ? [`${f.number(inParallel)} ${inSeries > 1 ? 'such strings' : ''} in parallel`] : []),
  ]
  return ways.length === 0 ? '' : `: ${ways.join(', ').replaceAll('  ', ' ')}`
}

function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
