import type { CartFindingValues } from '../../core/advice/cart-findings.ts'
import type { KitRole } from '../../core/advice/vocabulary.ts'
import type { ConnectionKind } from '../../core/range/vocabulary.ts'
import type { Catalogue } from './catalogue.ts'
import { wordsDe as words } from './de-words.ts'
import type { Formats } from './formats.ts'
import { capital, counted } from './grammar.ts'

type CartWriters = { readonly [C in keyof CartFindingValues]: Catalogue['findings'][C] }

const CONNECTORS: Readonly<Record<ConnectionKind, string>> = {
  'vehicle-socket': 'eine Leitung für die Steckdose des Fahrzeugs',
  'quick-connector': 'ein Schnellverbinder',
  'battery-terminals': 'ein Satz Kabelschuhe für die Batteriepole',
}

const YOUR_OWN: Readonly<Record<KitRole, string>> = {
  inverter: 'Ihr eigener Wechselrichter',
  cable: 'Ihr eigenes Kabel',
  fuse: 'Ihre eigene Sicherung',
  connector: 'Ihr eigener Verbinder',
  battery: 'Ihre eigene Batterie',
}

const STRINGS = { one: 'Strang', other: 'Stränge' }
const STRINGS_DATIVE = { one: 'Strang', other: 'Strängen' }

/** Sentences about a cart, in German. */
export const cartFindingsDe: CartWriters = {
  'inverter-missing': (v) => `Im Warenkorb ist kein Wechselrichter.${instead(v, 'Passend wäre')}`,
  'unit-voltage-mismatch': (v, f) =>
    `${v.sku} ist für eine Batterie mit ${f.volts(v.inputNominalV)}; Ihre hat ${f.volts(v.supplyNominalV)}.${instead(v)}`,
  'battery-string-mismatch': (v, f) =>
    `${f.number(v.quantity)} × ${v.sku} (${f.volts(v.blockV)}) ergeben keine Batterie mit ${f.volts(v.wantedV)}, ohne dass ` +
    `etwas übrig bleibt.${instead(v)}`,
  'unlike-batteries': (v) =>
    `${v.sku} und ${v.otherSku} sind verschiedene Batterien: Schalten Sie sie nie in Reihe oder parallel zusammen. ` +
    'Nehmen Sie nur ein Modell.',
  'too-many-strings': (v, f) =>
    `${counted(v.strings, STRINGS, f)} von ${v.sku} nebeneinander teilen sich den Strom ungleich; nehmen Sie größere ` +
    `Batterien mit höchstens ${counted(v.mostStrings, STRINGS_DATIVE, f)}.`,
  'battery-missing': (v) => `Für ${v.sku} ist hier keine Batterie, und es ist auch keine angegeben.`,
  'battery-below-full-power': (v, f) =>
    `Bei voller Leistung zieht der Wechselrichter ${f.amps(v.currentA)}; die Batterie darf ${f.amps(v.limitA)} abgeben` +
    `${v.limitAssumed ? ' (der Hersteller nennt keine Grenze; eine übliche gilt)' : ''}. Bleiben Sie darunter, oder nehmen ` +
    'Sie eine größere.',
  'cut-off-below-battery': (v, f) =>
    `${v.sku} schaltet erst bei ${f.volts(v.cutOffV)} ab; so weit sollte diese Batterie nicht entladen werden ` +
    `(${f.volts(v.lowestV)}): Achten Sie selbst auf den Ladezustand, oder bauen Sie eine Abschaltung ein.`,
  'cut-off-above-battery': (v, f) =>
    `${v.sku} schaltet schon bei ${f.volts(v.cutOffV)} ab, diese Batterie ruht aber bei ${f.volts(v.restingV)}, wenn noch ` +
    'Ladung da ist: Ein Teil davon bleibt ungenutzt.',
  'cable-missing': (v, f) =>
    `Für ${v.sku} fehlt das Batteriekabel: ein Paar, das ${f.amps(v.neededA)} trägt.${instead(v)}`,
  'cable-too-thin': (v, f) =>
    `Kabel ${v.sku} trägt ${f.amps(v.ampacityA)}; ${f.amps(v.neededA)} sind nötig: Es würde zu heiß.${instead(v)}`,
  'cable-drop': (v, f) =>
    `In Kabel ${v.sku} gehen bei voller Leistung ${f.percent(v.dropFraction)} der Spannung verloren; es sollten höchstens ` +
    `${f.percent(v.limitFraction)} sein.${instead(v)}`,
  'cable-too-short': (v, f) =>
    `Kabel ${v.sku} ist ${f.length(v.lengthM)} lang; Ihr Weg misst ${f.length(v.routeM)}.${instead(v)}`,
  'fuse-missing': (v, f) =>
    `Für ${v.sku} fehlt die Sicherung: nahe der Batterie eine mit ${f.amps(v.minA)} bis ${f.amps(v.maxA)}.${instead(v)}`,
  'fuse-too-small': (v, f) =>
    `Sicherung ${v.sku} (${f.amps(v.ratingA)}) würde im normalen Betrieb auslösen: Mindestens ${f.amps(v.minA)} sind ` +
    `nötig.${instead(v)}`,
  'fuse-too-large': (v, f) =>
    `Sicherung ${v.sku} (${f.amps(v.ratingA)}) schützt das Kabel nicht, das ${f.amps(v.maxA)} trägt.${instead(v)}`,
  'fuse-voltage-short': (v, f) =>
    `Sicherung ${v.sku} ist für ${f.volts(v.voltageV)} gebaut; diese Batterie erreicht beim Laden ` +
    `${f.volts(v.requiredVoltageV)}.${instead(v)}`,
  'fuse-breaking-short': (v, f) =>
    `Sicherung ${v.sku} kann höchstens ${f.amps(v.breakingCapacityA)} abschalten (Ausschaltvermögen); ein Kurzschluss an ` +
    `dieser Batterie kann ${f.amps(v.requiredBreakingCapacityA)} erreichen.${instead(v)}`,
  'connector-missing': (v, f) =>
    `Für ${v.sku} fehlt ${CONNECTORS[v.kind]}, belastbar mit ${f.amps(v.neededA)}.${instead(v)}`,
  'connector-under-rated': (v, f) =>
    `Verbinder ${v.sku} trägt ${f.amps(v.limitA)}; ${f.amps(v.neededA)} sind nötig.${instead(v)}`,
  'owned-unchecked': (v) =>
    `Nicht geprüft: ${YOUR_OWN[v.role]}. Vergleichen Sie selbst mit dem, was hier verlangt ist.`,
  'part-left-over': (v) =>
    `${v.sku} wird für diesen Wechselrichter nicht gebraucht; lassen Sie es aus diesem Stromkreis weg.`,
}

