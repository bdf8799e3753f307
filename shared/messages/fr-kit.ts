import type { CartFindingValues } from '../../core/advice/cart-findings.ts'
import type { KitRole } from '../../core/advice/vocabulary.ts'
import type { ConnectionKind } from '../../core/range/vocabulary.ts'
import type { Catalogue } from './catalogue.ts'
import type { Formats } from './formats.ts'
import { wordsFr as words } from './fr-words.ts'
import { capital, counted } from './grammar.ts'

type CartWriters = { readonly [C in keyof CartFindingValues]: Catalogue['findings'][C] }

const CONNECTORS: Readonly<Record<ConnectionKind, string>> = {
  'vehicle-socket': 'un cordon pour la prise du véhicule',
  'quick-connector': 'un connecteur rapide',
  'battery-terminals': 'un jeu de cosses pour les bornes de la batterie',
}

const YOUR_OWN: Readonly<Record<KitRole, string>> = {
  inverter: 'votre propre convertisseur',
  cable: 'votre propre câble',
  fuse: 'votre propre fusible',
  connector: 'votre propre connecteur',
  battery: 'votre propre batterie',
}

const BRANCHES = { one: 'branche', other: 'branches' }

/** Sentences about a cart, in French. */
export const cartFindingsFr: CartWriters = {
  'inverter-missing': (v) => `Il n'y a pas de convertisseur dans le panier.${instead(v, "ferait l'affaire")}`,
  'unit-voltage-mismatch': (v, f) =>
    `${v.sku} est fait pour une batterie de ${f.volts(v.inputNominalV)} ; la vôtre est de ${f.volts(v.supplyNominalV)}.` +
    instead(v),
  'battery-string-mismatch': (v, f) =>
    `${f.number(v.quantity)} × ${v.sku} (${f.volts(v.blockV)}) ne forment pas une batterie de ${f.volts(v.wantedV)} sans ` +
    `qu'il en reste.${instead(v)}`,
  'unlike-batteries': (v) =>
    `${v.sku} et ${v.otherSku} sont des batteries différentes : ne les reliez jamais en série ni en parallèle. Prenez un ` +
    'seul modèle.',
  'too-many-strings': (v, f) =>
    `${counted(v.strings, BRANCHES, f)} de ${v.sku} côte à côte se partagent mal le courant ; prenez des batteries plus ` +
    `grandes, en ${counted(v.mostStrings, BRANCHES, f)} au plus.`,
  'battery-missing': (v) => `Il n'y a pas ici de batterie pour ${v.sku}, et aucune n'est indiquée.`,
  'battery-below-full-power': (v, f) =>
    `À pleine puissance, le convertisseur prend ${f.amps(v.currentA)} ; la batterie peut fournir ${f.amps(v.limitA)}` +
    `${v.limitAssumed ? " (le fabricant n'indique pas de limite ; une valeur courante est prise)" : ''}. Restez ` +
    'en dessous ou prenez-en une plus grande.',
  'cut-off-below-battery': (v, f) =>
    `${v.sku} ne coupe qu'à ${f.volts(v.cutOffV)}, plus bas que cette batterie ne devrait descendre ` +
    `(${f.volts(v.lowestV)}) : surveillez vous-même la charge ou ajoutez un dispositif de coupure.`,
  'cut-off-above-battery': (v, f) =>
    `${v.sku} coupe dès ${f.volts(v.cutOffV)}, mais cette batterie est au repos à ${f.volts(v.restingV)} alors qu'il lui ` +
    'reste de la charge : une partie reste inutilisée.',
  'cable-missing': (v, f) =>
    `Il manque le câble de batterie pour ${v.sku} : une paire qui supporte ${f.amps(v.neededA)}.${instead(v)}`,
  'cable-too-thin': (v, f) =>
    `Le câble ${v.sku} supporte ${f.amps(v.ampacityA)} ; il faut ${f.amps(v.neededA)} : il chaufferait trop.${instead(v)}`,
  'cable-drop': (v, f) =>
    `Le câble ${v.sku} perd ${f.percent(v.dropFraction)} de la tension à pleine puissance ; il ne devrait pas en perdre ` +
    `plus de ${f.percent(v.limitFraction)}.${instead(v)}`,
  'cable-too-short': (v, f) =>
    `Le câble ${v.sku} mesure ${f.length(v.lengthM)} ; votre trajet en demande ${f.length(v.routeM)}.${instead(v)}`,
  'fuse-missing': (v, f) =>
    `Il manque le fusible pour ${v.sku} : de ${f.amps(v.minA)} à ${f.amps(v.maxA)}, près de la batterie.${instead(v)}`,
  'fuse-too-small': (v, f) =>
    `Le fusible ${v.sku} (${f.amps(v.ratingA)}) fondrait en usage normal : il faut au moins ${f.amps(v.minA)}.${instead(v)}`,
  'fuse-too-large': (v, f) =>
    `Le fusible ${v.sku} (${f.amps(v.ratingA)}) ne protège pas le câble, qui supporte ${f.amps(v.maxA)}.${instead(v)}`,
  'fuse-voltage-short': (v, f) =>
    `Le fusible ${v.sku} est fait pour ${f.volts(v.voltageV)} ; cette batterie atteint ${f.volts(v.requiredVoltageV)} ` +
    `pendant la charge.${instead(v)}`,
  'fuse-breaking-short': (v, f) =>
    `Le fusible ${v.sku} peut couper ${f.amps(v.breakingCapacityA)} (pouvoir de coupure) ; un court-circuit de cette ` +
    `batterie peut atteindre ${f.amps(v.requiredBreakingCapacityA)}.${instead(v)}`,
  'connector-missing': (v, f) =>
    `Il manque pour ${v.sku} ${CONNECTORS[v.kind]} qui supporte ${f.amps(v.neededA)}.${instead(v)}`,
  'connector-under-rated': (v, f) =>
    `Le connecteur ${v.sku} supporte ${f.amps(v.limitA)} ; il faut ${f.amps(v.neededA)}.${instead(v)}`,
  'owned-unchecked': (v) => `Non vérifié : ${YOUR_OWN[v.role]}. Comparez avec ce qui est demandé ici.`,
  'part-left-over': (v) => `${v.sku} ne sert pas à ce convertisseur ; ne le mettez pas dans ce circuit.`,
}

