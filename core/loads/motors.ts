import { requireInRange } from '../errors.ts'
import {
  CODE_LETTER_KVA_PER_HORSEPOWER,
  LOCKED_ROTOR_MULTIPLE,
  type MotorCodeLetter,
  type MotorTable,
  SINGLE_PHASE_EFFICIENCY,
  SINGLE_PHASE_FULL_LOAD_A,
  SINGLE_PHASE_LOCKED_ROTOR_A,
  TINY_MOTOR_POWER_FACTOR,
} from '../tables/motors.ts'
import { horsepowerToWatts, WATTS_PER_HORSEPOWER } from '../units.ts'

/** Largest shaft power that the motor functions take. [W] */
const MAX_SHAFT_W = 100_000

/** A motor whose plate states its shaft power, and the mains it runs from. */
export interface ShaftMotor {
  /** Power at the shaft. [W] 0..100000 */
  readonly shaftW: number
  /** Nominal mains voltage. [V] 100..240 */
  readonly mainsV: number
}

/** What a motor takes from the mains at full load. */
export interface MotorInput {
  /** Active power. [W] */
  readonly inputW: number
  /** Apparent power, never below the active power. [VA] */
  readonly apparentVA: number
  /** Shaft power over active power. 0..1 */
  readonly efficiencyFraction: number
  /** Active power over apparent power. 0..1 */
  readonly powerFactor: number
}

/**
 * Input power of a single-phase induction motor from its shaft power.
 *
 * @param motor.shaftW - Power at the shaft. [W] 0..100000
 * @param motor.mainsV - Nominal mains voltage. [V] 100..240
 * @returns Active [W] and apparent [VA] power at full load, with the efficiency and power factor behind them
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @remarks Active power = shaft power / efficiency, which is interpolated over the motor's size. Apparent
 * power = full-load current of the published table x the higher of mains and rated voltage. Both sides are
 * cautious: the table is meant for sizing conductors, the efficiencies are those of plain motors. Beyond
 * 10 hp the volt-amperes grow in proportion; below 1/6 hp they come from a power factor of 0.5.
 * @source motor-textbook (efficiency, from memory), nec-430-248 (full-load current)
 * @example motorInputFor({ shaftW: 372.85, mainsV: 115 }) //=> 621 W, 1127 VA
 */
export function motorInputFor({ shaftW, mainsV }: ShaftMotor): MotorInput {
  requireInRange('shaftW', shaftW, 0, MAX_SHAFT_W)
  requireInRange('mainsV', mainsV, 100, 240)
  const horsepower = shaftW / WATTS_PER_HORSEPOWER
  const efficiencyFraction = efficiencyFractionOf(horsepower)
  const inputW = shaftW / efficiencyFraction
  const apparentVA = Math.max(inputW, fullLoadVA(horsepower, mainsV))
  const powerFactor = apparentVA > 0 ? inputW / apparentVA : TINY_MOTOR_POWER_FACTOR
  return { inputW, apparentVA, efficiencyFraction, powerFactor }
}

/** A motor by its size, and the mains it runs from. */
export interface SizedMotor {
  /** Rated size. [hp] 0..135 */
  readonly horsepower: number
  /** Nominal mains voltage. [V] 100..240 */
  readonly mainsV: number
}

/**
 * Full-load current of a single-phase AC motor, interpolated over its size.
 *
 * @param motor.horsepower - Rated size. [hp] 0..135
 * @param motor.mainsV - Nominal mains voltage, which picks the column of the table. [V] 100..240
 * @returns Current. [A]
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @remarks Outside 1/6..10 hp the current is in proportion to the size.
 * @source nec-430-248
 * @example fullLoadA({ horsepower: 0.5, mainsV: 115 }) //=> 9.8
 */
export function fullLoadA({ horsepower, mainsV }: SizedMotor): number {
  requireMotor(horsepower, mainsV)
  const { key } = fullLoadColumn(mainsV)
  return interpolateProportional(SINGLE_PHASE_FULL_LOAD_A, horsepower, (row) => row[key])
}

/**
 * Largest current that a single-phase motor takes while its rotor stands still.
 *
 * @param motor.horsepower - Rated size. [hp] 0..135
 * @param motor.mainsV - Nominal mains voltage, which picks the column of the table. [V] 100..240
 * @returns Current. [A]
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @remarks A table limit: real starts are usually lower. Below 1/2 hp, where the table has no row, and at
 * 200 V, where it has no column, it is six times the full-load current; beyond 10 hp it is in proportion
 * to the size.
 * @source nec-430-251a, six-times-rated-current
 * @example lockedRotorA({ horsepower: 0.5, mainsV: 115 }) //=> 58.8
 */
