import type { RatingNoteCode } from '../../core/loads/rate-load.ts'
import type { Catalogue } from './catalogue.ts'
import { cartFindingsFr, kitNotesFr, kitReasonsFr, kitSpecificationsFr } from './fr-kit.ts'
import { ratingsFr } from './fr-ratings.ts'
import { whatIfsFr } from './fr-what-ifs.ts'
import { wordsFr as words } from './fr-words.ts'
import { workingFr } from './fr-working.ts'
import { counted, formFor } from './grammar.ts'

const LIMIT_ASSUMED = " (le fabricant n'indique pas de limite ; une valeur courante est prise)"
const BATTERY_TOO_SMALL = "C'est la batterie qui est trop petite, pas le convertisseur."

/** French. */
export const fr: Catalogue = {
  ...ratingsFr,
  ...whatIfsFr,
  kitReasons: kitReasonsFr,
  kitNotes: kitNotesFr,
  kitSpecifications: kitSpecificationsFr,
  useInstead: (sku) => `${sku} convient.`,
  findings: {
    ...cartFindingsFr,
    'continuous-power-short': (v, f) =>
      `Vos appareils consomment ensemble ${f.watts(v.runningW)}. Avec ${f.percent(v.headroomFraction)} de réserve, il faut ` +
      `${f.watts(v.requiredContinuousW)} ; ce convertisseur fournit ${f.watts(v.continuousW)} en continu.`,
    'apparent-power-short': (v, f) =>
      `Vos appareils prennent ${f.voltAmperes(v.runningVA)} (volts fois ampères, plus que leurs watts) ; ce convertisseur ` +
      `fournit ${f.voltAmperes(v.continuousVA)}.`,
    'starting-power-short': (v, f) =>
      `Le démarrage demande un instant ${f.watts(v.startingW)} ; la puissance de crête de ce convertisseur est de ` +
      `${f.watts(v.surgeW)}.`,
    'surge-time-short': (v, f) =>
      `Le démarrage demande ${f.watts(v.startingW)} pendant ${f.seconds(v.startingS)} ; ce convertisseur ne tient plus de ` +
      `${f.watts(v.continuousW)} que ${f.seconds(v.surgeS)}.`,
    'wave-form-unsuitable': () =>
      'Ce convertisseur fournit une onde sinusoïdale modifiée ; un appareil de votre liste exige une onde sinusoïdale ' +
      'pure, comme celle du secteur.',
    'wave-form-care': () =>
      'Ce convertisseur fournit une onde sinusoïdale modifiée. Un appareil de votre liste peut ronfler, chauffer ou perdre ' +
      'de la puissance ; un convertisseur à onde sinusoïdale pure est un meilleur choix.',
    'output-voltage-mismatch': (v, f) =>
      `Ce convertisseur fournit ${f.volts(v.outputV)} ; vos appareils demandent ${f.volts(v.mainsV)}.`,
    'output-frequency-mismatch': (v, f) =>
      `Ce convertisseur fournit ${f.hertz(v.outputHz)} ; vos appareils demandent ${f.hertz(v.mainsHz)}.`,
    'input-voltage-mismatch': (v, f) =>
      `Ce convertisseur est fait pour une batterie de ${f.volts(v.inputNominalV)} ; la vôtre est de ` +
      `${f.volts(v.supplyNominalV)}.`,
    'connection-limit': (v, f) =>
      `${words.connections[v.kind]} supporte ${f.amps(v.limitA)}, soit environ ${f.watts(v.limitW)} d'appareils. Les vôtres ` +
      `consomment ${f.watts(v.runningW)}, jusqu'à ${f.amps(v.currentA)} tirés de la batterie.`,
    'connection-below-full-power': (v, f) =>
      `${words.connections[v.kind]} supporte ${f.amps(v.limitA)} : n'y dépassez pas environ ${f.watts(v.limitW)}, même si le ` +
      `convertisseur pourrait fournir ${f.watts(v.continuousW)}.`,
    'outlets-short': (v, f) =>
      `${counted(v.needed, { one: 'fiche', other: 'fiches' }, f)} à la fois, mais seulement ` +
      `${counted(v.outlets, { one: 'prise', other: 'prises' }, f)} sur ce convertisseur : il vous faut une multiprise.`,
    'feature-missing': (v) =>
      `Il lui manque ce que vous souhaitez : ${v.features.map((feature) => words.features[feature]).join(', ')}.`,
    'out-of-stock': () => 'En rupture de stock.',
    'over-price': (v, f) =>
      `${f.money(v.price, v.currency)} : plus que vos ${f.money(v.maxPrice, v.currency)}.`,
    'not-advised': (v) =>
      "Nous déconseillons d'alimenter ceci par un convertisseur sur batterie : " +
      `${v.categories.map((category) => words.categories[category]).join(', ')}. On prend d'ordinaire un groupe électrogène ` +
      'ou un branchement au secteur.',
    'figure-assumed': (v, f) =>
      `Non indiqué : ${words.figures[v.figure]} ; valeur supposée : ${f.number(v.value)}.`,
    'rating-estimated': (v, f) =>
      `Puissance estimée à ${f.watts(v.sizingW)} au plus. La plaque signalétique donne la valeur exacte.`,
    'rating-read': (v, f) => ratingsFr.ratingNotes[v.note as RatingNoteCode](v, f),
    'minutes-assumed': (v, f) => `Supposé allumé ${f.minutes(v.minutesPerDay)} par jour.`,
    'start-assumed-none': () => "Supposé sans moteur. S'il en a un, indiquez sa puissance de démarrage.",
    'restart-together': (v, f) =>
      `Après une coupure, ${counted(v.count, { one: 'compresseur', other: 'compresseurs' }, f)} ` +
      `${formFor(v.count, { one: 'peut', other: 'peuvent' }, f)} démarrer en même temps et prendre ` +
      `${f.watts(v.startingW)} : allumez-les l'un après l'autre.`,
    'inrush-not-sized': () =>
      'Provoque un très bref appel de courant au branchement, trop bref pour compter. Branchez un appareil à la fois.',
    'supply-voltage-assumed': (v, f) =>
      `Tension de la batterie non indiquée ; valeur supposée : ${f.volts(v.nominalV)}.`,
    'cable-length-assumed': (v, f) =>
      `Longueur de câble non indiquée ; valeur supposée : ${f.length(v.lengthM)} pour l'aller simple.`,
    'own-leads-too-thin': (v, f) =>
      `Les câbles fournis supportent ${f.amps(v.ampacityA)} ; à pleine puissance, il faut ${f.amps(v.neededA)}.` +
      (v.needed === undefined ? '' : ` Prenez ${v.needed} à la place.`),
    'own-leads-drop': (v, f) =>
      `Les câbles fournis perdent ${f.percent(v.dropFraction)} de la tension à pleine puissance ; ils ne devraient pas en ` +
      `perdre plus de ${f.percent(v.limitFraction)}.`,
    'own-leads-too-short': (v, f) =>
      `Les câbles fournis mesurent ${f.length(v.leadsM)}, votre trajet en demande ${f.length(v.routeM)} : rapprochez le ` +
      'convertisseur de la batterie.',
    'no-standard-conductor': (v, f) =>
      `Aucun câble courant ne supporte ${f.amps(v.worstCaseA)} sur cette distance. Rapprochez le convertisseur de la batterie.`,
    'no-standard-fuse': (v, f) =>
      `Aucun fusible normalisé ne supporte ${f.amps(v.worstCaseA)} : la solution est une tension de batterie plus élevée.`,
    'no-safe-fuse': (v, f) =>
      `Aucun fusible normalisé ne se trouve entre ${f.amps(v.minA)}, ce que prend le convertisseur avec une marge, et ` +
      `${f.amps(v.maxA)}, ce que supporte le câble.`,
    'socket-fuse-stays': () => "Le fusible du véhicule protège sa prise. N'en montez jamais un plus gros.",
    'discharge-limit-running': (v, f) =>
      `En marche, ${f.amps(v.currentA)} sont tirés de la batterie ; elle peut fournir ${f.amps(v.limitA)}` +
      `${v.limitAssumed ? LIMIT_ASSUMED : ''}. ${BATTERY_TOO_SMALL}`,
    'discharge-limit-starting': (v, f) =>
      `Au démarrage, ${f.amps(v.currentA)} sont tirés de la batterie ; elle peut fournir ${f.amps(v.limitA)}` +
      `${v.limitAssumed ? LIMIT_ASSUMED : ''}. ${BATTERY_TOO_SMALL}`,
    'cut-off-while-running': (v, f) =>
      v.inverterV === 0
        ? `La batterie ne peut pas du tout fournir cette puissance. ${BATTERY_TOO_SMALL}`
        : `Sous cette charge, la tension tombe à ${f.volts(v.inverterV)} et le convertisseur s'arrête à ` +
          `${f.volts(v.cutOffV)}. Une plus grande batterie ou un câble plus gros aide, un plus grand convertisseur non.`,
    'cut-off-while-starting': (v, f) =>
      v.inverterV === 0
        ? `La batterie ne peut pas fournir la puissance de démarrage. ${BATTERY_TOO_SMALL}`
        : `Au démarrage, la tension tombe à ${f.volts(v.inverterV)} ; le convertisseur s'arrête à ${f.volts(v.cutOffV)}. ` +
          'Une plus grande batterie ou un câble plus gros aide, un plus grand convertisseur non.',
    'voltage-sag': (v, f) =>
      `Au démarrage, la tension baisse de ${f.percent(v.sagFraction)} : les lampes faiblissent et l'électronique peut ` +
      "s'arrêter.",
    'day-not-carried': (v, f) =>
      `Cette batterie (${f.ampHours(v.capacityAh)}) est vide après ${f.hours(v.atH)} d'utilisation ; votre journée demande ` +
      `environ ${f.ampHours(v.neededCapacityAh)}.`,
    'occasional-use': (v, f) =>
      `Convient à un usage occasionnel : ${f.minutes(v.minutes)} par jour ; d'une traite, cela durerait environ ` +
      `${f.minutes(v.continuousMinutes)}.`,
    'runs-too-long': (v, f) =>
      `Trop long pour cette batterie : vous voulez ${f.minutes(v.minutes)} par jour, elle tient environ ` +
      `${f.minutes(v.continuousMinutes)} d'une traite.` +
      (v.neededCapacityAh === undefined ? '' : ` Il faut environ ${f.ampHours(v.neededCapacityAh)}.`),
    'under-20-minutes': () =>
      'En dessous de 20 minutes, aucune durée sûre ne peut être donnée : à une telle charge, les batteries diffèrent trop.',
    'nothing-usable': () =>
      'Au départ, la batterie est déjà à la charge la plus basse à laquelle elle devrait descendre, ou plus bas encore.',
    'heavier-than-advised': () =>
      'Une charge plus forte que ce que les fabricants conseillent pour une batterie de cette taille : elle vieillira plus ' +
      'vite. Pour un temps bref seulement.',
    'longer-than-a-year': () =>
      "Plus d'un an sur le papier ; une batterie se décharge d'elle-même avant cela.",
    'self-discharge-not-counted': () =>
      "Sur une durée si longue, la batterie perd aussi de la charge au repos, ce qui n'est pas compté ici.",
    'gel-figures-unverified': () =>
      "Les valeurs des batteries gel sont reprises des batteries AGM ; la durée n'est qu'un ordre de grandeur.",
    'cold-lithium-charge': () =>
      "Trop froid pour charger une batterie au lithium : réchauffez-la d'abord au-dessus de 0 °C.",
    'charge-temperature-outside-range': () =>
      'En dehors des températures auxquelles cette batterie doit être chargée.',
    'battery-figure-assumed': (v, f) =>
      `Non indiqué : ${words.batteryFigures[v.field]} ; valeur supposée : ${f.figure(v.value)}.`,
    'inverter-off-between': (v, f) =>
      `Le convertisseur est supposé allumé ${f.hours(v.hoursOn)} par jour ; laissé allumé, il vide la batterie à lui seul.`,
  },
  cautions: {
    'medical-device':
      "Un appareil médical : demandez à son fabricant la taille et la forme d'onde du convertisseur, et gardez une seconde " +
      'source de courant. Ne vous fiez jamais à cette seule réponse.',
    'mains-voltage':
      'Les prises sont à la tension du secteur, qui tue. Gardez le convertisseur fermé, au sec et hors de portée des enfants.',
    'no-back-feed':
      "N'alimentez jamais un bâtiment ou un circuit de prises par un câble venant d'un convertisseur. Les prises fixes sont " +
      "l'affaire d'un électricien qualifié, avec une protection différentielle.",
    'battery-short-circuit':
      'Une batterie en court-circuit fait fondre les outils et déclenche des incendies, surtout au lithium. Retirez vos ' +
      'bagues, couvrez les bornes, posez le fusible en dernier.',
    'fuse-near-battery':
      'Montez le fusible à portée de main de la borne de la batterie, sur le câble positif, calibré pour ce câble.',
    'hydrogen-gas':
      'Cette batterie dégage un gaz explosif pendant la charge : aérez le local, ni flamme ni étincelle.',
    'lithium-cold-charge':
      "Ne chargez pas une batterie au lithium en dessous de 0 °C, sauf si son fabricant dit qu'elle se chauffe elle-même.",
    'generator-exhaust':
      "Ne faites tourner un groupe électrogène qu'en plein air : ses gaz d'échappement tuent dans une pièce, une cabine ou " +
      'un fourgon.',
    'wet-places':
      "Près de l'eau, utilisez une protection différentielle et gardez le convertisseur et les fiches au sec.",
    'heat-and-air':
      "Le convertisseur chauffe : fixez-le sur un support qui ne brûle pas, avec de l'air tout autour.",
    'vehicle-socket-heat':
      'La fiche et la prise chauffent près de leur limite : touchez-les au bout de dix minutes, débranchez si elles sont ' +
      'brûlantes.',
    'local-rules':
      "Les règles locales d'installation électrique passent avant tout. En cas de doute, demandez à un électricien qualifié.",
  },
  working: workingFr,
  steps: {
    'rating-input-watts': "Puissance absorbée telle qu'indiquée",
    'rating-measured-watts': 'Puissance absorbée telle que mesurée',
    'rating-volts-amps': 'Volts fois ampères',
    'rating-volt-amperes': 'Voltampères fois facteur de puissance',
    'rating-cooking-power-sizing': 'De la puissance de cuisson à la puissance absorbée, pour la taille',
    'rating-cooking-power-energy': "De la puissance de cuisson à la puissance absorbée, pour l'énergie",
    'rating-horsepower': "Des chevaux (hp) aux watts à l'arbre",
    'rating-motor-output': "De la puissance à l'arbre à la puissance absorbée",
    'rating-cooling-sizing': 'De la puissance frigorifique à la puissance absorbée, pour la taille',
    'rating-cooling-energy': "De la puissance frigorifique à la puissance absorbée, pour l'énergie",
    'rating-label-text': 'Lu sur la plaque signalétique',
    'rating-list-figure': 'De la liste des appareils',
    'rating-apparent-power': 'Puissance absorbée divisée par le facteur de puissance',
    'load-start': "Puissance de démarrage d'un appareil",
    'load-energy': 'Énergie par jour de tous les appareils',
    'demand-running': 'Tout ce qui peut fonctionner ensemble',
    'demand-starting': 'Le pire moment au démarrage',
    'demand-energy': 'Énergie par jour',
    headroom: 'Puissance en marche avec réserve',
    'unit-limits': 'Ce que fournit le convertisseur',
    'lowest-working-voltage': 'Tension de service la plus basse côté batterie',
    'worst-case-current': 'Plus fort courant continu tiré de la batterie',
    'connection-limit': 'Ce que laisse passer le raccordement',
    'fuse-window': 'Fusible : au-dessus du courant, en dessous de ce que supporte le câble',
    ampacity: 'Ce que supporte le câble (courant admissible)',
    'voltage-drop': 'Chute de tension dans le câble, aller et retour',
    'inverter-input': 'Puissance tirée de la batterie',
    'battery-rate-law': 'Capacité selon le courant de décharge',
    'battery-resistance': 'Résistance de la batterie et du câble',
    'battery-current-at-start': 'Courant au début',
    'battery-capacity-at-current': 'Capacité au courant moyen',
    'battery-run-end': 'Où la durée de fonctionnement se termine',
    'battery-run-time': 'Durée de fonctionnement',
    'bank-size': 'Capacité de batterie nécessaire',
    recharge: 'Recharge',
  },
  inverterNeeded: 'Indiquez le convertisseur : une référence de la gamme, ou ses valeurs.',
  inverterTooSmall: (runningW, continuousW, f) =>
    `Il est demandé ${f.watts(runningW)} ; ce convertisseur fournit ${f.watts(continuousW)}.`,
  unknownUnit: (sku) => `La gamme n'a pas de convertisseur « ${sku} ».`,
  faults: {
    'duplicate-load-id': (fault) =>
      `Deux appareils ont l'identifiant « ${fault.loadId} » ; donnez à chacun le sien.`,
    'unknown-appliance': () =>
      "La liste des appareils n'a pas cette entrée ; GET /v1/appliances les montre toutes.",
    'nothing-stated': () => 'Indiquez un appareil de la liste, une puissance, ou les deux.',
    'rating-refused': () => 'Cette indication ne donne aucune puissance.',
    'unknown-load-in-group': (fault) => `Aucun appareil n'a l'identifiant « ${fault.loadId} ».`,
    'load-in-two-groups': (fault) =>
      `L'appareil « ${fault.loadId} » se trouve déjà dans un groupe à tour de rôle.`,
  },
}
