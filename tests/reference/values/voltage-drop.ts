import { METRES_PER_FOOT } from '../../../core/units.ts'
import { ambientFactor } from '../../../core/wiring/ampacity.ts'
import { worstCaseCurrentA } from '../../../core/wiring/battery-current.ts'
import { wireResistanceOhmPerM } from '../../../core/wiring/conductor.ts'
import { fuseWindow } from '../../../core/wiring/fuse.ts'
import { resistiveDropV } from '../../../core/wiring/voltage-drop.ts'
import type { Topic } from './published.ts'

/**
 * Drop along a length that counts the way back already.
 *
 * @param currentA - Current [A]
 * @param loopFt - Length out and back [ft]
 * @param ohmPerFt - Resistance of the wire [ohm/ft]
 * @returns Drop [V]
 */
export function loopDropV(currentA: number, loopFt: number, ohmPerFt: number): number {
  return resistiveDropV({
    currentA,
    loopLengthM: loopFt * METRES_PER_FOOT,
    resistanceOhmPerM: ohmPerFt / METRES_PER_FOOT,
  })
}

/**
 * Drop along a one-way length: the current comes back the same way.
 *
 * @param currentA - Current [A]
 * @param oneWayFt - Length of the route [ft]
 * @param ohmPerFt - Resistance of the wire [ohm/ft]
 * @returns Drop [V]
 */
export function oneWayDropV(currentA: number, oneWayFt: number, ohmPerFt: number): number {
  return loopDropV(currentA, 2 * oneWayFt, ohmPerFt)
}

/** Drop over so many ohms. */
const overOhmV = (currentA: number, resistanceOhmPerM: number, loopLengthM = 1) =>
  resistiveDropV({ currentA, loopLengthM, resistanceOhmPerM })

const circleMm2 = (diameterMm: number) => (Math.PI / 4) * diameterMm ** 2

/** Current of the article's load: 6 kW at 230 V and the power factor 0.7 that it takes. */
const ARTICLE_A = 6000 / 230 / 0.7

const starterV = (leadOhm: number, currentA: number) =>
  12 - overOhmV(currentA, 0.01) - overOhmV(currentA, leadOhm)

const zeroGaugeLossW = () =>
  100 *
  overOhmV(100, wireResistanceOhmPerM({ resistivityOhmMm2PerM: 0.0172, areaMm2: circleMm2(9.266) }), 1000)

const longLineOhm = () => 60_000 * wireResistanceOhmPerM({ resistivityOhmMm2PerM: 0.0168, areaMm2: 42.4 })

const inverterA = () => worstCaseCurrentA({ continuousW: 2500, efficiencyFullFraction: 0.85, lowestV: 22 })

const leastA = (currentA: number) =>
  fuseWindow({ currentA, conductorAmpacityA: 0, nominalV: 24, chemistry: 'flooded' }).minA

const at70C = () => ambientFactor({ insulationC: 90, ambientC: 70 })

const PRINT = 'rounding of the print'

