/** A small range as a shop would send it; the API document shows it. */
export const rangeDocumentExample = {
  shop: {
    id: 'kingcup',
    name: 'Kingcup Boatyard Stores',
    locale: 'en-GB',
    currency: 'GBP',
    mains: { nominalV: 230, frequencyHz: 50 },
    wireSizes: 'metric',
    allowedOrigins: ['https://kingcup.example'],
  },
  inverters: [
    {
      sku: 'X-IN-600',
      name: 'Pure sine inverter 600 W, 12 V',
      price: '149.00',
      inStock: true,
      continuousW: 600,
      surgeW: 1200,
      surgeS: 2,
      waveform: 'pure-sine',
      inputNominalV: 12,
      outputV: 230,
      outputHz: 50,
      outlets: 2,
      features: ['remote-switch'],
      connection: { kind: 'battery-terminals' },
    },
  ],
  batteries: [],
  cables: [
    { sku: 'X-CA-35', name: 'Cable pair 35 mm2', price: '39.50', inStock: true, areaMm2: 35, lengthM: 1.5 },
  ],
  fuses: [],
  connectors: [],
} as const
