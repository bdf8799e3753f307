import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readPrintedNumber } from '../../core/loads/label/numbers.ts'
import { tokenizeLabel } from '../../core/loads/label/tokens.ts'
import { motorInputFor } from '../../core/loads/motors.ts'
import {
  LABEL_BASES,
  LABEL_NOTES,
  LABEL_QUANTITIES,
  LABEL_REFUSALS,
  LABEL_ROLES,
  type LabelBasis,
  type LabelNoteCode,
  type LabelPower,
  type LabelRefusal,
  type LabelRefusalCode,
  readLabel,
} from '../../core/loads/read-label.ts'

const GB = { mainsV: 230 }
const US = { mainsV: 120 }
const GB_MICROWAVE = { mainsV: 230, ratedByCookingPower: true }
const US_MICROWAVE = { mainsV: 120, ratedByCookingPower: true }

function power(text: string, context: Parameters<typeof readLabel>[1] = GB): LabelPower {
  const reading = readLabel(text, context)
  if (!reading.ok) throw new Error(`${JSON.stringify(text)} was refused: ${reading.refusal}`)
  return reading
}

function refusal(text: string, context: Parameters<typeof readLabel>[1] = GB): LabelRefusal {
  const reading = readLabel(text, context)
  if (reading.ok) throw new Error(`${JSON.stringify(text)} was read as ${reading.inputW} W`)
  return reading
}

function noteCodes(text: string, context: Parameters<typeof readLabel>[1] = GB): readonly LabelNoteCode[] {
  return power(text, context).notes.map(({ code }) => code)
}

