import type { ApplianceNames } from './appliance-name.ts'

/** French names of the built-in appliances, by id. */
export const namesFr: ApplianceNames = {
  'electric-kettle': {
    name: 'Bouilloire électrique',
    synonyms: ['bouilloire', 'bouilloire à eau', 'chauffe-eau de table', 'théière électrique'],
  },
  'travel-kettle': {
    name: 'Bouilloire de voyage',
    synonyms: [
      'petite bouilloire',
      'bouilloire de camping',
      'bouilloire pour camping-car',
      'bouilloire de bateau',
      'bouilloire faible puissance',
    ],
  },
  'coffee-machine': {
    name: 'Cafetière (filtre)',
    synonyms: [
      'cafetière électrique',
      'cafetière filtre',
      'machine à café filtre',
      'percolateur',
      'machine à café',
    ],
  },
  'pod-coffee-machine': {
    name: 'Machine à café (capsules ou dosettes)',
    synonyms: ['machine à capsules', 'machine à dosettes', 'cafetière à capsules', 'cafetière à dosettes'],
  },
  'espresso-machine': {
    name: 'Machine à expresso (domestique)',
    synonyms: [
      'machine à espresso',
      'expresso',
      'cafetière expresso',
      'machine à cappuccino',
      'machine à porte-filtre',
    ],
  },
  'bean-to-cup-coffee-machine': {
    name: 'Machine à café à grains',
    synonyms: [
      'machine à café automatique',
      'broyeur à café automatique',
      'expresso automatique',
      'robot café',
      'machine avec broyeur',
    ],
    note: "Son chauffage se remet en marche tant qu'elle est allumée : environ 1,9 kWh par jour mesurés dans un foyer.",
  },
  'two-group-espresso-machine': {
    name: 'Machine à expresso, deux groupes (stand de café)',
    synonyms: [
      'machine à café professionnelle',
      'machine de barista',
      'machine à café de bar',
      'expresso professionnel',
      'café ambulant',
    ],
    note: 'Dépasse en général ce que peut un convertisseur sur batterie.',
  },
  'water-urn': {
    name: 'Fontaine à eau chaude (percolateur)',
    synonyms: [
      'bouilloire de collectivité',
      'percolateur de traiteur',
      "distributeur d'eau chaude",
      'chauffe-eau pour thé',
      'marmite à vin chaud',
    ],
  },
  'milk-frother': {
    name: 'Mousseur à lait',
    synonyms: ['émulsionneur de lait', 'chauffe-lait', 'mousse de lait'],
  },
  'microwave-oven': {
    name: 'Four à micro-ondes',
    synonyms: ['micro-ondes', 'micro-onde', 'four micro-ondes', 'micro-ondes combiné'],
    note: 'La puissance annoncée est celle que reçoivent les aliments ; il en prend environ moitié plus sur le secteur.',
  },
  toaster: {
    name: 'Grille-pain',
    synonyms: ['toaster', 'grille-pain deux fentes', 'grille-pain quatre fentes'],
  },
  'hot-plate': {
    name: 'Plaque chauffante, un foyer',
    synonyms: [
      'plaque électrique',
      'plaque de cuisson',
      'réchaud électrique',
      'cuisinière électrique',
      'poêle électrique',
      'plaque de camping',
    ],
  },
  'induction-hob': {
    name: 'Plaque à induction (portable)',
    synonyms: ['plaque induction', 'table à induction', 'réchaud à induction', 'induction'],
  },
  'toaster-oven': {
    name: 'Mini-four',
    synonyms: ['petit four', 'four de table', 'four à pizza', 'four électrique', 'four posable'],
  },
  'rice-cooker': {
    name: 'Cuiseur à riz',
    synonyms: ['rice cooker', 'cuit-riz', 'cuiseur vapeur', 'cuit-vapeur'],
  },
  'slow-cooker': {
    name: 'Mijoteuse',
    synonyms: ['cuiseur lent', 'mijoteuse électrique', 'cocotte électrique', 'cuisson lente'],
  },
  'pressure-cooker': {
    name: 'Autocuiseur électrique',
    synonyms: ['multicuiseur', 'cuiseur sous pression', 'autocuiseur', 'cuiseur multifonction'],
  },
  'air-fryer': {
    name: 'Friteuse à air chaud',
    synonyms: ['friteuse sans huile', 'air fryer', 'friteuse à air'],
  },
  'sandwich-press': {
    name: 'Appareil à croque-monsieur ou gril de contact',
    synonyms: [
      'croque-monsieur',
      'gril à panini',
      'presse à panini',
      'appareil à sandwich',
      'gril viande',
      'grill de contact',
    ],
  },
  'waffle-iron': { name: 'Gaufrier', synonyms: ['machine à gaufres', 'appareil à gaufres', 'gaufres'] },
  'crepe-maker': {
    name: 'Crêpière',
    synonyms: ['plaque à crêpes', 'appareil à crêpes', 'machine à crêpes', 'galettière'],
  },
  'electric-griddle': {
    name: 'Plancha ou gril de table électrique',
    synonyms: [
      'plancha électrique',
      'barbecue électrique',
      'gril électrique',
      'teppanyaki',
      'raclette',
      'appareil à raclette',
    ],
  },
  'deep-fat-fryer': {
    name: 'Friteuse',
    synonyms: ['friteuse électrique', 'friteuse à huile', 'bac à frites'],
  },
  'hand-blender': {
    name: 'Mixeur plongeant ou batteur',
    synonyms: [
      'mixeur plongeant',
      'mixer plongeant',
      'batteur électrique',
      'fouet électrique',
      'batteur à main',
      'pied mixeur',
    ],
  },
  blender: {
    name: 'Blender',
    synonyms: ['mixeur', 'mixer', 'blender à smoothie', 'mixeur sur socle', 'bol mixeur'],
  },
  'stand-mixer': {
    name: 'Robot pâtissier',
    synonyms: ['pétrin', 'batteur sur socle', 'robot de cuisine', 'robot pétrisseur', 'batteur pâtissier'],
  },
  'food-processor': {
    name: 'Robot de cuisine (hachoir)',
    synonyms: [
      'hachoir électrique',
      'robot multifonction',
      'hache-viande',
      'râpe électrique',
      'hachoir à viande',
      'robot ménager',
    ],
  },
  juicer: {
    name: 'Centrifugeuse ou extracteur de jus',
    synonyms: ['centrifugeuse', 'presse-agrumes', 'presse-fruits', 'machine à jus'],
  },
  'coffee-grinder': {
    name: 'Moulin à café',
    synonyms: ['broyeur à café', 'moulin à épices', 'moulin à grains'],
  },
  'bread-slicer': {
    name: 'Trancheuse à pain ou à jambon',
    synonyms: [
      'trancheuse',
      'coupe-pain',
      'trancheur électrique',
      'trancheuse à charcuterie',
      'coupe-jambon',
    ],
  },
  'bread-maker': { name: 'Machine à pain', synonyms: ['robot boulanger', 'pain maison', 'boulangère'] },
  'vacuum-sealer': {
    name: 'Machine sous vide',
    synonyms: ['appareil de mise sous vide', 'soude-sac', 'soudeuse de sachets', 'emballeuse sous vide'],
  },
  dishwasher: {
    name: 'Lave-vaisselle',
    synonyms: ['lave vaisselle', 'machine à laver la vaisselle', 'lave-vaisselle de table'],
  },
  fridge: {
    name: 'Réfrigérateur (sans congélateur)',
    synonyms: [
      'frigo',
      'petit frigo',
      'mini-réfrigérateur',
      'réfrigérateur table top',
      'réfrigérateur encastrable',
      'glacière de cuisine',
    ],
    note: 'Consomme peu en marche et beaucoup au démarrage : 597-1363 W mesurés au démarrage de réfrigérateurs qui tournent à 46-79 W.',
  },
  'fridge-freezer': {
    name: 'Réfrigérateur-congélateur',
    synonyms: [
      'réfrigérateur combiné',
      'frigo congélateur',
      'frigo avec congélateur',
      'grand frigo',
      'combiné',
    ],
    note: "La résistance de dégivrage, s'il y en a une, prend à elle seule environ 100-250 W.",
  },
  'chest-freezer': {
    name: 'Congélateur',
    synonyms: ['congélateur coffre', 'congélateur armoire', 'surgélateur', 'bahut congélateur'],
  },
  'wine-cooler': {
    name: 'Cave à vin (compresseur)',
    synonyms: [
      'cave à vin',
      'refroidisseur de vin',
      'frigo à vin',
      'frigo à boissons',
      'rafraîchisseur de bouteilles',
    ],
  },
  'absorption-fridge': {
    name: 'Minibar ou glacière sans compresseur',
    synonyms: [
      'réfrigérateur à absorption',
      'frigo à absorption',
      'glacière électrique',
      'glacière thermoélectrique',
      'minibar',
      'frigo trimixte',
      'frigo de caravane sur secteur',
    ],
    note: "Le réfrigérateur trimixte d'une caravane peut prendre jusqu'à 200 W : lisez sa plaque.",
  },
  'compressor-cool-box': {
    name: 'Glacière à compresseur sur adaptateur secteur',
    synonyms: [
      'glacière à compression',
      'frigo portable',
      'frigo de camping',
      'frigo de voiture',
      'congélateur portable',
      'glacière de voiture',
    ],
    note: 'Plus économe directement sur la batterie, sans convertisseur.',
  },
  'ice-maker': {
    name: 'Machine à glaçons (de table)',
    synonyms: ['fabrique de glaçons', 'machine à glace', 'glaçons', 'appareil à glaçons'],
  },
  'water-cooler': {
    name: 'Fontaine à eau fraîche',
    synonyms: ['fontaine à eau', "distributeur d'eau", "refroidisseur d'eau", "bonbonne d'eau"],
  },
  'window-air-conditioner': {
    name: 'Climatiseur de fenêtre',
    synonyms: [
      'climatiseur',
      'climatisation',
      'clim',
      'clim de fenêtre',
      'climatiseur de caravane',
      'air conditionné',
    ],
    note: 'Environ 8 000 Btu/h.',
  },
  'window-air-conditioner-small': {
    name: 'Climatiseur de fenêtre, petit',
    synonyms: ['petit climatiseur', 'petite clim', 'climatiseur 5000 btu'],
    note: 'Environ 5 000 Btu/h.',
  },
  'window-air-conditioner-large': {
    name: 'Climatiseur de fenêtre, grand',
    synonyms: ['grand climatiseur', 'grande clim de fenêtre', 'climatiseur 12000 btu'],
    note: 'Environ 12 000 Btu/h.',
  },
  'portable-air-conditioner': {
    name: 'Climatiseur mobile',
    synonyms: ['clim mobile', 'climatiseur portable', 'climatiseur avec tuyau', 'monobloc'],
  },
  'rooftop-air-conditioner': {
    name: "Climatiseur de toit d'un camping-car",
    synonyms: [
      'clim de toit',
      'climatiseur de camping-car',
      'clim camping-car',
      'climatisation de fourgon',
      'climatiseur de toit',
    ],
    note: 'Environ 13 500 Btu/h.',
  },
  'variable-speed-air-conditioner': {
    name: 'Climatiseur à vitesse variable',
    synonyms: [
      'climatiseur split',
      'clim split',
      'climatiseur réversible',
      'climatiseur inverter',
      'pompe à chaleur',
      'pompe à chaleur air-air',
    ],
  },
  'fan-heater': {
    name: 'Radiateur soufflant',
    synonyms: [
      "chauffage d'appoint",
      'chauffage électrique',
      'soufflant',
      'chauffage céramique',
      'convecteur',
      'thermoventilateur',
    ],
  },
  'oil-filled-radiator': {
    name: "Radiateur à bain d'huile",
    synonyms: ["bain d'huile", 'radiateur électrique', 'radiateur à huile', "chauffage à bain d'huile"],
  },
  'tube-heater': {
    name: 'Chauffage de serre ou hors gel',
    synonyms: [
      'chauffage hors gel',
      'tube chauffant',
      'radiateur tubulaire',
      'chauffage de bateau',
      'hors-gel',
    ],
  },
  'infrared-heater': {
    name: 'Chauffage infrarouge',
    synonyms: [
      'parasol chauffant électrique',
      'chauffage de terrasse',
      'radiateur à quartz',
      'chauffage halogène',
      'radiant',
      'chauffage rayonnant',
    ],
  },
  'electric-blanket': {
    name: 'Couverture chauffante',
    synonyms: [
      'couverture électrique',
      'surmatelas chauffant',
      'plaid chauffant',
      'chauffe-lit',
      'chauffe-matelas',
    ],
  },
  'immersion-heater': {
    name: 'Chauffe-eau électrique (ballon)',
    synonyms: ["ballon d'eau chaude", 'chauffe-eau', 'thermoplongeur', 'résistance de chauffe-eau', 'boiler'],
  },
  'furnace-fan': {
    name: 'Ventilateur de chaudière à air chaud (panne de courant)',
    synonyms: [
      'soufflerie de chauffage',
      'chaudière à air pulsé',
      'ventilateur de chauffage',
      "générateur d'air chaud",
    ],
  },
  'pellet-stove': {
    name: 'Poêle à granulés',
    synonyms: [
      'poêle à pellets',
      'chaudière à granulés',
      'chaudière à pellets',
      'brûleur à granulés',
      'insert à granulés',
    ],
  },
  fan: {
    name: 'Ventilateur de table ou sur pied',
    synonyms: [
      'ventilateur',
      'ventilateur sur pied',
      'ventilateur de bureau',
      'ventilateur colonne',
      "brasseur d'air",
    ],
  },
  'ceiling-fan': {
    name: 'Ventilateur de plafond',
    synonyms: ['plafonnier ventilateur', "brasseur d'air de plafond", 'ventilateur plafonnier'],
  },
  'window-fan': {
    name: 'Ventilateur de fenêtre ou extracteur',
    synonyms: [
      "extracteur d'air",
      'aérateur',
      'ventilateur carré',
      'ventilateur extracteur',
      'VMC',
      'ventilateur de toit',
    ],
  },
  'evaporative-cooler': {
    name: "Rafraîchisseur d'air",
    synonyms: [
      "refroidisseur d'air",
      'rafraîchisseur par évaporation',
      'climatiseur sans tuyau',
      'humidificateur rafraîchissant',
    ],
  },
  dehumidifier: {
    name: 'Déshumidificateur',
    synonyms: ["absorbeur d'humidité électrique", "assécheur d'air", "déshumidificateur d'air"],
  },
  'air-purifier': {
    name: "Purificateur d'air",
    synonyms: ["épurateur d'air", 'filtre à air', 'filtre HEPA', "assainisseur d'air"],
  },
  humidifier: {
    name: 'Humidificateur',
    synonyms: ["humidificateur d'air", 'humidificateur à ultrasons', "vaporisateur d'air"],
  },
  'hair-dryer': {
    name: 'Sèche-cheveux',
    synonyms: ['séchoir à cheveux', 'sèche cheveux', 'séchoir', 'sèche-cheveux de voyage'],
    note: "À mi-puissance, certains ne prennent qu'une demi-onde, ce qui éprouve certains convertisseurs.",
  },
  'hair-straightener': {
    name: 'Lisseur ou fer à friser',
    synonyms: ['fer à lisser', 'lisseur', 'fer à boucler', 'boucleur', 'brosse soufflante', 'fer à cheveux'],
  },
  shaver: { name: 'Rasoir électrique', synonyms: ['rasoir', 'tondeuse à barbe', 'tondeuse', 'taille-barbe'] },
  'electric-toothbrush-charger': {
    name: 'Chargeur de brosse à dents électrique',
    synonyms: ['brosse à dents', 'brosse à dents électrique', 'brosse à dents sonique'],
    note: 'Un chargeur sans électronique propre peut chauffer sur une onde sinusoïdale modifiée.',
  },
  'heating-pad': {
    name: 'Coussin chauffant',
    synonyms: [
      'bouillotte électrique',
      'chauffe-dos',
      'ceinture chauffante',
      'chauffe-pieds',
      'coussin électrique',
    ],
  },
  'nail-lamp': {
    name: 'Lampe à ongles',
    synonyms: ['lampe UV', 'lampe à gel', 'sèche-ongles', 'lampe de manucure'],
  },
  'washing-machine': {
    name: 'Lave-linge (chauffe son eau)',
    synonyms: ['machine à laver', 'lave linge', 'lave-linge hublot', 'laveuse'],
  },
  'washing-machine-without-heater': {
    name: 'Lave-linge (eau chaude du robinet)',
    synonyms: [
      'mini machine à laver',
      'machine à laver de camping',
      'lave-linge sans chauffage',
      'lave-linge à froid',
      'laveuse à chargement par le haut',
    ],
  },
  'clothes-dryer': {
    name: 'Sèche-linge (chauffant)',
    synonyms: [
      'sèche linge',
      'séchoir à linge',
      'sécheuse',
      'sèche-linge à évacuation',
      'sèche-linge à condensation',
    ],
    note: "Les grands sèche-linge d'Amérique du Nord demandent 240 V et jusqu'à 5 kW : lisez la plaque.",
  },
  'heat-pump-dryer': {
    name: 'Sèche-linge à pompe à chaleur',
    synonyms: ['sèche-linge pompe à chaleur', 'séchoir à pompe à chaleur'],
  },
  'spin-dryer': { name: 'Essoreuse', synonyms: ['essoreuse à linge', 'essoreuse centrifuge'] },
  iron: { name: 'Fer à repasser', synonyms: ['fer vapeur', 'fer de voyage', 'centrale vapeur', 'repassage'] },
  'vacuum-cleaner': {
    name: 'Aspirateur',
    synonyms: ['aspirateur traîneau', 'aspirateur balai', 'aspirateur à main', 'aspirateur sans sac'],
  },
  'wet-dry-vacuum': {
    name: 'Aspirateur eau et poussière',
    synonyms: [
      "aspirateur d'atelier",
      'aspirateur de chantier',
      'aspirateur eau',
      'aspirateur industriel',
      'extracteur de poussière',
    ],
  },
  'robot-vacuum': {
    name: 'Aspirateur robot (en charge)',
    synonyms: ['robot aspirateur', 'robot laveur', 'robot de nettoyage'],
  },
  'steam-cleaner': {
    name: 'Balai ou nettoyeur vapeur',
    synonyms: [
      'nettoyeur vapeur',
      'balai vapeur',
      'défroisseur',
      'décolleuse à papier peint',
      'défroisseur vapeur',
    ],
  },
  'pressure-washer': {
    name: 'Nettoyeur haute pression',
    synonyms: ['laveur haute pression', 'lance haute pression', 'jet haute pression'],
  },
  'carpet-cleaner': {
    name: 'Nettoyeur de moquette',
    synonyms: ['shampouineuse', 'injecteur-extracteur', 'nettoyeur de tapis', 'nettoyeur de sièges'],
  },
  laptop: {
    name: 'Ordinateur portable',
    synonyms: [
      'portable',
      "chargeur d'ordinateur portable",
      'PC portable',
      'notebook',
      'ordi portable',
      'chargeur de PC',
    ],
  },
  'gaming-laptop': {
    name: 'Ordinateur portable de jeu',
    synonyms: [
      'PC portable gamer',
      'portable gaming',
      'ordinateur portable puissant',
      'station de travail portable',
    ],
  },
  'desktop-computer': {
    name: 'Ordinateur de bureau',
    synonyms: ['PC', 'ordinateur', 'PC de bureau', 'unité centrale', 'tour', 'ordinateur tout-en-un', 'ordi'],
  },
  'gaming-computer': {
    name: 'Ordinateur de bureau de jeu',
    synonyms: ['PC gamer', 'PC gaming', 'station de travail', 'ordinateur de jeu'],
  },
  monitor: { name: "Écran d'ordinateur", synonyms: ['écran', 'moniteur', 'écran plat', 'écran PC'] },
  'large-monitor': {
    name: "Écran d'ordinateur, 27 pouces ou plus",
    synonyms: ['grand écran', 'grand moniteur', 'écran large', 'écran incurvé', 'écran 4K'],
  },
  printer: {
    name: "Imprimante à jet d'encre",
    synonyms: ['imprimante', 'imprimante photo', 'scanner', 'imprimante multifonction', "jet d'encre"],
  },
  'laser-printer': {
    name: 'Imprimante laser',
    synonyms: ['photocopieur', 'photocopieuse', 'copieur', 'imprimante de bureau'],
  },
  'external-disk': {
    name: 'Disque dur externe',
    synonyms: ['disque externe', 'disque USB', 'disque de sauvegarde', 'clé USB'],
  },
  'network-server': {
    name: 'Petit serveur ou stockage réseau',
    synonyms: ['NAS', 'serveur', 'serveur domestique', 'serveur multimédia', 'stockage réseau'],
  },
  router: {
    name: 'Routeur Internet',
    synonyms: ['box Internet', 'routeur', 'box', 'modem', 'routeur Wi-Fi', 'Wi-Fi', 'commutateur réseau'],
  },
  'mobile-router': {
    name: 'Routeur Internet mobile (4G ou 5G)',
    synonyms: [
      'routeur 4G',
      'routeur 5G',
      'box 4G',
      'modem mobile',
      "point d'accès mobile",
      'routeur à carte SIM',
    ],
  },
  'satellite-terminal': {
    name: 'Terminal Internet par satellite',
    synonyms: ['Internet par satellite', 'antenne satellite Internet', 'parabole Internet', 'satellite'],
    note: 'La fonte de la neige augmente encore sa puissance.',
  },
  'signal-booster': {
    name: 'Amplificateur de signal mobile',
    synonyms: ['répéteur mobile', 'amplificateur GSM', 'répéteur de signal', 'booster de réseau'],
  },
  'radio-transceiver': {
    name: 'Émetteur-récepteur radio (sur alimentation)',
    synonyms: ['radio amateur', 'CB', 'radio VHF', 'poste émetteur', 'radio marine', 'radioamateur'],
  },
  'cordless-phone': {
    name: 'Base de téléphone sans fil',
    synonyms: ['téléphone fixe', 'téléphone', 'téléphone sans fil', 'répondeur'],
  },
  television: {
    name: 'Téléviseur',
    synonyms: ['télévision', 'télé', 'TV', 'écran plat', 'smart TV', 'téléviseur connecté'],
    note: 'Environ 43 pouces.',
  },
  'small-television': {
    name: 'Téléviseur, petit',
    synonyms: [
      'petite télé',
      'petit téléviseur',
      'télé 24 pouces',
      'télé 32 pouces',
      'télé de camping-car',
      'télé de cuisine',
    ],
    note: 'De 24 à 32 pouces.',
  },
  'large-television': {
    name: 'Téléviseur, grand',
    synonyms: ['grande télé', 'grand téléviseur', 'télé 55 pouces', 'télé 65 pouces'],
    note: 'De 55 à 65 pouces.',
  },
  'very-large-television': {
    name: 'Téléviseur, 75 pouces ou plus',
    synonyms: [
      'télé 75 pouces',
      'télé 85 pouces',
      "mur d'images",
      'écran publicitaire',
      'affichage dynamique',
    ],
  },
  'games-console': {
    name: 'Console de jeux',
    synonyms: ['console', 'console de jeux vidéo', 'console de salon', 'jeux vidéo'],
  },
  'set-top-box': {
    name: 'Décodeur ou boîtier de streaming',
    synonyms: [
      'décodeur',
      'box TV',
      'décodeur TV',
      'récepteur satellite',
      'clé de streaming',
      'lecteur multimédia',
      'démodulateur',
    ],
  },
  projector: {
    name: 'Vidéoprojecteur',
    synonyms: ['projecteur', 'rétroprojecteur', 'projecteur de diapositives', 'home cinéma'],
  },
  'hi-fi': {
    name: 'Chaîne hi-fi ou amplificateur',
    synonyms: [
      'chaîne stéréo',
      'hi-fi',
      'ampli',
      'amplificateur',
      'platine vinyle',
      'tourne-disque',
      'ampli home cinéma',
    ],
  },
  'sound-bar': {
    name: 'Barre de son',
    synonyms: ['enceinte TV', 'enceinte connectée', 'enceinte sans fil', 'enceinte Bluetooth'],
  },
  'pa-speaker': {
    name: 'Enceinte de sonorisation (amplifiée)',
    synonyms: [
      'sono',
      'sonorisation',
      'enceinte amplifiée',
      'haut-parleur',
      'enceinte de DJ',
      'caisson de basses',
      'enceinte active',
    ],
  },
  'mixing-desk': {
    name: 'Table de mixage',
    synonyms: ['console de mixage', 'mixette', 'contrôleur DJ', 'table de DJ', 'console son'],
  },
  'guitar-amplifier': {
    name: 'Ampli guitare',
    synonyms: ['amplificateur de guitare', 'ampli basse', 'ampli à lampes', 'combo', "ampli d'instrument"],
  },
  'keyboard-instrument': {
    name: 'Clavier électronique',
    synonyms: ['piano numérique', 'piano électrique', 'piano de scène', 'synthétiseur', 'synthé', 'clavier'],
  },
  radio: {
    name: 'Radio',
    synonyms: ['poste de radio', 'radio-réveil', 'radio DAB', 'transistor', 'radio numérique'],
  },
  'led-lamp': {
    name: 'Lampe à LED',
    synonyms: [
      'ampoule LED',
      'lampe',
      'lumière',
      'ampoule',
      'lampe de bureau',
      'lampe de chevet',
      'lampe de table',
      'liseuse',
    ],
  },
  'led-work-light': {
    name: 'Projecteur de chantier à LED',
    synonyms: [
      'lampe de travail',
      'projecteur LED',
      'spot de chantier',
      'baladeuse',
      'éclairage de chantier',
    ],
  },
  'string-lights': {
    name: 'Guirlande lumineuse (LED)',
    synonyms: [
      'guirlande LED',
      'guirlande guinguette',
      'ruban LED',
      'bande LED',
      'éclairage de fête',
      'guirlande de Noël',
    ],
  },
  'filament-string-lights': {
    name: 'Guirlande lumineuse (à filament)',
    synonyms: ['guirlande à ampoules', 'ancienne guirlande', 'guirlande à incandescence'],
  },
  'stage-light': {
    name: 'Projecteur de scène à LED',
    synonyms: [
      'projecteur PAR',
      'éclairage de scène',
      'lumière disco',
      'lyre',
      'jeu de lumière',
      'spot de scène',
    ],
  },
  'compact-fluorescent-lamp': {
    name: 'Ampoule fluocompacte',
    synonyms: ['ampoule basse consommation', 'lampe fluocompacte', 'ampoule économique'],
  },
  'fluorescent-tube': {
    name: 'Tube fluorescent',
    synonyms: ['néon', 'réglette', 'tube néon', 'lampe fluorescente'],
  },
  'halogen-lamp': {
    name: 'Lampe halogène',
    synonyms: ['ampoule halogène', 'spot halogène', 'projecteur halogène', 'halogène'],
    note: 'Un projecteur halogène prend 150-500 W : lisez ce qui est écrit sur sa lampe.',
  },
  'incandescent-lamp': {
    name: 'Ampoule à incandescence',
    synonyms: ['ampoule à filament', 'ancienne ampoule', 'ampoule classique'],
  },
  'heat-lamp': {
    name: 'Lampe chauffante',
    synonyms: [
      'lampe infrarouge',
      'lampe pour poussins',
      'lampe pour reptiles',
      'lampe de terrarium',
      'lampe chauffe-plats',
    ],
  },
  'grow-light': {
    name: 'Lampe horticole à LED',
    synonyms: ['lampe de croissance', 'lampe pour plantes', 'éclairage horticole'],
  },
  'phone-charger': {
    name: 'Chargeur de téléphone',
    synonyms: [
      'téléphone portable',
      'chargeur de portable',
      'smartphone',
      'chargeur de smartphone',
      'chargeur USB',
      'mobile',
      'chargeur',
    ],
  },
  'tablet-charger': {
    name: 'Chargeur de tablette',
    synonyms: ['tablette', 'liseuse électronique', 'chargeur de liseuse', 'tablette tactile'],
  },
  'power-bank': {
    name: 'Batterie externe (en charge)',
    synonyms: ['batterie de secours', 'batterie USB', 'chargeur nomade', 'powerbank'],
  },
  'tool-battery-charger': {
    name: "Chargeur de batterie d'outil",
    synonyms: [
      'chargeur de perceuse',
      'visseuse',
      'visseuse sans fil',
      'perceuse sans fil',
      "chargeur d'outillage",
      'outil sans fil',
    ],
  },
  'camera-battery-charger': {
    name: "Chargeur de batterie d'appareil photo ou de drone",
    synonyms: ['drone', 'chargeur de drone', "chargeur d'appareil photo", 'chargeur LiPo', 'caméra'],
  },
  'household-battery-charger': {
    name: 'Chargeur de piles',
    synonyms: ['chargeur de piles rechargeables', 'piles AA', 'piles AAA', 'accus'],
  },
  'e-bike-charger': {
    name: 'Chargeur de vélo électrique',
    synonyms: ['vélo électrique', 'VAE', 'vélo à assistance électrique', 'batterie de vélo'],
  },
  'e-scooter-charger': {
    name: 'Chargeur de trottinette électrique',
    synonyms: ['trottinette', 'trottinette électrique', 'hoverboard', 'scooter électrique'],
  },
  'car-battery-charger': {
    name: 'Chargeur de batterie de voiture',
    synonyms: [
      'chargeur de batterie',
      'chargeur de maintien',
      'mainteneur de charge',
      'batterie auxiliaire',
      'batterie de démarrage',
    ],
  },
  'torch-charger': {
    name: 'Chargeur de lampe torche',
    synonyms: ['lampe torche', 'lampe de poche', 'lampe frontale', 'frontale', 'lanterne'],
  },
  'electric-drill': {
    name: 'Perceuse électrique',
    synonyms: ['perceuse', 'perceuse à percussion', 'perceuse filaire', 'chignole électrique'],
  },
  'rotary-hammer': {
    name: 'Perforateur',
    synonyms: [
      'marteau perforateur',
      'marteau-piqueur',
      'burineur',
      'perfo',
      'marteau démolisseur',
      'perforateur burineur',
    ],
  },
  'angle-grinder': {
    name: "Meuleuse d'angle",
    synonyms: ['meuleuse', 'disqueuse', 'tronçonneuse à disque', 'petite meuleuse'],
    note: '115 ou 125 mm (4-1/2 ou 5 pouces).',
  },
  'large-angle-grinder': {
    name: "Meuleuse d'angle, grande",
    synonyms: ['meuleuse 230 mm', 'grande meuleuse', 'grosse disqueuse', 'tronçonneuse à pierre'],
    note: '230 mm (9 pouces).',
  },
  'circular-saw': {
    name: 'Scie circulaire',
    synonyms: ['scie plongeante', 'scie sur rail', 'scie circulaire à main'],
  },
  'mitre-saw': { name: 'Scie à onglet', synonyms: ["scie à coupe d'onglet", 'scie radiale', 'onglet'] },
  'table-saw': {
    name: 'Scie sur table',
    synonyms: ['scie à table', 'scie circulaire sur table', 'scie de chantier'],
  },
  jigsaw: { name: 'Scie sauteuse', synonyms: ['scie sabre', 'scie alternative', 'scie égoïne électrique'] },
  sander: {
    name: 'Ponceuse',
    synonyms: [
      'ponceuse excentrique',
      'ponceuse à bande',
      'ponceuse vibrante',
      'ponceuse orbitale',
      'ponceuse delta',
    ],
  },
  planer: { name: 'Rabot électrique', synonyms: ['rabot', 'raboteuse', 'rabot à main'] },
  'wood-router': { name: 'Défonceuse', synonyms: ['affleureuse', 'fraiseuse à bois', 'toupie'] },
  'multi-tool': {
    name: 'Outil multifonction oscillant',
    synonyms: ['outil oscillant', 'multitool', 'outil rotatif', 'mini-perceuse', 'outil de gravure'],
  },
  'tile-saw': {
    name: 'Coupe-carreaux électrique',
    synonyms: ['scie à carrelage', 'coupe-carrelage', 'scie à eau', 'carrelette électrique', 'scie à pierre'],
  },
  'bench-grinder': {
    name: 'Touret à meuler',
    synonyms: ['meule', 'touret', 'affûteuse', 'aiguiseur', 'aiguiseur de couteaux'],
  },
  'air-compressor': {
    name: "Compresseur d'air",
    synonyms: ['compresseur', "compresseur d'atelier", 'compresseur 1 ch', 'compresseur 1 cv'],
    note: 'Environ 1 hp.',
  },
  'small-air-compressor': {
    name: "Compresseur d'air, petit",
    synonyms: [
      'gonfleur sur secteur',
      'petit compresseur',
      'compresseur aérographe',
      'compresseur sans huile',
      'compresseur pour cloueur',
    ],
    note: "Jusqu'à environ 1/2 hp.",
  },
  'large-air-compressor': {
    name: "Compresseur d'air, grand",
    synonyms: ['gros compresseur', 'compresseur 2 ch', 'compresseur à courroie', 'compresseur de garage'],
    note: 'Environ 2 hp.',
  },
  'heat-gun': {
    name: 'Décapeur thermique',
    synonyms: ['pistolet à air chaud', 'pistolet thermique', 'pistolet à rétreindre'],
  },
  'soldering-iron': {
    name: 'Fer à souder',
    synonyms: ['station de soudage', 'fer à souder électronique', 'pistolet à souder'],
  },
  'glue-gun': {
    name: 'Pistolet à colle',
    synonyms: ['colle chaude', 'pistolet à colle chaude', 'colle thermofusible'],
  },
  'paint-sprayer': {
    name: 'Pulvérisateur de peinture',
    synonyms: ['pistolet à peinture', 'pistolet airless', 'station de peinture'],
  },
  'electric-chain-saw': {
    name: 'Tronçonneuse électrique',
    synonyms: ['tronçonneuse', 'scie à chaîne', 'tronçonneuse filaire'],
  },
  'hedge-trimmer': {
    name: 'Taille-haie',
    synonyms: ['taille-haies', 'taille haie électrique', 'cisaille à haie'],
  },
  'grass-trimmer': {
    name: 'Coupe-bordures',
    synonyms: ['débroussailleuse', 'coupe-herbe', 'débroussailleuse électrique', 'coupe-fil'],
  },
  'lawn-mower': {
    name: 'Tondeuse à gazon électrique',
    synonyms: ['tondeuse à gazon', 'tondeuse électrique', 'tondeuse'],
  },
  'leaf-blower': {
    name: 'Souffleur de feuilles',
    synonyms: ['souffleur', 'aspirateur de feuilles', 'souffleuse de feuilles', 'aspiro-souffleur'],
  },
  'cement-mixer': { name: 'Bétonnière', synonyms: ['malaxeur', 'mélangeur à mortier', 'bétonneuse'] },
  welder: {
    name: 'Poste à souder, 160 A',
    synonyms: [
      'poste à souder',
      'soudeuse',
      'poste inverter',
      'poste MIG',
      'poste TIG',
      "soudage à l'arc",
      'poste MMA',
    ],
    note: '160 A ; un circuit de 120 V ne supporte que le petit.',
  },
  'small-welder': {
    name: 'Poste à souder, 90 A',
    synonyms: ['petit poste à souder', 'poste à fil fourré', 'soudage sans gaz'],
  },
  'water-pump': {
    name: 'Pompe à eau (surpresseur)',
    synonyms: [
      'surpresseur',
      'pompe de jardin',
      'pompe de transfert',
      'pompe à pression',
      'pompe',
      'groupe de surpression',
    ],
  },
  'well-pump': {
    name: 'Pompe de puits, 1/2 hp',
    synonyms: ['pompe de forage', 'pompe immergée', 'pompe à puits', 'puits'],
  },
  'sump-pump': {
    name: 'Pompe vide-cave, 1/3 hp',
    synonyms: ['pompe de cave', 'vide-cave', 'pompe de relevage', "pompe d'inondation", 'pompe de drainage'],
  },
  'bilge-pump': {
    name: "Pompe de cale ou d'assèchement sur secteur",
    synonyms: ['pompe de cale', 'pompe de bateau', "pompe d'assèchement", 'pompe de secours'],
  },
  'pond-pump': {
    name: 'Petite pompe immergée ou de bassin',
    synonyms: [
      'pompe de bassin',
      'pompe de fontaine',
      'pompe submersible',
      'filtre de bassin',
      'pompe à eaux chargées',
    ],
  },
  'aquarium-pump': {
    name: "Pompe et filtre d'aquarium",
    synonyms: ["filtre d'aquarium", "pompe à air d'aquarium", 'bulleur', 'aquarium'],
  },
  'circulation-pump': {
    name: 'Circulateur de chauffage',
    synonyms: ['pompe de chauffage', 'circulateur', 'pompe de circulation', 'pompe de chaudière'],
    note: 'Les anciens tournent en permanence à 60-120 W, les électroniques à 5-45 W.',
  },
  'air-bed-pump': {
    name: 'Gonfleur de matelas ou de tente',
    synonyms: [
      'gonfleur',
      'pompe à matelas',
      'gonfleur électrique',
      'gonfleur de paddle',
      'matelas gonflable',
    ],
  },
  'pool-pump': {
    name: 'Pompe de piscine',
    synonyms: ['pompe de filtration', 'filtration de piscine', 'pompe de spa'],
  },
  'card-reader': {
    name: 'Terminal de paiement',
    synonyms: ['lecteur de carte', 'TPE', 'terminal bancaire', 'lecteur de carte bancaire'],
  },
  till: {
    name: 'Caisse avec écran',
    synonyms: [
      'caisse enregistreuse',
      'caisse',
      'caisse tactile',
      'terminal point de vente',
      'logiciel de caisse',
    ],
  },
  'receipt-printer': {
    name: "Imprimante de tickets ou d'étiquettes",
    synonyms: [
      'imprimante de tickets',
      'imprimante ticket',
      'imprimante thermique',
      "imprimante d'étiquettes",
      'imprimante de caisse',
      'étiqueteuse',
    ],
  },
  scales: {
    name: 'Balance de commerce',
    synonyms: ['balance', 'balance de marché', 'balance de comptoir', 'pèse'],
  },
  'sewing-machine': {
    name: 'Machine à coudre',
    synonyms: ['surjeteuse', 'brodeuse', 'machine à broder', 'couture'],
  },
  'food-warmer': {
    name: 'Chauffe-plats',
    synonyms: [
      'bain-marie',
      'soupière électrique',
      'plaque chauffe-plats',
      'armoire chaude',
      'chauffe-biberon',
      'vitrine chauffante',
      'buffet chaud',
    ],
  },
  'popcorn-maker': {
    name: 'Machine à pop-corn',
    synonyms: ['pop-corn', 'machine à popcorn', 'appareil à pop-corn'],
  },
  'candy-floss-machine': {
    name: 'Machine à barbe à papa',
    synonyms: ['barbe à papa', 'appareil à barbe à papa'],
  },
  'slush-machine': {
    name: 'Machine à granité',
    synonyms: ['granité', 'machine à boissons glacées', 'machine à slush'],
  },
  'ice-cream-freezer': {
    name: 'Congélateur vitrine à glaces',
    synonyms: ['bac à glaces', 'vitrine à glaces', 'congélateur vitré', 'conservateur à glaces'],
  },
  'display-fridge': {
    name: 'Vitrine réfrigérée',
    synonyms: [
      'réfrigérateur à porte vitrée',
      'frigo vitré',
      'vitrine à boissons',
      'armoire à boissons',
      'arrière-bar',
    ],
  },
  'heat-press': {
    name: 'Presse à chaud',
    synonyms: ['presse textile', 'presse à transfert', 'presse à t-shirt', 'presse thermique'],
  },
  laminator: { name: 'Plastifieuse', synonyms: ['machine à plastifier', 'plastifieur', 'lamineuse'] },
  'hair-clippers': {
    name: 'Tondeuse à cheveux (coiffeur)',
    synonyms: ['tondeuse de coiffeur', 'tondeuse à cheveux', 'tondeuse pour animaux', 'tondeuse filaire'],
  },
  'door-motor': {
    name: 'Moteur de rideau ou de store',
    synonyms: [
      'moteur de porte de garage',
      'porte de garage',
      'volet roulant',
      'portail électrique',
      'moteur de store',
      'rideau métallique',
    ],
  },
  'electric-hoist': {
    name: 'Palan ou treuil électrique',
    synonyms: ['treuil', 'palan', 'palan électrique', 'treuil de levage', 'bossoir'],
  },
  'bubble-machine': {
    name: 'Machine à bulles, à fumée ou à neige',
    synonyms: ['machine à fumée', 'machine à bulles', 'machine à brouillard', 'machine à neige'],
  },
  'bouncy-castle-blower': {
    name: 'Soufflerie de château gonflable',
    synonyms: ['château gonflable', 'structure gonflable', 'soufflerie', 'turbine gonflable'],
  },
  cpap: {
    name: 'Appareil respiratoire pour le sommeil (CPAP)',
    synonyms: [
      'CPAP',
      'PPC',
      'apnée du sommeil',
      "appareil d'apnée",
      'pression positive continue',
      'machine à apnée',
      "masque d'apnée",
    ],
    note: 'Humidificateur éteint.',
  },
  'cpap-with-humidifier': {
    name: 'Appareil respiratoire (CPAP) avec humidificateur chauffant',
    synonyms: ['CPAP avec humidificateur', 'PPC avec humidificateur', "humidificateur d'apnée"],
  },
  'cpap-with-heated-tube': {
    name: 'Appareil respiratoire (CPAP) avec humidificateur et tuyau chauffant',
    synonyms: ['CPAP avec tuyau chauffant', 'PPC avec circuit chauffant', 'tuyau chauffant'],
  },
  'oxygen-concentrator': {
    name: "Concentrateur d'oxygène, 5 litres par minute",
    synonyms: ["concentrateur d'oxygène", 'oxygène à domicile', "extracteur d'oxygène", 'oxygène'],
  },
  'large-oxygen-concentrator': {
    name: "Concentrateur d'oxygène, 10 litres par minute",
    synonyms: ['concentrateur 10 litres', 'oxygène haut débit', "grand concentrateur d'oxygène"],
  },
  'portable-oxygen-concentrator': {
    name: "Concentrateur d'oxygène portable (sur adaptateur)",
    synonyms: ['oxygène portable', 'concentrateur de voyage', 'concentrateur portable'],
  },
  nebuliser: {
    name: 'Nébuliseur',
    synonyms: ['inhalateur', 'aérosol', 'appareil à aérosols', "appareil pour l'asthme"],
  },
  'home-ventilator': {
    name: 'Ventilateur respiratoire à domicile',
    synonyms: ['respirateur', 'ventilation à domicile', 'assistance respiratoire', 'appareil de ventilation'],
  },
  'suction-unit': {
    name: 'Aspirateur de mucosités',
    synonyms: ['aspirateur médical', 'aspiration médicale', 'aspirateur trachéal'],
  },
  'medicine-fridge': {
    name: 'Réfrigérateur à médicaments',
    synonyms: ['frigo à insuline', 'frigo médical', 'réfrigérateur à vaccins', 'frigo de pharmacie'],
  },
  'hospital-bed': {
    name: 'Lit médicalisé électrique',
    synonyms: ['lit médicalisé', 'lit médical', "lit d'hôpital", 'lit réglable'],
  },
  'pressure-mattress-pump': {
    name: 'Pompe de matelas anti-escarres',
    synonyms: ['matelas anti-escarres', 'matelas à air alterné', 'matelas à pression alternée'],
  },
  'feeding-pump': {
    name: 'Pompe de nutrition',
    synonyms: [
      "pompe d'alimentation entérale",
      'nutrition entérale',
      'pompe à perfusion',
      "sonde d'alimentation",
    ],
  },
  'wheelchair-charger': {
    name: 'Chargeur de fauteuil roulant ou de scooter médical',
    synonyms: ['fauteuil roulant électrique', 'chargeur de fauteuil', 'scooter PMR', 'scooter senior'],
  },
  'dialysis-machine': {
    name: 'Appareil de dialyse à domicile',
    synonyms: ['dialyse', 'dialyse péritonéale', 'cycleur', 'hémodialyse'],
  },
}
