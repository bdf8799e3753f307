/** English: the editor of a load's power. */
export const power = {
  howKnown: 'How do you know its power?',
  asTypical: (watts: string) => `I don’t: take ${watts}, the high side of usual`,
  fromPlate: 'I copy what its plate says',
  fromWatts: 'I know its watts',
  fromVoltsAmps: 'I know volts and amps',
  fromCooking: 'I know its cooking watts',
  plateLabel: 'What the plate says',
  plateHint: 'Type it as printed, for example: 220-240V~ 50Hz 850W',
  plateWhere: 'The plate is on the back, underneath, or on the charger.',
  wattsLabel: 'Watts that it takes',
  cookingLabel: 'Watts that it cooks with',
  voltsLabel: 'Volts',
  ampsLabel: 'Amps',
  twoWatts: 'A microwave has two kinds of watts',
  twoWattsCooking: 'On the front or in the advert: what it gives the food.',
  twoWattsInput:
    'On the plate at the back: what it takes. This one counts, and is about half as much again or double.',
  readAs: (watts: string) => `Read as ${watts}.`,
  notRead: 'No power found in that text. Look for a number with W, VA or A beside it.',
  plateRefusals: {
    'output-only': 'That is what it gives out. Look for what it takes in: INPUT, or the mains side.',
    'direct-current-only':
      'That plate is for a battery or charger socket (DC). Look for the mains side (AC or ~).',
    'three-phase': 'That is a three-phase machine: no battery inverter of this kind runs it.',
    'voltage-mismatch': 'That plate is for another mains voltage.',
    ambiguous: 'Several powers are on that plate. Type only the one it takes in.',
    'out-of-bounds': 'That power is out of reach: from 0.1 W to 100,000 W.',
  } as Record<string, string>,
  ownName: 'What is it?',
  ownNameHint: 'Radio on the workbench',
  ownAdd: 'Add to my list',
  missing: (field: string) => `Please fill in “${field}”.`,
  done: 'Done',
}

/** The shape that every language keeps. */
export type PowerWords = typeof power
