import type { Words } from './en.ts'

/** German: what the shell and the first question say. */
export const words: Words = {
  loading: 'Einen Moment …',
  question: (number, of) => `Frage ${number} von ${of}`,
  pickHeading: 'Was möchten Sie betreiben?',
  pickLead: 'Tippen Sie jedes Gerät an. Noch einmal tippen heißt: eins mehr.',
  searchLabel: 'Gerät suchen',
  searchHint: 'Wasserkocher, Föhn, Bohrmaschine',
  hits: 'Gefunden',
  hitCount: (count) => (count === 1 ? '1 Gerät gefunden' : `${count} Geräte gefunden`),
  noHits: 'Nichts mit diesem Namen. Versuchen Sie ein anderes Wort oder „Etwas anderes“.',
  often: 'Oft gewählt',
  browse: 'Nach Art',
  somethingElse: 'Etwas anderes',
  add: (name) => `${name} hinzufügen`,
  addAnother: (name, count) => `${name}: ${count} auf Ihrer Liste. Noch eins hinzufügen`,
  added: (name, watts) => `${name} hinzugefügt. Zusammen ${watts}.`,
  together: 'Zusammen',
  nothingYet: 'Noch nichts gewählt',
  needed: (watts) => `braucht ${watts} oder mehr`,
  nextSchedule: 'Weiter: Wann',
  pickFirst: 'Wählen Sie zuerst mindestens ein Gerät.',
  listFull: 'Ihre Liste ist voll: 40 verschiedene Geräte.',
  askShop: 'Den Laden fragen',
  retry: 'Noch einmal versuchen',
  failures: {
    offline: 'Sie sind offenbar offline. Ihre Antworten bleiben erhalten.',
    slow: 'Das dauert zu lange. Ihre Antworten bleiben erhalten.',
    unreachable: 'Der Dienst ist gerade nicht erreichbar. Ihre Antworten bleiben erhalten.',
    down: 'Der Dienst hat gerade eine Störung. Ihre Antworten bleiben erhalten.',
    busy: 'Gerade fragen sehr viele. Ihre Antworten bleiben erhalten.',
    refused: 'Der Dienst konnte diese Antworten nicht lesen. Bitte prüfen Sie sie.',
    'unknown-shop': 'Diese Beratung ist für diesen Laden noch nicht eingerichtet.',
    'unknown-unit': 'Dieser Wechselrichter ist nicht im Sortiment des Ladens.',
  },
  retryIn: (seconds) =>
    `Bitte in ${seconds === 1 ? 'einer Sekunde' : `${seconds} Sekunden`} noch einmal versuchen.`,
  fitHeading: 'Reicht er für …?',
  fitLead: 'Tippen Sie an, was Sie daran betreiben möchten.',
  check: 'Reicht er dafür?',
}

export const later = async () => (await import('./de-later.ts')).later
