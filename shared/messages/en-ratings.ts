import type { Catalogue } from './catalogue.ts'

/** English sentences on how ratings and plates were read. */
export const ratingsEn: Pick<Catalogue, 'ratingNotes' | 'refusals' | 'seen'> = {
  ratingNotes: {
    'power-factor-assumed': (v, f) => `Power factor taken as ${f.figure(v.powerFactor)}.`,
    'power-factor-assumed-one': (v, f) =>
      `No power factor stated: all ${f.voltAmperes(v.apparentVA)} are counted as watts, to be on the safe side.`,
    'volts-differ-from-mains': (v, f) =>
      `The rating is for ${f.volts(v.volts)}, the inverter gives ${f.volts(v.mainsV)}: check that it may be used.`,
    'cooking-power-converted': (v, f) =>
      `${f.watts(v.cookingW)} is what the food gets; the oven itself may draw ${f.watts(v.inputW)}.`,
    'shaft-power-converted': (v, f) =>
      `${f.watts(v.shaftW)} is what the shaft gives; the motor draws about ${f.watts(v.inputW)}.`,
    'cooling-capacity-converted': (v, f) =>
      `Cooling of ${f.figure(v.btuPerHour)} Btu/h takes about ${f.watts(v.inputW)} at ${f.figure(v.eer)} Btu/h a watt.`,
    'efficiency-assumed': (v, f) =>
      `Efficiency not stated; taken as ${f.figure(v.eer)} Btu/h a watt, a poor one.`,
    'range-high-used': () => 'The plate gives a range; its highest figure is used.',
    'largest-of-several': (v, f) =>
      `The plate gives ${f.figure(v.count)} powers; the largest, ${f.watts(v.largestW)}, is used.`,
    'separator-read-as-thousands': (v, f) =>
      `Read as ${f.figure(v.read)}: the mark inside is taken for thousands.`,
    'letters-read-as-digits': (v, f) =>
      `Some letters were read as digits, giving ${f.figure(v.read)}: check it.`,
    'count-multiplied': (v, f) => `Read as ${f.figure(v.count)} times ${f.figure(v.each)}.`,
    'wide-range-current': (v, f) =>
      `The current belongs to the lowest or the highest voltage; the larger product, ${f.voltAmperes(v.highVA)}, is used.`,
    'mains-voltage-assumed': (v, f) =>
      `No voltage on the plate; at the mains voltage the current makes ${f.voltAmperes(v.apparentVA)}.`,
    'volt-amperes-not-used': (v, f) =>
      `The plate gives ${f.watts(v.watts)} and ${f.voltAmperes(v.voltAmperes)}; the watts are used.`,
    'watts-not-used': (v, f) =>
      `The plate's ${f.watts(v.watts)} do not fit its other figures and were not used.`,
    'cooking-power-assumed': (v, f) =>
      `${f.watts(v.cookingW)} is taken for cooking power, since the plate does not call it input.`,
    'input-below-output': (v, f) =>
      `The plate's input of ${f.watts(v.inputW)} is below its output of ${f.watts(v.outputW)}, which can't be; the ` +
      'output was used to work out the input.',
    'shaft-power-assumed': (v, f) => `${f.watts(v.shaftW)} is taken for shaft power.`,
  },
  refusals: {
    'nothing-read': 'No figure could be read. Type what the plate says, such as "230 V 850 W".',
    'no-power-found': 'There is no power on it. Look for watts (W), or for volts and amps together.',
    'output-only':
      'Only an output can be read. The input line is needed: look for INPUT, watts or amps at mains voltage.',
    'direct-current-only': 'This is for direct current (a battery), not for mains: it needs no inverter.',
    'three-phase': 'This needs three-phase mains, which these inverters do not give.',
    'voltage-mismatch': 'This is made for another mains voltage than the inverters give.',
    ambiguous: 'The figures contradict each other. Type the input watts, or volts and amps, alone.',
    'out-of-bounds': 'The power comes out below 0.1 W or above 100 kW. Check the figures.',
    'cooking-watts-needs-microwave': 'Cooking power is for microwave ovens only. State input watts instead.',
    'nothing-stated': 'State watts or horsepower.',
  },
  seen: (figures) => `Seen: ${figures}.`,
}