function instead({ useSku }: { readonly useSku?: string }, verb = 'convient'): string {
  return useSku === undefined ? '' : ` ${useSku} ${verb}.`
}

/** Why a line is in the kit, in French. */
export const kitReasonsFr: Catalogue['kitReasons'] = {
  'smallest-that-fits': (v, f) =>
    `Le plus petit qui suffit : il faut ${f.watts(v.requiredContinuousW)}, il fournit ${f.watts(v.continuousW)}.`,
  'unit-asked-for': (v, f) =>
    `Celui que vous avez choisi : il faut ${f.watts(v.requiredContinuousW)}, il fournit ${f.watts(v.continuousW)}.`,
  'carries-full-power': (v, f) =>
    `Supporte ${f.amps(v.ampacityA)} ; le convertisseur prend jusqu'à ${f.amps(v.worstCaseA)}, et ` +
    `${f.percent(v.dropFraction)} de la tension se perdent sur ${f.length(v.lengthM)}.`,
  'protects-cable': (v, f) =>
    `Laisse passer le courant du convertisseur (${f.amps(v.minA)} avec une marge) et protège le câble ` +
    `(${f.amps(v.maxA)}). À monter près de la batterie.`,
  'joins-unit': (v, f) => `Supporte ce que prend le convertisseur, jusqu'à ${f.amps(v.connectorA)}.`,
  'lasts-plan': (v, f) =>
    `Suffit pour ${v.days === 1 ? 'votre journée' : counted(v.days, { one: 'jour', other: 'jours' }, f)} : il faut environ ` +
    `${f.ampHours(v.neededCapacityAh)}, elle en a ${f.ampHours(v.capacityAh)}.`,
  'in-the-box': () => 'Fourni avec le convertisseur.',
  'yours-does': () => 'Ce que vous avez convient.',
  'yours-unchecked': () => 'Vous en avez déjà : comparez avec ce qui est demandé ici.',
  'box-unsuitable': () => 'Ce qui est fourni ne convient pas à votre trajet ; ceci convient.',
  'yours-unsuitable': () => 'Ce que vous avez ne convient pas ; ceci convient.',
  'your-battery-too-small': (v, f) =>
    `Votre batterie ne suffit pas à ce plan ; ${f.ampHours(v.capacityAh)} suffisent (il en faut environ ` +
    `${f.ampHours(v.neededCapacityAh)}). Utilisez celle-ci à la place de la vôtre : ne les raccordez jamais ensemble.`,
  'none-in-range': () => "Nous n'avons rien qui convienne : voici ce qu'il faut.",
  'vehicle-battery-too-small': () =>
    "La batterie du véhicule est trop petite pour cela ; un cordon pour la prise n'y change rien.",
}

