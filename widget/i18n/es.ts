import type { Words } from './en.ts'

/** Spanish: what the shell and the first question say. */
export const words: Words = {
  loading: 'Un momento…',
  question: (number, of) => `Pregunta ${number} de ${of}`,
  pickHeading: '¿Qué quiere usar?',
  pickLead: 'Toque cada aparato. Tóquelo otra vez para añadir uno más.',
  searchLabel: 'Buscar un aparato',
  searchHint: 'hervidor, secador de pelo, taladro',
  hits: 'Encontrados',
  hitCount: (count) => (count === 1 ? '1 aparato encontrado' : `${count} aparatos encontrados`),
  noHits: 'Nada con ese nombre. Pruebe otra palabra o «Otra cosa».',
  often: 'Los más elegidos',
  browse: 'Por tipo',
  somethingElse: 'Otra cosa',
  add: (name) => `Añadir: ${name}`,
  addAnother: (name, count) => `${name}: ${count} en su lista. Añadir uno más`,
  added: (name, watts) => `Añadido: ${name}. Juntos ${watts}.`,
  together: 'Juntos',
  nothingYet: 'Aún no ha elegido nada',
  needed: (watts) => `hacen falta ${watts} o más`,
  nextSchedule: 'Siguiente: cuándo',
  pickFirst: 'Elija primero al menos un aparato.',
  listFull: 'Su lista está llena: 40 aparatos distintos.',
  askShop: 'Preguntar a la tienda',
  retry: 'Intentar de nuevo',
  failures: {
    offline: 'Parece que no tiene conexión. Sus respuestas se conservan.',
    slow: 'Tarda demasiado. Sus respuestas se conservan.',
    unreachable: 'Ahora no se puede llegar al servicio. Sus respuestas se conservan.',
    down: 'El servicio tiene un problema en este momento. Sus respuestas se conservan.',
    busy: 'Hay muchas consultas en este momento. Sus respuestas se conservan.',
    refused: 'El servicio no pudo leer estas respuestas. Revíselas, por favor.',
    'unknown-shop': 'Esta guía aún no está preparada para esta tienda.',
    'unknown-unit': 'Este inversor no está en la gama de la tienda.',
  },
  retryIn: (seconds) => `Inténtelo de nuevo en ${seconds} ${seconds === 1 ? 'segundo' : 'segundos'}.`,
  fitHeading: '¿Sirve para…?',
  fitLead: 'Toque lo que quiere conectarle.',
  check: '¿Sirve para esto?',
}

export const later = async () => (await import('./es-later.ts')).later
