import type { ApplianceNames } from './appliance-name.ts'

/** Spanish names of the built-in appliances, by id. */
export const namesEs: ApplianceNames = {
  'electric-kettle': {
    name: 'Hervidor eléctrico',
    synonyms: [
      'hervidor',
      'hervidor de agua',
      'tetera eléctrica',
      'calentador de agua',
      'pava eléctrica',
      'jarra eléctrica',
    ],
  },
  'travel-kettle': {
    name: 'Hervidor de viaje',
    synonyms: [
      'hervidor pequeño',
      'hervidor de camping',
      'hervidor para caravana',
      'hervidor para barco',
      'hervidor de poca potencia',
    ],
  },
  'coffee-machine': {
    name: 'Cafetera (de filtro)',
    synonyms: [
      'cafetera eléctrica',
      'cafetera de goteo',
      'máquina de café',
      'percoladora',
      'cafetera de filtro',
    ],
  },
  'pod-coffee-machine': {
    name: 'Cafetera (de cápsulas o monodosis)',
    synonyms: ['cafetera de cápsulas', 'máquina de cápsulas', 'cafetera monodosis', 'cafetera de monodosis'],
  },
  'espresso-machine': {
    name: 'Cafetera exprés (de casa)',
    synonyms: [
      'cafetera espresso',
      'máquina de café expreso',
      'cafetera de brazo',
      'cafetera para capuchino',
    ],
  },
  'bean-to-cup-coffee-machine': {
    name: 'Cafetera superautomática',
    synonyms: [
      'cafetera automática',
      'cafetera con molinillo',
      'cafetera de grano',
      'máquina de café en grano',
    ],
    note: 'Su resistencia se enciende una y otra vez mientras está encendida: en una casa se midieron unos 1,9 kWh al día.',
  },
  'two-group-espresso-machine': {
    name: 'Cafetera exprés de dos grupos (puesto de café)',
    synonyms: [
      'cafetera profesional',
      'cafetera industrial',
      'cafetera de bar',
      'máquina de barista',
      'cafetera de hostelería',
    ],
    note: 'Suele superar lo que puede dar un inversor con batería.',
  },
  'water-urn': {
    name: 'Termo dispensador de agua caliente',
    synonyms: [
      'calentador de agua para té',
      'dispensador de agua caliente',
      'hervidor de hostelería',
      'urna de agua caliente',
      'olla de vino caliente',
    ],
  },
  'milk-frother': {
    name: 'Espumador de leche',
    synonyms: ['batidor de leche', 'vaporizador de leche', 'calentador de leche'],
  },
  'microwave-oven': {
    name: 'Horno microondas',
    synonyms: ['microondas', 'micro', 'horno de microondas', 'microondas combinado'],
    note: 'La potencia anunciada es la que recibe la comida; de la red toma alrededor de la mitad más.',
  },
  toaster: { name: 'Tostadora', synonyms: ['tostador', 'tostador de pan', 'tostadora de pan', 'tostapán'] },
  'hot-plate': {
    name: 'Placa eléctrica de un fuego',
    synonyms: [
      'hornillo eléctrico',
      'placa de cocina',
      'fogón eléctrico',
      'cocina eléctrica',
      'parrilla eléctrica',
      'sartén eléctrica',
      'infiernillo',
    ],
  },
  'induction-hob': {
    name: 'Placa de inducción (portátil)',
    synonyms: ['inducción', 'cocina de inducción', 'hornillo de inducción', 'vitrocerámica de inducción'],
  },
  'toaster-oven': {
    name: 'Horno de sobremesa',
    synonyms: ['mini horno', 'horno pequeño', 'horno tostador', 'horno de pizza', 'horno eléctrico'],
  },
  'rice-cooker': {
    name: 'Arrocera',
    synonyms: ['olla arrocera', 'cocedor de arroz', 'vaporera', 'vaporera eléctrica'],
  },
  'slow-cooker': {
    name: 'Olla de cocción lenta',
    synonyms: ['olla lenta', 'cocción lenta', 'olla de guisos eléctrica'],
  },
  'pressure-cooker': {
    name: 'Olla a presión eléctrica',
    synonyms: ['olla exprés eléctrica', 'multicocina', 'olla programable', 'olla eléctrica'],
  },
  'air-fryer': {
    name: 'Freidora de aire',
    synonyms: ['freidora sin aceite', 'air fryer', 'freidora de aire caliente'],
  },
  'sandwich-press': {
    name: 'Sandwichera o grill de contacto',
    synonyms: [
      'sandwichera',
      'tostadora de sándwiches',
      'grill',
      'plancha de panini',
      'prensa de panini',
      'bikinera',
    ],
  },
  'waffle-iron': {
    name: 'Gofrera',
    synonyms: ['máquina de gofres', 'wafflera', 'plancha de gofres', 'waflera'],
  },
  'crepe-maker': {
    name: 'Crepera',
    synonyms: ['plancha de crepes', 'máquina de crepes', 'crepes', 'panquequera'],
  },
  'electric-griddle': {
    name: 'Plancha o grill de mesa eléctrico',
    synonyms: [
      'plancha eléctrica',
      'plancha de cocina',
      'barbacoa eléctrica',
      'grill eléctrico',
      'parrilla de mesa',
      'teppanyaki',
      'raclette',
      'asador eléctrico',
    ],
  },
  'deep-fat-fryer': {
    name: 'Freidora',
    synonyms: ['freidora de aceite', 'freidora eléctrica', 'freidora de patatas'],
  },
  'hand-blender': {
    name: 'Batidora de mano o de varillas',
    synonyms: [
      'batidora de brazo',
      'batidora de varillas',
      'licuadora de mano',
      'batidora de inmersión',
      'varillas eléctricas',
      'mixer de mano',
    ],
  },
  blender: {
    name: 'Batidora de vaso',
    synonyms: ['licuadora de vaso', 'licuadora', 'batidora', 'mezcladora de batidos', 'batidora americana'],
  },
  'stand-mixer': {
    name: 'Batidora amasadora',
    synonyms: ['amasadora', 'robot amasador', 'batidora de pie', 'robot de repostería', 'mezcladora de masa'],
  },
  'food-processor': {
    name: 'Procesador de alimentos',
    synonyms: [
      'picadora',
      'robot de cocina',
      'picadora de carne',
      'rallador eléctrico',
      'trituradora de cocina',
    ],
  },
  juicer: {
    name: 'Exprimidor o licuadora de zumos',
    synonyms: [
      'exprimidor',
      'extractor de jugos',
      'extractor de zumo',
      'licuadora de frutas',
      'exprimidor de naranjas',
      'juguera',
    ],
  },
  'coffee-grinder': {
    name: 'Molinillo de café',
    synonyms: ['molino de café', 'molinillo', 'molinillo de especias', 'moledor de café'],
  },
  'bread-slicer': {
    name: 'Cortadora de pan o de fiambre',
    synonyms: [
      'cortafiambres',
      'cortadora de fiambre',
      'cortadora de embutido',
      'rebanadora',
      'cortadora de jamón',
      'rebanadora de pan',
    ],
  },
  'bread-maker': {
    name: 'Panificadora',
    synonyms: ['máquina de pan', 'máquina para hacer pan', 'panera eléctrica'],
  },
  'vacuum-sealer': {
    name: 'Envasadora al vacío',
    synonyms: ['selladora al vacío', 'selladora de bolsas', 'máquina de vacío', 'empacadora al vacío'],
  },
  dishwasher: {
    name: 'Lavavajillas',
    synonyms: ['lavaplatos', 'máquina de lavar platos', 'lavavajillas de sobremesa'],
  },
  fridge: {
    name: 'Frigorífico o nevera (sin congelador)',
    synonyms: [
      'nevera',
      'refrigerador',
      'refrigeradora',
      'heladera',
      'nevera pequeña',
      'mininevera',
      'frigo',
    ],
    note: 'Funciona con poco y arranca con mucho: se midieron arranques de 597-1363 W en frigoríficos que funcionan con 46-79 W.',
  },
  'fridge-freezer': {
    name: 'Frigorífico combi (con congelador)',
    synonyms: [
      'combi',
      'frigorífico con congelador',
      'nevera con congelador',
      'nevera grande',
      'refrigerador con congelador',
    ],
    note: 'La resistencia de desescarche, si la tiene, toma por sí sola unos 100-250 W.',
  },
  'chest-freezer': {
    name: 'Congelador',
    synonyms: [
      'arcón congelador',
      'arcón',
      'congelador vertical',
      'congelador horizontal',
      'freezer',
      'ultracongelador',
    ],
  },
  'wine-cooler': {
    name: 'Vinoteca (con compresor)',
    synonyms: [
      'vinoteca',
      'nevera de vinos',
      'enfriador de vino',
      'nevera de bebidas',
      'cava de vinos',
      'botellero frigorífico',
    ],
  },
  'absorption-fridge': {
    name: 'Minibar o nevera portátil sin compresor',
    synonyms: [
      'nevera de absorción',
      'nevera termoeléctrica',
      'nevera eléctrica portátil',
      'minibar',
      'nevera trivalente',
      'nevera de caravana a la red',
      'conservadora eléctrica',
    ],
    note: 'La nevera trivalente de una caravana puede tomar hasta 200 W: lea su placa.',
  },
  'compressor-cool-box': {
    name: 'Nevera portátil de compresor con adaptador',
    synonyms: [
      'nevera de compresor',
      'nevera de coche',
      'nevera de camping',
      'nevera portátil',
      'congelador portátil',
      'frigorífico portátil',
    ],
    note: 'Gasta menos conectada directamente a la batería, sin inversor.',
  },
  'ice-maker': {
    name: 'Máquina de hielo (de sobremesa)',
    synonyms: ['máquina de cubitos', 'fabricador de hielo', 'hielera eléctrica', 'cubitera eléctrica'],
  },
  'water-cooler': {
    name: 'Dispensador de agua fría',
    synonyms: [
      'fuente de agua',
      'enfriador de agua',
      'dispensador de agua',
      'dispensador de garrafas',
      'bebedero',
    ],
  },
  'window-air-conditioner': {
    name: 'Aire acondicionado de ventana',
    synonyms: [
      'aire acondicionado',
      'aparato de aire acondicionado',
      'climatizador',
      'acondicionador de aire',
      'aire de ventana',
      'aire acondicionado de caravana',
    ],
    note: 'Unos 8 000 Btu/h.',
  },
  'window-air-conditioner-small': {
    name: 'Aire acondicionado de ventana, pequeño',
    synonyms: ['aire acondicionado pequeño', 'aire de ventana pequeño', 'aire acondicionado 5000 btu'],
    note: 'Unos 5 000 Btu/h.',
  },
  'window-air-conditioner-large': {
    name: 'Aire acondicionado de ventana, grande',
    synonyms: ['aire acondicionado grande', 'aire de ventana grande', 'aire acondicionado 12000 btu'],
    note: 'Unos 12 000 Btu/h.',
  },
  'portable-air-conditioner': {
    name: 'Aire acondicionado portátil',
    synonyms: ['aire portátil', 'climatizador portátil', 'aire acondicionado con tubo'],
  },
  'rooftop-air-conditioner': {
    name: 'Aire acondicionado de techo de autocaravana',
    synonyms: [
      'aire acondicionado de autocaravana',
      'aire de techo',
      'aire acondicionado de camper',
      'aire acondicionado de furgoneta',
      'climatizador de techo',
    ],
    note: 'Unos 13 500 Btu/h.',
  },
  'variable-speed-air-conditioner': {
    name: 'Aire acondicionado de velocidad variable',
    synonyms: [
      'split',
      'aire acondicionado split',
      'aire acondicionado inverter',
      'minisplit',
      'bomba de calor',
      'aire acondicionado reversible',
    ],
  },
  'fan-heater': {
    name: 'Calefactor de aire',
    synonyms: [
      'calefactor',
      'termoventilador',
      'estufa eléctrica',
      'calentador eléctrico',
      'calefactor cerámico',
      'calefacción eléctrica',
      'convector',
    ],
  },
  'oil-filled-radiator': {
    name: 'Radiador de aceite',
    synonyms: ['radiador eléctrico', 'radiador', 'estufa de aceite', 'calefactor de aceite'],
  },
  'tube-heater': {
    name: 'Calefactor de invernadero o antiheladas',
    synonyms: [
      'calefactor antiheladas',
      'calefactor tubular',
      'calentador de invernadero',
      'calefactor de barco',
      'tubo calefactor',
    ],
  },
  'infrared-heater': {
    name: 'Calefactor de infrarrojos',
    synonyms: [
      'estufa de terraza',
      'estufa de cuarzo',
      'estufa halógena',
      'calefactor halógeno',
      'calentador de terraza',
      'radiador de infrarrojos',
    ],
  },
  'electric-blanket': {
    name: 'Manta eléctrica',
    synonyms: [
      'calientacamas',
      'manta térmica',
      'cobertor eléctrico',
      'cubrecolchón térmico',
      'frazada eléctrica',
    ],
  },
  'immersion-heater': {
    name: 'Termo eléctrico (resistencia del depósito)',
    synonyms: [
      'termo',
      'calentador de agua eléctrico',
      'calentador eléctrico de agua',
      'boiler',
      'resistencia de inmersión',
      'acumulador de agua caliente',
      'terma',
    ],
  },
  'furnace-fan': {
    name: 'Ventilador de calefacción de aire (corte de luz)',
    synonyms: [
      'ventilador de caldera',
      'calefacción por aire',
      'generador de aire caliente',
      'soplador de calefacción',
    ],
  },
  'pellet-stove': {
    name: 'Estufa de pellets',
    synonyms: ['estufa de pélets', 'caldera de pellets', 'quemador de pellets', 'estufa de biomasa'],
  },
  fan: {
    name: 'Ventilador de mesa o de pie',
    synonyms: [
      'ventilador',
      'ventilador de pie',
      'ventilador de torre',
      'ventilador de sobremesa',
      'abanico',
    ],
  },
  'ceiling-fan': {
    name: 'Ventilador de techo',
    synonyms: ['abanico de techo', 'ventilador con aspas de techo'],
  },
  'window-fan': {
    name: 'Ventilador de ventana o extractor',
    synonyms: [
      'extractor',
      'extractor de aire',
      'ventilador de caja',
      'ventilador de suelo',
      'extractor de baño',
      'extractor de techo',
    ],
  },
  'evaporative-cooler': {
    name: 'Climatizador evaporativo',
    synonyms: ['enfriador de aire', 'enfriador evaporativo', 'cooler evaporativo', 'ventilador de agua'],
  },
  dehumidifier: {
    name: 'Deshumidificador',
    synonyms: ['deshumificador', 'secador de aire', 'quita humedad'],
  },
  'air-purifier': {
    name: 'Purificador de aire',
    synonyms: ['filtro de aire', 'limpiador de aire', 'filtro HEPA', 'depurador de aire'],
  },
  humidifier: {
    name: 'Humidificador',
    synonyms: ['humidificador ultrasónico', 'vaporizador', 'nebulizador de ambiente', 'difusor de vapor'],
  },
  'hair-dryer': {
    name: 'Secador de pelo',
    synonyms: ['secador', 'secadora de pelo', 'secador de cabello', 'secador de viaje'],
    note: 'A media potencia algunos toman corriente de media onda, lo que exige mucho a algunos inversores.',
  },
  'hair-straightener': {
    name: 'Plancha o rizador de pelo',
    synonyms: [
      'plancha de pelo',
      'alisador',
      'rizador',
      'tenacillas',
      'planchita de pelo',
      'cepillo de aire caliente',
    ],
  },
  shaver: {
    name: 'Afeitadora eléctrica',
    synonyms: [
      'maquinilla de afeitar',
      'máquina de afeitar',
      'recortadora de barba',
      'barbero',
      'rasuradora',
    ],
  },
  'electric-toothbrush-charger': {
    name: 'Cargador de cepillo de dientes eléctrico',
    synonyms: ['cepillo de dientes', 'cepillo eléctrico', 'cepillo sónico'],
    note: 'Un cargador sin electrónica propia puede calentarse con una onda sinusoidal modificada.',
  },
  'heating-pad': {
    name: 'Almohadilla eléctrica',
    synonyms: ['almohadilla térmica', 'esterilla eléctrica', 'calientapiés', 'cojín térmico', 'faja térmica'],
  },
  'nail-lamp': {
    name: 'Lámpara de uñas',
    synonyms: ['lámpara UV', 'lámpara de gel', 'secador de uñas', 'lámpara de manicura'],
  },
  'washing-machine': {
    name: 'Lavadora (calienta su agua)',
    synonyms: ['lavadora', 'lavarropas', 'lavadora de carga frontal', 'máquina de lavar'],
  },
  'washing-machine-without-heater': {
    name: 'Lavadora (agua caliente del grifo)',
    synonyms: [
      'lavadora de carga superior',
      'lavadora de camping',
      'minilavadora',
      'lavadora sin resistencia',
      'lavadora en frío',
    ],
  },
  'clothes-dryer': {
    name: 'Secadora de ropa (con resistencia)',
    synonyms: ['secadora', 'secadora de evacuación', 'secadora de condensación', 'secarropas'],
    note: 'Las secadoras grandes de Norteamérica toman 240 V y hasta 5 kW: lea la placa.',
  },
  'heat-pump-dryer': {
    name: 'Secadora con bomba de calor',
    synonyms: ['secadora de bomba de calor', 'secadora de ropa con bomba de calor'],
  },
  'spin-dryer': { name: 'Centrifugadora de ropa', synonyms: ['centrifugadora', 'escurridora de ropa'] },
  iron: {
    name: 'Plancha de ropa',
    synonyms: ['plancha de vapor', 'plancha de viaje', 'centro de planchado', 'plancha para planchar'],
  },
  'vacuum-cleaner': {
    name: 'Aspiradora',
    synonyms: ['aspirador', 'aspiradora de trineo', 'aspiradora escoba', 'aspirador de mano'],
  },
  'wet-dry-vacuum': {
    name: 'Aspirador de agua y polvo',
    synonyms: [
      'aspirador de taller',
      'aspirador industrial',
      'aspirador de líquidos',
      'extractor de polvo',
      'aspiradora de obra',
    ],
  },
  'robot-vacuum': {
    name: 'Robot aspirador (cargando)',
    synonyms: ['robot de limpieza', 'aspiradora robot', 'robot friegasuelos', 'robot limpiador'],
  },
  'steam-cleaner': {
    name: 'Limpiador o mopa de vapor',
    synonyms: [
      'mopa de vapor',
      'limpiador de vapor',
      'vaporizador de ropa',
      'plancha vertical',
      'vaporizador de papel pintado',
    ],
  },
  'pressure-washer': {
    name: 'Hidrolimpiadora',
    synonyms: [
      'limpiadora de alta presión',
      'lavadora a presión',
      'lavadora de alta presión',
      'limpiador a presión',
    ],
  },
  'carpet-cleaner': {
    name: 'Limpiador de alfombras',
    synonyms: ['limpiatapicerías', 'lavadora de alfombras', 'limpiador de moquetas', 'inyección-extracción'],
  },
  laptop: {
    name: 'Ordenador portátil',
    synonyms: [
      'portátil',
      'laptop',
      'notebook',
      'cargador de portátil',
      'computadora portátil',
      'cargador de laptop',
    ],
  },
  'gaming-laptop': {
    name: 'Ordenador portátil para juegos',
    synonyms: [
      'portátil gaming',
      'portátil gamer',
      'laptop gamer',
      'portátil potente',
      'estación de trabajo portátil',
    ],
  },
  'desktop-computer': {
    name: 'Ordenador de sobremesa',
    synonyms: [
      'PC',
      'ordenador',
      'computadora',
      'computador',
      'torre',
      'ordenador de oficina',
      'computadora de escritorio',
      'todo en uno',
    ],
  },
  'gaming-computer': {
    name: 'Ordenador de sobremesa para juegos',
    synonyms: ['PC gaming', 'PC gamer', 'ordenador gaming', 'estación de trabajo', 'computadora gamer'],
  },
  monitor: {
    name: 'Monitor de ordenador',
    synonyms: ['pantalla', 'monitor', 'pantalla de ordenador', 'pantalla plana', 'monitor de computadora'],
  },
  'large-monitor': {
    name: 'Monitor de ordenador, 27 pulgadas o más',
    synonyms: ['monitor grande', 'pantalla grande', 'monitor curvo', 'monitor panorámico', 'monitor 4K'],
  },
  printer: {
    name: 'Impresora de inyección de tinta',
    synonyms: ['impresora', 'impresora de fotos', 'escáner', 'impresora multifunción', 'impresora de tinta'],
  },
  'laser-printer': {
    name: 'Impresora láser',
    synonyms: ['fotocopiadora', 'copiadora', 'impresora de oficina', 'multifunción láser'],
  },
  'external-disk': {
    name: 'Disco duro externo',
    synonyms: ['disco externo', 'disco USB', 'disco de copias', 'unidad USB'],
  },
  'network-server': {
    name: 'Servidor pequeño o almacenamiento en red',
    synonyms: ['NAS', 'servidor', 'servidor doméstico', 'almacenamiento en red', 'servidor multimedia'],
  },
  router: {
    name: 'Router de internet',
    synonyms: ['router', 'módem', 'wifi', 'router wifi', 'enrutador', 'fibra', 'conmutador de red'],
  },
  'mobile-router': {
    name: 'Router de internet móvil (4G o 5G)',
    synonyms: [
      'router 4G',
      'router 5G',
      'módem móvil',
      'router con SIM',
      'punto de acceso móvil',
      'internet móvil',
    ],
  },
  'satellite-terminal': {
    name: 'Terminal de internet por satélite',
    synonyms: ['internet por satélite', 'antena de satélite', 'antena parabólica de internet', 'satélite'],
    note: 'Derretir la nieve sube aún más su potencia.',
  },
  'signal-booster': {
    name: 'Amplificador de señal móvil',
    synonyms: [
      'repetidor de señal',
      'amplificador de cobertura',
      'repetidor móvil',
      'amplificador de celular',
    ],
  },
  'radio-transceiver': {
    name: 'Emisora de radio (con su fuente)',
    synonyms: ['radioaficionado', 'radio CB', 'emisora', 'radio marina', 'transceptor', 'equipo de radio'],
  },
  'cordless-phone': {
    name: 'Base de teléfono inalámbrico',
    synonyms: ['teléfono', 'teléfono fijo', 'teléfono inalámbrico', 'contestador'],
  },
  television: {
    name: 'Televisor',
    synonyms: ['televisión', 'tele', 'TV', 'pantalla plana', 'smart TV', 'tele inteligente'],
    note: 'De unas 43 pulgadas.',
  },
  'small-television': {
    name: 'Televisor, pequeño',
    synonyms: [
      'televisor pequeño',
      'tele pequeña',
      'televisor 24 pulgadas',
      'televisor 32 pulgadas',
      'tele de caravana',
      'tele de cocina',
    ],
    note: 'De 24 a 32 pulgadas.',
  },
  'large-television': {
    name: 'Televisor, grande',
    synonyms: ['televisor grande', 'tele grande', 'televisor 55 pulgadas', 'televisor 65 pulgadas'],
    note: 'De 55 a 65 pulgadas.',
  },
  'very-large-television': {
    name: 'Televisor de 75 pulgadas o más',
    synonyms: [
      'televisor 75 pulgadas',
      'televisor 85 pulgadas',
      'pantalla publicitaria',
      'videowall',
      'cartelería digital',
    ],
  },
  'games-console': {
    name: 'Videoconsola',
    synonyms: ['consola', 'consola de videojuegos', 'consola de juegos', 'videojuegos'],
  },
  'set-top-box': {
    name: 'Decodificador o reproductor de streaming',
    synonyms: [
      'decodificador',
      'receptor de satélite',
      'TV box',
      'reproductor multimedia',
      'sintonizador',
      'descodificador',
      'TDT',
    ],
  },
  projector: {
    name: 'Proyector',
    synonyms: ['videoproyector', 'proyector de cine en casa', 'cañón de vídeo', 'proyector de diapositivas'],
  },
  'hi-fi': {
    name: 'Equipo de música o amplificador',
    synonyms: [
      'equipo de sonido',
      'hi-fi',
      'amplificador',
      'cadena de música',
      'tocadiscos',
      'minicadena',
      'receptor AV',
    ],
  },
  'sound-bar': {
    name: 'Barra de sonido',
    synonyms: [
      'altavoz de televisor',
      'altavoz inteligente',
      'altavoz inalámbrico',
      'altavoz Bluetooth',
      'parlante',
    ],
  },
  'pa-speaker': {
    name: 'Altavoz de megafonía (autoamplificado)',
    synonyms: [
      'altavoz activo',
      'megafonía',
      'sonido para eventos',
      'altavoz autoamplificado',
      'bafle',
      'subwoofer',
      'altavoz de DJ',
      'parlante activo',
    ],
  },
  'mixing-desk': {
    name: 'Mesa de mezclas',
    synonyms: ['mezclador', 'mezcladora de audio', 'controladora DJ', 'mesa de DJ', 'consola de mezclas'],
  },
  'guitar-amplifier': {
    name: 'Amplificador de guitarra',
    synonyms: ['ampli de guitarra', 'amplificador de bajo', 'amplificador de válvulas', 'combo'],
  },
  'keyboard-instrument': {
    name: 'Teclado electrónico',
    synonyms: ['piano digital', 'piano eléctrico', 'sintetizador', 'teclado musical', 'piano de escenario'],
  },
  radio: {
    name: 'Radio',
    synonyms: ['radio despertador', 'radio DAB', 'transistor', 'aparato de radio', 'radio digital'],
  },
  'led-lamp': {
    name: 'Lámpara LED',
    synonyms: [
      'bombilla LED',
      'bombilla',
      'luz',
      'lámpara',
      'foco LED',
      'flexo',
      'lámpara de mesa',
      'lámpara de lectura',
    ],
  },
  'led-work-light': {
    name: 'Foco de obra LED',
    synonyms: [
      'foco LED',
      'proyector LED',
      'luz de trabajo',
      'lámpara de trabajo',
      'reflector LED',
      'foco de trabajo',
    ],
  },
  'string-lights': {
    name: 'Guirnalda de luces (LED)',
    synonyms: [
      'tira LED',
      'luces LED',
      'luces de fiesta',
      'guirnalda LED',
      'luces de Navidad',
      'luces de toldo',
    ],
  },
  'filament-string-lights': {
    name: 'Guirnalda de luces (de filamento)',
    synonyms: ['guirnalda de bombillas', 'guirnalda antigua', 'luces de verbena'],
  },
  'stage-light': {
    name: 'Foco de escenario LED',
    synonyms: ['luces de discoteca', 'foco PAR', 'cabeza móvil', 'iluminación de escenario', 'efecto de luz'],
  },
  'compact-fluorescent-lamp': {
    name: 'Bombilla de bajo consumo',
    synonyms: ['lámpara fluorescente compacta', 'bombilla ahorradora', 'foco ahorrador'],
  },
  'fluorescent-tube': {
    name: 'Tubo fluorescente',
    synonyms: ['fluorescente', 'neón', 'luz de tubo', 'regleta fluorescente'],
  },
  'halogen-lamp': {
    name: 'Lámpara halógena',
    synonyms: ['bombilla halógena', 'foco halógeno', 'halógeno', 'proyector halógeno'],
    note: 'Un proyector halógeno toma 150-500 W: lea su lámpara.',
  },
  'incandescent-lamp': {
    name: 'Bombilla de filamento',
    synonyms: ['bombilla incandescente', 'bombilla antigua', 'foco incandescente', 'bombilla de tungsteno'],
  },
  'heat-lamp': {
    name: 'Lámpara de calor',
    synonyms: [
      'lámpara de infrarrojos',
      'lámpara para pollitos',
      'lámpara para reptiles',
      'lámpara de terrario',
      'lámpara calientaplatos',
    ],
  },
  'grow-light': {
    name: 'Lámpara LED para plantas',
    synonyms: ['luz de cultivo', 'lámpara de cultivo', 'luz para plantas', 'foco de cultivo'],
  },
  'phone-charger': {
    name: 'Cargador de móvil',
    synonyms: [
      'móvil',
      'cargador de teléfono',
      'celular',
      'cargador de celular',
      'smartphone',
      'cargador USB',
      'teléfono móvil',
    ],
  },
  'tablet-charger': {
    name: 'Cargador de tableta',
    synonyms: ['tableta', 'tablet', 'cargador de tablet', 'lector electrónico', 'libro electrónico'],
  },
  'power-bank': {
    name: 'Batería externa (cargando)',
    synonyms: ['batería portátil', 'batería USB', 'cargador portátil', 'power bank'],
  },
  'tool-battery-charger': {
    name: 'Cargador de batería de herramienta',
    synonyms: [
      'atornillador',
      'taladro de batería',
      'cargador de taladro',
      'cargador de atornillador',
      'herramienta sin cable',
    ],
  },
  'camera-battery-charger': {
    name: 'Cargador de batería de cámara o dron',
    synonyms: ['dron', 'cargador de dron', 'cargador de cámara', 'cámara', 'cargador LiPo'],
  },
  'household-battery-charger': {
    name: 'Cargador de pilas',
    synonyms: ['pilas recargables', 'cargador de pilas AA', 'pilas AAA', 'cargador de pilas recargables'],
  },
  'e-bike-charger': {
    name: 'Cargador de bicicleta eléctrica',
    synonyms: ['bicicleta eléctrica', 'bici eléctrica', 'batería de bicicleta', 'cargador de bici'],
  },
  'e-scooter-charger': {
    name: 'Cargador de patinete eléctrico',
    synonyms: ['patinete', 'patinete eléctrico', 'monopatín eléctrico', 'patineta eléctrica', 'hoverboard'],
  },
  'car-battery-charger': {
    name: 'Cargador de batería de coche',
    synonyms: [
      'cargador de batería',
      'cargador de mantenimiento',
      'mantenedor de batería',
      'cargador de batería de arranque',
      'cargador de batería de servicio',
    ],
  },
  'torch-charger': {
    name: 'Cargador de linterna',
    synonyms: ['linterna', 'frontal', 'linterna frontal', 'farol', 'foco de mano'],
  },
  'electric-drill': {
    name: 'Taladro eléctrico',
    synonyms: ['taladro', 'taladradora', 'taladro percutor', 'taladro con cable'],
  },
  'rotary-hammer': {
    name: 'Martillo perforador',
    synonyms: [
      'martillo percutor',
      'martillo demoledor',
      'cincelador',
      'martillo eléctrico',
      'picador',
      'rotomartillo',
    ],
  },
  'angle-grinder': {
    name: 'Amoladora angular',
    synonyms: [
      'amoladora',
      'radial',
      'esmeril angular',
      'rebarbadora',
      'amoladora pequeña',
      'pulidora angular',
    ],
    note: '115 o 125 mm (4-1/2 o 5 pulgadas).',
  },
  'large-angle-grinder': {
    name: 'Amoladora angular, grande',
    synonyms: ['amoladora de 230 mm', 'radial grande', 'amoladora grande', 'cortadora de piedra'],
    note: '230 mm (9 pulgadas).',
  },
  'circular-saw': {
    name: 'Sierra circular',
    synonyms: ['sierra circular de mano', 'sierra de incisión', 'sierra de carril'],
  },
  'mitre-saw': { name: 'Ingletadora', synonyms: ['sierra ingletadora', 'sierra de ingletes', 'tronzadora'] },
  'table-saw': {
    name: 'Sierra de mesa',
    synonyms: ['sierra circular de mesa', 'sierra de banco', 'sierra de obra'],
  },
  jigsaw: {
    name: 'Sierra de calar',
    synonyms: ['caladora', 'sierra sable', 'sierra alternativa', 'sierra de vaivén'],
  },
  sander: {
    name: 'Lijadora',
    synonyms: ['lijadora orbital', 'lijadora de banda', 'lijadora excéntrica', 'lijadora delta'],
  },
  planer: {
    name: 'Cepillo eléctrico de carpintero',
    synonyms: ['cepillo eléctrico', 'cepilladora', 'garlopa eléctrica'],
  },
  'wood-router': {
    name: 'Fresadora de madera',
    synonyms: ['fresadora', 'tupí', 'rebajadora', 'recortadora de cantos', 'router de madera'],
  },
  'multi-tool': {
    name: 'Multiherramienta oscilante',
    synonyms: [
      'herramienta oscilante',
      'multiherramienta',
      'minitaladro',
      'herramienta rotativa',
      'grabador',
    ],
  },
  'tile-saw': {
    name: 'Cortadora de azulejos',
    synonyms: [
      'cortadora de azulejos eléctrica',
      'cortadora de cerámica',
      'sierra de agua',
      'sierra para piedra',
    ],
  },
  'bench-grinder': {
    name: 'Esmeriladora de banco',
    synonyms: ['esmeril', 'piedra de esmeril', 'afilador', 'afilador de cuchillos', 'amoladora de banco'],
  },
  'air-compressor': {
    name: 'Compresor de aire',
    synonyms: ['compresor', 'compresor de taller', 'compresor 1 hp', 'compresor 1 CV'],
    note: 'De 1 hp aproximadamente.',
  },
  'small-air-compressor': {
    name: 'Compresor de aire, pequeño',
    synonyms: [
      'inflador a la red',
      'compresor pequeño',
      'compresor de aerógrafo',
      'compresor sin aceite',
      'compresor para clavadora',
    ],
    note: 'De hasta 1/2 hp aproximadamente.',
  },
  'large-air-compressor': {
    name: 'Compresor de aire, grande',
    synonyms: ['compresor grande', 'compresor 2 hp', 'compresor de correa', 'compresor de garaje'],
    note: 'De 2 hp aproximadamente.',
  },
  'heat-gun': {
    name: 'Pistola de aire caliente',
    synonyms: ['decapador', 'decapadora', 'pistola de calor', 'pistola termorretráctil'],
  },
  'soldering-iron': {
    name: 'Soldador de estaño',
    synonyms: ['soldador', 'estación de soldadura', 'cautín', 'pistola de soldar'],
  },
  'glue-gun': {
    name: 'Pistola de cola caliente',
    synonyms: ['pistola de silicona', 'pistola termofusible', 'cola caliente', 'pistola de pegamento'],
  },
  'paint-sprayer': {
    name: 'Pistola de pintura',
    synonyms: ['pulverizador de pintura', 'equipo airless', 'pistola de pintar'],
  },
  'electric-chain-saw': {
    name: 'Motosierra eléctrica',
    synonyms: ['electrosierra', 'motosierra', 'sierra de cadena'],
  },
  'hedge-trimmer': {
    name: 'Cortasetos',
    synonyms: ['recortasetos', 'cortasetos eléctrico', 'podadora de setos'],
  },
  'grass-trimmer': {
    name: 'Cortabordes',
    synonyms: ['desbrozadora', 'bordeadora', 'desbrozadora eléctrica', 'orilladora', 'recortadora de césped'],
  },
  'lawn-mower': {
    name: 'Cortacésped eléctrico',
    synonyms: ['cortacésped', 'podadora de césped', 'segadora', 'cortadora de pasto'],
  },
  'leaf-blower': { name: 'Soplador de hojas', synonyms: ['soplador', 'sopladora', 'aspirador de hojas'] },
  'cement-mixer': {
    name: 'Hormigonera',
    synonyms: ['mezcladora de cemento', 'concretera', 'mezcladora de mortero'],
  },
  welder: {
    name: 'Soldadora de 160 A',
    synonyms: [
      'soldadora',
      'equipo de soldar',
      'soldadora inverter',
      'soldadora MIG',
      'soldadora TIG',
      'soldadora de electrodo',
      'grupo de soldar',
    ],
    note: '160 A; un circuito de 120 V solo aguanta la pequeña.',
  },
  'small-welder': {
    name: 'Soldadora de 90 A',
    synonyms: ['soldadora pequeña', 'soldadora de hilo sin gas', 'soldadora de hilo tubular'],
  },
  'water-pump': {
    name: 'Bomba de agua (grupo de presión)',
    synonyms: [
      'grupo de presión',
      'bomba de jardín',
      'bomba de presión',
      'bomba de trasvase',
      'bomba',
      'hidroneumático',
    ],
  },
  'well-pump': {
    name: 'Bomba de pozo, 1/2 hp',
    synonyms: ['bomba sumergible de pozo', 'bomba de pozo profundo', 'bomba de perforación', 'pozo'],
  },
  'sump-pump': {
    name: 'Bomba de sótano, 1/3 hp',
    synonyms: [
      'bomba de achique de sótano',
      'bomba de drenaje',
      'bomba de inundaciones',
      'bomba de aguas sucias',
      'bomba de desagüe',
    ],
  },
  'bilge-pump': {
    name: 'Bomba de achique o de sentina a la red',
    synonyms: ['bomba de sentina', 'bomba de achique', 'bomba de barco', 'bomba de emergencia'],
  },
  'pond-pump': {
    name: 'Bomba sumergible o de estanque, pequeña',
    synonyms: ['bomba de estanque', 'bomba sumergible', 'bomba de fuente', 'filtro de estanque'],
  },
  'aquarium-pump': {
    name: 'Bomba y filtro de acuario',
    synonyms: ['filtro de acuario', 'bomba de aire', 'pecera', 'acuario', 'aireador'],
  },
  'circulation-pump': {
    name: 'Bomba de circulación de calefacción',
    synonyms: [
      'bomba de calefacción',
      'circulador',
      'bomba circuladora',
      'bomba de caldera',
      'bomba recirculadora',
    ],
    note: 'Las antiguas funcionan siempre a 60-120 W, las electrónicas a 5-45 W.',
  },
  'air-bed-pump': {
    name: 'Inflador de colchón o de tienda',
    synonyms: [
      'bomba de colchón',
      'inflador',
      'hinchador eléctrico',
      'inflador de paddle',
      'colchón hinchable',
    ],
  },
  'pool-pump': {
    name: 'Bomba de piscina',
    synonyms: [
      'bomba de filtración',
      'depuradora',
      'depuradora de piscina',
      'bomba de spa',
      'bomba de alberca',
    ],
  },
  'card-reader': {
    name: 'Lector de tarjetas',
    synonyms: ['datáfono', 'terminal de pago', 'TPV de tarjeta', 'terminal de tarjetas'],
  },
  till: {
    name: 'Caja registradora con pantalla',
    synonyms: ['TPV', 'caja registradora', 'caja', 'terminal punto de venta', 'punto de venta'],
  },
  'receipt-printer': {
    name: 'Impresora de tiques o etiquetas',
    synonyms: [
      'impresora de tickets',
      'impresora térmica',
      'impresora de etiquetas',
      'etiquetadora',
      'impresora de recibos',
    ],
  },
  scales: {
    name: 'Balanza de comercio',
    synonyms: ['balanza', 'báscula', 'báscula de mercado', 'balanza de mostrador'],
  },
  'sewing-machine': {
    name: 'Máquina de coser',
    synonyms: ['remalladora', 'overlock', 'bordadora', 'máquina de bordar'],
  },
  'food-warmer': {
    name: 'Calientaplatos',
    synonyms: [
      'baño maría',
      'calentador de comida',
      'mesa caliente',
      'calientabiberones',
      'sopera eléctrica',
      'vitrina caliente',
      'armario caliente',
    ],
  },
  'popcorn-maker': {
    name: 'Máquina de palomitas',
    synonyms: ['palomitero', 'palomitera', 'carrito de palomitas', 'pochoclera'],
  },
  'candy-floss-machine': {
    name: 'Máquina de algodón de azúcar',
    synonyms: ['algodón de azúcar', 'algodonera'],
  },
  'slush-machine': {
    name: 'Granizadora',
    synonyms: ['máquina de granizados', 'granizado', 'máquina de bebidas heladas'],
  },
  'ice-cream-freezer': {
    name: 'Congelador expositor de helados',
    synonyms: ['vitrina de helados', 'arcón de helados', 'congelador con tapa de cristal'],
  },
  'display-fridge': {
    name: 'Vitrina refrigerada',
    synonyms: [
      'expositor refrigerado',
      'nevera con puerta de cristal',
      'expositor de bebidas',
      'botellero',
      'vitrina de bebidas',
    ],
  },
  'heat-press': {
    name: 'Prensa térmica',
    synonyms: ['plancha transfer', 'prensa de camisetas', 'plancha de sublimación', 'prensa de calor'],
  },
  laminator: { name: 'Plastificadora', synonyms: ['laminadora', 'máquina de plastificar'] },
  'hair-clippers': {
    name: 'Cortapelos (peluquería)',
    synonyms: [
      'máquina de cortar pelo',
      'cortapelos',
      'maquinilla de peluquero',
      'esquiladora',
      'cortapelos para animales',
    ],
  },
  'door-motor': {
    name: 'Motor de persiana o de toldo',
    synonyms: [
      'motor de puerta de garaje',
      'puerta de garaje',
      'persiana eléctrica',
      'motor de toldo',
      'cancela eléctrica',
      'cierre metálico',
    ],
  },
  'electric-hoist': {
    name: 'Polipasto o cabrestante eléctrico',
    synonyms: ['cabrestante', 'polipasto', 'torno eléctrico', 'montacargas', 'güinche', 'pescante'],
  },
  'bubble-machine': {
    name: 'Máquina de burbujas, humo o nieve',
    synonyms: [
      'máquina de humo',
      'máquina de niebla',
      'máquina de burbujas',
      'máquina de nieve',
      'máquina de pompas',
    ],
  },
  'bouncy-castle-blower': {
    name: 'Soplador de castillo hinchable',
    synonyms: ['castillo hinchable', 'castillo inflable', 'ventilador de hinchable', 'brincolín'],
  },
  cpap: {
    name: 'Aparato respiratorio para dormir (CPAP)',
    synonyms: [
      'CPAP',
      'apnea del sueño',
      'máquina de apnea',
      'aparato de apnea',
      'máquina para dormir',
      'bilevel',
      'mascarilla de apnea',
    ],
    note: 'Con el humidificador apagado.',
  },
  'cpap-with-humidifier': {
    name: 'Aparato respiratorio (CPAP) con humidificador térmico',
    synonyms: ['CPAP con humidificador', 'humidificador de CPAP', 'apnea con humidificador'],
  },
  'cpap-with-heated-tube': {
    name: 'Aparato respiratorio (CPAP) con humidificador y tubo calefactado',
    synonyms: ['CPAP con tubo térmico', 'CPAP con tubo calefactado', 'tubo calefactado'],
  },
  'oxygen-concentrator': {
    name: 'Concentrador de oxígeno, 5 litros por minuto',
    synonyms: ['concentrador de oxígeno', 'oxígeno en casa', 'máquina de oxígeno', 'generador de oxígeno'],
  },
  'large-oxygen-concentrator': {
    name: 'Concentrador de oxígeno, 10 litros por minuto',
    synonyms: ['concentrador de 10 litros', 'concentrador de alto flujo', 'máquina de oxígeno grande'],
  },
  'portable-oxygen-concentrator': {
    name: 'Concentrador de oxígeno portátil (con su adaptador)',
    synonyms: ['oxígeno portátil', 'concentrador portátil', 'concentrador de viaje'],
  },
  nebuliser: {
    name: 'Nebulizador',
    synonyms: ['inhalador', 'aparato de aerosoles', 'aerosolterapia', 'aparato para el asma'],
  },
  'home-ventilator': {
    name: 'Ventilador respiratorio domiciliario',
    synonyms: ['respirador', 'ventilación domiciliaria', 'ventilación mecánica', 'soporte vital'],
  },
  'suction-unit': {
    name: 'Aspirador de secreciones',
    synonyms: ['aspirador médico', 'aspirador quirúrgico', 'succión médica'],
  },
  'medicine-fridge': {
    name: 'Frigorífico de medicinas',
    synonyms: [
      'nevera de insulina',
      'nevera de medicamentos',
      'nevera de vacunas',
      'frigorífico de farmacia',
    ],
  },
  'hospital-bed': {
    name: 'Cama articulada eléctrica',
    synonyms: ['cama de hospital', 'cama hospitalaria', 'cama eléctrica', 'cama geriátrica'],
  },
  'pressure-mattress-pump': {
    name: 'Compresor de colchón antiescaras',
    synonyms: ['colchón antiescaras', 'colchón de aire alternante', 'bomba de colchón antiescaras'],
  },
  'feeding-pump': {
    name: 'Bomba de alimentación',
    synonyms: [
      'bomba de nutrición enteral',
      'nutrición enteral',
      'bomba de infusión',
      'sonda de alimentación',
    ],
  },
  'wheelchair-charger': {
    name: 'Cargador de silla de ruedas o scooter de movilidad',
    synonyms: [
      'silla de ruedas eléctrica',
      'cargador de silla de ruedas',
      'scooter de movilidad',
      'scooter para mayores',
    ],
  },
  'dialysis-machine': {
    name: 'Máquina de diálisis domiciliaria',
    synonyms: ['diálisis', 'diálisis peritoneal', 'cicladora', 'hemodiálisis'],
  },
}
