import type { PowerWords } from './en-power.ts'

/** Spanish: the editor of a load's power. */
export const power: PowerWords = {
  howKnown: '¿De dónde conoce su potencia?',
  asTypical: (watts) => `No la conozco: tomar ${watts}, valor habitual alto`,
  fromPlate: 'Copio su placa',
  fromWatts: 'Conozco sus vatios',
  fromVoltsAmps: 'Conozco los voltios y los amperios',
  fromCooking: 'Conozco su potencia de cocción',
  plateLabel: 'Lo que dice la placa',
  plateHint: 'Tal como está impreso, por ejemplo: 220-240V~ 50Hz 850W',
  plateWhere: 'La placa está detrás, debajo o en el cargador.',
  wattsLabel: 'Vatios que consume',
  cookingLabel: 'Potencia de cocción en vatios',
  voltsLabel: 'Voltios',
  ampsLabel: 'Amperios',
  twoWatts: 'Un microondas tiene dos clases de vatios',
  twoWattsCooking: 'Delante o en el anuncio: lo que recibe la comida.',
  twoWattsInput:
    'En la placa de detrás: lo que consume. Esto es lo que cuenta, entre una vez y media y el doble.',
  readAs: (watts) => `Leído: ${watts}.`,
  notRead: 'No hay ninguna potencia en ese texto. Busque un número con W, VA o A al lado.',
  plateRefusals: {
    'output-only': 'Eso es lo que entrega. Busque lo que consume: INPUT, entrada o el lado de la red.',
    'direct-current-only':
      'Esa placa es de una batería o una toma de carga (DC). Busque el lado de la red (AC o ~).',
    'three-phase': 'Es una máquina trifásica: ningún inversor de batería de este tipo la alimenta.',
    'voltage-mismatch': 'Esa placa es para otra tensión de red.',
    ambiguous: 'Hay varias potencias en esa placa. Escriba solo la que consume.',
    'out-of-bounds': 'Esa potencia está fuera de límites: de 0,1 W a 100.000 W.',
  },
  ownName: '¿Qué es?',
  ownNameHint: 'Radio del banco de trabajo',
  ownAdd: 'Añadir a mi lista',
  missing: (field) => `Rellene «${field}».`,
  done: 'Listo',
}
