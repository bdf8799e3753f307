import type { CartFindingValues } from '../../core/advice/cart-findings.ts'
import type { KitRole } from '../../core/advice/vocabulary.ts'
import type { ConnectionKind } from '../../core/range/vocabulary.ts'
import type { Catalogue } from './catalogue.ts'
import { wordsEs as words } from './es-words.ts'
import type { Formats } from './formats.ts'
import { capital, counted, formFor } from './grammar.ts'

type CartWriters = { readonly [C in keyof CartFindingValues]: Catalogue['findings'][C] }

const CONNECTORS: Readonly<Record<ConnectionKind, string>> = {
  'vehicle-socket': 'un cable para la toma del vehículo',
  'quick-connector': 'un conector rápido',
  'battery-terminals': 'un juego de terminales para los bornes de la batería',
}

const YOUR_OWN: Readonly<Record<KitRole, string>> = {
  inverter: 'su propio inversor',
  cable: 'su propio cable',
  fuse: 'su propio fusible',
  connector: 'su propio conector',
  battery: 'su propia batería',
}

const BRANCHES = { one: 'rama', other: 'ramas' }

/** Sentences about a cart, in Spanish. */
export const cartFindingsEs: CartWriters = {
  'inverter-missing': (v) => `No hay ningún inversor en el carrito.${instead(v, 'serviría')}`,
  'unit-voltage-mismatch': (v, f) =>
    `${v.sku} es para una batería de ${f.volts(v.inputNominalV)}; la suya es de ${f.volts(v.supplyNominalV)}.${instead(v)}`,
  'battery-string-mismatch': (v, f) =>
    `${f.number(v.quantity)} × ${v.sku} (${f.volts(v.blockV)}) no forman una batería de ${f.volts(v.wantedV)} sin que ` +
    `sobre ninguna.${instead(v)}`,
  'unlike-batteries': (v) =>
    `${v.sku} y ${v.otherSku} son baterías distintas: no las una nunca en serie ni en paralelo. Elija un solo modelo.`,
  'too-many-strings': (v, f) =>
    `${counted(v.strings, BRANCHES, f)} de ${v.sku} en paralelo se ${formFor(v.strings, { one: 'reparte', other: 'reparten' }, f)} ` +
    `mal la corriente; elija baterías mayores, en ${counted(v.mostStrings, BRANCHES, f)} como máximo.`,
  'battery-missing': (v) => `Aquí no hay batería para ${v.sku}, y tampoco se indica ninguna.`,
  'battery-below-full-power': (v, f) =>
    `A plena potencia el inversor toma ${f.amps(v.currentA)}; la batería puede dar ${f.amps(v.limitA)}` +
    `${v.limitAssumed ? ' (el fabricante no indica límite; se toma uno habitual)' : ''}. Quédese por debajo o elija ` +
    'una mayor.',
  'cut-off-below-battery': (v, f) =>
    `${v.sku} no corta hasta ${f.volts(v.cutOffV)}, menos de lo que esta batería debería bajar (${f.volts(v.lowestV)}): ` +
    'vigile usted la carga o instale un dispositivo de corte.',
  'cut-off-above-battery': (v, f) =>
    `${v.sku} corta ya a ${f.volts(v.cutOffV)}, pero esta batería en reposo está a ${f.volts(v.restingV)} cuando aún le ` +
    'queda carga: una parte no se aprovecha.',
  'cable-missing': (v, f) =>
    `Falta el cable de batería para ${v.sku}: un par que soporte ${f.amps(v.neededA)}.${instead(v)}`,
  'cable-too-thin': (v, f) =>
    `El cable ${v.sku} soporta ${f.amps(v.ampacityA)}; hacen falta ${f.amps(v.neededA)}: se sobrecalentaría.${instead(v)}`,
  'cable-drop': (v, f) =>
    `El cable ${v.sku} pierde un ${f.percent(v.dropFraction)} de la tensión a plena potencia; no debería perder más del ` +
    `${f.percent(v.limitFraction)}.${instead(v)}`,
  'cable-too-short': (v, f) =>
    `El cable ${v.sku} mide ${f.length(v.lengthM)}; su recorrido es de ${f.length(v.routeM)}.${instead(v)}`,
  'fuse-missing': (v, f) =>
    `Falta el fusible para ${v.sku}: de ${f.amps(v.minA)} a ${f.amps(v.maxA)}, cerca de la batería.${instead(v)}`,
  'fuse-too-small': (v, f) =>
    `El fusible ${v.sku} (${f.amps(v.ratingA)}) se fundiría en uso normal: hacen falta al menos ${f.amps(v.minA)}.` +
    instead(v),
  'fuse-too-large': (v, f) =>
    `El fusible ${v.sku} (${f.amps(v.ratingA)}) no protege el cable, que soporta ${f.amps(v.maxA)}.${instead(v)}`,
  'fuse-voltage-short': (v, f) =>
    `El fusible ${v.sku} es para ${f.volts(v.voltageV)}; esta batería alcanza ${f.volts(v.requiredVoltageV)} mientras se ` +
    `carga.${instead(v)}`,
  'fuse-breaking-short': (v, f) =>
    `El fusible ${v.sku} puede cortar ${f.amps(v.breakingCapacityA)} (poder de corte); un cortocircuito en esta batería ` +
    `puede llegar a ${f.amps(v.requiredBreakingCapacityA)}.${instead(v)}`,
  'connector-missing': (v, f) =>
    `Falta para ${v.sku} ${CONNECTORS[v.kind]} que soporte ${f.amps(v.neededA)}.${instead(v)}`,
  'connector-under-rated': (v, f) =>
    `El conector ${v.sku} soporta ${f.amps(v.limitA)}; hacen falta ${f.amps(v.neededA)}.${instead(v)}`,
  'owned-unchecked': (v) => `Sin comprobar: ${YOUR_OWN[v.role]}. Compárelo con lo que se pide aquí.`,
  'part-left-over': (v) => `${v.sku} no hace falta para este inversor; no lo ponga en este circuito.`,
}

