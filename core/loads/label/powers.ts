import { btuPerHourToWatts, horsepowerToWatts } from '../../units.ts'
import type { DraftFigure } from './figures.ts'
import type { LabelNote, LabelQuantity, LabelRole } from './reading.ts'
import { largest, type PlateVoltAmperes, plateVoltAmperes } from './supply.ts'

/** A power on a plate, with the figure it was read from. */
export interface PlatePower {
  readonly watts: number
  readonly figure: DraftFigure
}

/** The powers of a plate, the largest of each kind. */
export interface PlatePowers {
  readonly input: PlatePower | undefined
  readonly unlabelled: PlatePower | undefined
  readonly cooking: PlatePower | undefined
  readonly shaft: PlatePower | undefined
  readonly cooling: PlatePower | undefined
  /** Stated volt-amperes, mains side. [VA] */
  readonly statedVA: PlatePower | undefined
  readonly voltAmperes: PlateVoltAmperes | undefined
  readonly powerFactor: number | undefined
  /** Something is given out, whatever it is. */
  readonly output: boolean
  readonly notes: readonly LabelNote[]
}

/** How far watts may lie from output volts x amperes and still be the same power. */
const SAME_POWER_FRACTION = 0.05

/** Output currents that are compared with unlabelled watts; a charger has few outputs. */
const MOST_OUTPUTS = 16

/**
 * Sorts the figures of a plate by what they say of its power.
 *
 * @param figures - All figures, roles given.
 * @param mainsV - Nominal mains voltage. [V] 100..240
 * @returns The largest power of each kind
 */
export function sortPowers(figures: readonly DraftFigure[], mainsV: number): PlatePowers {
  const outputW = outputWatts(figures)
  const isOutput = (watts: number): boolean =>
    outputW.some((output) => Math.abs(output - watts) <= SAME_POWER_FRACTION * output)
  const pick = (quantity: LabelQuantity, roles: readonly LabelRole[]): readonly PlatePower[] =>
    figures
      .filter((figure) => figure.quantity === quantity && roles.includes(figure.role))
      .map((figure) => ({ watts: largest(figure.values), figure }))
      .filter((power) => power.watts > 0)
  const inputs = pick('power', ['input'])
  const unlabelled = pick('power', ['unknown']).filter(({ watts }) => !isOutput(watts))
  const horsepower = pick('horsepower', ['input', 'output', 'shaft', 'unknown'])
  const cold = pick('cooling-capacity', ['input', 'output', 'cooling', 'unknown'])
  return {
    input: most(inputs),
    unlabelled: most(unlabelled),
    cooking: most(pick('power', ['cooking'])),
    shaft: most([
      ...pick('power', ['shaft']),
      ...horsepower.map((power) => ({ ...power, watts: horsepowerToWatts(power.watts) })),
    ]),
    cooling: most([
      ...pick('power', ['cooling']),
      ...cold.map((power) => ({ ...power, watts: btuPerHourToWatts(power.watts) })),
    ]),
    statedVA: most(pick('apparent-power', ['input', 'unknown'])),
    voltAmperes: plateVoltAmperes(figures, mainsV),
    powerFactor: figures.find(({ quantity }) => quantity === 'power-factor')?.values[0],
    output: figures.some(({ role, quantity }) => role === 'output' && quantity !== 'number'),
    notes: inputs.length + unlabelled.length > 1 ? [severalNote([...inputs, ...unlabelled])] : [],
  }
}

function severalNote(powers: readonly PlatePower[]): LabelNote {
  return {
    code: 'largest-of-several',
    values: { count: powers.length, largestW: largest(powers.map(({ watts }) => watts)) },
  }
}

function most(powers: readonly PlatePower[]): PlatePower | undefined {
  return powers.reduce<PlatePower | undefined>(
    (largestYet, power) => (largestYet === undefined || power.watts > largestYet.watts ? power : largestYet),
    undefined,
  )
}

/** Output volts x amperes: "OUTPUT 20 V 5 A MAX POWER 100 W" speaks of one power, not of two. */
function outputWatts(figures: readonly DraftFigure[]): readonly number[] {
  const watts: number[] = []
  let volts = 0
  for (const { role, quantity, values } of figures) {
    if (role !== 'output') continue
    if (quantity === 'voltage') volts = largest(values)
    if (quantity === 'current') watts.push(volts * largest(values))
    if (watts.length === MOST_OUTPUTS) break
  }
  return watts
}
