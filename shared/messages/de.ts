import type { RatingNoteCode } from '../../core/loads/rate-load.ts'
import type { Catalogue } from './catalogue.ts'
import { cartFindingsDe, kitNotesDe, kitReasonsDe, kitSpecificationsDe } from './de-kit.ts'
import { ratingsDe } from './de-ratings.ts'
import { whatIfsDe } from './de-what-ifs.ts'
import { wordsDe as words } from './de-words.ts'
import { workingDe } from './de-working.ts'
import { counted, formFor } from './grammar.ts'

const LIMIT_ASSUMED = ' (der Hersteller nennt keine Grenze; eine übliche gilt)'
const BATTERY_TOO_SMALL = 'Zu klein ist die Batterie, nicht der Wechselrichter.'

/** German. */
export const de: Catalogue = {
  ...ratingsDe,
  ...whatIfsDe,
  kitReasons: kitReasonsDe,
  kitNotes: kitNotesDe,
  kitSpecifications: kitSpecificationsDe,
  useInstead: (sku) => `Richtig ist ${sku}.`,
  findings: {
    ...cartFindingsDe,
    'continuous-power-short': (v, f) =>
      `Ihre Geräte ziehen zusammen ${f.watts(v.runningW)}. Mit ${f.percent(v.headroomFraction)} Reserve braucht das ` +
      `${f.watts(v.requiredContinuousW)}; dieser Wechselrichter liefert ${f.watts(v.continuousW)} Dauerleistung.`,
    'apparent-power-short': (v, f) =>
      `Ihre Geräte brauchen ${f.voltAmperes(v.runningVA)} (Volt mal Ampere, mehr als ihre Watt); dieser Wechselrichter ` +
      `liefert ${f.voltAmperes(v.continuousVA)}.`,
    'starting-power-short': (v, f) =>
      `Das Anlaufen braucht für einen Moment ${f.watts(v.startingW)}; die Spitzenleistung dieses Wechselrichters ist ` +
      `${f.watts(v.surgeW)}.`,
    'surge-time-short': (v, f) =>
      `Das Anlaufen braucht ${f.watts(v.startingW)} für ${f.seconds(v.startingS)}; mehr als ${f.watts(v.continuousW)} ` +
      `hält dieser Wechselrichter nur ${f.seconds(v.surgeS)} lang.`,
    'wave-form-unsuitable': () =>
      'Dieser Wechselrichter liefert eine modifizierte Sinuswelle; etwas auf Ihrer Liste braucht eine reine Sinuswelle ' +
      'wie aus dem Stromnetz.',
    'wave-form-care': () =>
      'Dieser Wechselrichter liefert eine modifizierte Sinuswelle. Etwas auf Ihrer Liste kann damit brummen, warm ' +
      'werden oder schwächer laufen; einer mit reiner Sinuswelle ist die bessere Wahl.',
    'output-voltage-mismatch': (v, f) =>
      `Dieser Wechselrichter liefert ${f.volts(v.outputV)}; Ihre Geräte brauchen ${f.volts(v.mainsV)}.`,
    'output-frequency-mismatch': (v, f) =>
      `Dieser Wechselrichter liefert ${f.hertz(v.outputHz)}; Ihre Geräte brauchen ${f.hertz(v.mainsHz)}.`,
    'input-voltage-mismatch': (v, f) =>
      `Dieser Wechselrichter ist für eine Batterie mit ${f.volts(v.inputNominalV)}; Ihre hat ` +
      `${f.volts(v.supplyNominalV)}.`,
    'connection-limit': (v, f) =>
      `${words.connections[v.kind]} trägt ${f.amps(v.limitA)}, das sind etwa ${f.watts(v.limitW)} an Geräten. Ihre ziehen ` +
      `${f.watts(v.runningW)}, also bis zu ${f.amps(v.currentA)} aus der Batterie.`,
    'connection-below-full-power': (v, f) =>
      `${words.connections[v.kind]} trägt ${f.amps(v.limitA)}: Bleiben Sie daran bei etwa ${f.watts(v.limitW)}, auch wenn ` +
      `der Wechselrichter ${f.watts(v.continuousW)} liefern könnte.`,
    'outlets-short': (v, f) =>
      `${counted(v.needed, { one: 'Stecker', other: 'Stecker' }, f)} zugleich, aber nur ` +
      `${counted(v.outlets, { one: 'Steckdose', other: 'Steckdosen' }, f)} an diesem Wechselrichter: Sie brauchen eine ` +
      'Steckdosenleiste.',
    'feature-missing': (v) =>
      `Ihm fehlt, was Sie wünschen: ${v.features.map((feature) => words.features[feature]).join(', ')}.`,
    'out-of-stock': () => 'Nicht vorrätig.',
    'over-price': (v, f) =>
      `${f.money(v.price, v.currency)} liegt über Ihren ${f.money(v.maxPrice, v.currency)}.`,
    'not-advised': (v) =>
      'Davon raten wir an einem Wechselrichter mit Batterie ab: ' +
      `${v.categories.map((category) => words.categories[category]).join(', ')}. Üblich ist dafür ein ` +
      'Stromerzeuger oder ein Netzanschluss.',
    'figure-assumed': (v, f) =>
      `Nicht angegeben: ${words.figures[v.figure]}; angenommen: ${f.number(v.value)}.`,
    'rating-estimated': (v, f) =>
      `Leistung auf bis zu ${f.watts(v.sizingW)} geschätzt. Genau steht sie auf dem Typenschild.`,
    'rating-read': (v, f) => ratingsDe.ratingNotes[v.note as RatingNoteCode](v, f),
    'minutes-assumed': (v, f) => `Angenommen: ${f.minutes(v.minutesPerDay)} am Tag eingeschaltet.`,
    'start-assumed-none': () =>
      'Angenommen: ein Gerät ohne Motor. Hat es einen, geben Sie seine Anlaufleistung an.',
    'restart-together': (v, f) =>
      `Nach einem Stromausfall ${formFor(v.count, { one: 'kann', other: 'können' }, f)} ` +
      `${counted(v.count, { one: 'Kompressor', other: 'Kompressoren' }, f)} zugleich anlaufen und ` +
      `${f.watts(v.startingW)} ziehen: Schalten Sie nacheinander ein.`,
    'inrush-not-sized': () =>
      'Zieht beim Einstecken einen sehr kurzen Stromstoß, zu kurz, um zu zählen. Stecken Sie nacheinander ein.',
    'supply-voltage-assumed': (v, f) =>
      `Batteriespannung nicht angegeben; angenommen: ${f.volts(v.nominalV)}.`,
    'cable-length-assumed': (v, f) =>
      `Kabellänge nicht angegeben; angenommen: ${f.length(v.lengthM)} für den einfachen Weg.`,
    'own-leads-too-thin': (v, f) =>
      `Die beiliegenden Kabel tragen ${f.amps(v.ampacityA)}; bei voller Leistung sind ${f.amps(v.neededA)} nötig.` +
      (v.needed === undefined ? '' : ` Nehmen Sie stattdessen ${v.needed}.`),
    'own-leads-drop': (v, f) =>
      `In den beiliegenden Kabeln gehen bei voller Leistung ${f.percent(v.dropFraction)} der Spannung verloren; es ` +
      `sollten höchstens ${f.percent(v.limitFraction)} sein.`,
    'own-leads-too-short': (v, f) =>
      `Die beiliegenden Kabel sind ${f.length(v.leadsM)} lang, Ihr Weg misst ${f.length(v.routeM)}: Setzen Sie den ` +
      'Wechselrichter näher an die Batterie.',
    'no-standard-conductor': (v, f) =>
      `Kein übliches Kabel trägt ${f.amps(v.worstCaseA)} so weit. Setzen Sie den Wechselrichter näher an die Batterie.`,
    'no-standard-fuse': (v, f) =>
      `Keine genormte Sicherung trägt ${f.amps(v.worstCaseA)}: Hier hilft eine höhere Batteriespannung.`,
    'no-safe-fuse': (v, f) =>
      `Keine genormte Sicherung liegt zwischen ${f.amps(v.minA)}, die der Wechselrichter mit Reserve zieht, und ` +
      `${f.amps(v.maxA)}, die das Kabel trägt.`,
    'socket-fuse-stays': () =>
      'Die Sicherung des Fahrzeugs schützt seine Steckdose. Setzen Sie nie eine größere ein.',
    'discharge-limit-running': (v, f) =>
      `Im Betrieb fließen ${f.amps(v.currentA)} aus der Batterie; sie darf ${f.amps(v.limitA)} abgeben` +
      `${v.limitAssumed ? LIMIT_ASSUMED : ''}. ${BATTERY_TOO_SMALL}`,
    'discharge-limit-starting': (v, f) =>
      `Beim Anlaufen fließen ${f.amps(v.currentA)} aus der Batterie; sie darf ${f.amps(v.limitA)} abgeben` +
      `${v.limitAssumed ? LIMIT_ASSUMED : ''}. ${BATTERY_TOO_SMALL}`,
    'cut-off-while-running': (v, f) =>
      v.inverterV === 0
        ? `Die Batterie kann diese Leistung gar nicht abgeben. ${BATTERY_TOO_SMALL}`
        : `Unter dieser Last sinkt die Spannung auf ${f.volts(v.inverterV)}, und der Wechselrichter schaltet bei ` +
          `${f.volts(v.cutOffV)} ab. Eine größere Batterie oder ein dickeres Kabel hilft, ein größerer ` +
          'Wechselrichter nicht.',
    'cut-off-while-starting': (v, f) =>
      v.inverterV === 0
        ? `Die Batterie kann die Anlaufleistung nicht abgeben. ${BATTERY_TOO_SMALL}`
        : `Beim Anlaufen sinkt die Spannung auf ${f.volts(v.inverterV)}; der Wechselrichter schaltet bei ` +
          `${f.volts(v.cutOffV)} ab. Eine größere Batterie oder ein dickeres Kabel hilft, ein größerer ` +
          'Wechselrichter nicht.',
    'voltage-sag': (v, f) =>
      `Beim Anlaufen sinkt die Spannung um ${f.percent(v.sagFraction)}: Lampen werden dunkler, und Elektronik kann ` +
      'ausfallen.',
    'day-not-carried': (v, f) =>
      `Diese Batterie (${f.ampHours(v.capacityAh)}) ist nach ${f.hours(v.atH)} Betrieb leer; Ihr Tag braucht etwa ` +
      `${f.ampHours(v.neededCapacityAh)}.`,
    'occasional-use': (v, f) =>
      `Gut für gelegentlichen Gebrauch: ${f.minutes(v.minutes)} am Tag; am Stück liefe es etwa ` +
      `${f.minutes(v.continuousMinutes)}.`,
    'runs-too-long': (v, f) =>
      `Zu lange für diese Batterie: Gewünscht sind ${f.minutes(v.minutes)} am Tag, am Stück reicht sie für etwa ` +
      `${f.minutes(v.continuousMinutes)}.` +
      (v.neededCapacityAh === undefined ? '' : ` Nötig sind etwa ${f.ampHours(v.neededCapacityAh)}.`),
    'under-20-minutes': () =>
      'Unter 20 Minuten lässt sich keine sichere Zeit nennen: Batterien unterscheiden sich bei solcher Last zu sehr.',
    'nothing-usable': () =>
      'Die Batterie beginnt an oder unter dem niedrigsten Ladezustand, auf den sie sinken soll.',
    'heavier-than-advised': () =>
      'Eine stärkere Last, als Hersteller für eine Batterie dieser Größe empfehlen: Sie altert früher. Nur für kurze Zeit.',
    'longer-than-a-year': () =>
      'Rechnerisch länger als ein Jahr; eine Batterie entlädt sich vorher von selbst.',
    'self-discharge-not-counted': () =>
      'Bei so langer Laufzeit verliert die Batterie auch in Ruhe Ladung; das ist hier nicht eingerechnet.',
    'gel-figures-unverified': () =>
      'Die Werte für Gel-Batterien sind von AGM-Batterien übernommen; die Zeit ist nur ein grober Anhalt.',
    'cold-lithium-charge': () =>
      'Zu kalt, um eine Lithiumbatterie zu laden: Wärmen Sie sie erst auf über 0 °C.',
    'charge-temperature-outside-range': () =>
      'Außerhalb der Temperaturen, bei denen diese Batterie geladen werden soll.',
    'battery-figure-assumed': (v, f) =>
      `Nicht angegeben: ${words.batteryFigures[v.field]}; angenommen: ${f.figure(v.value)}.`,
    'inverter-off-between': (v, f) =>
      `Angenommen ist, dass der Wechselrichter ${f.hours(v.hoursOn)} am Tag eingeschaltet ist; bleibt er an, leert er die ` +
      'Batterie von allein.',
  },
  cautions: {
    'medical-device':
      'Ein medizinisches Gerät: Fragen Sie den Hersteller nach Größe und Wellenform des Wechselrichters, und halten Sie ' +
      'eine zweite Stromquelle bereit. Verlassen Sie sich nie allein auf diese Antwort.',
    'mains-voltage':
      'An den Steckdosen liegt Netzspannung an, und die ist lebensgefährlich. Halten Sie den Wechselrichter geschlossen, ' +
      'trocken und außer Reichweite von Kindern.',
    'no-back-feed':
      'Speisen Sie nie ein Gebäude oder einen Steckdosenkreis über ein Kabel vom Wechselrichter. Feste Steckdosen ' +
      'gehören in die Hand einer Elektrofachkraft, mit Fehlerstromschutz (FI-Schalter).',
    'battery-short-circuit':
      'Eine kurzgeschlossene Batterie bringt Werkzeug zum Schmelzen und löst Brände aus, eine Lithiumbatterie erst recht. Legen Sie ' +
      'Ringe ab, decken Sie die Pole ab, und setzen Sie die Sicherung zuletzt ein.',
    'fuse-near-battery':
      'Setzen Sie die Sicherung in Reichweite des Batteriepols in das Pluskabel, bemessen für dieses Kabel.',
    'hydrogen-gas':
      'Diese Batterie gibt beim Laden explosives Gas ab: Lüften Sie den Raum, keine Flammen oder Funken.',
    'lithium-cold-charge':
      'Laden Sie eine Lithiumbatterie nicht unter 0 °C, es sei denn, sie heizt sich laut Hersteller selbst.',
    'generator-exhaust':
      'Betreiben Sie einen Stromerzeuger nur im Freien: Seine Abgase töten in Räumen, Kabinen und Wohnmobilen.',
    'wet-places':
      'Am Wasser brauchen Sie Fehlerstromschutz (FI-Schalter); halten Sie Wechselrichter und Stecker trocken.',
    'heat-and-air':
      'Der Wechselrichter wird warm: Montieren Sie ihn auf etwas, das nicht brennt, mit Luft ringsum.',
    'vehicle-socket-heat':
      'Stecker und Steckdose werden nahe der Grenze heiß: Prüfen Sie nach zehn Minuten mit der Hand, und ziehen Sie den ' +
      'Stecker, wenn er heiß ist.',
    'local-rules':
      'Die örtlichen Vorschriften für elektrische Anlagen gehen vor. Fragen Sie im Zweifel eine Elektrofachkraft.',
  },
  working: workingDe,
  steps: {
    'rating-input-watts': 'Leistungsaufnahme wie angegeben',
    'rating-measured-watts': 'Leistungsaufnahme wie gemessen',
    'rating-volts-amps': 'Volt mal Ampere',
    'rating-volt-amperes': 'Voltampere mal Leistungsfaktor',
    'rating-cooking-power-sizing': 'Von der Mikrowellenleistung zur Aufnahme, für die Größe',
    'rating-cooking-power-energy': 'Von der Mikrowellenleistung zur Aufnahme, für die Energie',
    'rating-horsepower': 'Von Pferdestärken (hp) zu Watt an der Welle',
    'rating-motor-output': 'Von der Leistung an der Welle zur Aufnahme',
    'rating-cooling-sizing': 'Von der Kühlleistung zur Aufnahme, für die Größe',
    'rating-cooling-energy': 'Von der Kühlleistung zur Aufnahme, für die Energie',
    'rating-label-text': 'Vom Typenschild gelesen',
    'rating-list-figure': 'Aus der Geräteliste',
    'rating-apparent-power': 'Leistungsaufnahme durch Leistungsfaktor',
    'load-start': 'Anlaufleistung eines Geräts',
    'load-energy': 'Energie aller Geräte am Tag',
    'demand-running': 'Alles, was zusammen laufen kann',
    'demand-starting': 'Der ungünstigste Moment beim Anlaufen',
    'demand-energy': 'Energie am Tag',
    headroom: 'Leistung im Betrieb mit Reserve',
    'unit-limits': 'Was der Wechselrichter liefert',
    'lowest-working-voltage': 'Niedrigste Betriebsspannung auf der Batterieseite',
    'worst-case-current': 'Größter Dauerstrom aus der Batterie',
    'connection-limit': 'Was der Anschluss durchlässt',
    'fuse-window': 'Sicherung: über dem Strom, unter dem, was das Kabel trägt',
    ampacity: 'Was das Kabel trägt (Strombelastbarkeit)',
    'voltage-drop': 'Spannungsfall im Kabel, hin und zurück',
    'inverter-input': 'Leistung aus der Batterie',
    'battery-rate-law': 'Kapazität je nach Entladestrom',
    'battery-resistance': 'Widerstand von Batterie und Kabel',
    'battery-current-at-start': 'Strom zu Beginn',
    'battery-capacity-at-current': 'Kapazität beim mittleren Strom',
    'battery-run-end': 'Wo die Laufzeit endet',
    'battery-run-time': 'Laufzeit',
    'bank-size': 'Nötige Batteriekapazität',
    recharge: 'Wieder aufladen',
  },
  inverterNeeded: 'Nennen Sie den Wechselrichter: eine Artikelnummer des Sortiments oder seine Daten.',
  inverterTooSmall: (runningW, continuousW, f) =>
    `Verlangt sind ${f.watts(runningW)}; dieser Wechselrichter liefert ${f.watts(continuousW)}.`,
  unknownUnit: (sku) => `Im Sortiment gibt es keinen Wechselrichter „${sku}“.`,
  faults: {
    'duplicate-load-id': (fault) =>
      `Zwei Geräte haben die Kennung „${fault.loadId}“; geben Sie jedem eine eigene.`,
    'unknown-appliance': () => 'Die Geräteliste hat diesen Eintrag nicht; GET /v1/appliances zeigt alle.',
    'nothing-stated': () => 'Nennen Sie ein Gerät der Liste, eine Leistungsangabe oder beides.',
    'rating-refused': () => 'Aus dieser Angabe ergibt sich keine Leistung.',
    'unknown-load-in-group': (fault) => `Kein Gerät hat die Kennung „${fault.loadId}“.`,
    'load-in-two-groups': (fault) =>
      `Das Gerät „${fault.loadId}“ steht schon in einer Gruppe, die sich abwechselt.`,
  },
}
