import type { PowerWords } from './en-power.ts'

/** German: the editor of a load's power. */
export const power: PowerWords = {
  howKnown: 'Woher kennen Sie die Leistung?',
  asTypical: (watts) => `Ich kenne sie nicht: ${watts} annehmen, hoch gegriffen`,
  fromPlate: 'Ich schreibe das Typenschild ab',
  fromWatts: 'Ich kenne die Watt',
  fromVoltsAmps: 'Ich kenne Volt und Ampere',
  fromCooking: 'Ich kenne die Mikrowellenleistung',
  plateLabel: 'Was auf dem Typenschild steht',
  plateHint: 'Wie gedruckt, zum Beispiel: 220-240V~ 50Hz 850W',
  plateWhere: 'Das Typenschild sitzt hinten, unten oder am Ladegerät.',
  wattsLabel: 'Aufnahme in Watt',
  cookingLabel: 'Mikrowellenleistung in Watt',
  voltsLabel: 'Volt',
  ampsLabel: 'Ampere',
  twoWatts: 'Eine Mikrowelle hat zweierlei Watt',
  twoWattsCooking: 'Vorn oder in der Werbung: was beim Essen ankommt.',
  twoWattsInput:
    'Hinten auf dem Typenschild: was sie aufnimmt. Darauf kommt es an; es ist gut anderthalbmal bis doppelt so viel.',
  readAs: (watts) => `Gelesen als ${watts}.`,
  notRead: 'In diesem Text steht keine Leistung. Suchen Sie eine Zahl mit W, VA oder A daneben.',
  plateRefusals: {
    'output-only':
      'Das ist, was es abgibt. Suchen Sie, was es aufnimmt: INPUT, Eingang oder die Seite mit Netzstrom.',
    'direct-current-only':
      'Dieses Typenschild gilt für Batterie oder Ladebuchse (DC). Suchen Sie die Netzseite (AC oder ~).',
    'three-phase': 'Das ist eine Drehstrommaschine: Kein Batterie-Wechselrichter dieser Art betreibt sie.',
    'voltage-mismatch': 'Dieses Typenschild gilt für eine andere Netzspannung.',
    ambiguous: 'Auf diesem Typenschild stehen mehrere Leistungen. Schreiben Sie nur die Aufnahme.',
    'out-of-bounds': 'Diese Leistung liegt außerhalb von 0,1 W bis 100.000 W.',
  },
  ownName: 'Was ist es?',
  ownNameHint: 'Radio auf der Werkbank',
  ownAdd: 'Auf meine Liste',
  missing: (field) => `Bitte ausfüllen: „${field}“.`,
  done: 'Fertig',
}