/** Plates as printed, and what a person reads on them: watts, and on what they rest. */
const GB_PLATES: readonly (readonly [string, number, LabelBasis])[] = [
  // plain watts
  ['220-240V~ 50/60Hz 850W', 850, 'watts'],
  ['220-240V ~ 50-60 Hz 2000-2400 W', 2400, 'watts'],
  ['220–240 V~, 50/60 Hz, 1850–2200 W', 2200, 'watts'],
  ['AC 220-240V, 50Hz, 80W, IP20, Class I', 80, 'watts'],
  ['230 V - 50 Hz - 2000 W', 2000, 'watts'],
  ['220~240V 50Hz 1000W', 1000, 'watts'],
  ['220V~240V 50Hz 1000W', 1000, 'watts'],
  ['220 a 240 V 900 W', 900, 'watts'],
  ['220 à 240 V 900 W', 900, 'watts'],
  ['220 bis 240 V 900 W', 900, 'watts'],
  ['1~ 230V 50Hz 900W', 900, 'watts'],
  ['230V50Hz850W', 850, 'watts'],
  ['AC230V 50Hz 60W', 60, 'watts'],
  ['1.5kW~230V', 1500, 'watts'],
  ['P: 1,2 kW', 1200, 'watts'],
  ['0,75 kW', 750, 'watts'],
  ['300 W max', 300, 'watts'],
  ['MAX. 40W', 40, 'watts'],
  ['7.5W', 7.5, 'watts'],
  ['800 watt', 800, 'watts'],
  ['1000-W', 1000, 'watts'],
  ['1500-watt heater', 1500, 'watts'],
  ['850 W/h', 850, 'watts'],
  ['W: 850', 850, 'watts'],
  ['Power (W): 850', 850, 'watts'],
  ['rated power 1500 W', 1500, 'watts'],
  ['Nennleistung 2000W', 2000, 'watts'],
  ['Puissance: 2200 W', 2200, 'watts'],
  ['Potencia 750 W', 750, 'watts'],
  ['Leistungsaufnahme 1,8 kW', 1800, 'watts'],
  ['Puissance absorbée 90 W', 90, 'watts'],
  ['Consumo: 60 W', 60, 'watts'],
  ['230V 850mW', 0.85, 'watts'],
  ['2 x 1000 W', 2000, 'watts'],
  ['10W x 4', 40, 'watts'],
  ['10W x 120 mm', 10, 'watts'],
  ['750/1500W', 1500, 'watts'],
  ['127/220V 60Hz 1000W', 1000, 'watts'],
  // separators and spaces in numbers
  ['1,200 W', 1200, 'watts'],
  ['1.200 W', 1200, 'watts'],
  ['1.200,5 W', 1200.5, 'watts'],
  ['1,200.5 W', 1200.5, 'watts'],
  ['1 200 W', 1200, 'watts'],
  ['1\u202f200 W', 1200, 'watts'],
  ['1 000 W', 1000, 'watts'],
  ['PH 1 230 V 900 W', 900, 'watts'],
  ["1'200 W", 1200, 'watts'],
  ['1.200 kW', 1200, 'watts'],
  // letters that a scanner takes for digits
  ['23OV~ 5O/6OHz 1O5OW', 1050, 'watts'],
  ['I200W', 1200, 'watts'],
  ['l200 W', 1200, 'watts'],
  ['1l50W', 1150, 'watts'],
  ['O.75kW', 750, 'watts'],
  // codes, dates and other figures that are no power
  ['IP44 230V~ 50Hz 60W Class II', 60, 'watts'],
  ['Model: KX-1200W 230V 50Hz 850W', 850, 'watts'],
  ['AB1200W 230V 50Hz 850W', 850, 'watts'],
  ['Typ WK2200W\n230V 50Hz 1800 W', 1800, 'watts'],
  ['S/N 12345678W90 230V 40W', 40, 'watts'],
  ['05/2021 N° 123456 230V 25W', 25, 'watts'],
  ['2021W35 230V 25W', 25, 'watts'],
  ['T3.15AH250V 230V 45W', 45, 'watts'],
  ['230V 850W 10A fuse', 850, 'watts'],
  ['230V 850W Fuse: 10A', 850, 'watts'],
  ['230V 60W Standby power consumption: 0.5W', 60, 'watts'],
  ['Power consumption: 90W (max) / 0.5W (standby)', 90, 'watts'],
  ['300 x 200 x 150 mm 60W', 60, 'watts'],
  ['Noise 65 dB(A) 2021 230V 40W', 40, 'watts'],
  ['CAPACITY 1.7L 1850-2200W 220-240V~', 2200, 'watts'],
  ['Cooling fan 35 W 230 V', 35, 'watts'],
  ['230V~ 50Hz 45W, battery 18V 2Ah', 45, 'watts'],
  // watts beside amperes
  ['230V 50Hz 3.7A 850W', 850, 'watts'],
  ['INPUT 100-240V 1.5A 65W', 65, 'watts'],
  // both sides of a device
  ['INPUT: 1150W OUTPUT: 700W', 1150, 'watts'],
  ['OUTPUT\n700W\nINPUT\n1150W', 1150, 'watts'],
  ['1150 W input, 700 W output', 1150, 'watts'],
  ['230V 50Hz 1150W (input) 700W (output)', 1150, 'watts'],
  ['ENTRÉE 230 V 1150 W SORTIE 700 W', 1150, 'watts'],
  ['ENTRE\u0301E 230 V 1150 W SORTIE 700 W', 1150, 'watts'],
  ['ENTRADA: 230V 1200W SALIDA: 800W', 1200, 'watts'],
  ['Aufnahmeleistung: 750 W Abgabeleistung: 400 W', 750, 'watts'],
  ['INPUT 220-240V~ 50/60Hz 120W OUTPUT 18V⎓ 4A', 120, 'watts'],
  ['INPUT 230 V ~ / 50 Hz / 1,5 kW / OUTPUT 12 V =', 1500, 'watts'],
  ['P1 1.1kW P2 0.75kW', 1100, 'watts'],
  ['P2: 550W P1: 900W', 900, 'watts'],
  ['P₁ 800W', 800, 'watts'],
  ['Pin: 1200W Pout: 1500W', 1200, 'watts'],
  ['P in 1200 W P out 1500 W', 1200, 'watts'],
  ['Puissance nominale 1,2 kW Puissance utile 900 W', 1200, 'watts'],
  ['2-pin plug 230 V 60 W', 60, 'watts'],
  ['COOLING CAPACITY 3500W POWER INPUT 1010W', 1010, 'watts'],
  // volts and amperes
  ['230V 5A', 1150, 'volts-amps'],
  ['4 A 230 V', 920, 'volts-amps'],
  ['4 a 230 v', 920, 'volts-amps'],
  ['230 Volt 5 Ampere', 1150, 'volts-amps'],
  ['U: 230V I: 4.5A', 1035, 'volts-amps'],
  ['Voltage (V): 230 Current (A): 4', 920, 'volts-amps'],
  ['500 mA 230V', 115, 'volts-amps'],
  ['220-240V~ 50Hz 1.8A', 414, 'volts-amps'],
  ['230V 4,2A cos phi 0,8', 230 * 4.2 * 0.8, 'volts-amps'],
  ['230V 5A cosφ 0.85', 977.5, 'volts-amps'],
  ['230V 5A PF 0.9', 1035, 'volts-amps'],
  ['230V 5A Leistungsfaktor 0,9', 1035, 'volts-amps'],
  ['INPUT: AC 100-240V 50/60Hz 1.8-0.9A', 216, 'volts-amps'],
  ['EINGANG: 230V 50Hz 0,8A AUSGANG: 19V 4,74A', 184, 'volts-amps'],
  ['0.37kW 1/2HP 230V 3.2A', 736, 'volts-amps'],
  ['R600a 55g 220-240V 0.8A lamp 15W', 184, 'volts-amps'],
  ['60VA', 60, 'volt-amperes'],
  ['60 V.A', 60, 'volt-amperes'],
  ['2.2kVA', 2200, 'volt-amperes'],
  ['PRI: 230V 50Hz 60VA SEC: 12V 5A', 60, 'volt-amperes'],
]

