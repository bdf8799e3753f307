import type { ApplianceNames } from './appliance-name.ts'

/** German names of the built-in appliances, by id. */
export const namesDe: ApplianceNames = {
  'electric-kettle': {
    name: 'Wasserkocher',
    synonyms: [
      'Elektrokocher',
      'Kocher',
      'elektrischer Wasserkocher',
      'Teekocher',
      'Heißwasserkocher',
      'Teekessel',
    ],
  },
  'travel-kettle': {
    name: 'Reisewasserkocher',
    synonyms: [
      'kleiner Wasserkocher',
      'Campingwasserkocher',
      'Wasserkocher fürs Wohnmobil',
      'Wasserkocher fürs Boot',
      'Wasserkocher mit wenig Watt',
      'Mini-Wasserkocher',
    ],
  },
  'coffee-machine': {
    name: 'Kaffeemaschine (Filter)',
    synonyms: [
      'Filterkaffeemaschine',
      'Kaffeekocher',
      'Kaffeeautomat',
      'Perkolator',
      'Kaffeekanne elektrisch',
    ],
  },
  'pod-coffee-machine': {
    name: 'Kaffeemaschine (Kapseln oder Pads)',
    synonyms: ['Kapselmaschine', 'Padmaschine', 'Kapselkaffeemaschine', 'Kaffeepadmaschine'],
  },
  'espresso-machine': {
    name: 'Espressomaschine (zu Hause)',
    synonyms: ['Siebträgermaschine', 'Siebträger', 'Cappuccinomaschine', 'Espressokocher elektrisch'],
  },
  'bean-to-cup-coffee-machine': {
    name: 'Kaffeevollautomat',
    synonyms: ['Vollautomat', 'Kaffeemaschine mit Mahlwerk', 'Espressoautomat', 'Bohnenkaffeemaschine'],
    note: 'Seine Heizung schaltet sich immer wieder ein, solange er an ist: etwa 1,9 kWh am Tag wurden in einem Haushalt gemessen.',
  },
  'two-group-espresso-machine': {
    name: 'Espressomaschine, zweigruppig (Kaffeestand)',
    synonyms: [
      'Gastronomie-Espressomaschine',
      'Baristamaschine',
      'Siebträger für die Gastronomie',
      'Kaffeemobil',
      'Espressomaschine gewerblich',
    ],
    note: 'Meist zu viel für einen Wechselrichter an der Batterie.',
  },
  'water-urn': {
    name: 'Heißwasserspender (Kessel)',
    synonyms: [
      'Heißwasserkessel',
      'Teekessel für die Gastronomie',
      'Glühweinkocher',
      'Glühweintopf',
      'Warmwasserspender',
      'Einkochautomat',
      'Heißwasserbereiter',
    ],
  },
  'milk-frother': { name: 'Milchaufschäumer', synonyms: ['Milchschäumer', 'Milcherhitzer', 'Milchwärmer'] },
  'microwave-oven': {
    name: 'Mikrowelle',
    synonyms: ['Mikrowellenherd', 'Mikrowellenofen', 'Mikrowellengerät', 'Kombimikrowelle'],
    note: 'Die beworbene Leistung kommt beim Essen an; aus dem Netz nimmt sie etwa die Hälfte mehr auf.',
  },
  toaster: {
    name: 'Toaster',
    synonyms: ['Brotröster', 'Toastgerät', 'Doppelschlitztoaster', 'Langschlitztoaster'],
  },
  'hot-plate': {
    name: 'Kochplatte, einfach',
    synonyms: [
      'Elektrokochplatte',
      'Herdplatte',
      'Einzelkochplatte',
      'elektrische Kochplatte',
      'Elektroherd',
      'Elektropfanne',
      'Campingkochplatte',
    ],
  },
  'induction-hob': {
    name: 'Induktionskochplatte (tragbar)',
    synonyms: ['Induktionsplatte', 'Induktionskochfeld', 'Induktionsherd', 'mobiles Induktionskochfeld'],
  },
  'toaster-oven': {
    name: 'Minibackofen',
    synonyms: ['Kleinbackofen', 'Tischbackofen', 'Mini-Ofen', 'Pizzaofen', 'kleiner Backofen', 'Backofen'],
  },
  'rice-cooker': { name: 'Reiskocher', synonyms: ['Reisgarer', 'Dampfgarer', 'elektrischer Dampfgarer'] },
  'slow-cooker': {
    name: 'Schongarer',
    synonyms: ['Langsamgarer', 'Schmortopf elektrisch', 'Slow Cooker', 'Niedrigtemperaturgarer'],
  },
  'pressure-cooker': {
    name: 'Schnellkochtopf, elektrisch',
    synonyms: ['Multikocher', 'elektrischer Schnellkochtopf', 'Dampfkochtopf', 'Elektro-Kochtopf'],
  },
  'air-fryer': { name: 'Heißluftfritteuse', synonyms: ['Air Fryer', 'Luftfritteuse', 'Fritteuse ohne Fett'] },
  'sandwich-press': {
    name: 'Sandwichtoaster oder Kontaktgrill',
    synonyms: ['Sandwichmaker', 'Kontaktgrill', 'Paninigrill', 'Sandwicheisen', 'Toastpresse'],
  },
  'waffle-iron': { name: 'Waffeleisen', synonyms: ['Waffelmaschine', 'Waffelautomat', 'Waffelgerät'] },
  'crepe-maker': {
    name: 'Crêpesplatte',
    synonyms: [
      'Crêpe-Maker',
      'Crêpemaker',
      'Crepesmaker',
      'Crepeplatte',
      'Pfannkuchenplatte',
      'Pfannkuchenmaschine',
    ],
  },
  'electric-griddle': {
    name: 'Grillplatte oder Tischgrill, elektrisch',
    synonyms: [
      'Elektrogrill',
      'Tischgrill',
      'Elektro-Tischgrill',
      'Grillplatte',
      'Teppanyaki',
      'Raclette',
      'Raclettegrill',
      'Bratplatte',
    ],
  },
  'deep-fat-fryer': { name: 'Fritteuse', synonyms: ['Friteuse', 'Pommesfritteuse', 'Fettfritteuse'] },
  'hand-blender': {
    name: 'Stabmixer oder Handrührgerät',
    synonyms: [
      'Pürierstab',
      'Stabmixer',
      'Handmixer',
      'Handrührer',
      'Rührgerät',
      'Mixstab',
      'Schneebesen elektrisch',
    ],
  },
  blender: {
    name: 'Standmixer',
    synonyms: [
      'Mixer',
      'Smoothie-Maker',
      'Smoothiemixer',
      'Küchenmixer',
      'Bechermixer',
      'Hochleistungsmixer',
    ],
  },
  'stand-mixer': {
    name: 'Knetmaschine (Standrührgerät)',
    synonyms: ['Teigknetmaschine', 'Rührmaschine', 'Teigmaschine', 'Küchenmaschine', 'Teigkneter'],
  },
  'food-processor': {
    name: 'Zerkleinerer (Küche)',
    synonyms: [
      'Küchenhäcksler',
      'Multizerkleinerer',
      'Fleischwolf',
      'Foodprocessor',
      'elektrische Reibe',
      'Gemüsehobel elektrisch',
    ],
  },
  juicer: {
    name: 'Entsafter',
    synonyms: ['Saftpresse', 'Zitruspresse', 'Orangenpresse', 'Obstpresse', 'Saftzentrifuge'],
  },
  'coffee-grinder': {
    name: 'Kaffeemühle',
    synonyms: ['Kaffeemahlwerk', 'Espressomühle', 'Gewürzmühle', 'Getreidemühle'],
  },
  'bread-slicer': {
    name: 'Brotschneidemaschine oder Aufschnittmaschine',
    synonyms: [
      'Allesschneider',
      'Brotschneider',
      'Schneidemaschine',
      'Wurstschneidemaschine',
      'Aufschnittschneider',
      'Brotmaschine zum Schneiden',
    ],
  },
  'bread-maker': { name: 'Brotbackautomat', synonyms: ['Brotbackmaschine', 'Backautomat', 'Brotmaschine'] },
  'vacuum-sealer': {
    name: 'Vakuumiergerät',
    synonyms: ['Vakuumierer', 'Folienschweißgerät', 'Vakuumverpacker', 'Vakuumgerät'],
  },
  dishwasher: {
    name: 'Geschirrspüler',
    synonyms: ['Spülmaschine', 'Geschirrspülmaschine', 'Abwaschmaschine', 'Tischgeschirrspüler'],
  },
  fridge: {
    name: 'Kühlschrank (ohne Gefrierfach)',
    synonyms: [
      'Kühlgerät',
      'kleiner Kühlschrank',
      'Minikühlschrank',
      'Unterbaukühlschrank',
      'Eisschrank',
      'Tischkühlschrank',
    ],
    note: 'Läuft mit wenig und startet mit viel: An Kühlschränken, die mit 46-79 W laufen, wurden beim Anlaufen 597-1363 W gemessen.',
  },
  'fridge-freezer': {
    name: 'Kühl-Gefrier-Kombination',
    synonyms: [
      'Kühlschrank mit Gefrierfach',
      'Kühlgefrierkombination',
      'großer Kühlschrank',
      'Kombikühlschrank',
      'Kühlkombi',
    ],
    note: 'Eine Abtauheizung nimmt, wo es eine gibt, für sich allein etwa 100-250 W auf.',
  },
  'chest-freezer': {
    name: 'Gefriertruhe oder Gefrierschrank',
    synonyms: [
      'Gefriertruhe',
      'Tiefkühltruhe',
      'Gefrierschrank',
      'Tiefkühlschrank',
      'Kühltruhe',
      'Gefriergerät',
      'Tiefkühler',
    ],
  },
  'wine-cooler': {
    name: 'Weinkühlschrank (Kompressor)',
    synonyms: ['Weinkühler', 'Weinschrank', 'Getränkekühlschrank', 'Flaschenkühler', 'Weinklimaschrank'],
  },
  'absorption-fridge': {
    name: 'Minibar oder Kühlbox ohne Kompressor',
    synonyms: [
      'Absorberkühlschrank',
      'Absorberkühlbox',
      'thermoelektrische Kühlbox',
      'elektrische Kühlbox',
      'Minibar',
      'Dreiwegekühlschrank',
      'Wohnwagenkühlschrank am Netz',
      'Peltier-Kühlbox',
    ],
    note: 'Ein Dreiwegekühlschrank im Wohnwagen kann bis zu 200 W aufnehmen: Lesen Sie sein Typenschild.',
  },
  'compressor-cool-box': {
    name: 'Kompressorkühlbox am Netzteil',
    synonyms: [
      'Kompressor-Kühlbox',
      'Campingkühlschrank',
      'Autokühlbox',
      'Autokühlschrank',
      'tragbarer Kühlschrank',
      'Gefrierbox fürs Auto',
    ],
    note: 'Direkt an der Batterie, ohne Wechselrichter, läuft sie sparsamer.',
  },
  'ice-maker': {
    name: 'Eiswürfelmaschine (Tischgerät)',
    synonyms: ['Eiswürfelbereiter', 'Eismaschine', 'Eiswürfler', 'Eisbereiter', 'Eiswürfelautomat'],
  },
  'water-cooler': {
    name: 'Trinkwasserspender mit Kühlung',
    synonyms: ['Wasserspender', 'Wasserkühler', 'Trinkbrunnen', 'Gallonenspender', 'Bürowasserspender'],
  },
  'window-air-conditioner': {
    name: 'Fensterklimagerät',
    synonyms: [
      'Klimaanlage',
      'Klimagerät',
      'Fensterklimaanlage',
      'Raumklimagerät',
      'Klimaanlage fürs Zimmer',
      'Klimaanlage Wohnwagen',
    ],
    note: 'Etwa 8 000 Btu/h.',
  },
  'window-air-conditioner-small': {
    name: 'Fensterklimagerät, klein',
    synonyms: [
      'kleines Klimagerät',
      'kleine Klimaanlage',
      'kleine Fensterklimaanlage',
      'Klimagerät 5000 Btu',
    ],
    note: 'Etwa 5 000 Btu/h.',
  },
  'window-air-conditioner-large': {
    name: 'Fensterklimagerät, groß',
    synonyms: ['großes Klimagerät', 'große Fensterklimaanlage', 'Klimagerät 12000 Btu'],
    note: 'Etwa 12 000 Btu/h.',
  },
  'portable-air-conditioner': {
    name: 'Klimagerät, mobil',
    synonyms: [
      'mobile Klimaanlage',
      'mobiles Klimagerät',
      'tragbares Klimagerät',
      'Klimagerät mit Abluftschlauch',
      'Monoblock',
    ],
  },
  'rooftop-air-conditioner': {
    name: 'Dachklimaanlage eines Wohnmobils',
    synonyms: [
      'Dachklimagerät',
      'Klimaanlage Wohnmobil',
      'Wohnmobilklimaanlage',
      'Dachklima',
      'Klimaanlage Camper',
    ],
    note: 'Etwa 13 500 Btu/h.',
  },
  'variable-speed-air-conditioner': {
    name: 'Klimagerät mit geregelter Drehzahl',
    synonyms: [
      'Split-Klimaanlage',
      'Splitgerät',
      'Splitklimagerät',
      'Inverter-Klimaanlage',
      'Wärmepumpe',
      'Luft-Luft-Wärmepumpe',
    ],
  },
  'fan-heater': {
    name: 'Heizlüfter',
    synonyms: [
      'Elektroheizung',
      'Heizgerät',
      'Keramikheizer',
      'Keramikheizlüfter',
      'Schnellheizer',
      'Elektroheizer',
      'Raumheizer',
      'Bauheizer',
    ],
  },
  'oil-filled-radiator': {
    name: 'Ölradiator',
    synonyms: ['Elektroradiator', 'Radiator', 'Ölheizkörper', 'elektrischer Heizkörper'],
  },
  'tube-heater': {
    name: 'Gewächshausheizung oder Frostwächter',
    synonyms: [
      'Frostwächter',
      'Rohrheizkörper',
      'Rohrheizung',
      'Gewächshausheizer',
      'Schrankheizung',
      'Frostschutzheizung',
    ],
  },
  'infrared-heater': {
    name: 'Infrarotstrahler',
    synonyms: [
      'Heizstrahler',
      'Terrassenstrahler',
      'Terrassenheizer',
      'Quarzstrahler',
      'Halogenheizstrahler',
      'Infrarotheizung',
      'Wärmestrahler',
    ],
  },
  'electric-blanket': {
    name: 'Heizdecke',
    synonyms: [
      'Wärmedecke',
      'Wärmeunterbett',
      'Heizunterbett',
      'beheizte Decke',
      'Bettwärmer',
      'Kuscheldecke mit Heizung',
    ],
  },
  'immersion-heater': {
    name: 'Heizstab im Warmwasserspeicher',
    synonyms: [
      'Boiler',
      'Warmwasserboiler',
      'Warmwasserspeicher',
      'Elektroboiler',
      'Heizpatrone',
      'Untertischboiler',
      'Tauchsieder',
    ],
  },
  'furnace-fan': {
    name: 'Gebläse der Warmluftheizung (bei Stromausfall)',
    synonyms: [
      'Heizungsgebläse',
      'Warmluftheizung',
      'Luftheizung',
      'Umluftgebläse',
      'Gasheizung mit Gebläse',
    ],
  },
  'pellet-stove': {
    name: 'Pelletofen',
    synonyms: ['Pelletheizung', 'Pelletbrenner', 'Pelletkessel', 'Holzpelletofen'],
  },
  fan: {
    name: 'Tisch- oder Standventilator',
    synonyms: [
      'Ventilator',
      'Tischventilator',
      'Standventilator',
      'Turmventilator',
      'Säulenventilator',
      'Lüfter',
    ],
  },
  'ceiling-fan': {
    name: 'Deckenventilator',
    synonyms: ['Deckenlüfter', 'Ventilator an der Decke', 'Deckenflügel'],
  },
  'window-fan': {
    name: 'Fensterventilator oder Kastenventilator',
    synonyms: [
      'Abluftventilator',
      'Lüfter',
      'Bodenventilator',
      'Absauglüfter',
      'Badlüfter',
      'Dachlüfter',
      'Kastenlüfter',
    ],
  },
  'evaporative-cooler': {
    name: 'Verdunstungskühler',
    synonyms: ['Luftkühler', 'Aircooler', 'Wasserkühler mit Ventilator', 'Klimagerät ohne Schlauch'],
  },
  dehumidifier: {
    name: 'Luftentfeuchter',
    synonyms: ['Entfeuchter', 'Raumentfeuchter', 'Bautrockner', 'Lufttrockner'],
  },
  'air-purifier': {
    name: 'Luftreiniger',
    synonyms: ['Luftfilter', 'Luftwäscher', 'HEPA-Filter', 'Raumluftreiniger', 'Raumluftfilter'],
  },
  humidifier: {
    name: 'Luftbefeuchter',
    synonyms: ['Befeuchter', 'Ultraschallbefeuchter', 'Raumbefeuchter', 'Vernebler für Raumluft'],
  },
  'hair-dryer': {
    name: 'Haartrockner',
    synonyms: ['Föhn', 'Haarföhn', 'Reiseföhn'],
    note: 'Die halbe Stufe mancher Geräte nimmt nur jede zweite Halbwelle auf, das belastet manche Wechselrichter stark.',
  },
  'hair-straightener': {
    name: 'Glätteisen oder Lockenstab',
    synonyms: ['Haarglätter', 'Lockenstab', 'Lockeneisen', 'Kreppeisen', 'Lockenwickler', 'Warmluftbürste'],
  },
  shaver: {
    name: 'Rasierer, elektrisch',
    synonyms: [
      'Elektrorasierer',
      'Rasierapparat',
      'elektrischer Rasierer',
      'Barttrimmer',
      'Haartrimmer',
      'Bartschneider',
    ],
  },
  'electric-toothbrush-charger': {
    name: 'Ladestation einer elektrischen Zahnbürste',
    synonyms: ['elektrische Zahnbürste', 'Zahnbürste', 'Zahnbürstenladegerät', 'Schallzahnbürste'],
    note: 'Eine Ladestation ohne eigene Elektronik kann an einer modifizierten Sinuswelle warm werden.',
  },
  'heating-pad': {
    name: 'Heizkissen',
    synonyms: [
      'Wärmekissen',
      'Rückenwärmer',
      'Fußwärmer',
      'Nackenwärmer',
      'beheiztes Kissen',
      'Wärmeunterlage',
    ],
  },
  'nail-lamp': {
    name: 'Nagellampe',
    synonyms: ['UV-Lampe für Nägel', 'Nageltrockner', 'Gelnagellampe', 'Nagelhärter'],
  },
  'washing-machine': {
    name: 'Waschmaschine (heizt das Wasser selbst)',
    synonyms: ['Waschvollautomat', 'Frontlader', 'Waschautomat', 'Waschmaschine'],
  },
  'washing-machine-without-heater': {
    name: 'Waschmaschine (Warmwasser aus der Leitung)',
    synonyms: [
      'Toplader',
      'Campingwaschmaschine',
      'Waschmaschine ohne Heizung',
      'Kaltwaschmaschine',
      'Waschmaschine mit Schleuder',
      'Miniwaschmaschine',
    ],
  },
  'clothes-dryer': {
    name: 'Wäschetrockner (mit Heizung)',
    synonyms: ['Trockner', 'Ablufttrockner', 'Kondenstrockner', 'Trommeltrockner'],
    note: 'Große Trockner in Nordamerika brauchen 240 V und bis zu 5 kW: Lesen Sie das Typenschild.',
  },
  'heat-pump-dryer': {
    name: 'Wärmepumpentrockner',
    synonyms: ['Wäschetrockner mit Wärmepumpe', 'Trockner mit Wärmepumpe', 'Kondenstrockner mit Wärmepumpe'],
  },
  'spin-dryer': { name: 'Wäscheschleuder', synonyms: ['Schleuder', 'Tischschleuder', 'Trockenschleuder'] },
  iron: {
    name: 'Bügeleisen',
    synonyms: ['Dampfbügeleisen', 'Reisebügeleisen', 'Dampfbügelstation', 'Bügelstation', 'Plätteisen'],
  },
  'vacuum-cleaner': {
    name: 'Staubsauger',
    synonyms: ['Sauger', 'Bodenstaubsauger', 'Bodensauger', 'Handstaubsauger', 'Teppichsauger'],
  },
  'wet-dry-vacuum': {
    name: 'Nass-Trockensauger',
    synonyms: [
      'Nasssauger',
      'Trockensauger',
      'Werkstattsauger',
      'Industriesauger',
      'Bausauger',
      'Absauganlage',
      'Allzwecksauger',
    ],
  },
  'robot-vacuum': {
    name: 'Saugroboter (Laden)',
    synonyms: ['Staubsaugerroboter', 'Roboterstaubsauger', 'Wischroboter', 'Saugwischroboter'],
  },
  'steam-cleaner': {
    name: 'Dampfreiniger oder Dampfbesen',
    synonyms: [
      'Dampfreiniger',
      'Dampfbesen',
      'Dampfmopp',
      'Kleidungsdampfer',
      'Dampfglätter',
      'Tapetenablöser',
    ],
  },
  'pressure-washer': {
    name: 'Hochdruckreiniger',
    synonyms: ['Dampfstrahler', 'Druckreiniger', 'Hochdruckwäscher', 'Druckwäscher'],
  },
  'carpet-cleaner': {
    name: 'Teppichreiniger',
    synonyms: [
      'Waschsauger',
      'Polsterreiniger',
      'Sprühsauger',
      'Sprühextraktionsgerät',
      'Teppichwaschmaschine',
    ],
  },
  laptop: {
    name: 'Laptop',
    synonyms: ['Notebook', 'Laptop-Ladegerät', 'Laptop-Netzteil', 'tragbarer Computer', 'Klapprechner'],
  },
  'gaming-laptop': {
    name: 'Laptop für Spiele',
    synonyms: [
      'Gaming-Laptop',
      'Gaming-Notebook',
      'Spiele-Laptop',
      'leistungsstarker Laptop',
      'mobile Workstation',
    ],
  },
  'desktop-computer': {
    name: 'Computer (Tischgerät)',
    synonyms: ['PC', 'Rechner', 'Desktop-PC', 'Bürocomputer', 'Computerturm', 'Tower-PC', 'All-in-one-PC'],
  },
  'gaming-computer': {
    name: 'Computer für Spiele',
    synonyms: ['Gaming-PC', 'Spiele-PC', 'Gaming-Rechner', 'Workstation'],
  },
  monitor: {
    name: 'Bildschirm (Computer)',
    synonyms: ['Monitor', 'Computerbildschirm', 'Computermonitor', 'Flachbildschirm', 'Display'],
  },
  'large-monitor': {
    name: 'Bildschirm (Computer), ab 27 Zoll',
    synonyms: ['großer Monitor', 'Breitbildmonitor', 'gebogener Monitor', '4K-Monitor', 'großer Bildschirm'],
  },
  printer: {
    name: 'Tintenstrahldrucker',
    synonyms: ['Drucker', 'Fotodrucker', 'Tintendrucker', 'Scanner', 'Multifunktionsdrucker'],
  },
  'laser-printer': {
    name: 'Laserdrucker',
    synonyms: ['Kopierer', 'Kopiergerät', 'Bürodrucker', 'Fotokopierer', 'Farblaserdrucker'],
  },
  'external-disk': {
    name: 'Festplatte, extern',
    synonyms: ['externe Festplatte', 'USB-Festplatte', 'Sicherungsfestplatte', 'USB-Laufwerk'],
  },
  'network-server': {
    name: 'Server oder Netzwerkspeicher, klein',
    synonyms: ['NAS', 'Netzwerkspeicher', 'Heimserver', 'Medienserver', 'kleiner Server'],
  },
  router: {
    name: 'Internetrouter',
    synonyms: [
      'Router',
      'WLAN-Router',
      'Modem',
      'DSL-Router',
      'Kabelmodem',
      'WLAN',
      'Netzwerkswitch',
      'Glasfasermodem',
    ],
  },
  'mobile-router': {
    name: 'Mobilfunkrouter (4G oder 5G)',
    synonyms: [
      'LTE-Router',
      '5G-Router',
      'SIM-Router',
      'mobiler Hotspot',
      'Mobilfunkmodem',
      'mobiles Internet',
    ],
  },
  'satellite-terminal': {
    name: 'Satelliteninternet-Anlage',
    synonyms: [
      'Satelliteninternet',
      'Satellitenantenne für Internet',
      'Satellitenschüssel für Internet',
      'Internet über Satellit',
    ],
    note: 'Beim Abtauen von Schnee steigt die Leistung noch weiter.',
  },
  'signal-booster': {
    name: 'Handysignal-Verstärker',
    synonyms: ['Mobilfunkverstärker', 'Signalverstärker', 'Repeater', 'Netzverstärker'],
  },
  'radio-transceiver': {
    name: 'Funkgerät (am Netzteil)',
    synonyms: ['Amateurfunkgerät', 'CB-Funk', 'CB-Funkgerät', 'Seefunkgerät', 'Funkstation', 'Transceiver'],
  },
  'cordless-phone': {
    name: 'Schnurlostelefon (Basis)',
    synonyms: ['Telefon', 'Festnetztelefon', 'Telefonbasis', 'Anrufbeantworter', 'DECT-Telefon'],
  },
  television: {
    name: 'Fernseher',
    synonyms: ['TV', 'Fernsehgerät', 'Fernsehapparat', 'Flachbildfernseher', 'Smart-TV'],
    note: 'Etwa 43 Zoll.',
  },
  'small-television': {
    name: 'Fernseher, klein',
    synonyms: [
      'kleiner Fernseher',
      '24-Zoll-Fernseher',
      'Campingfernseher',
      'Fernseher Wohnmobil',
      'Küchenfernseher',
      '32-Zoll-Fernseher',
    ],
    note: '24 bis 32 Zoll.',
  },
  'large-television': {
    name: 'Fernseher, groß',
    synonyms: ['großer Fernseher', '55-Zoll-Fernseher', '65-Zoll-Fernseher', 'Großbildfernseher'],
    note: '55 bis 65 Zoll.',
  },
  'very-large-television': {
    name: 'Fernseher ab 75 Zoll',
    synonyms: ['75-Zoll-Fernseher', '85-Zoll-Fernseher', 'Werbebildschirm', 'Videowand', 'Riesenfernseher'],
  },
  'games-console': {
    name: 'Spielkonsole',
    synonyms: ['Spielekonsole', 'Videospielkonsole', 'Konsole', 'Gaming-Konsole'],
  },
  'set-top-box': {
    name: 'Receiver oder Streaming-Box',
    synonyms: [
      'Receiver',
      'Satellitenreceiver',
      'Kabelreceiver',
      'TV-Box',
      'Streaming-Stick',
      'Set-Top-Box',
      'Sat-Receiver',
      'Mediaplayer',
    ],
  },
  projector: {
    name: 'Beamer',
    synonyms: ['Projektor', 'Videoprojektor', 'Heimkino-Projektor', 'Diaprojektor'],
  },
  'hi-fi': {
    name: 'Stereoanlage oder Verstärker',
    synonyms: [
      'Hi-Fi-Anlage',
      'HiFi',
      'Verstärker',
      'AV-Receiver',
      'Musikanlage',
      'Plattenspieler',
      'Kompaktanlage',
    ],
  },
  'sound-bar': {
    name: 'Soundbar',
    synonyms: [
      'Klangleiste',
      'TV-Lautsprecher',
      'smarter Lautsprecher',
      'Funklautsprecher',
      'Bluetooth-Lautsprecher',
    ],
  },
  'pa-speaker': {
    name: 'PA-Lautsprecher (aktiv)',
    synonyms: [
      'Aktivbox',
      'PA-Anlage',
      'Beschallungsanlage',
      'Lautsprecher',
      'Lautsprecherbox',
      'DJ-Box',
      'Subwoofer',
      'Partybox',
    ],
  },
  'mixing-desk': {
    name: 'Mischpult',
    synonyms: ['Mixer (Ton)', 'Audiomixer', 'DJ-Mischpult', 'DJ-Controller', 'Tonmischpult'],
  },
  'guitar-amplifier': {
    name: 'Gitarrenverstärker',
    synonyms: ['Bassverstärker', 'Röhrenverstärker', 'Comboverstärker', 'Amp', 'Instrumentenverstärker'],
  },
  'keyboard-instrument': {
    name: 'Keyboard (Instrument)',
    synonyms: ['E-Piano', 'Digitalpiano', 'Stagepiano', 'Synthesizer', 'elektrisches Klavier', 'E-Orgel'],
  },
  radio: {
    name: 'Radio',
    synonyms: ['Digitalradio', 'DAB-Radio', 'Radiowecker', 'Küchenradio', 'Rundfunkgerät'],
  },
  'led-lamp': {
    name: 'LED-Lampe',
    synonyms: [
      'Lampe',
      'Licht',
      'Glühbirne',
      'LED-Birne',
      'LED-Leuchte',
      'Tischlampe',
      'Schreibtischlampe',
      'Leselampe',
      'Leuchte',
    ],
  },
  'led-work-light': {
    name: 'LED-Arbeitsleuchte',
    synonyms: [
      'Baustrahler',
      'LED-Strahler',
      'LED-Fluter',
      'Arbeitslampe',
      'Arbeitsscheinwerfer',
      'Flutlicht',
      'Werkstattlampe',
    ],
  },
  'string-lights': {
    name: 'Lichterkette (LED)',
    synonyms: [
      'LED-Lichterkette',
      'LED-Streifen',
      'LED-Band',
      'Partylichter',
      'Markisenbeleuchtung',
      'Weihnachtsbeleuchtung',
      'Lichtschlauch',
    ],
  },
  'filament-string-lights': {
    name: 'Lichterkette (Glühlampen)',
    synonyms: ['Lichterkette mit Glühbirnen', 'alte Lichterkette', 'Girlande mit Glühlampen'],
  },
  'stage-light': {
    name: 'LED-Bühnenscheinwerfer',
    synonyms: [
      'Scheinwerfer',
      'Bühnenlicht',
      'PAR-Scheinwerfer',
      'Discolicht',
      'Discokugel',
      'Moving Head',
      'Lichteffekt',
      'Partylicht',
    ],
  },
  'compact-fluorescent-lamp': {
    name: 'Energiesparlampe',
    synonyms: ['Kompaktleuchtstofflampe', 'Sparlampe', 'Energiesparbirne'],
  },
  'fluorescent-tube': {
    name: 'Leuchtstoffröhre',
    synonyms: ['Neonröhre', 'Leuchtstofflampe', 'Röhrenlampe', 'Neonlicht', 'Lichtleiste'],
  },
  'halogen-lamp': {
    name: 'Halogenlampe',
    synonyms: ['Halogenstrahler', 'Halogenspot', 'Halogenbirne', 'Halogenfluter'],
    note: 'Ein Halogenfluter nimmt 150-500 W auf: Lesen Sie die Angabe auf der Lampe.',
  },
  'incandescent-lamp': {
    name: 'Glühlampe',
    synonyms: ['Glühbirne', 'alte Glühbirne', 'Birne', 'Glühfadenlampe'],
  },
  'heat-lamp': {
    name: 'Wärmelampe',
    synonyms: [
      'Rotlichtlampe',
      'Infrarotlampe',
      'Kükenlampe',
      'Terrariumlampe',
      'Reptilienlampe',
      'Speisenwärmelampe',
    ],
  },
  'grow-light': {
    name: 'LED-Pflanzenlampe',
    synonyms: ['Pflanzenlampe', 'Pflanzenlicht', 'Pflanzenleuchte', 'Growlampe', 'Anzuchtlampe'],
  },
  'phone-charger': {
    name: 'Handyladegerät',
    synonyms: [
      'Handy',
      'Smartphone-Ladegerät',
      'Smartphone',
      'USB-Ladegerät',
      'Telefonladegerät',
      'Mobiltelefon',
    ],
  },
  'tablet-charger': {
    name: 'Tablet-Ladegerät',
    synonyms: ['Tablet', 'Tablet-PC', 'E-Reader', 'E-Book-Reader', 'Lesegerät'],
  },
  'power-bank': {
    name: 'Powerbank (Laden)',
    synonyms: ['Zusatzakku', 'externer Akku', 'USB-Akku', 'mobiler Akku'],
  },
  'tool-battery-charger': {
    name: 'Ladegerät für Werkzeugakkus',
    synonyms: [
      'Akkuschrauber',
      'Akkuschrauber-Ladegerät',
      'Akkubohrer laden',
      'Werkzeugladegerät',
      'Akkuwerkzeug',
    ],
  },
  'camera-battery-charger': {
    name: 'Ladegerät für Kamera- oder Drohnenakkus',
    synonyms: [
      'Drohne',
      'Drohnenladegerät',
      'Kamera-Ladegerät',
      'Kameraakku',
      'Lithium-Polymer-Ladegerät',
      'LiPo-Ladegerät',
    ],
  },
  'household-battery-charger': {
    name: 'Ladegerät für Haushaltsakkus',
    synonyms: [
      'Akkuladegerät',
      'AA-Ladegerät',
      'AAA-Ladegerät',
      'Mignon-Ladegerät',
      'Batterieladegerät für Rundzellen',
    ],
  },
  'e-bike-charger': {
    name: 'E-Bike-Ladegerät',
    synonyms: ['Elektrofahrrad', 'E-Bike', 'Pedelec', 'Pedelec-Ladegerät', 'Fahrradakku', 'Elektrorad'],
  },
  'e-scooter-charger': {
    name: 'E-Scooter-Ladegerät',
    synonyms: ['E-Roller', 'Elektroroller', 'E-Scooter', 'Tretroller elektrisch', 'Hoverboard'],
  },
  'car-battery-charger': {
    name: 'Autobatterie-Ladegerät',
    synonyms: [
      'Batterieladegerät',
      'Kfz-Ladegerät',
      'Erhaltungsladegerät',
      'Ladeerhaltung',
      'Starterbatterie-Ladegerät',
      'Bordbatterie-Ladegerät',
    ],
  },
  'torch-charger': {
    name: 'Taschenlampen-Ladegerät',
    synonyms: ['Taschenlampe', 'Stirnlampe', 'Handlampe', 'Handscheinwerfer', 'Akkulampe'],
  },
  'electric-drill': {
    name: 'Bohrmaschine',
    synonyms: ['Schlagbohrmaschine', 'Elektrobohrer', 'Schlagbohrer', 'Bohrer', 'Bohrmaschine mit Kabel'],
  },
  'rotary-hammer': {
    name: 'Bohrhammer',
    synonyms: [
      'Schlaghammer',
      'Abbruchhammer',
      'Meißelhammer',
      'Stemmhammer',
      'Presslufthammer elektrisch',
      'Kombihammer',
    ],
  },
  'angle-grinder': {
    name: 'Winkelschleifer',
    synonyms: ['Trennschleifer', 'Schleifmaschine', 'kleiner Winkelschleifer', 'Einhandwinkelschleifer'],
    note: '115 oder 125 mm (4-1/2 oder 5 Zoll).',
  },
  'large-angle-grinder': {
    name: 'Winkelschleifer, groß',
    synonyms: [
      'großer Winkelschleifer',
      '230-mm-Winkelschleifer',
      'großer Trennschleifer',
      'Steintrenner',
      'Zweihandwinkelschleifer',
    ],
    note: '230 mm (9 Zoll).',
  },
  'circular-saw': {
    name: 'Handkreissäge',
    synonyms: ['Kreissäge', 'Tauchsäge', 'Tauchkreissäge', 'Schienensäge'],
  },
  'mitre-saw': {
    name: 'Kapp- und Gehrungssäge',
    synonyms: ['Kappsäge', 'Gehrungssäge', 'Paneelsäge', 'Zugsäge'],
  },
  'table-saw': { name: 'Tischkreissäge', synonyms: ['Tischsäge', 'Baukreissäge', 'Unterflurkreissäge'] },
  jigsaw: {
    name: 'Stichsäge',
    synonyms: ['Pendelstichsäge', 'Säbelsäge', 'Reciprosäge', 'elektrischer Fuchsschwanz'],
  },
  sander: {
    name: 'Schleifer (Schleifmaschine)',
    synonyms: ['Schwingschleifer', 'Exzenterschleifer', 'Bandschleifer', 'Deltaschleifer', 'Schleifgerät'],
  },
  planer: { name: 'Elektrohobel', synonyms: ['Hobel', 'Handhobel', 'Hobelmaschine'] },
  'wood-router': { name: 'Oberfräse', synonyms: ['Fräse', 'Kantenfräse', 'Holzfräse', 'Tauchfräse'] },
  'multi-tool': {
    name: 'Multifunktionswerkzeug (oszillierend)',
    synonyms: ['Multitool', 'Oszillierer', 'Multischleifer', 'Minibohrer', 'Gravierwerkzeug', 'Drehwerkzeug'],
  },
  'tile-saw': {
    name: 'Fliesenschneider, elektrisch',
    synonyms: ['Fliesensäge', 'Nassschneider', 'Steinsäge', 'Fliesenschneidmaschine', 'Nasstrennsäge'],
  },
  'bench-grinder': {
    name: 'Doppelschleifer',
    synonyms: ['Schleifbock', 'Schleifstein', 'Messerschleifer', 'Schärfmaschine', 'Tischschleifmaschine'],
  },
  'air-compressor': {
    name: 'Kompressor (Druckluft)',
    synonyms: ['Druckluftkompressor', 'Luftkompressor', 'Werkstattkompressor', 'Kompressor 1 PS'],
    note: 'Etwa 1 hp.',
  },
  'small-air-compressor': {
    name: 'Kompressor (Druckluft), klein',
    synonyms: [
      'kleiner Kompressor',
      'Luftpumpe am Netz',
      'Reifenfüller',
      'Airbrush-Kompressor',
      'ölfreier Kompressor',
      'Naglerkompressor',
    ],
    note: 'Bis etwa 1/2 hp.',
  },
  'large-air-compressor': {
    name: 'Kompressor (Druckluft), groß',
    synonyms: ['großer Kompressor', 'Kompressor 2 PS', 'Kompressor mit Riemenantrieb', 'Garagenkompressor'],
    note: 'Etwa 2 hp.',
  },
  'heat-gun': {
    name: 'Heißluftpistole',
    synonyms: ['Heißluftgebläse', 'Heißluftföhn', 'Farbabbrenner', 'Schrumpfpistole'],
  },
  'soldering-iron': { name: 'Lötkolben', synonyms: ['Lötstation', 'Lötpistole', 'Lötgerät'] },
  'glue-gun': { name: 'Heißklebepistole', synonyms: ['Klebepistole', 'Heißkleber', 'Schmelzklebepistole'] },
  'paint-sprayer': {
    name: 'Farbsprühgerät',
    synonyms: ['Farbspritzpistole', 'Sprühpistole', 'Farbsprühsystem', 'Lackierpistole', 'Airless-Gerät'],
  },
  'electric-chain-saw': {
    name: 'Elektrokettensäge',
    synonyms: ['Kettensäge', 'Motorsäge elektrisch', 'Elektrosäge', 'Kettensäge mit Kabel'],
  },
  'hedge-trimmer': {
    name: 'Heckenschere, elektrisch',
    synonyms: ['Elektroheckenschere', 'Heckenschere', 'Heckenschneider', 'Heckentrimmer'],
  },
  'grass-trimmer': {
    name: 'Rasentrimmer',
    synonyms: [
      'Fadentrimmer',
      'Motorsense',
      'Freischneider',
      'Grastrimmer',
      'Kantenschneider',
      'Elektrosense',
    ],
  },
  'lawn-mower': { name: 'Elektrorasenmäher', synonyms: ['Rasenmäher', 'Mäher', 'Rasenmäher mit Kabel'] },
  'leaf-blower': { name: 'Laubbläser', synonyms: ['Laubsauger', 'Laubgebläse', 'Gartengebläse', 'Bläser'] },
  'cement-mixer': {
    name: 'Betonmischer',
    synonyms: ['Mischmaschine', 'Mörtelmischer', 'Zementmischer', 'Betonmischmaschine'],
  },
  welder: {
    name: 'Schweißgerät, 160 A',
    synonyms: [
      'Schweißgerät',
      'Inverter-Schweißgerät',
      'Elektrodenschweißgerät',
      'MIG-Schweißgerät',
      'WIG-Schweißgerät',
      'MAG-Schweißgerät',
      'Lichtbogenschweißgerät',
    ],
    note: '160 A; ein Stromkreis mit 120 V trägt nur das kleine Gerät.',
  },
  'small-welder': {
    name: 'Schweißgerät, 90 A',
    synonyms: [
      'kleines Schweißgerät',
      'Fülldraht-Schweißgerät',
      'Hobby-Schweißgerät',
      'Schweißgerät ohne Gas',
    ],
  },
  'water-pump': {
    name: 'Wasserpumpe (Druckpumpe)',
    synonyms: [
      'Gartenpumpe',
      'Hauswasserwerk',
      'Druckpumpe',
      'Hauswasserautomat',
      'Druckerhöhungspumpe',
      'Umfüllpumpe',
      'Pumpe',
    ],
  },
  'well-pump': {
    name: 'Brunnenpumpe, 1/2 hp',
    synonyms: ['Tiefbrunnenpumpe', 'Tiefpumpe', 'Unterwasserpumpe', 'Brunnen'],
  },
  'sump-pump': {
    name: 'Kellerpumpe, 1/3 hp',
    synonyms: [
      'Schmutzwasserpumpe',
      'Kellerentwässerung',
      'Entwässerungspumpe',
      'Hochwasserpumpe',
      'Sumpfpumpe',
    ],
  },
  'bilge-pump': {
    name: 'Bilge- oder Lenzpumpe am Netz',
    synonyms: ['Bilgenpumpe', 'Bilgepumpe', 'Lenzpumpe', 'Bootspumpe', 'Notpumpe', 'Bergungspumpe'],
  },
  'pond-pump': {
    name: 'Tauch- oder Teichpumpe, klein',
    synonyms: [
      'Teichpumpe',
      'Tauchpumpe',
      'Springbrunnenpumpe',
      'Teichfilter',
      'Zimmerbrunnen',
      'Flachsauger',
    ],
  },
  'aquarium-pump': {
    name: 'Aquariumpumpe mit Filter',
    synonyms: ['Aquarienpumpe', 'Aquariumfilter', 'Luftpumpe fürs Aquarium', 'Fischbecken', 'Außenfilter'],
  },
  'circulation-pump': {
    name: 'Heizungspumpe',
    synonyms: ['Umwälzpumpe', 'Heizungsumwälzpumpe', 'Zirkulationspumpe', 'Kesselpumpe'],
    note: 'Alte laufen ständig mit 60-120 W, elektronisch geregelte mit 5-45 W.',
  },
  'air-bed-pump': {
    name: 'Luftmatratzen- oder Zeltpumpe',
    synonyms: ['Luftmatratzenpumpe', 'elektrische Luftpumpe', 'Gebläsepumpe', 'SUP-Pumpe', 'Luftbett'],
  },
  'pool-pump': {
    name: 'Schwimmbadpumpe',
    synonyms: ['Poolpumpe', 'Filterpumpe', 'Sandfilteranlage', 'Whirlpoolpumpe', 'Poolfilter'],
  },
  'card-reader': {
    name: 'Kartenlesegerät',
    synonyms: ['Kartenterminal', 'EC-Gerät', 'Kartenzahlgerät', 'Bezahlterminal', 'Zahlungsterminal'],
  },
  till: {
    name: 'Kasse mit Bildschirm',
    synonyms: ['Registrierkasse', 'Kassensystem', 'Ladenkasse', 'Kassenterminal', 'Touchkasse'],
  },
  'receipt-printer': {
    name: 'Bon- oder Etikettendrucker',
    synonyms: [
      'Bondrucker',
      'Etikettendrucker',
      'Thermodrucker',
      'Kassendrucker',
      'Belegdrucker',
      'Quittungsdrucker',
    ],
  },
  scales: {
    name: 'Ladenwaage',
    synonyms: ['Waage', 'Marktwaage', 'Thekenwaage', 'Kassenwaage', 'Verkaufswaage'],
  },
  'sewing-machine': {
    name: 'Nähmaschine',
    synonyms: ['Overlock', 'Overlockmaschine', 'Stickmaschine', 'Nähautomat'],
  },
  'food-warmer': {
    name: 'Speisenwärmer',
    synonyms: [
      'Warmhalteplatte',
      'Wärmebehälter',
      'Bain-Marie',
      'Suppenkessel',
      'Wärmeplatte',
      'Flaschenwärmer',
      'Wärmeschrank',
      'Würstchenwärmer',
    ],
  },
  'popcorn-maker': { name: 'Popcornmaschine', synonyms: ['Popcorngerät', 'Popcornwagen', 'Popcornautomat'] },
  'candy-floss-machine': {
    name: 'Zuckerwattemaschine',
    synonyms: ['Zuckerwattegerät', 'Zuckerwatte', 'Zuckerwatteautomat'],
  },
  'slush-machine': {
    name: 'Slushmaschine',
    synonyms: ['Slush-Eis-Maschine', 'Slusheismaschine', 'Granitamaschine', 'Frozen-Drink-Maschine'],
  },
  'ice-cream-freezer': {
    name: 'Eiscremetruhe',
    synonyms: ['Eistruhe', 'Speiseeisvitrine', 'Eisvitrine', 'Verkaufstruhe', 'Tiefkühltruhe mit Glasdeckel'],
  },
  'display-fridge': {
    name: 'Kühlvitrine',
    synonyms: [
      'Getränkekühlschrank mit Glastür',
      'Flaschenkühlschrank',
      'Kühlregal',
      'Glastürkühlschrank',
      'Verkaufskühlschrank',
    ],
  },
  'heat-press': {
    name: 'Transferpresse',
    synonyms: ['Textilpresse', 'T-Shirt-Presse', 'Bügelpresse', 'Thermopresse', 'Heißpresse'],
  },
  laminator: { name: 'Laminiergerät', synonyms: ['Laminator', 'Laminierer', 'Folienlaminierer'] },
  'hair-clippers': {
    name: 'Haarschneidemaschine (Friseur)',
    synonyms: [
      'Haarschneider',
      'Friseurmaschine',
      'Schermaschine',
      'Tierschermaschine',
      'Hundeschermaschine',
    ],
  },
  'door-motor': {
    name: 'Rolltor- oder Markisenmotor',
    synonyms: [
      'Garagentorantrieb',
      'Garagentoröffner',
      'Rollladenmotor',
      'Torantrieb',
      'Markisenantrieb',
      'Rolltor',
    ],
  },
  'electric-hoist': {
    name: 'Hebezug oder Winde, elektrisch',
    synonyms: [
      'Seilwinde',
      'Elektrowinde',
      'Seilzug',
      'Kettenzug',
      'Elektrokettenzug',
      'Hebezug',
      'Flaschenzug elektrisch',
    ],
  },
  'bubble-machine': {
    name: 'Seifenblasen-, Nebel- oder Schneemaschine',
    synonyms: ['Nebelmaschine', 'Seifenblasenmaschine', 'Schneemaschine', 'Rauchmaschine', 'Hazer'],
  },
  'bouncy-castle-blower': {
    name: 'Hüpfburggebläse',
    synonyms: ['Hüpfburg', 'Gebläse für Hüpfburg', 'Luftburg', 'Springburg'],
  },
  cpap: {
    name: 'CPAP-Gerät (Schlaftherapie)',
    synonyms: [
      'CPAP',
      'Schlafapnoegerät',
      'Schlafapnoe',
      'Atemtherapiegerät',
      'Atemgerät',
      'Schlafmaske',
      'Bilevel-Gerät',
      'Schlaftherapiegerät',
    ],
    note: 'Ohne Befeuchter.',
  },
  'cpap-with-humidifier': {
    name: 'CPAP-Gerät mit beheiztem Befeuchter',
    synonyms: ['CPAP mit Befeuchter', 'CPAP-Befeuchter', 'Schlafapnoegerät mit Befeuchter'],
  },
  'cpap-with-heated-tube': {
    name: 'CPAP-Gerät mit Befeuchter und beheiztem Schlauch',
    synonyms: ['CPAP mit Heizschlauch', 'CPAP mit beheiztem Schlauch', 'Schlafapnoegerät mit Heizschlauch'],
  },
  'oxygen-concentrator': {
    name: 'Sauerstoffkonzentrator, 5 Liter je Minute',
    synonyms: ['Sauerstoffgerät', 'Sauerstoffkonzentrator', 'Heimsauerstoff', 'Sauerstofferzeuger'],
  },
  'large-oxygen-concentrator': {
    name: 'Sauerstoffkonzentrator, 10 Liter je Minute',
    synonyms: ['großer Sauerstoffkonzentrator', '10-Liter-Sauerstoffgerät', 'Hochfluss-Sauerstoffgerät'],
  },
  'portable-oxygen-concentrator': {
    name: 'Sauerstoffkonzentrator, tragbar (am Netzteil)',
    synonyms: ['tragbarer Sauerstoffkonzentrator', 'mobiles Sauerstoffgerät', 'Reisesauerstoff'],
  },
  nebuliser: {
    name: 'Inhalationsgerät',
    synonyms: ['Vernebler', 'Inhalator', 'Inhaliergerät', 'Asthmagerät', 'Kompressorvernebler'],
  },
  'home-ventilator': {
    name: 'Heimbeatmungsgerät',
    synonyms: ['Beatmungsgerät', 'Beatmung', 'Heimbeatmung', 'lebenserhaltende Beatmung'],
  },
  'suction-unit': {
    name: 'Absauggerät (medizinisch)',
    synonyms: ['Sekretabsauger', 'medizinische Absaugung', 'Absaugpumpe', 'Schleimabsauger'],
  },
  'medicine-fridge': {
    name: 'Medikamentenkühlschrank',
    synonyms: ['Insulinkühlschrank', 'Impfstoffkühlschrank', 'Arzneimittelkühlschrank', 'Medizinkühlschrank'],
  },
  'hospital-bed': {
    name: 'Pflegebett, elektrisch',
    synonyms: ['Krankenbett', 'verstellbares Bett', 'elektrisches Pflegebett', 'Krankenhausbett'],
  },
  'pressure-mattress-pump': {
    name: 'Pumpe einer Wechseldruckmatratze',
    synonyms: ['Wechseldruckmatratze', 'Dekubitusmatratze', 'Antidekubitusmatratze', 'Matratzenpumpe'],
  },
  'feeding-pump': {
    name: 'Ernährungspumpe',
    synonyms: ['Sondennahrungspumpe', 'Sondenpumpe', 'Infusionspumpe', 'enterale Ernährung'],
  },
  'wheelchair-charger': {
    name: 'Rollstuhl- oder Seniorenmobil-Ladegerät',
    synonyms: ['Elektrorollstuhl', 'E-Rollstuhl', 'Rollstuhlladegerät', 'Seniorenmobil', 'Elektromobil'],
  },
  'dialysis-machine': {
    name: 'Heimdialysegerät',
    synonyms: [
      'Dialysegerät',
      'Dialyse',
      'Peritonealdialyse',
      'Cycler',
      'Hämodialysegerät',
      'Bauchfelldialyse',
    ],
  },
}