export const VOLTAGE_DROP: Topic = {
  id: 'voltage-drop',
  title: 'Voltage drop and battery current',
  about:
    'Worked examples, some of which count the length of the loop and some the one-way route: a factor of two in the wrong place shows at once.',
  tables: [
    {
      document: 'faa-ac-43-13',
      table: 'Tables 11-7 and 11-8',
      quantity: 'drop at 20 A along the printed run, way back counted',
      unit: 'V',
      how: 'computed',
      tolerance: { absolute: 0.005 },
      because: PRINT,
      rows: [
        ['11-7, 1 V, 6 AWG, 107 ft', 0.942, () => loopDropV(20, 107, 0.00044)],
        ['11-7, 0.5 V, 4 AWG, 90 ft', 0.504, () => loopDropV(20, 90, 0.00028)],
        ['11-7, 7 V, 14 AWG, 100 ft', 6.12, () => loopDropV(20, 100, 0.00306)],
        ['11-8, 1 V, 10 AWG, 39 ft', 0.98, () => loopDropV(20, 39, 0.00126)],
        ['11-8, 7 V, 10 AWG, 273 ft', 6.88, () => loopDropV(20, 273, 0.00126)],
      ],
    },
    {
      document: 'training-low-voltage',
      table: 'page 135, 16 AWG by NEC Chapter 9 Table 8',
      quantity: 'drop at 4 A along 100 ft one way',
      unit: 'V',
      how: 'computed',
      tolerance: { absolute: 0.05 },
      because: PRINT,
      rows: [['24 V circuit', 4, () => oneWayDropV(4, 100, 0.00499)]],
    },
    {
      document: 'training-low-voltage',
      table: 'page 135, 16 AWG by NEC Chapter 9 Table 8',
      quantity: 'the same in per cent of 24 V',
      unit: '%',
      how: 'computed',
      tolerance: { absolute: 0.1 },
      because: 'the page reckons from the rounded 4.0 V',
      rows: [['24 V circuit', 16.7, () => (oneWayDropV(4, 100, 0.00499) / 24) * 100]],
    },
    {
      document: 'trades-mathematics',
      table: 'wire sizing, 12 AWG by NEC Chapter 9 Table 8',
      quantity: 'drop at 20 A along 100 ft one way',
      unit: 'V',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed whole',
      rows: [['240 V circuit', 7.92, () => oneWayDropV(20, 100, 0.00198)]],
    },
    {
      document: 'trades-mathematics',
      table: 'wire sizing, 12 AWG by NEC Chapter 9 Table 8',
      quantity: 'the same in per cent of 240 V',
      unit: '%',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed whole',
      rows: [['240 V circuit', 3.3, () => (oneWayDropV(20, 100, 0.00198) / 240) * 100]],
    },
    {
      document: 'ecm-voltage-drop',
      table: 'example, three-phase, K = 12.9',
      quantity: 'area that 20 A along 200 ft needs for 14.4 V',
      unit: 'circular mil',
      how: 'computed',
      tolerance: { absolute: 0.5 },
      because: PRINT,
      rows: [['1.732 times the one-way length', 6206.3, () => loopDropV(20, 1.732 * 200, 12.9) / 14.4]],
    },
    {
      document: 'bs-7671-article',
      table: 'worked example, 6 kW at 230 V, 10 mm², 30 m',
      quantity: 'drop at 4.4 mV/A/m',
      unit: 'V',
      how: 'computed',
      tolerance: { absolute: 0.01 },
      because: PRINT,
      rows: [['37.3 A', 4.924, () => overOhmV(ARTICLE_A, 0.0044 / 2, 2 * 30)]],
    },
    {
      document: 'bs-7671-article',
      table: 'worked example, 40 A at 35 °C',
      quantity: 'current to look up in the table',
      unit: 'A',
      how: 'computed',
      tolerance: { absolute: 0.25 },
      because: 'the article rounds the factor to 0.94',
      rows: [['70 °C insulation', 42.55, () => 40 / ambientFactor({ insulationC: 70, ambientC: 35 })]],
    },
    {
      document: 'iec-60364-5-52',
      table: 'Annex G, resistivity 0.0225 Ω mm²/m',
      quantity: 'drop for each ampere and metre',
      unit: 'mV/A/m',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed whole',
      rows: [
        [
          '2.5 mm²',
          18,
          () => 1000 * overOhmV(1, wireResistanceOhmPerM({ resistivityOhmMm2PerM: 0.0225, areaMm2: 2.5 }), 2),
        ],
      ],
    },
    {
      document: 'openstax-college-physics',
      table: 'module m42346, 12-gauge wire, 2.053 mm',
      quantity: 'resistance of 20 m',
      unit: 'Ω',
      how: 'computed',
      tolerance: { absolute: 0.0005 },
      because: PRINT,
      rows: [
        [
          '20 m',
          0.104,
          () => 20 * wireResistanceOhmPerM({ resistivityOhmMm2PerM: 0.0172, areaMm2: circleMm2(2.053) }),
        ],
      ],
    },
    {
      document: 'openstax-college-physics',
      table: 'modules m42344 and m42714, extension cords at 5 A',
      quantity: 'drop',
      unit: 'V',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed whole',
      rows: [
        ['0.06 Ω', 0.3, () => overOhmV(5, 0.06)],
        ['0.3 Ω', 1.5, () => overOhmV(5, 0.3)],
      ],
    },
    {
      document: 'openstax-college-physics',
      table: 'modules m42344 and m42714, extension cords at 5 A',
      quantity: 'loss',
      unit: 'W',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed whole',
      rows: [
        ['0.06 Ω', 1.5, () => 5 * overOhmV(5, 0.06)],
        ['0.3 Ω', 7.5, () => 5 * overOhmV(5, 0.3)],
      ],
    },
    {
      document: 'openstax-college-physics',
      table: 'module m42357, starter motor behind 0.01 Ω',
      quantity: 'voltage left to the starter',
      unit: 'V',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed whole',
      rows: [
        ['clean leads, 200 A', 10, () => starterV(0, 200)],
        ['0.09 Ω of corrosion, 80 A', 4, () => starterV(0.09, 80)],
      ],
    },
    {
      document: 'openstax-college-physics',
      table: 'module m42357, starter motor behind 0.01 Ω',
      quantity: 'power left to the starter',
      unit: 'W',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed whole',
      rows: [
        ['clean leads, 200 A', 2000, () => 200 * starterV(0, 200)],
        ['0.09 Ω of corrosion, 80 A', 320, () => 80 * starterV(0.09, 80)],
      ],
    },
    {
      document: 'openstax-university-physics',
      table: 'module m58735, 60 km of 42.4 mm²',
      quantity: 'resistance',
      unit: 'Ω',
      how: 'computed',
      tolerance: { absolute: 0.005 },
      because: PRINT,
      rows: [['60 km', 23.77, longLineOhm]],
    },
    {
      document: 'openstax-university-physics',
      table: 'module m58735, 60 km of 42.4 mm²',
      quantity: 'loss at 100 A',
      unit: 'kW',
      how: 'computed',
      tolerance: { absolute: 0.05 },
      because: PRINT,
      rows: [['100 A', 237.7, () => (100 * overOhmV(100, longLineOhm())) / 1000]],
    },
    {
      document: 'sand96',
      table: 'battery to inverter, 2500 W, 24 V, 85 %, 22 V at the lowest',
      quantity: 'current',
      unit: 'A',
      how: 'computed',
      tolerance: { absolute: 0.5 },
      because: 'printed in whole amperes',
      rows: [
        ['at full power', 134, inverterA],
        ['times 1.25', 167, () => leastA(inverterA())],
        ['before derating to 45 °C by 0.71', 235, () => leastA(inverterA()) / 0.71],
      ],
    },
    {
      document: 'sand96',
      table: 'battery to inverter, 2500 W, 24 V, 85 %, 22 V at the lowest',
      quantity: 'factor of 60 °C insulation',
      unit: '1',
      how: 'computed',
      tolerance: { absolute: 0.005 },
      because: PRINT,
      rows: [['air of 45 °C', 0.71, () => ambientFactor({ insulationC: 60, ambientC: 45 })]],
    },
    {
      document: 'sand96',
      table: 'Appendix E, 90 °C copper in free air, 61 to 70 °C',
      quantity: 'current after derating',
      unit: 'A',
      how: 'computed',
      tolerance: { absolute: 0.25 },
      because: 'the example rounds the factor to 0.58',
      rows: [
        ['14 AWG, 35 A', 20.3, () => 35 * at70C()],
        ['12 AWG, 40 A', 23.2, () => 40 * at70C()],
        ['10 AWG, 55 A', 31.9, () => 55 * at70C()],
        ['8 AWG, 80 A', 46.4, () => 80 * at70C()],
      ],
    },
    {
      document: 'sand96',
      table: 'Appendix E, module of 3.25 A',
      quantity: 'current that the fuse is chosen for',
      unit: 'A',
      how: 'computed',
      tolerance: { absolute: 0.005 },
      because: PRINT,
      rows: [
        ['125 %', 4.06, () => leastA(3.25)],
        ['125 % of 125 %', 5.08, () => leastA(leastA(3.25))],
      ],
    },
  ],
  traps: [
    {
      document: 'faa-ac-43-13',
      table: 'Table 11-8, 0.5 V, 10 AWG',
      what: 'drop at 20 A along 19.5 ft',
      unit: 'V',
      printed: 0.366,
      why: 'every other row agrees with 0.00126 Ω/ft for this wire, which makes 0.491 V',
      compute: () => loopDropV(20, 19.5, 0.00126),
    },
    {
      document: 'openstax-college-physics',
      table: 'module m42714, 1 km of 00-gauge wire at 100 A',
      what: 'loss',
      unit: 'W',
      printed: 25.5,
      why: 'a hundred times too small: 100 A squared times 0.255 Ω are 2.55 kW',
      compute: zeroGaugeLossW,
    },
  ],
}