const US_PLATES: readonly (readonly [string, number, LabelBasis])[] = [
  ['120V~ 60Hz 12A', 1440, 'volts-amps'],
  ['120 VAC 60 Hz 5 AMPS', 600, 'volts-amps'],
  ['VOLTS 115 AMPS 9.8 HZ 60 HP 1/2', 1127, 'volts-amps'],
  ['VOLTS 115/230 AMPS 9.8/4.9 HP 1/2 HZ 60 PH 1 RPM 1725', 1127, 'volts-amps'],
  ['115V 60Hz RLA 8.0 LRA 45.0', 920, 'volts-amps'],
  ['5000 BTU 115V 4.3A', 494.5, 'volts-amps'],
  ['120V 60Hz 13.5A 1560W', 1560, 'watts'],
  ['120V 60Hz 1,500 WATTS', 1500, 'watts'],
  ['100-127 V 1000 W', 1000, 'watts'],
]

const MICROWAVE_PLATES: readonly (readonly [string, number, LabelBasis])[] = [
  ['INPUT: 1150W OUTPUT: 700W', 1150, 'watts'],
  ['Mikrowellenleistung 800 W Nennaufnahme 1270 W', 1270, 'watts'],
  ['MICROWAVE OVEN\n230V~ 50Hz\nINPUT POWER: 1270W\nOUTPUT POWER: 800W 2450MHz', 1270, 'watts'],
  ['RATED INPUT POWER (MICROWAVE): 1200 W\nRATED OUTPUT POWER (MICROWAVE): 700 W', 1200, 'watts'],
  ['OUTPUT 700W 230V~ 50Hz 1150W', 1150, 'watts'],
  ['230V 50Hz 1150W', 1150, 'watts'],
  ['700W 1150W', 1150, 'watts'],
  ['Puissance restituée: 900 W', 1800, 'cooking-watts'],
  ['Potencia de salida 700W', 1400, 'cooking-watts'],
  ['800 W Output (IEC 705)', 1600, 'cooking-watts'],
  ['230V 50Hz 5.5A 800W output', 1265, 'volts-amps'],
  ['800W', 1600, 'cooking-watts'],
  ['230V 50Hz 5.2A 800W', 1196, 'volts-amps'],
  ['Microwave 700W', 1400, 'cooking-watts'],
  ['MICROWAVE OUTPUT 800W LAMP 25W', 1600, 'cooking-watts'],
  ['Grill 1000W Microwave 800W', 1600, 'cooking-watts'],
  ['INPUT 1200W Grill 1000W Microwave 700W', 1200, 'watts'],
]

