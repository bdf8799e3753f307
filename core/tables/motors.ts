/** A table of motor sizes in ascending order, never empty. */
export type MotorTable<Row> = readonly [Row, ...(readonly Row[])]

/** One size of single-phase motor in a table of currents, by the rated voltage of the motor. [A] */
export interface MotorCurrentRow {
  readonly horsepower: number
  readonly at115V: number
  readonly at200V: number
  readonly at208V: number
  readonly at230V: number
}

/** Full-load currents of single-phase AC motors. [A] Source: nec-430-248. */
export const SINGLE_PHASE_FULL_LOAD_A: MotorTable<MotorCurrentRow> = [
  { horsepower: 1 / 6, at115V: 4.4, at200V: 2.5, at208V: 2.4, at230V: 2.2 },
  { horsepower: 1 / 4, at115V: 5.8, at200V: 3.3, at208V: 3.2, at230V: 2.9 },
  { horsepower: 1 / 3, at115V: 7.2, at200V: 4.1, at208V: 4.0, at230V: 3.6 },
  { horsepower: 1 / 2, at115V: 9.8, at200V: 5.6, at208V: 5.4, at230V: 4.9 },
  { horsepower: 3 / 4, at115V: 13.8, at200V: 7.9, at208V: 7.6, at230V: 6.9 },
  { horsepower: 1, at115V: 16, at200V: 9.2, at208V: 8.8, at230V: 8 },
  { horsepower: 1.5, at115V: 20, at200V: 11.5, at208V: 11, at230V: 10 },
  { horsepower: 2, at115V: 24, at200V: 13.8, at208V: 13.2, at230V: 12 },
  { horsepower: 3, at115V: 34, at200V: 19.6, at208V: 18.7, at230V: 17 },
  { horsepower: 5, at115V: 56, at200V: 32.2, at208V: 30.8, at230V: 28 },
  { horsepower: 7.5, at115V: 80, at200V: 46, at208V: 44, at230V: 40 },
  { horsepower: 10, at115V: 100, at200V: 57.5, at208V: 55, at230V: 50 },
]

/** One size of motor in the table of locked-rotor currents. [A] */
export interface LockedRotorRow {
  readonly horsepower: number
  readonly at115V: number
  readonly at208V: number
  readonly at230V: number
}

/** Largest locked-rotor currents of single-phase motors. [A] Source: nec-430-251a. */
export const SINGLE_PHASE_LOCKED_ROTOR_A: MotorTable<LockedRotorRow> = [
  { horsepower: 1 / 2, at115V: 58.8, at208V: 32.5, at230V: 29.4 },
  { horsepower: 3 / 4, at115V: 82.8, at208V: 45.8, at230V: 41.4 },
  { horsepower: 1, at115V: 96, at208V: 53, at230V: 48 },
  { horsepower: 1.5, at115V: 120, at208V: 66, at230V: 60 },
  { horsepower: 2, at115V: 144, at208V: 80, at230V: 72 },
  { horsepower: 3, at115V: 204, at208V: 113, at230V: 102 },
  { horsepower: 5, at115V: 336, at208V: 186, at230V: 168 },
  { horsepower: 7.5, at115V: 480, at208V: 265, at230V: 240 },
  { horsepower: 10, at115V: 600, at208V: 332, at230V: 300 },
]

/**
 * Locked-rotor over full-load current where no table gives one: 6.00 in every row of the two tables above
 * at 115 V and 230 V, and the published rule for small motors. Source: six-times-rated-current.
 */
export const LOCKED_ROTOR_MULTIPLE = 6

/** Letters stamped on a motor for its locked-rotor volt-amperes; I, O and Q are not used. */
export const MOTOR_CODE_LETTERS = [
  'A',
  'B',
  'C',
  'D',
  'E',
  'F',
  'G',
  'H',
  'J',
  'K',
  'L',
  'M',
  'N',
  'P',
  'R',
  'S',
  'T',
  'U',
  'V',
] as const
export type MotorCodeLetter = (typeof MOTOR_CODE_LETTERS)[number]

/** Locked-rotor kVA for each horsepower. [kVA/hp] `high` is null where the band has no upper end. */
export interface CodeLetterBand {
  readonly low: number
  readonly high: number | null
}

/** Locked-rotor kVA for each horsepower by code letter. Source: nec-430-7b. */
export const CODE_LETTER_KVA_PER_HORSEPOWER: Readonly<Record<MotorCodeLetter, CodeLetterBand>> = {
  A: { low: 0, high: 3.14 },
  B: { low: 3.15, high: 3.54 },
  C: { low: 3.55, high: 3.99 },
  D: { low: 4.0, high: 4.49 },
  E: { low: 4.5, high: 4.99 },
  F: { low: 5.0, high: 5.59 },
  G: { low: 5.6, high: 6.29 },
  H: { low: 6.3, high: 7.09 },
  J: { low: 7.1, high: 7.99 },
  K: { low: 8.0, high: 8.99 },
  L: { low: 9.0, high: 9.99 },
  M: { low: 10.0, high: 11.19 },
  N: { low: 11.2, high: 12.49 },
  P: { low: 12.5, high: 13.99 },
  R: { low: 14.0, high: 15.99 },
  S: { low: 16.0, high: 17.99 },
  T: { low: 18.0, high: 19.99 },
  U: { low: 20.0, high: 22.39 },
  V: { low: 22.4, high: null },
}

/** Full-load efficiency of a cautious motor of a size. 0..1 */
export interface MotorEfficiencyRow {
  readonly horsepower: number
  readonly efficiencyFraction: number
}

/**
 * Full-load efficiency of plain single-phase induction motors, on the cautious side of what is sold.
 * Source: motor-textbook. From 2 hp on it is held at 0.74, which keeps the input at the published 1000 W
 * for each horsepower (source: ndsu-standby-generators) although larger motors do better.
 */
export const SINGLE_PHASE_EFFICIENCY: MotorTable<MotorEfficiencyRow> = [
  { horsepower: 1 / 100, efficiencyFraction: 0.2 },
  { horsepower: 1 / 20, efficiencyFraction: 0.35 },
  { horsepower: 1 / 6, efficiencyFraction: 0.5 },
  { horsepower: 1 / 4, efficiencyFraction: 0.53 },
  { horsepower: 1 / 3, efficiencyFraction: 0.56 },
  { horsepower: 1 / 2, efficiencyFraction: 0.6 },
  { horsepower: 3 / 4, efficiencyFraction: 0.64 },
  { horsepower: 1, efficiencyFraction: 0.67 },
  { horsepower: 1.5, efficiencyFraction: 0.71 },
  { horsepower: 2, efficiencyFraction: 0.74 },
]

/**
 * Power factor of motors below the smallest of the table of currents, 1/6 hp. 0..1 Source: motor-textbook.
 */
export const TINY_MOTOR_POWER_FACTOR = 0.5