function instead({ useSku }: { readonly useSku?: string }, verb = 'es lo adecuado'): string {
  return useSku === undefined ? '' : ` ${useSku} ${verb}.`
}

/** Why a line is in the kit, in Spanish. */
export const kitReasonsEs: Catalogue['kitReasons'] = {
  'smallest-that-fits': (v, f) =>
    `El más pequeño que basta: hacen falta ${f.watts(v.requiredContinuousW)} y da ${f.watts(v.continuousW)}.`,
  'unit-asked-for': (v, f) =>
    `El que ha elegido: hacen falta ${f.watts(v.requiredContinuousW)} y da ${f.watts(v.continuousW)}.`,
  'carries-full-power': (v, f) =>
    `Soporta ${f.amps(v.ampacityA)}; el inversor toma hasta ${f.amps(v.worstCaseA)}, y en ${f.length(v.lengthM)} se pierde ` +
    `un ${f.percent(v.dropFraction)} de la tensión.`,
  'protects-cable': (v, f) =>
    `Deja pasar lo que toma el inversor (${f.amps(v.minA)} con un margen) y protege el cable (${f.amps(v.maxA)}). Móntelo ` +
    'cerca de la batería.',
  'joins-unit': (v, f) => `Soporta lo que toma el inversor, hasta ${f.amps(v.connectorA)}.`,
  'lasts-plan': (v, f) =>
    `Alcanza para ${v.days === 1 ? 'su día' : counted(v.days, { one: 'día', other: 'días' }, f)}: hacen falta unos ` +
    `${f.ampHours(v.neededCapacityAh)} y tiene ${f.ampHours(v.capacityAh)}.`,
  'in-the-box': () => 'Viene con el inversor.',
  'yours-does': () => 'Lo que usted tiene sirve.',
  'yours-unchecked': () => 'Ya tiene uno: compárelo con lo que se pide aquí.',
  'box-unsuitable': () => 'Lo que viene en la caja no sirve para su recorrido; esto sí.',
  'yours-unsuitable': () => 'Lo que usted tiene no sirve para esto; esto sí.',
  'your-battery-too-small': (v, f) =>
    `Su batería no alcanza para este plan; ${f.ampHours(v.capacityAh)} alcanzan (hacen falta unos ` +
    `${f.ampHours(v.neededCapacityAh)}). Úsela en lugar de la suya: no las conecte nunca juntas.`,
  'none-in-range': () => 'No tenemos nada adecuado: así tiene que ser.',
  'vehicle-battery-too-small': () =>
    'La batería del vehículo es demasiado pequeña para esto; un cable para la toma no lo cambia.',
}

