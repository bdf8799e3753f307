/** A plan as a shop's page would send it; the home page's curl and the API document show it. */
export const sizingRequestExample = {
  loads: [
    {
      id: 'microwave',
      appliance: 'microwave-oven',
      rating: { basis: 'cooking-watts', watts: 700 },
      minutesPerDay: 10,
    },
    { id: 'laptop', appliance: 'laptop', quantity: 1 },
    { id: 'lamps', appliance: 'led-lamp', quantity: 4, rating: { basis: 'label-text', text: '230 V~ 9 W' } },
  ],
  takeTurns: [['microwave', 'laptop']],
  supply: {
    nominalV: 12,
    battery: { chemistry: 'agm', capacityAh: 120 },
    connection: { kind: 'battery-terminals' },
    oneWayLengthM: 1.5,
  },
  detail: 'brief',
} as const

/** The same plan, asked of one unit. */
export const fitRequestExample = { ...sizingRequestExample, sku: 'KC-ST12-1880' } as const

/** How long a microwave runs on a battery. */
export const runtimeRequestExample = {
  power: { basis: 'mains', watts: 1200 },
  sku: 'KC-ST12-2350',
  supply: { nominalV: 12, battery: { chemistry: 'agm', capacityAh: 120 }, oneWayLengthM: 1.5 },
} as const
