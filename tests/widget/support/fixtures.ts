import type { SizingAnswer } from '../../../shared/contract/answers.ts'

/** Charge left of a battery that ends at its lowest allowed charge: an invented but plausible curve. */
const CURVE = Array.from({ length: 13 }, (_, index) => ({
  hours: (index * 4.2) / 12,
  socFraction: 1 - index * 0.0417 - (index / 12) ** 2 * 0.02,
  terminalV: 12.6 - index * 0.09,
  currentA: 24 + index * 0.2,
}))

/**
 * Fills in what an answer may hold beside what the service sent: kit, what-ifs, label limits, run time, so that
 * every part of the answer screen can be seen whatever the range holds.
 *
 * @param answer - An answer of the service
 * @returns The same with every part present
 */
export function filledAnswer(answer: SizingAnswer): SizingAnswer {
  const [first, second] = answer.demand.loads
  const unit = answer.recommended
  if (first === undefined || second === undefined || unit === null) return answer
  return {
    ...answer,
    whatIfs: [
      {
        kind: 'take-turns',
        loadIds: [first.id, second.id],
        outcome: 'fits',
        sku: 'KC-ST12-1880',
        continuousW: 1880,
        price: '484.95',
        priceDifference: '-112.55',
        currency: 'GBP',
        change: { takeTurns: [[first.id, second.id]] },
        message: 'If the microwave oven and the laptop take turns, the Staithe 1880 does, £112.55 less.',
        values: {},
      },
      {
        kind: 'leave-out',
        loadIds: [first.id],
        outcome: 'fits',
        sku: 'KC-ST12-295',
        continuousW: 295,
        price: '104.50',
        priceDifference: '-493.00',
        currency: 'GBP',
        change: { without: first.id },
        message: 'Without the microwave oven the Staithe 295 does, £493.00 less.',
        values: {},
      },
      {
        kind: 'two-units',
        loadIds: [],
        outcome: 'fits',
        price: '391.00',
        currency: 'GBP',
        change: {
          split: [
            { loadIds: [first.id], sku: 'KC-ST12-295' },
            { loadIds: [second.id], sku: 'KC-ST12-295' },
          ],
        },
        message: 'Two smaller units side by side would do, each with its own cable.',
        values: {},
      },
    ],
    labelLimits: [
      {
        loadId: first.id,
        limitW: 1620,
        cookingW: 810,
        message: 'Microwave oven: up to 1,620 W on its plate, roughly 800 W of cooking power.',
      },
    ],
    circuit: {
      worstCaseA: 237.4,
      oneWayLengthM: 2,
      conductor: {
        areaMm2: 95,
        label: '95 mm²',
        parallelPairs: 1,
        insulationC: 75,
        ampacityA: 328,
        dropV: 0.23,
        dropFraction: 0.019,
      },
      governedBy: 'ampacity',
      fuse: {
        ratingA: 300,
        style: 'class-t',
        minA: 297,
        maxA: 328,
        breakingCapacityA: 10_000,
        voltageV: 32,
      },
      connection: { kind: 'battery-terminals' },
      findings: [],
    },
    runtime: {
      hours: 4.2,
      hoursLow: 3.6,
      hoursHigh: 4.7,
      limitedBy: 'state-of-charge',
      usableWh: 1260,
      averageA: 25,
      curve: CURVE,
      day: { energyWh: 980, fits: true, remainingSocFraction: 0.62 },
      recharge: {
        energyWh: 1150,
        chargeAh: 92,
        solarW: 320,
        sunHours: 4,
        chargerA: 30,
        chargerHours: 4,
        absorptionHours: 1,
      },
      findings: [],
    },
    kit: [
      line(
        'inverter',
        unit.sku,
        unit.name,
        1,
        '2350 W, pure sine, 12 V',
        'Carries your things with 20 % free.',
        unit.price,
      ),
      line('cable', 'KC-CB-95', 'Battery cable 95 mm², 2 m pair', 1, '95 mm² copper', 'For 237 A.', '84.50'),
      line('fuse', 'KC-FU-300', 'Fuse 300 A with holder', 1, '300 A class T', 'Protects the cable.', '46.95'),
      line(
        'battery',
        'KC-BA-200',
        'Leisure battery 200 Ah AGM',
        2,
        '12 V 200 Ah',
        'Lasts your day.',
        '279.00',
      ),
      {
        role: 'connector',
        quantity: 2,
        specification: 'Crimp lug 95 mm², 10 mm hole',
        why: 'Joins cable and terminal.',
        reason: 'none-in-range',
        values: {},
        state: 'not-in-range',
      },
    ],
    kitTotal: { amount: '1286.95', currency: 'GBP' },
  }
}

function line(
  role: SizingAnswer['kit'][number]['role'],
  ...rest: [sku: string, name: string, quantity: number, specification: string, why: string, price: string]
): SizingAnswer['kit'][number] {
  const [sku, name, quantity, specification, why, price] = rest
  return {
    role,
    sku,
    name,
    quantity,
    specification,
    why,
    price,
    reason: 'smallest-that-fits',
    values: {},
    state: 'buy',
    url: `https://kingcup.example/p/${sku.toLowerCase()}`,
  }
}