describe('readLabel', () => {
  it.each(GB_PLATES)('reads %j on 230 V as %d W by %s', (text, watts, basis) => {
    const reading = power(text)
    expect(reading.inputW).toBeCloseTo(watts, 6)
    expect(reading.basis).toBe(basis)
  })

  it.each(US_PLATES)('reads %j on 120 V as %d W by %s', (text, watts, basis) => {
    const reading = power(text, US)
    expect(reading.inputW).toBeCloseTo(watts, 6)
    expect(reading.basis).toBe(basis)
  })

  it.each(MICROWAVE_PLATES)('reads a microwave oven with %j as %d W by %s', (text, watts, basis) => {
    const reading = power(text, GB_MICROWAVE)
    expect(reading.inputW).toBeCloseTo(watts, 6)
    expect(reading.basis).toBe(basis)
  })

  it('takes the mains side of an oven on 120 V for no output', () => {
    expect(power('120V~ 60Hz 12.5A 1000W output', US_MICROWAVE).inputW).toBeCloseTo(1500, 6)
  })

  it('knows a microwave oven by its name or frequency, whatever the caller says', () => {
    expect(power('Microwave oven 800W 230V 50Hz').basis).toBe('cooking-watts')
    expect(power('230V 50Hz 2450 MHz OUTPUT 800W').inputW).toBe(1600)
  })

  it('takes unlabelled watts from 1050 W on for a microwave oven input, below for its cooking power', () => {
    expect(power('1050 W', GB_MICROWAVE)).toMatchObject({ inputW: 1050, basis: 'watts' })
    expect(power('1049 W', GB_MICROWAVE)).toMatchObject({ inputW: 2098, basis: 'cooking-watts' })
    expect(noteCodes('1049 W', GB_MICROWAVE)).toContain('cooking-power-assumed')
  })

  it('uses no stated input that is below the cooking power', () => {
    const reading = power('INPUT 600W OUTPUT 800W', GB_MICROWAVE)
    expect(reading.inputW).toBe(1600)
    expect(reading.notes.map(({ code }) => code)).toContain('input-below-output')
  })

  it.each([
    ['1/2 HP', 0.5 * 745.6999],
    ['1 1/2 HP', 1.5 * 745.6999],
    ['1-1/2 HP', 1.5 * 745.6999],
    ['½ HP', 0.5 * 745.6999],
    ['1½ HP', 1.5 * 745.6999],
    ['0.75 hp', 0.75 * 745.6999],
    ['1,5 CV', 1.5 * 735.4988],
    ['2 PS', 2 * 735.4988],
    ['P2 0.75 kW', 750],
    ['P2(kW) 0,55', 550],
    ['Wellenleistung 550 W', 550],
    ['0.37kW 1/2HP', 0.5 * 745.6999],
  ])('takes %j for %d W at the shaft of a motor', (text, shaftW) => {
    const motor = motorInputFor({ shaftW, mainsV: 230 })
    const reading = power(text)
    expect(reading.inputW).toBeCloseTo(motor.inputW, 3)
    expect(reading.apparentVA).toBeCloseTo(motor.apparentVA, 3)
    expect(reading.inputW).toBeGreaterThan(shaftW)
  })

  it('converts cooling capacity where no input is stated, cautiously for sizing', () => {
    const reading = power('12000 BTU/h')
    expect(reading).toMatchObject({ basis: 'btu', inputW: 1500 })
    expect(reading.typicalW).toBeCloseTo(12000 / 10.9, 6)
    expect(power('12,000 Btu').inputW).toBe(1500)
    expect(power('Cooling capacity 3517 W')).toMatchObject({ basis: 'cooling-watts' })
    expect(power('Cooling capacity 3516.85 W').inputW).toBeCloseTo(1500, 1)
  })

  it('sizes one current on a wide voltage range at the mains voltage and expects the lowest', () => {
    const reading = power('AC 100-240 V 1.8 A')
    expect(reading.inputW).toBeCloseTo(414, 6)
    expect(reading.typicalW).toBeCloseTo(180, 6)
    expect(reading.notes.map(({ code }) => code)).toContain('wide-range-current')
    expect(power('AC 100-240 V 1.8 A', US).inputW).toBeCloseTo(216, 6)
  })

  it('gives the power factor that watts and volt-amperes of one plate come to', () => {
    const reading = power('230V 5A 920W')
    expect(reading.apparentVA).toBeCloseTo(1150, 6)
    expect(reading.powerFactor).toBeCloseTo(0.8, 6)
    expect(power('230V 100VA 60W').powerFactor).toBeCloseTo(0.6, 6)
  })

  it('believes watts above the volt-amperes, and says that it left these out', () => {
    const reading = power('230V 1A 500W')
    expect(reading.inputW).toBe(500)
    expect(reading.powerFactor).toBeUndefined()
    expect(reading.notes.map(({ code }) => code)).toContain('volt-amperes-not-used')
  })

  it('accepts watts up to 5 % above the volt-amperes, as rounding makes them', () => {
    expect(power('230V 1A 241W').powerFactor).toBe(1)
    expect(power('230V 1A 242W').powerFactor).toBeUndefined()
  })

  it.each<readonly [string, LabelNoteCode]>([
    ['1850-2200 W', 'range-high-used'],
    ['1.200 W', 'separator-read-as-thousands'],
    ['1 200 W', 'separator-read-as-thousands'],
    ['1O5OW', 'letters-read-as-digits'],
    ['2 x 1000 W', 'count-multiplied'],
    ['5 A', 'mains-voltage-assumed'],
    ['230V 5A', 'power-factor-assumed-one'],
    ['230V 0.8A lamp 15W', 'watts-not-used'],
    ['lamp 25W heater 800W', 'largest-of-several'],
    ['1/2 HP', 'shaft-power-converted'],
    ['0.37kW 1/2HP', 'shaft-power-assumed'],
    ['9000 BTU', 'cooling-capacity-converted'],
  ])('says of %j what it assumed: %s', (text, code) => {
    expect(noteCodes(text)).toContain(code)
  })

  it.each(['220-240V~ 50/60Hz 850W', 'P: 1,2 kW', 'INPUT: 1150W OUTPUT: 700W'])(
    'assumes nothing with %j',
    (text) => {
      expect(noteCodes(text)).toEqual([])
    },
  )

  it.each<readonly [string, LabelRefusalCode]>([
    ['', 'nothing-read'],
    ['hello', 'nothing-read'],
    ['IPX4', 'nothing-read'],
    ['KX-1200W', 'nothing-read'],
    ['850', 'no-power-found'],
    ['Made in 2021', 'no-power-found'],
    ['2021-05-12', 'no-power-found'],
    ['230V 50Hz', 'no-power-found'],
    ['3kWh 230V', 'no-power-found'],
    ['Standby 0.5W', 'no-power-found'],
    ['0 W', 'no-power-found'],
    ['OUTPUT 20V 5A', 'output-only'],
    ['OUTPUT: 65W', 'output-only'],
    ['Abgabeleistung: 400 W', 'output-only'],
    ['AUSGANG 12V 5A', 'output-only'],
    ['INPUT 220-240V 50Hz OUTPUT 12V 5A', 'output-only'],
    ['800 W Output', 'output-only'],
    ['12V DC 5A', 'direct-current-only'],
    ['DC 12V 60W', 'direct-current-only'],
    ['24V ⎓ 60W', 'direct-current-only'],
    ['24 VDC 60W', 'direct-current-only'],
    ['400V 3~ 50Hz 5.5kW', 'three-phase'],
    ['3N~ 400V 16A', 'three-phase'],
    ['230V PH 3 5A', 'three-phase'],
    ['120V~ 60Hz 1500W', 'voltage-mismatch'],
    ['19V 3.42A', 'voltage-mismatch'],
    ['1.2.3,4 W', 'ambiguous'],
    ['850MW', 'out-of-bounds'],
    ['101 kW', 'out-of-bounds'],
    ['99 mW', 'out-of-bounds'],
    ['200000 HP', 'out-of-bounds'],
  ])('refuses %j: %s', (text, code) => {
    expect(refusal(text).refusal).toBe(code)
  })

  it('reads 0.1 W and 100 kW, the bounds', () => {
    expect(power('100 mW').inputW).toBeCloseTo(0.1, 9)
    expect(power('100 kW').inputW).toBe(100_000)
  })

  it('takes a rated voltage within 16 % of the mains, either way', () => {
    expect(power('199 V 60 W').inputW).toBe(60)
    expect(power('273 V 60 W').inputW).toBe(60)
    expect(refusal('198 V 60 W').refusal).toBe('voltage-mismatch')
    expect(refusal('274 V 60 W').refusal).toBe('voltage-mismatch')
  })

  it('takes unlabelled watts within 5 % of output volts x amperes for that output', () => {
    const charger = 'INPUT 100-240V 1.8A OUTPUT 20V 5A RATED POWER'
    expect(power(`${charger} 105W`).basis).toBe('volts-amps')
    expect(power(`${charger} 95W`).basis).toBe('volts-amps')
    expect(power(`${charger} 106W`)).toMatchObject({ basis: 'watts', inputW: 106 })
  })

  it('tells what it saw when it refuses', () => {
    expect(refusal('OUTPUT 20V 5A').seen).toEqual([
      { quantity: 'voltage', values: [20], unit: 'V', role: 'output', text: '20V' },
      { quantity: 'current', values: [5], unit: 'A', role: 'output', text: '5A' },
    ])
    expect(refusal('about 850').seen).toEqual([
      { quantity: 'number', values: [850], unit: '', role: 'unknown', text: '850' },
    ])
    expect(refusal('120V~ 60Hz').seen.map(({ text }) => text)).toEqual(['120V', '60Hz'])
  })

  it('tells what it saw when it reads', () => {
    expect(power('220-240V~ 50/60Hz 850W').seen).toEqual([
      { quantity: 'voltage', values: [220, 240], unit: 'V', role: 'unknown', text: '220-240V' },
      { quantity: 'frequency', values: [50, 60], unit: 'Hz', role: 'unknown', text: '50/60Hz' },
      { quantity: 'power', values: [850], unit: 'W', role: 'unknown', text: '850W' },
    ])
  })

  it.each([100, 240])('takes a mains voltage of %d V, the bound', (mainsV) => {
    expect(readLabel('100-240V 60W', { mainsV }).ok).toBe(true)
  })

  it.each([99.9, 240.1, Number.NaN])('calls a mains voltage of %d V a fault of the caller', (mainsV) => {
    expect(() => readLabel('60W', { mainsV })).toThrow(expect.objectContaining({ code: 'out_of_range' }))
  })

  it('lists each code once', () => {
    for (const codes of [LABEL_BASES, LABEL_NOTES, LABEL_QUANTITIES, LABEL_REFUSALS, LABEL_ROLES]) {
      expect(new Set<string>(codes).size).toBe(codes.length)
    }
  })
})