function instead({ useSku }: { readonly useSku?: string }, lead = 'Richtig ist'): string {
  return useSku === undefined ? '' : ` ${lead} ${useSku}.`
}

/** Why a line is in the kit, in German. */
export const kitReasonsDe: Catalogue['kitReasons'] = {
  'smallest-that-fits': (v, f) =>
    `Der kleinste, der reicht: ${f.watts(v.requiredContinuousW)} sind nötig, er liefert ${f.watts(v.continuousW)}.`,
  'unit-asked-for': (v, f) =>
    `Von Ihnen gewählt: ${f.watts(v.requiredContinuousW)} sind nötig, er liefert ${f.watts(v.continuousW)}.`,
  'carries-full-power': (v, f) =>
    `Trägt ${f.amps(v.ampacityA)}; der Wechselrichter zieht bis zu ${f.amps(v.worstCaseA)}, und auf ` +
    `${f.length(v.lengthM)} gehen ${f.percent(v.dropFraction)} der Spannung verloren.`,
  'protects-cable': (v, f) =>
    `Trägt den Strom des Wechselrichters (${f.amps(v.minA)} mit Reserve) und schützt das Kabel (${f.amps(v.maxA)}). ` +
    'Setzen Sie sie nahe an die Batterie.',
  'joins-unit': (v, f) => `Trägt, was der Wechselrichter zieht: bis zu ${f.amps(v.connectorA)}.`,
  'lasts-plan': (v, f) =>
    `Reicht für ${v.days === 1 ? 'Ihren Tag' : counted(v.days, { one: 'Tag', other: 'Tage' }, f)}: Nötig sind etwa ` +
    `${f.ampHours(v.neededCapacityAh)}, diese Batterie hat ${f.ampHours(v.capacityAh)}.`,
  'in-the-box': () => 'Liegt dem Wechselrichter bei.',
  'yours-does': () => 'Was Sie haben, passt.',
  'yours-unchecked': () => 'Das haben Sie schon: Vergleichen Sie es mit dem, was hier verlangt ist.',
  'box-unsuitable': () => 'Das beiliegende Teil passt nicht zu Ihrem Weg; dieses passt.',
  'yours-unsuitable': () => 'Was Sie haben, passt hierfür nicht; dieses passt.',
  'your-battery-too-small': (v, f) =>
    `Ihre Batterie reicht für diesen Plan nicht; ${f.ampHours(v.capacityAh)} reichen (nötig sind etwa ` +
    `${f.ampHours(v.neededCapacityAh)}). Nehmen Sie diese statt Ihrer: Schließen Sie beide nie zusammen.`,
  'none-in-range': () => 'Wir führen nichts Passendes: So muss das Teil sein.',
  'vehicle-battery-too-small': () =>
    'Die Batterie des Fahrzeugs ist dafür zu klein; eine Leitung für die Steckdose ändert daran nichts.',
}

