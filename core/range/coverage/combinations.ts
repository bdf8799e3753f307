/** One appliance of an everyday plan. */
export interface EverydayLoad {
  /** Id in the appliance list. */
  readonly appliance: string
  /** Left out: 1. */
  readonly quantity?: number
}

/** Things that people run together, told in plain words. */
export interface Combination {
  readonly id: string
  readonly name: string
  readonly loads: readonly EverydayLoad[]
  /** Appliances of which only one is on at a time. */
  readonly takeTurns?: readonly (readonly string[])[]
}

/**
 * Forty plans as people describe them: life in a van or aboard, mobile work, stalls, the building site, music
 * and a power cut. Powers, starts and minutes a day are those of the appliance list. Which things go together
 * is our own judgement. Source: load-judgement
 */
export const COMBINATIONS: readonly Combination[] = [
  plan('microwave-and-laptop', 'Microwave and laptop', ['microwave-oven', 'laptop']),
  plan('kettle-and-toaster', 'Kettle and toaster, one after the other', ['electric-kettle', 'toaster'], {
    takeTurns: [['electric-kettle', 'toaster']],
  }),
  plan(
    'van-breakfast',
    'Breakfast in a van: travel kettle and sandwich press in turns, phones charging',
    ['travel-kettle', 'sandwich-press', [2, 'phone-charger']],
    { takeTurns: [['travel-kettle', 'sandwich-press']] },
  ),
  plan('weekend-in-a-van', 'A weekend in a van: cool box, lamps, laptop and phones', [
    'compressor-cool-box',
    [4, 'led-lamp'],
    'laptop',
    [2, 'phone-charger'],
  ]),
  plan('evening-aboard', 'An evening aboard: television, lamps, router and phones', [
    'television',
    [4, 'led-lamp'],
    'router',
    [2, 'phone-charger'],
  ]),
  plan(
    'galley',
    'A galley: fridge, with microwave and kettle in turns',
    ['fridge', 'microwave-oven', 'electric-kettle'],
    {
      takeTurns: [['microwave-oven', 'electric-kettle']],
    },
  ),
  plan('living-aboard', 'Living aboard: fridge, television, laptop, lamps and circulation pump', [
    'fridge',
    'television',
    'laptop',
    [4, 'led-lamp'],
    'circulation-pump',
  ]),
  plan(
    'camper-kitchen',
    'A camper kitchen: induction hob and coffee machine in turns',
    ['induction-hob', 'pod-coffee-machine'],
    { takeTurns: [['induction-hob', 'pod-coffee-machine']] },
  ),
  plan(
    'slow-supper',
    'Rice cooker and slow cooker in turns, with lamps',
    ['rice-cooker', 'slow-cooker', [2, 'led-lamp']],
    {
      takeTurns: [['rice-cooker', 'slow-cooker']],
    },
  ),
  plan('air-fryer-and-fridge', 'Air fryer and fridge', ['air-fryer', 'fridge']),
  plan(
    'getting-ready',
    'Hair dryer and straightener, one after the other',
    ['hair-dryer', 'hair-straightener'],
    {
      takeTurns: [['hair-dryer', 'hair-straightener']],
    },
  ),
  plan('wash-day', 'Washing machine while the fridge runs', ['washing-machine', 'fridge']),
  plan('tidying-up', 'Vacuum cleaner while the fridge runs', ['vacuum-cleaner', 'fridge']),
  plan('warm-night', 'Electric blanket, lamp and phone', ['electric-blanket', 'led-lamp', 'phone-charger']),
  plan('night-with-breathing-machine', 'A night with a breathing machine, phone and lamp', [
    'cpap',
    'phone-charger',
    'led-lamp',
  ]),
  plan('desk-for-one', 'A desk: laptop, monitor, router and printer', [
    'laptop',
    'monitor',
    'router',
    'printer',
  ]),
  plan('desks-for-two', 'Two desks over satellite: laptops, monitors, lamps', [
    [2, 'laptop'],
    [2, 'monitor'],
    'satellite-terminal',
    [2, 'led-lamp'],
  ]),
  plan('film-night', 'Film night: projector, sound bar and laptop', ['projector', 'sound-bar', 'laptop']),
  plan('games-night', 'Games console, television and sound bar', [
    'games-console',
    'television',
    'sound-bar',
  ]),
  plan('e-bikes', 'Two electric bicycles and two phones charging', [
    [2, 'e-bike-charger'],
    [2, 'phone-charger'],
  ]),
  plan('stall-with-kettle', 'Stall lights, card reader and kettle', [
    [4, 'string-lights'],
    'card-reader',
    'electric-kettle',
  ]),
  plan(
    'coffee-stall',
    'A coffee stall: espresso machine, grinder, card reader, till and lamps',
    ['espresso-machine', 'coffee-grinder', 'card-reader', 'till', [2, 'led-lamp']],
    { takeTurns: [['espresso-machine', 'coffee-grinder']] },
  ),
  plan('crepe-stall', 'A crepe stall: crepe maker, card reader and lamps', [
    'crepe-maker',
    'card-reader',
    [2, 'led-lamp'],
  ]),
  plan('ice-cream-van', 'An ice-cream van: freezer, card reader and lamps', [
    'ice-cream-freezer',
    'card-reader',
    [2, 'led-lamp'],
  ]),
  plan(
    'fair-stall',
    'A fair stall: popcorn and candy floss in turns, string lights, card reader',
    ['popcorn-maker', 'candy-floss-machine', [2, 'string-lights'], 'card-reader'],
    { takeTurns: [['popcorn-maker', 'candy-floss-machine']] },
  ),
  plan('hot-food-stall', 'A hot-food stall: food warmer, display fridge, till and receipt printer', [
    'food-warmer',
    'display-fridge',
    'till',
    'receipt-printer',
  ]),
  plan('cold-food-stall', 'A cold-food stall: display fridge, scales and card reader', [
    'display-fridge',
    'scales',
    'card-reader',
  ]),
  plan(
    'juice-bar',
    'A juice bar: blender and juicer in turns, fridge and card reader',
    ['blender', 'juicer', 'fridge', 'card-reader'],
    { takeTurns: [['blender', 'juicer']] },
  ),
  plan(
    'joinery-on-site',
    'Joinery on site: saw, sander and drill in turns, chargers and radio',
    ['circular-saw', 'sander', 'electric-drill', [2, 'tool-battery-charger'], 'radio'],
    { takeTurns: [['circular-saw', 'sander', 'electric-drill']] },
  ),
  plan(
    'breaking-and-grinding',
    'Rotary hammer and angle grinder in turns under work lights',
    ['rotary-hammer', 'angle-grinder', [2, 'led-work-light']],
    { takeTurns: [['rotary-hammer', 'angle-grinder']] },
  ),
  plan('saw-with-dust-extraction', 'Mitre saw and wet-and-dry vacuum together', [
    'mitre-saw',
    'wet-dry-vacuum',
  ]),
  plan('painting', 'Paint sprayer under work lights', ['paint-sprayer', [2, 'led-work-light']]),
  plan('tyres', 'Small air compressor under a work light', ['small-air-compressor', 'led-work-light']),
  plan('charging-in-the-truck', 'Tool batteries, laptop and phones charging in the truck', [
    [4, 'tool-battery-charger'],
    'laptop',
    [2, 'phone-charger'],
  ]),
  plan(
    'car-valeting',
    'Pressure washer and wet-and-dry vacuum in turns',
    ['pressure-washer', 'wet-dry-vacuum'],
    {
      takeTurns: [['pressure-washer', 'wet-dry-vacuum']],
    },
  ),
  plan(
    'garden-round',
    'Hedge trimmer and leaf blower in turns, one battery charging',
    ['hedge-trimmer', 'leaf-blower', 'tool-battery-charger'],
    { takeTurns: [['hedge-trimmer', 'leaf-blower']] },
  ),
  plan('small-stage', 'A small stage: two speakers, mixing desk, laptop and stage lights', [
    [2, 'pa-speaker'],
    'mixing-desk',
    'laptop',
    [4, 'stage-light'],
  ]),
  plan('power-cut', 'A power cut: fridge-freezer, router, lamps and phones', [
    'fridge-freezer',
    'router',
    [4, 'led-lamp'],
    [4, 'phone-charger'],
  ]),
  plan('power-cut-in-winter', 'A power cut in winter: furnace fan, router and lamps', [
    'furnace-fan',
    'router',
    [4, 'led-lamp'],
  ]),
  plan('flooded-cellar', 'A power cut in the wet: sump pump, fridge and lamps', [
    'sump-pump',
    'fridge',
    [2, 'led-lamp'],
  ]),
]

/** A combination on few lines: an appliance, or how many of it. */
function plan(
  id: string,
  name: string,
  loads: readonly (string | readonly [number, string])[],
  { takeTurns }: Pick<Combination, 'takeTurns'> = {},
): Combination {
  return {
    id,
    name,
    loads: loads.map((load) =>
      typeof load === 'string' ? { appliance: load } : { appliance: load[1], quantity: load[0] },
    ),
    ...(takeTurns === undefined ? {} : { takeTurns }),
  }
}