export function lockedRotorA({ horsepower, mainsV }: SizedMotor): number {
  requireMotor(horsepower, mainsV)
  const key = lockedRotorKey(mainsV)
  if (key === null || horsepower < SINGLE_PHASE_LOCKED_ROTOR_A[0].horsepower) {
    return LOCKED_ROTOR_MULTIPLE * fullLoadA({ horsepower, mainsV })
  }
  return interpolateProportional(SINGLE_PHASE_LOCKED_ROTOR_A, horsepower, (row) => row[key])
}

/** Apparent power that a motor takes while its rotor stands still. [VA] */
export interface LockedRotorVA {
  readonly lowVA: number
  /** Null for letter V, whose band has no upper end. */
  readonly highVA: number | null
}

/**
 * Locked-rotor apparent power from the code letter of a motor's plate.
 *
 * @param codeLetter - Letter of the plate.
 * @param horsepower - Rated size. [hp] 0..135
 * @returns The ends of the letter's band. [VA]
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @source nec-430-7b
 * @example lockedRotorVAFor('J', 1) //=> { lowVA: 7100, highVA: 7990 }
 */
export function lockedRotorVAFor(codeLetter: MotorCodeLetter, horsepower: number): LockedRotorVA {
  requireHorsepower(horsepower)
  const { low, high } = CODE_LETTER_KVA_PER_HORSEPOWER[codeLetter]
  return {
    lowVA: low * 1000 * horsepower,
    highVA: high === null ? null : high * 1000 * horsepower,
  }
}

interface Column {
  readonly key: 'at115V' | 'at200V' | 'at208V' | 'at230V'
  readonly ratedV: number
}

function fullLoadColumn(mainsV: number): Column {
  if (mainsV < 160) return { key: 'at115V', ratedV: 115 }
  if (mainsV < 204) return { key: 'at200V', ratedV: 200 }
  if (mainsV < 215) return { key: 'at208V', ratedV: 208 }
  return { key: 'at230V', ratedV: 230 }
}

function lockedRotorKey(mainsV: number): Exclude<Column['key'], 'at200V'> | null {
  const { key } = fullLoadColumn(mainsV)
  return key === 'at200V' ? null : key
}

function efficiencyFractionOf(horsepower: number): number {
  return interpolate(SINGLE_PHASE_EFFICIENCY, horsepower, (row) => row.efficiencyFraction)
}

function fullLoadVA(horsepower: number, mainsV: number): number {
  const volts = Math.max(mainsV, fullLoadColumn(mainsV).ratedV)
  const byCurrent = fullLoadA({ horsepower, mainsV }) * volts
  if (horsepower >= SINGLE_PHASE_FULL_LOAD_A[0].horsepower) return byCurrent
  // The table ends here, and in proportion alone the smallest motors would look better than they are.
  const inputW = horsepowerToWatts(horsepower) / efficiencyFractionOf(horsepower)
  return Math.max(byCurrent, inputW / TINY_MOTOR_POWER_FACTOR)
}

function requireMotor(horsepower: number, mainsV: number): void {
  requireHorsepower(horsepower)
  requireInRange('mainsV', mainsV, 100, 240)
}

function requireHorsepower(horsepower: number): void {
  requireInRange('horsepower', horsepower, 0, 135)
}

interface SizeRow {
  readonly horsepower: number
}

/** Linear between the sizes of a table, level beyond the first and the last. */
function interpolate<Row extends SizeRow>(
  table: MotorTable<Row>,
  horsepower: number,
  figureOf: (row: Row) => number,
): number {
  let below = table[0]
  for (const row of table) {
    if (horsepower <= row.horsepower) {
      if (row === below) return figureOf(row)
      const share = (horsepower - below.horsepower) / (row.horsepower - below.horsepower)
      return figureOf(below) + (figureOf(row) - figureOf(below)) * share
    }
    below = row
  }
  return figureOf(below)
}

/** Linear between the sizes of a table, in proportion to the size beyond the first and the last. */
function interpolateProportional<Row extends SizeRow>(
  table: MotorTable<Row>,
  horsepower: number,
  figureOf: (row: Row) => number,
): number {
  const smallest = table[0]
  const largest = table.at(-1) ?? smallest
  const nearest = Math.min(Math.max(horsepower, smallest.horsepower), largest.horsepower)
  return (interpolate(table, nearest, figureOf) * horsepower) / nearest
}
