import type { RatingNoteCode } from '../../core/loads/rate-load.ts'
import type { ApplianceCategory } from '../../core/loads/vocabulary.ts'
import type { InverterFeature } from '../../core/range/vocabulary.ts'
import type { Catalogue } from './catalogue.ts'
import { cartFindingsEn, kitNotesEn, kitReasonsEn, kitSpecificationsEn } from './en-kit.ts'
import { ratingsEn } from './en-ratings.ts'
import { whatIfsEn } from './en-what-ifs.ts'
import { workingEn } from './en-working.ts'
import { en as words } from './words.ts'

/** English. */
export const en: Catalogue = {
  ...ratingsEn,
  ...whatIfsEn,
  kitReasons: kitReasonsEn,
  kitNotes: kitNotesEn,
  kitSpecifications: kitSpecificationsEn,
  useInstead: (sku) => `${sku} is right.`,
  findings: {
    ...cartFindingsEn,
    'continuous-power-short': (v, f) =>
      `Your things draw ${f.watts(v.runningW)} together. With ${f.percent(v.headroomFraction)} kept free that takes ` +
      `${f.watts(v.requiredContinuousW)}; this unit gives ${f.watts(v.continuousW)}.`,
    'apparent-power-short': (v, f) =>
      `Your things take ${f.voltAmperes(v.runningVA)} (volts times amps, more than their watts); this unit gives ` +
      `${f.voltAmperes(v.continuousVA)}.`,
    'starting-power-short': (v, f) =>
      `Starting takes ${f.watts(v.startingW)} for a moment; this unit's peak is ${f.watts(v.surgeW)}.`,
    'surge-time-short': (v, f) =>
      `Starting takes ${f.watts(v.startingW)} for ${f.seconds(v.startingS)}; this unit holds more than ` +
      `${f.watts(v.continuousW)} for ${f.seconds(v.surgeS)} only.`,
    'wave-form-unsuitable': () =>
      'This unit gives a modified sine wave; something on your list needs a pure sine wave.',
    'wave-form-care': () =>
      'This unit gives a modified sine wave. Something on your list may hum, run warm or lose power on it; a pure ' +
      'sine wave unit is the better choice.',
    'output-voltage-mismatch': (v, f) =>
      `This unit gives ${f.volts(v.outputV)}; your things need ${f.volts(v.mainsV)}.`,
    'output-frequency-mismatch': (v, f) =>
      `This unit gives ${f.hertz(v.outputHz)}; your things need ${f.hertz(v.mainsHz)}.`,
    'input-voltage-mismatch': (v, f) =>
      `This unit is for a ${f.volts(v.inputNominalV)} battery; yours is ${f.volts(v.supplyNominalV)}.`,
    'connection-limit': (v, f) =>
      `${words.connections[v.kind]} carries ${f.amps(v.limitA)}, about ${f.watts(v.limitW)} of appliances. Yours ` +
      `draw ${f.watts(v.runningW)}, up to ${f.amps(v.currentA)} from the battery.`,
    'connection-below-full-power': (v, f) =>
      `${words.connections[v.kind]} carries ${f.amps(v.limitA)}: keep to about ${f.watts(v.limitW)} on it, though the ` +
      `unit could give ${f.watts(v.continuousW)}.`,
    'outlets-short': (v, f) =>
      `${f.number(v.needed)} plugs at once, ${f.number(v.outlets)} on this unit: you need a socket strip.`,
    'feature-missing': (v) => `It lacks what you asked for: ${v.features.map(featureName).join(', ')}.`,
    'out-of-stock': () => 'Out of stock.',
    'over-price': (v, f) =>
      `${f.money(v.price, v.currency)} is over your ${f.money(v.maxPrice, v.currency)}.`,
    'not-advised': (v) =>
      `We do not advise running this from a battery inverter: ${v.categories.map(categoryName).join(', ')}. ` +
      'A generator or a mains hook-up is the usual way.',
    'figure-assumed': (v, f) => `${words.figures[v.figure]} is not stated; taken as ${f.number(v.value)}.`,
    'rating-estimated': (v, f) =>
      `Power estimated at up to ${f.watts(v.sizingW)}. The rating plate tells exactly.`,
    'rating-read': (v, f) => ratingsEn.ratingNotes[v.note as RatingNoteCode](v, f),
    'minutes-assumed': (v, f) => `Taken as switched on for ${f.minutes(v.minutesPerDay)} a day.`,
    'start-assumed-none': () =>
      'Taken as something without a motor. If it has one, state its starting power.',
    'restart-together': (v, f) =>
      `After a cut ${f.number(v.count)} compressors may start at once and take ${f.watts(v.startingW)}: switch them ` +
      'on one after another.',
    'inrush-not-sized': () =>
      'Draws a very short burst when plugged in, too short to count. Plug in one at a time.',
    'supply-voltage-assumed': (v, f) => `Battery voltage not stated; taken as ${f.volts(v.nominalV)}.`,
    'cable-length-assumed': (v, f) => `Cable length not stated; taken as ${f.length(v.lengthM)} one way.`,
    'own-leads-too-thin': (v, f) =>
      `The leads in the box carry ${f.amps(v.ampacityA)}; ${f.amps(v.neededA)} are needed at full power.` +
      (v.needed === undefined ? '' : ` Use ${v.needed} instead.`),
    'own-leads-drop': (v, f) =>
      `The leads in the box lose ${f.percent(v.dropFraction)} of the voltage at full power; at most ` +
      `${f.percent(v.limitFraction)} should be lost.`,
    'own-leads-too-short': (v, f) =>
      `The leads in the box are ${f.length(v.leadsM)} long, your way is ${f.length(v.routeM)}: bring the unit nearer.`,
    'no-standard-conductor': (v, f) =>
      `No ordinary cable carries ${f.amps(v.worstCaseA)} that far. Bring the unit nearer to the battery.`,
    'no-standard-fuse': (v, f) =>
      `No standard fuse carries ${f.amps(v.worstCaseA)}: a higher battery voltage is the way.`,
    'no-safe-fuse': (v, f) =>
      `No standard fuse lies between ${f.amps(v.minA)}, what the unit draws with a margin, and ${f.amps(v.maxA)}, what ` +
      'the cable carries.',
    'socket-fuse-stays': () => "The vehicle's own fuse protects its socket. Never fit a larger one.",
    'discharge-limit-running': (v, f) =>
      `Running takes ${f.amps(v.currentA)} from the battery; it may give ${f.amps(v.limitA)}` +
      `${v.limitAssumed ? ' (its maker states no limit; a usual one is taken)' : ''}. The battery is too small, not the unit.`,
    'discharge-limit-starting': (v, f) =>
      `Starting takes ${f.amps(v.currentA)} from the battery; it may give ${f.amps(v.limitA)}` +
      `${v.limitAssumed ? ' (its maker states no limit; a usual one is taken)' : ''}. The battery is too small, not the unit.`,
    'cut-off-while-running': (v, f) =>
      v.inverterV === 0
        ? 'The battery cannot give this power at all: it is too small for it, not the unit.'
        : `Under this load the voltage falls to ${f.volts(v.inverterV)} and the unit switches off at ` +
          `${f.volts(v.cutOffV)}. A larger battery or a thicker cable helps, a larger unit does not.`,
    'cut-off-while-starting': (v, f) =>
      v.inverterV === 0
        ? 'The battery cannot give the starting power: it is too small for it, not the unit.'
        : `While starting the voltage falls to ${f.volts(v.inverterV)}; the unit switches off at ` +
          `${f.volts(v.cutOffV)}. A larger battery or a thicker cable helps, a larger unit does not.`,
    'voltage-sag': (v, f) =>
      `While starting the voltage falls by ${f.percent(v.sagFraction)}: lamps dim and electronics may drop out.`,
    'day-not-carried': (v, f) =>
      `This battery (${f.ampHours(v.capacityAh)}) gives out after ${f.hours(v.atH)} of use; your day takes about ` +
      `${f.ampHours(v.neededCapacityAh)}.`,
    'occasional-use': (v, f) =>
      `Fine for occasional use: ${f.minutes(v.minutes)} a day, at a stretch it would run about ` +
      `${f.minutes(v.continuousMinutes)}.`,
    'runs-too-long': (v, f) =>
      `Too long for this battery: ${f.minutes(v.minutes)} a day are wanted, about ${f.minutes(v.continuousMinutes)} at a ` +
      `stretch are there.${v.neededCapacityAh === undefined ? '' : ` It takes about ${f.ampHours(v.neededCapacityAh)}.`}`,
    'under-20-minutes': () =>
      'Below 20 minutes no firm time can be told: batteries differ too much at such a load.',
    'nothing-usable': () => 'The battery starts at or below the lowest charge that it should be taken to.',
    'heavier-than-advised': () =>
      'A heavier load than makers advise for a battery of this size: it will age sooner. Keep it short.',
    'longer-than-a-year': () => 'Longer than a year on paper; a battery discharges itself sooner.',
    'self-discharge-not-counted': () =>
      'A run this long also loses charge at rest, which is not counted here.',
    'gel-figures-unverified': () =>
      'Figures for gel batteries are taken from AGM ones; treat the time as rough.',
    'cold-lithium-charge': () => 'Too cold to charge a lithium battery: warm it above 0 °C first.',
    'charge-temperature-outside-range': () =>
      'Outside the temperatures at which this battery should be charged.',
    'battery-figure-assumed': (v, f) =>
      `${words.batteryFigures[v.field]} is not stated; taken as ${f.figure(v.value)}.`,
    'inverter-off-between': (v, f) =>
      `The unit is taken to be switched on ${f.hours(v.hoursOn)} a day; left on, it empties the battery by itself.`,
  },
  cautions: {
    'medical-device':
      'A medical device: ask its maker for the inverter size and wave form, and keep a second source of power. Never ' +
      'rely on this answer alone.',
    'mains-voltage':
      'The outlets carry mains voltage, which kills. Keep the unit closed, dry and out of reach of children.',
    'no-back-feed':
      'Never feed a building or a socket circuit from an inverter by a lead. Fixed outlets are for a licensed ' +
      'electrician, with residual-current (RCD or GFCI) protection.',
    'battery-short-circuit':
      'A short-circuited battery melts tools and starts fires, lithium above all. Take off rings, cover the terminals, ' +
      'connect the fuse last.',
    'fuse-near-battery':
      'Fit the fuse within reach of the battery terminal, in the positive cable, sized for that cable.',
    'hydrogen-gas': 'This battery gives off explosive gas while charging: air the space, no flame or spark.',
    'lithium-cold-charge':
      'Do not charge a lithium battery below 0 °C, unless its maker says it heats itself.',
    'generator-exhaust': 'Run a generator outdoors only: its exhaust kills indoors, in cabins and in vans.',
    'wet-places': 'Near water use residual-current (RCD or GFCI) protection and keep the unit and plugs dry.',
    'heat-and-air': 'The unit gets warm: mount it on something that does not burn, with air around it.',
    'vehicle-socket-heat':
      'Plug and socket get hot near their limit: feel them after ten minutes, unplug if hot.',
    'local-rules': 'Your local wiring rules come first. If in doubt, ask a licensed electrician.',
  },
  working: workingEn,
  steps: {
    'rating-input-watts': 'Input power as stated',
    'rating-measured-watts': 'Input power as measured',
    'rating-volts-amps': 'Volts times amps',
    'rating-volt-amperes': 'Volt-amperes times power factor',
    'rating-cooking-power-sizing': 'Cooking power to input power, for size',
    'rating-cooking-power-energy': 'Cooking power to input power, for energy',
    'rating-horsepower': 'Horsepower to shaft watts',
    'rating-motor-output': 'Shaft power to input power',
    'rating-cooling-sizing': 'Cooling capacity to input power, for size',
    'rating-cooling-energy': 'Cooling capacity to input power, for energy',
    'rating-label-text': 'Read from the rating plate',
    'rating-list-figure': 'From the appliance list',
    'rating-apparent-power': 'Input power over power factor',
    'load-start': 'Starting power of one item',
    'load-energy': 'Energy a day of all items',
    'demand-running': 'Everything that may run together',
    'demand-starting': 'The worst moment of starting',
    'demand-energy': 'Energy a day',
    headroom: 'Running power with headroom',
    'unit-limits': 'What the unit gives',
    'lowest-working-voltage': 'Lowest working voltage of the battery side',
    'worst-case-current': 'Largest steady battery current',
    'connection-limit': 'What the connection lets through',
    'fuse-window': 'Fuse: above the current, below what the cable carries',
    ampacity: 'What the cable carries',
    'voltage-drop': 'Voltage lost in the cable, out and back',
    'inverter-input': 'Power taken from the battery',
    'battery-rate-law': 'Capacity by discharge current',
    'battery-resistance': 'Resistance of battery and cable',
    'battery-current-at-start': 'Current at the start of the run',
    'battery-capacity-at-current': 'Capacity at the mean current',
    'battery-run-end': 'Where the run ends',
    'battery-run-time': 'Run time',
    'bank-size': 'Battery capacity that the plan takes',
    recharge: 'Putting it back',
  },
  inverterNeeded: 'State the inverter: a SKU of the range, or its figures.',
  inverterTooSmall: (runningW, continuousW, f) =>
    `${f.watts(runningW)} are asked for; this inverter gives ${f.watts(continuousW)}.`,
  unknownUnit: (sku) => `The range has no inverter "${sku}".`,
  faults: {
    'duplicate-load-id': (fault) => `Two loads have the id "${fault.loadId}"; give each its own.`,
    'unknown-appliance': () => 'The appliance list has no such entry; GET /v1/appliances shows all.',
    'nothing-stated': () => 'State an appliance of the list, a rating, or both.',
    'rating-refused': () => 'This rating gives no power.',
    'unknown-load-in-group': (fault) => `No load has the id "${fault.loadId}".`,
    'load-in-two-groups': (fault) => `The load "${fault.loadId}" stands in a take-turns group already.`,
  },
}

function featureName(feature: InverterFeature): string {
  return words.features[feature]
}

function categoryName(category: ApplianceCategory): string {
  return words.categories[category]
}