/** Why a cable of the kit is of another size than the circuit names, in German. */
export const kitNotesDe: Catalogue['kitNotes'] = {
  'hotter-insulation': (v, f) =>
    `Die Isolierung dieses Kabels ist für ${f.celsius(v.insulationC)} ausgelegt, daher genügt der Querschnitt ${v.size}; ` +
    `bei einem Kabel für ${f.celsius(v.otherInsulationC)} wäre ${v.otherSize} nötig.`,
  'cooler-insulation': (v, f) =>
    `Die Isolierung dieses Kabels ist nur für ${f.celsius(v.insulationC)} ausgelegt, daher ist der Querschnitt ${v.size} ` +
    `nötig; bei einem Kabel für ${f.celsius(v.otherInsulationC)} würde ${v.otherSize} genügen.`,
  'next-size-we-have': (v) =>
    `Mindestens nötig ist ${v.otherSize}; von unseren Kabeln passt ${v.size} am besten, und mehr Kupfer schadet nicht.`,
  'does-too': (v) =>
    `${v.size} genügt ebenso wie ${v.otherSize}, beim Stromkreis genannt: Beide tragen, was die Sicherung durchlässt.`,
  'smaller-fuse': (v, f) =>
    `Hinter der Sicherung mit ${f.amps(v.ratingA)} aus dieser Liste genügt ${v.size}; hinter ${f.amps(v.otherRatingA)} ` +
    `wäre ${v.otherSize} nötig.`,
  'for-this-kit': (v) =>
    `Mit der Batterie und der Sicherung aus dieser Liste ist es ${v.size} statt ${v.otherSize}.`,
}

/** What a part must be, in German. */
export const kitSpecificationsDe: Catalogue['kitSpecifications'] = {
  inverter: (s, f) =>
    `Wechselrichter mit ${s.waveform === 'pure-sine' ? 'reiner' : 'modifizierter'} Sinuswelle, ` +
    `${f.volts(s.inputNominalV)}, ${f.watts(s.continuousW)} Dauerleistung`,
  cable: (s, f) =>
    (s.pairs > 1
      ? `${f.number(s.pairs)} Paar Batteriekabel aus Kupfer parallel, zusammen `
      : 'Ein Paar Batteriekabel aus Kupfer, ') +
    `${f.amps(s.carriesA)} oder mehr, ${f.length(s.lengthM)} oder länger, höchstens ${f.percent(s.dropLimitFraction)} ` +
    `Spannungsfall${s.standard === undefined ? '' : ` (${s.standard} reicht)`}`,
  fuse: (s, f) =>
    `Sicherung mit Halter, ${f.amps(s.minA)} bis ${f.amps(s.maxA)}, für ${f.volts(s.voltageV)} Gleichspannung oder mehr, ` +
    `Ausschaltvermögen ${f.amps(s.breakingCapacityA)} oder mehr`,
  connector: (s, f) => `${capital(CONNECTORS[s.kind])}, ${f.amps(s.limitA)} oder mehr`,
  battery: (s, f) =>
    `${words.chemistries[s.chemistry]}, ${f.volts(s.nominalV)}, insgesamt ${f.ampHours(s.capacityAh)}${joinedAs(s, f)}`,
}

function joinedAs(
  { inSeries = 1, inParallel = 1 }: { readonly inSeries?: number; readonly inParallel?: number },
  f: Formats,
): string {
  const parallel = inSeries > 1 ? `${counted(inParallel, STRINGS, f)} davon` : f.number(inParallel)
  const ways = [
    ...(inSeries > 1 ? [`${f.number(inSeries)} in Reihe`] : []),
    ...(inParallel > 1 ? [`${parallel} parallel`] : []),
  ]
  return ways.length === 0 ? '' : `: ${ways.join(', ')}`
}