/** Why a cable of the kit is of another size than the circuit names, in Spanish. */
export const kitNotesEs: Catalogue['kitNotes'] = {
  'hotter-insulation': (v, f) =>
    `El aislamiento de este cable admite ${f.celsius(v.insulationC)}, por eso basta con ${v.size}; un cable para ` +
    `${f.celsius(v.otherInsulationC)} tendría que ser de ${v.otherSize}.`,
  'cooler-insulation': (v, f) =>
    `El aislamiento de este cable solo admite ${f.celsius(v.insulationC)}, por eso tiene que ser de ${v.size}; con un ` +
    `cable para ${f.celsius(v.otherInsulationC)} bastaría con ${v.otherSize}.`,
  'next-size-we-have': (v) =>
    `El mínimo es de ${v.otherSize}; de los nuestros, el de ${v.size} es el que mejor sirve, y más cobre no perjudica.`,
  'does-too': (v) =>
    `${v.size} sirve igual que ${v.otherSize}, lo indicado para el circuito: el cable soporta el fusible y la caída de ` +
    'tensión es lo bastante pequeña.',
  'smaller-fuse': (v, f) =>
    `Detrás del fusible de ${f.amps(v.ratingA)} de esta lista basta con ${v.size}; detrás de ${f.amps(v.otherRatingA)} ` +
    `harían falta ${v.otherSize}.`,
  'for-this-kit': (v) =>
    `Con la batería y el fusible de esta lista es de ${v.size} en lugar de ${v.otherSize}.`,
}

/** What a part must be, in Spanish. */
export const kitSpecificationsEs: Catalogue['kitSpecifications'] = {
  inverter: (s, f) =>
    `Inversor de onda sinusoidal ${s.waveform === 'pure-sine' ? 'pura' : 'modificada'}, ${f.volts(s.inputNominalV)}, ` +
    `${f.watts(s.continuousW)} de potencia continua`,
  cable: (s, f) =>
    (s.pairs > 1
      ? `${f.number(s.pairs)} pares de cable de batería de cobre en paralelo, entre todos `
      : 'Par de cables de batería de cobre, ') +
    `${f.amps(s.carriesA)} o más, ${f.length(s.lengthM)} o más, caída de tensión del ` +
    `${f.percent(s.dropLimitFraction)} como máximo${s.standard === undefined ? '' : ` (${s.standard} basta)`}`,
  fuse: (s, f) =>
    `Fusible con portafusibles, de ${f.amps(s.minA)} a ${f.amps(s.maxA)}, para ${f.volts(s.voltageV)} de corriente ` +
    `continua o más, poder de corte de ${f.amps(s.breakingCapacityA)} o más`,
  connector: (s, f) => `${capital(CONNECTORS[s.kind])}, ${f.amps(s.limitA)} o más`,
  battery: (s, f) =>
    `${capital(words.chemistries[s.chemistry])}, ${f.volts(s.nominalV)}, ${f.ampHours(s.capacityAh)} en total` +
    joinedAs(s, f),
}

function joinedAs(
  { inSeries = 1, inParallel = 1 }: { readonly inSeries?: number; readonly inParallel?: number },
  f: Formats,
): string {
  const parallel = inSeries > 1 ? `${counted(inParallel, BRANCHES, f)} así` : f.number(inParallel)
  const ways = [
    ...(inSeries > 1 ? [`${f.number(inSeries)} en serie`] : []),
    ...(inParallel > 1 ? [`${parallel} en paralelo`] : []),
  ]
  return ways.length === 0 ? '' : `: ${ways.join(', ')}`
}