/** Pieces of plates, to be put together in any order. */
const PIECE = fc.oneof(
  fc.constantFrom(
    ...['INPUT', 'OUTPUT', 'P1', 'P2', 'microwave', 'cos phi', 'PF', 'AC', 'DC', 'Class I', 'fuse', 'RLA'],
    ...['W', 'kW', 'VA', 'V', 'A', 'mA', 'Hz', 'HP', 'BTU/h', 'mW', 'MW', 'S/N', 'cooling capacity', 'x'],
    ...[':', '-', '/', '~', '(', ')', '.', ',', '\n', ' ', '⎓', '=', '½', 'O', 'l', 'I', "'", '1,2.3,4'],
  ),
  fc.integer({ min: 0, max: 3000 }).map(String),
  fc.double({ min: 0, max: 500, noNaN: true }).map((value) => value.toFixed(2)),
)
const NEAR_LABEL = fc
  .array(fc.tuple(PIECE, fc.constantFrom('', ' ')), { maxLength: 60 })
  .map((pieces) => pieces.map(([piece, space]) => piece + space).join(''))
const ANY_TEXT = fc.oneof(
  fc.string({ maxLength: 400 }),
  fc.string({ unit: 'binary', maxLength: 400 }),
  NEAR_LABEL,
)

describe('readLabel with any text', () => {
  it('gives finite positive powers within bounds, or a refusal of the list', () => {
    fc.assert(
      fc.property(ANY_TEXT, fc.constantFrom(100, 120, 230, 240), fc.boolean(), (text, mainsV, cooks) => {
        const reading = readLabel(text, { mainsV, ratedByCookingPower: cooks })
        for (const figure of reading.seen) {
          expect(LABEL_QUANTITIES).toContain(figure.quantity)
          expect(LABEL_ROLES).toContain(figure.role)
          for (const value of figure.values) expect(Number.isFinite(value)).toBe(true)
        }
        if (!reading.ok) {
          expect(LABEL_REFUSALS).toContain(reading.refusal)
          return
        }
        expect(LABEL_BASES).toContain(reading.basis)
        expect(reading.inputW).toBeGreaterThanOrEqual(0.1)
        expect(reading.inputW).toBeLessThanOrEqual(100_000)
        expect(reading.typicalW).toBeGreaterThan(0)
        expect(reading.typicalW).toBeLessThanOrEqual(reading.inputW)
        expect(reading.apparentVA).toBeGreaterThanOrEqual(reading.inputW * (1 - 1e-12))
        expect(Number.isFinite(reading.apparentVA)).toBe(true)
        for (const note of reading.notes) {
          expect(LABEL_NOTES).toContain(note.code)
          for (const value of Object.values(note.values)) expect(value).not.toBeNaN()
        }
      }),
      { numRuns: 3000 },
    )
  })

  it('reads back the watts of a well-made plate', () => {
    const watts = fc.integer({ min: 1, max: 99_999 })
    fc.assert(
      fc.property(watts, fc.constantFrom(' ', '  ', '\n', ', '), (value, gap) => {
        expect(power(`230 V${gap}50 Hz${gap}${value} W`).inputW).toBe(value)
      }),
    )
  })

  it('reads back decimals with either mark, and volts times amperes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), fc.constantFrom('.', ','), (tenths, mark) => {
        const printed = `${Math.floor(tenths / 10)}${mark}${tenths % 10}`
        expect(power(`230 V ${printed} A`).inputW).toBeCloseTo((230 * tenths) / 10, 6)
        expect(power(`230 V ${printed} kW`).inputW).toBeCloseTo(100 * tenths, 6)
      }),
    )
  })

  it('never takes a power that is given out for one that is taken', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        fc.constantFrom('OUTPUT', 'Ausgang', 'SORTIE'),
        (value, word) => {
          expect(refusal(`${word}: ${value} W`).refusal).toBe('output-only')
        },
      ),
    )
  })
})

