import { ASSUMED_LENGTH_M } from '../../circuit-side.ts'
import { connectionLimit } from '../../inverters/connection.ts'
import type { Supply } from '../../inverters/need.ts'
import { FUSE_OVER_CURRENT_FACTOR } from '../../tables/fuses.ts'
import { worstCaseCurrentA } from '../../wiring/battery-current.ts'
import { requiredBreakingCapacityA, requiredFuseVoltageV } from '../../wiring/breaking-capacity.ts'
import { circuit } from '../../wiring/circuit.ts'
import type { PreparedInverter, PreparedRange } from '../prepare-range.ts'
import type { BatteryChemistry, ConnectionKind } from '../vocabulary.ts'

/** What the way from battery to unit asks of its parts. */
export interface CircuitNeed {
  readonly range: PreparedRange
  readonly inverter: PreparedInverter
  readonly kind: ConnectionKind
  readonly nominalV: number
  /** Battery current at full power and the lowest working voltage. [A] */
  readonly worstCaseA: number
  /** 1.25 x that current: least fuse, least ampacity. [A] */
  readonly minA: number
  /** What a connector has to carry: that current, or less where the connection lets less through. [A] */
  readonly connectorA: number
  /** One way. [m] */
  readonly lengthM: number
  /** Whether the buyer stated it. */
  readonly lengthStated: boolean
  readonly dropLimitFraction: number
}

/** What a fuse has to stand at a bank. */
export interface FusePlace {
  /** [V] d.c. */
  readonly requiredVoltageV: number
  /** [A] d.c. */
  readonly requiredBreakingCapacityA: number
}

/** As much of a bank as a fuse goes by; what is left out is taken at its worst. */
export interface BankKind {
  readonly chemistry?: BatteryChemistry | undefined
  /** [Ah] */
  readonly capacityAh?: number | undefined
}

/**
 * What a unit and its supply ask of cable, fuse and connector, the same figures as in the circuit's answer.
 *
 * @param range - The range, for its policy
 * @param inverter - The unit
 * @param supply - What feeds it; `nominalV` is not read: the unit's own voltage counts
 * @returns The need
 * @source nec-125-percent
 */
export function circuitNeed(
  range: PreparedRange,
  inverter: PreparedInverter,
  supply: Pick<Supply, 'connection' | 'oneWayLengthM'>,
): CircuitNeed {
  const { unit, figures } = inverter
  const { efficiencyFullFraction, cutOffV: lowestV } = figures
  const limit = connectionLimit(unit.connection, supply.connection, range.policy)
  const worstCaseA = worstCaseCurrentA({ continuousW: unit.continuousW, efficiencyFullFraction, lowestV })
  return {
    range,
    inverter,
    kind: limit?.kind ?? supply.connection?.kind ?? unit.connection.kind,
    nominalV: unit.inputNominalV,
    worstCaseA,
    minA: worstCaseA * FUSE_OVER_CURRENT_FACTOR,
    connectorA: Math.min(worstCaseA, limit?.limitA ?? Number.POSITIVE_INFINITY),
    lengthM: supply.oneWayLengthM ?? includedLengthM(range, inverter) ?? ASSUMED_LENGTH_M,
    lengthStated: supply.oneWayLengthM !== undefined,
    dropLimitFraction: range.policy.dropLimitFraction,
  }
}

/**
 * What a bank asks of the fuse before it.
 *
 * @param nominalV - Nominal voltage of the bank. [V]
 * @param bank - Chemistry and capacity, as far as known
 * @returns Voltage and breaking capacity, at least
 * @source abyc-e11-interrupting, iso8820-scopes
 */
export function fusePlace(nominalV: number, { chemistry, capacityAh }: BankKind): FusePlace {
  return {
    requiredVoltageV: requiredFuseVoltageV(nominalV),
    requiredBreakingCapacityA: requiredBreakingCapacityA({ nominalV, chemistry, bankCapacityAh: capacityAh }),
  }
}

/** The standard conductor that a circuit takes, whatever the range holds. */
export interface StandardCable {
  /** As '35 mm2' or '2/0 AWG'; left out where nothing standard will do. */
  readonly label?: string
  readonly pairs: number
  /** [A] */
  readonly ampacityA: number
  /** Out and back. [ohm] */
  readonly resistanceOhm: number
}

/**
 * The standard cable of a circuit: what to buy elsewhere, and what a cable that cannot be looked up is taken
 * for.
 *
 * @param need - The circuit's need
 * @param bank - The bank, as far as known
 * @returns The cable; with the least ampacity and no resistance where nothing standard will do
 */
export function standardCable(need: CircuitNeed, bank: BankKind): StandardCable {
  const { unit, figures } = need.inverter
  const design = circuit({
    continuousW: unit.continuousW,
    efficiencyFullFraction: figures.efficiencyFullFraction,
    nominalV: need.nominalV,
    cutOffV: figures.cutOffV,
    lengthM: need.lengthM,
    wireSizes: need.range.document.shop.wireSizes,
    dropLimitFraction: need.dropLimitFraction,
    chemistry: bank.chemistry,
    bankCapacityAh: bank.capacityAh,
    connection: { kind: need.kind },
  })
  if (!design.ok) return { pairs: 1, ampacityA: need.minA, resistanceOhm: 0 }
  const { label, parallelPairs, ampacityA, resistanceOhm } = design.conductor
  return { label, pairs: parallelPairs, ampacityA, resistanceOhm }
}

function includedLengthM(range: PreparedRange, { unit }: PreparedInverter): number | undefined {
  for (const sku of unit.includes ?? []) {
    const entry = range.parts.bySku.get(sku)
    if (entry?.role === 'cable') return entry.part.lengthM
  }
  return undefined
}