/** Why a cable of the kit is of another size than the circuit names, in French. */
export const kitNotesFr: Catalogue['kitNotes'] = {
  'hotter-insulation': (v, f) =>
    `L'isolant de ce câble est prévu pour ${f.celsius(v.insulationC)} : ${v.size} suffit ; un câble prévu pour ` +
    `${f.celsius(v.otherInsulationC)} devrait faire ${v.otherSize}.`,
  'cooler-insulation': (v, f) =>
    `L'isolant de ce câble n'est prévu que pour ${f.celsius(v.insulationC)} : il faut ${v.size} ; avec un câble prévu pour ` +
    `${f.celsius(v.otherInsulationC)}, ${v.otherSize} suffirait.`,
  'next-size-we-have': (v) =>
    `Le minimum est de ${v.otherSize} ; parmi les nôtres, ${v.size} convient le mieux, et plus de cuivre ne nuit pas.`,
  'does-too': (v) =>
    `${v.size} suffit aussi bien que ${v.otherSize}, indiqué pour le circuit : le câble supporte le fusible et la chute ` +
    'de tension reste assez faible.',
  'smaller-fuse': (v, f) =>
    `Derrière le fusible de ${f.amps(v.ratingA)} de cette liste, ${v.size} suffit ; derrière ${f.amps(v.otherRatingA)}, il ` +
    `faudrait ${v.otherSize}.`,
  'for-this-kit': (v) =>
    `Avec la batterie et le fusible de cette liste, il faut ${v.size} au lieu de ${v.otherSize}.`,
}

/** What a part must be, in French. */
export const kitSpecificationsFr: Catalogue['kitSpecifications'] = {
  inverter: (s, f) =>
    `Convertisseur à onde sinusoïdale ${s.waveform === 'pure-sine' ? 'pure' : 'modifiée'}, ${f.volts(s.inputNominalV)}, ` +
    `${f.watts(s.continuousW)} de puissance continue`,
  cable: (s, f) =>
    (s.pairs > 1
      ? `${f.number(s.pairs)} paires de câbles de batterie en cuivre en parallèle, au total `
      : 'Paire de câbles de batterie en cuivre, ') +
    `${f.amps(s.carriesA)} ou plus, ${f.length(s.lengthM)} ou plus, chute de tension de ` +
    `${f.percent(s.dropLimitFraction)} au plus${s.standard === undefined ? '' : ` (${s.standard} suffit)`}`,
  fuse: (s, f) =>
    `Fusible avec porte-fusible, de ${f.amps(s.minA)} à ${f.amps(s.maxA)}, pour ${f.volts(s.voltageV)} continus ou plus, ` +
    `pouvoir de coupure de ${f.amps(s.breakingCapacityA)} ou plus`,
  connector: (s, f) => `${capital(CONNECTORS[s.kind])}, ${f.amps(s.limitA)} ou plus`,
  battery: (s, f) =>
    `${capital(words.chemistries[s.chemistry])}, ${f.volts(s.nominalV)}, ${f.ampHours(s.capacityAh)} en tout${joinedAs(s, f)}`,
}

function joinedAs(
  { inSeries = 1, inParallel = 1 }: { readonly inSeries?: number; readonly inParallel?: number },
  f: Formats,
): string {
  const parallel = inSeries > 1 ? `${counted(inParallel, BRANCHES, f)} de ce type` : f.number(inParallel)
  const ways = [
    ...(inSeries > 1 ? [`${f.number(inSeries)} en série`] : []),
    ...(inParallel > 1 ? [`${parallel} en parallèle`] : []),
  ]
  return ways.length === 0 ? '' : ` : ${ways.join(', ')}`
}