describe('tokenizeLabel', () => {
  it('looks at each character a bounded number of times, whatever the text', () => {
    fc.assert(
      fc.property(ANY_TEXT, (text) => {
        const { tokens, steps } = tokenizeLabel(text)
        expect(tokens.length).toBeLessThanOrEqual(text.length)
        expect(steps).toBeLessThanOrEqual(STEPS_PER_CHARACTER * text.length)
      }),
      { numRuns: 2000 },
    )
  })

  it.each([
    '1',
    'l',
    'IO',
    'I1',
    'a',
    'no',
    'no ',
    'no.',
    's/n',
    '1.',
    '1,2',
    '1W',
    '1/',
    '1-',
    'W1',
    '( ',
    'ab-1',
    'P1',
    'no \u00a0\u00a0',
    '230V~ 50Hz 850W ',
  ])('stays linear over 10 000 characters of %j', (piece) => {
    const text = piece.repeat(Math.ceil(10_000 / piece.length)).slice(0, 10_000)
    expect(tokenizeLabel(text).steps).toBeLessThanOrEqual(STEPS_PER_CHARACTER * text.length)
    expect(typeof readLabel(text, GB).ok).toBe('boolean')
  })

  it('covers the text in order, each token after the one before', () => {
    fc.assert(
      fc.property(ANY_TEXT, (text) => {
        let end = 0
        for (const token of tokenizeLabel(text).tokens) {
          expect(token.start).toBeGreaterThanOrEqual(end)
          expect(token.end).toBeGreaterThan(token.start)
          end = token.end
        }
        expect(end).toBeLessThanOrEqual(text.length)
      }),
    )
  })
})

/** After a word such as "No." the next 40 characters are searched for digits: 40 / 3 and a few at most. */
const STEPS_PER_CHARACTER = 20

describe('readPrintedNumber', () => {
  it.each([
    ['850', 850, undefined],
    ['4,2', 4.2, undefined],
    ['4.25', 4.25, undefined],
    ['1,200', 1.2, 1200],
    ['1.200', 1.2, 1200],
    ['0.850', 0.85, undefined],
    ['1234,567', 1234.567, undefined],
    ['1,200.5', 1200.5, undefined],
    ['1.200,5', 1200.5, undefined],
    ['1,234,567', 1234567, undefined],
    ["1'200", 1200, undefined],
    ['1,2.3,4', Number.NaN, undefined],
    ['1.2.3', Number.NaN, undefined],
  ])('reads %s as %d, or as thousands %d', (printed, decimal, thousands) => {
    const number = readPrintedNumber(printed)
    expect(number.decimal).toBe(decimal)
    expect(number.thousands).toBe(thousands)
  })
})
