import type { RatingNoteCode } from '../../core/loads/rate-load.ts'
import type { Catalogue } from './catalogue.ts'
import { cartFindingsEs, kitNotesEs, kitReasonsEs, kitSpecificationsEs } from './es-kit.ts'
import { ratingsEs } from './es-ratings.ts'
import { whatIfsEs } from './es-what-ifs.ts'
import { wordsEs as words } from './es-words.ts'
import { workingEs } from './es-working.ts'
import { counted, formFor } from './grammar.ts'

const LIMIT_ASSUMED = ' (el fabricante no indica límite; se toma uno habitual)'
const BATTERY_TOO_SMALL = 'La pequeña es la batería, no el inversor.'

/** Spanish. */
export const es: Catalogue = {
  ...ratingsEs,
  ...whatIfsEs,
  kitReasons: kitReasonsEs,
  kitNotes: kitNotesEs,
  kitSpecifications: kitSpecificationsEs,
  useInstead: (sku) => `${sku} es lo adecuado.`,
  findings: {
    ...cartFindingsEs,
    'continuous-power-short': (v, f) =>
      `Sus aparatos consumen juntos ${f.watts(v.runningW)}. Con un ${f.percent(v.headroomFraction)} de reserva hacen falta ` +
      `${f.watts(v.requiredContinuousW)}; este inversor da ${f.watts(v.continuousW)} de potencia continua.`,
    'apparent-power-short': (v, f) =>
      `Sus aparatos toman ${f.voltAmperes(v.runningVA)} (voltios por amperios, más que sus vatios); este inversor da ` +
      `${f.voltAmperes(v.continuousVA)}.`,
    'starting-power-short': (v, f) =>
      `El arranque pide por un momento ${f.watts(v.startingW)}; la potencia de pico de este inversor es de ` +
      `${f.watts(v.surgeW)}.`,
    'surge-time-short': (v, f) =>
      `El arranque pide ${f.watts(v.startingW)} durante ${f.seconds(v.startingS)}; este inversor solo aguanta más de ` +
      `${f.watts(v.continuousW)} durante ${f.seconds(v.surgeS)}.`,
    'wave-form-unsuitable': () =>
      'Este inversor da una onda sinusoidal modificada; algo de su lista necesita una onda sinusoidal pura, como la de la ' +
      'red.',
    'wave-form-care': () =>
      'Este inversor da una onda sinusoidal modificada. Algo de su lista puede zumbar, calentarse o perder potencia con ' +
      'ella; un inversor de onda sinusoidal pura es la mejor opción.',
    'output-voltage-mismatch': (v, f) =>
      `Este inversor da ${f.volts(v.outputV)}; sus aparatos necesitan ${f.volts(v.mainsV)}.`,
    'output-frequency-mismatch': (v, f) =>
      `Este inversor da ${f.hertz(v.outputHz)}; sus aparatos necesitan ${f.hertz(v.mainsHz)}.`,
    'input-voltage-mismatch': (v, f) =>
      `Este inversor es para una batería de ${f.volts(v.inputNominalV)}; la suya es de ${f.volts(v.supplyNominalV)}.`,
    'connection-limit': (v, f) =>
      `${words.connections[v.kind]} soporta ${f.amps(v.limitA)}, unos ${f.watts(v.limitW)} de aparatos. Los suyos consumen ` +
      `${f.watts(v.runningW)}, hasta ${f.amps(v.currentA)} de la batería.`,
    'connection-below-full-power': (v, f) =>
      `${words.connections[v.kind]} soporta ${f.amps(v.limitA)}: no pase ahí de unos ${f.watts(v.limitW)}, aunque el inversor ` +
      `podría dar ${f.watts(v.continuousW)}.`,
    'outlets-short': (v, f) =>
      `${counted(v.needed, { one: 'clavija', other: 'clavijas' }, f)} a la vez, pero solo ` +
      `${counted(v.outlets, { one: 'enchufe', other: 'enchufes' }, f)} en este inversor: necesita una regleta.`,
    'feature-missing': (v) =>
      `Le falta lo que usted pide: ${v.features.map((feature) => words.features[feature]).join(', ')}.`,
    'out-of-stock': () => 'Agotado.',
    'over-price': (v, f) => `${f.money(v.price, v.currency)} supera sus ${f.money(v.maxPrice, v.currency)}.`,
    'not-advised': (v) =>
      'No aconsejamos alimentar esto con un inversor y una batería: ' +
      `${v.categories.map((category) => words.categories[category]).join(', ')}. Lo habitual es un generador o una toma de ` +
      'la red.',
    'figure-assumed': (v, f) =>
      `No se indica ${words.figures[v.figure]}; valor supuesto: ${f.number(v.value)}.`,
    'rating-estimated': (v, f) =>
      `Potencia estimada de hasta ${f.watts(v.sizingW)}. La placa de características da el valor exacto.`,
    'rating-read': (v, f) => ratingsEs.ratingNotes[v.note as RatingNoteCode](v, f),
    'minutes-assumed': (v, f) => `Se supone encendido ${f.minutes(v.minutesPerDay)} al día.`,
    'start-assumed-none': () =>
      'Se supone un aparato sin motor. Si lo tiene, indique su potencia de arranque.',
    'restart-together': (v, f) =>
      `Tras un corte ${formFor(v.count, { one: 'puede', other: 'pueden' }, f)} arrancar a la vez ` +
      `${counted(v.count, { one: 'compresor', other: 'compresores' }, f)} y tomar ${f.watts(v.startingW)}: enciéndalos uno ` +
      'tras otro.',
    'inrush-not-sized': () =>
      'Absorbe un golpe de corriente muy breve al enchufarlo, demasiado breve para contarlo. Enchufe un aparato cada vez.',
    'supply-voltage-assumed': (v, f) =>
      `No se indica la tensión de la batería; valor supuesto: ${f.volts(v.nominalV)}.`,
    'cable-length-assumed': (v, f) =>
      `No se indica la longitud del cable; valor supuesto: ${f.length(v.lengthM)}, solo ida.`,
    'own-leads-too-thin': (v, f) =>
      `Los cables de la caja soportan ${f.amps(v.ampacityA)}; a plena potencia hacen falta ${f.amps(v.neededA)}.` +
      (v.needed === undefined ? '' : ` Use ${v.needed} en su lugar.`),
    'own-leads-drop': (v, f) =>
      `Los cables de la caja pierden un ${f.percent(v.dropFraction)} de la tensión a plena potencia; no deberían perder más del ` +
      `${f.percent(v.limitFraction)}.`,
    'own-leads-too-short': (v, f) =>
      `Los cables de la caja miden ${f.length(v.leadsM)} y su recorrido es de ${f.length(v.routeM)}: acerque el inversor a ` +
      'la batería.',
    'no-standard-conductor': (v, f) =>
      `Ningún cable corriente soporta ${f.amps(v.worstCaseA)} a esa distancia. Acerque el inversor a la batería.`,
    'no-standard-fuse': (v, f) =>
      `Ningún fusible normalizado soporta ${f.amps(v.worstCaseA)}: la solución es una batería de mayor tensión.`,
    'no-safe-fuse': (v, f) =>
      `Ningún fusible normalizado está entre ${f.amps(v.minA)}, lo que toma el inversor con un margen, y ` +
      `${f.amps(v.maxA)}, lo que soporta el cable.`,
    'socket-fuse-stays': () => 'El fusible del vehículo protege su toma. No ponga nunca uno mayor.',
    'discharge-limit-running': (v, f) =>
      `En marcha se toman ${f.amps(v.currentA)} de la batería; puede dar ${f.amps(v.limitA)}` +
      `${v.limitAssumed ? LIMIT_ASSUMED : ''}. ${BATTERY_TOO_SMALL}`,
    'discharge-limit-starting': (v, f) =>
      `Al arrancar se toman ${f.amps(v.currentA)} de la batería; puede dar ${f.amps(v.limitA)}` +
      `${v.limitAssumed ? LIMIT_ASSUMED : ''}. ${BATTERY_TOO_SMALL}`,
    'cut-off-while-running': (v, f) =>
      v.inverterV === 0
        ? `La batería no puede dar esta potencia de ningún modo. ${BATTERY_TOO_SMALL}`
        : `Con esta carga la tensión baja a ${f.volts(v.inverterV)} y el inversor se apaga a ${f.volts(v.cutOffV)}. Una ` +
          'batería mayor o un cable más grueso ayuda; un inversor mayor, no.',
    'cut-off-while-starting': (v, f) =>
      v.inverterV === 0
        ? `La batería no puede dar la potencia de arranque. ${BATTERY_TOO_SMALL}`
        : `Al arrancar la tensión baja a ${f.volts(v.inverterV)}; el inversor se apaga a ${f.volts(v.cutOffV)}. Una ` +
          'batería mayor o un cable más grueso ayuda; un inversor mayor, no.',
    'voltage-sag': (v, f) =>
      `Al arrancar la tensión baja un ${f.percent(v.sagFraction)}: las lámparas se atenúan y la electrónica puede fallar.`,
    'day-not-carried': (v, f) =>
      `Esta batería (${f.ampHours(v.capacityAh)}) se agota tras ${f.hours(v.atH)} de uso; su día pide unos ` +
      `${f.ampHours(v.neededCapacityAh)}.`,
    'occasional-use': (v, f) =>
      `Vale para un uso ocasional: ${f.minutes(v.minutes)} al día; de un tirón duraría unos ` +
      `${f.minutes(v.continuousMinutes)}.`,
    'runs-too-long': (v, f) =>
      `Demasiado tiempo para esta batería: se piden ${f.minutes(v.minutes)} al día y de un tirón da para unos ` +
      `${f.minutes(v.continuousMinutes)}.` +
      (v.neededCapacityAh === undefined ? '' : ` Hacen falta unos ${f.ampHours(v.neededCapacityAh)}.`),
    'under-20-minutes': () =>
      'Por debajo de 20 minutos no se puede dar un tiempo seguro: con tal carga las baterías difieren demasiado.',
    'nothing-usable': () => 'La batería empieza en la carga más baja a la que debería llegar, o por debajo.',
    'heavier-than-advised': () =>
      'Una carga mayor de la que aconsejan los fabricantes para una batería de este tamaño: envejecerá antes. Que sea breve.',
    'longer-than-a-year': () => 'Más de un año sobre el papel; una batería se descarga sola antes.',
    'self-discharge-not-counted': () =>
      'En un tiempo tan largo la batería también pierde carga en reposo, lo que aquí no se cuenta.',
    'gel-figures-unverified': () =>
      'Los datos de las baterías de gel se toman de las AGM; considere el tiempo como aproximado.',
    'cold-lithium-charge': () =>
      'Demasiado frío para cargar una batería de litio: caliéntela antes por encima de 0 °C.',
    'charge-temperature-outside-range': () =>
      'Fuera de las temperaturas a las que se debe cargar esta batería.',
    'battery-figure-assumed': (v, f) =>
      `No se indica ${words.batteryFigures[v.field]}; valor supuesto: ${f.figure(v.value)}.`,
    'inverter-off-between': (v, f) =>
      `Se supone el inversor encendido ${f.hours(v.hoursOn)} al día; si se deja encendido, vacía la batería por sí solo.`,
  },
  cautions: {
    'medical-device':
      'Un aparato médico: pregunte a su fabricante el tamaño y la forma de onda del inversor, y tenga una segunda fuente de ' +
      'corriente. No se fíe nunca únicamente de esta respuesta.',
    'mains-voltage':
      'Los enchufes llevan tensión de red, que mata. Mantenga el inversor cerrado, seco y fuera del alcance de los niños.',
    'no-back-feed':
      'No alimente nunca un edificio ni un circuito de enchufes con un cable desde un inversor. Los enchufes fijos son ' +
      'trabajo de un electricista autorizado, con protección diferencial.',
    'battery-short-circuit':
      'Una batería en cortocircuito funde herramientas y provoca incendios, sobre todo la de litio. Quítese los anillos, ' +
      'cubra los bornes y ponga el fusible en último lugar.',
    'fuse-near-battery':
      'Monte el fusible al alcance de la mano del borne de la batería, en el cable positivo y del valor que pide ese cable.',
    'hydrogen-gas':
      'Esta batería desprende gas explosivo al cargarse: ventile el lugar, sin llamas ni chispas.',
    'lithium-cold-charge':
      'No cargue una batería de litio por debajo de 0 °C, salvo que su fabricante diga que se calienta sola.',
    'generator-exhaust':
      'Use un generador solo al aire libre: sus gases de escape matan en interiores, camarotes y furgonetas.',
    'wet-places': 'Cerca del agua use protección diferencial y mantenga secos el inversor y las clavijas.',
    'heat-and-air': 'El inversor se calienta: móntelo sobre algo que no arda y con aire alrededor.',
    'vehicle-socket-heat':
      'La clavija y la toma se calientan cerca de su límite: tóquelas a los diez minutos y desenchufe si queman.',
    'local-rules':
      'Las normas locales de instalaciones eléctricas van primero. En caso de duda, pregunte a un electricista autorizado.',
  },
  working: workingEs,
  steps: {
    'rating-input-watts': 'Potencia absorbida según lo indicado',
    'rating-measured-watts': 'Potencia absorbida según lo medido',
    'rating-volts-amps': 'Voltios por amperios',
    'rating-volt-amperes': 'Voltamperios por factor de potencia',
    'rating-cooking-power-sizing': 'De potencia de cocción a potencia absorbida, para el tamaño',
    'rating-cooking-power-energy': 'De potencia de cocción a potencia absorbida, para la energía',
    'rating-horsepower': 'De caballos (hp) a vatios en el eje',
    'rating-motor-output': 'De potencia en el eje a potencia absorbida',
    'rating-cooling-sizing': 'De potencia frigorífica a potencia absorbida, para el tamaño',
    'rating-cooling-energy': 'De potencia frigorífica a potencia absorbida, para la energía',
    'rating-label-text': 'Leído en la placa de características',
    'rating-list-figure': 'De la lista de aparatos',
    'rating-apparent-power': 'Potencia absorbida entre factor de potencia',
    'load-start': 'Potencia de arranque de un aparato',
    'load-energy': 'Energía al día de todos los aparatos',
    'demand-running': 'Todo lo que puede funcionar a la vez',
    'demand-starting': 'El peor momento de arranque',
    'demand-energy': 'Energía al día',
    headroom: 'Potencia en marcha con reserva',
    'unit-limits': 'Lo que da el inversor',
    'lowest-working-voltage': 'Tensión de trabajo más baja del lado de la batería',
    'worst-case-current': 'Mayor corriente continuada de la batería',
    'connection-limit': 'Lo que deja pasar la conexión',
    'fuse-window': 'Fusible: por encima de la corriente, por debajo de lo que soporta el cable',
    ampacity: 'Lo que soporta el cable (corriente admisible)',
    'voltage-drop': 'Caída de tensión en el cable, ida y vuelta',
    'inverter-input': 'Potencia tomada de la batería',
    'battery-rate-law': 'Capacidad según la corriente de descarga',
    'battery-resistance': 'Resistencia de la batería y del cable',
    'battery-current-at-start': 'Corriente al principio',
    'battery-capacity-at-current': 'Capacidad a la corriente media',
    'battery-run-end': 'Dónde acaba la autonomía',
    'battery-run-time': 'Autonomía',
    'bank-size': 'Capacidad de batería necesaria',
    recharge: 'Recarga',
  },
  inverterNeeded: 'Indique el inversor: una referencia de la gama, o sus datos.',
  inverterTooSmall: (runningW, continuousW, f) =>
    `Se piden ${f.watts(runningW)}; este inversor da ${f.watts(continuousW)}.`,
  unknownUnit: (sku) => `La gama no tiene ningún inversor «${sku}».`,
  faults: {
    'duplicate-load-id': (fault) =>
      `Dos aparatos tienen el identificador «${fault.loadId}»; dé a cada uno el suyo.`,
    'unknown-appliance': () =>
      'La lista de aparatos no tiene esa entrada; GET /v1/appliances las muestra todas.',
    'nothing-stated': () => 'Indique un aparato de la lista, una potencia, o ambas cosas.',
    'rating-refused': () => 'Este dato no da ninguna potencia.',
    'unknown-load-in-group': (fault) => `Ningún aparato tiene el identificador «${fault.loadId}».`,
    'load-in-two-groups': (fault) =>
      `El aparato «${fault.loadId}» ya está en un grupo que se usa por turnos.`,
  },
}
