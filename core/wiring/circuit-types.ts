import type { BatteryChemistry, ConnectionKind, WireSizes } from '../range/vocabulary.ts'
import type { WorkingStep } from '../working.ts'
import type { StatedSize } from './conductor.ts'
import type { NoFuseReason, SafeFuse } from './fuse.ts'

/** An inverter, its battery and the way between them. */
export interface CircuitInput {
  /** Continuous power of the inverter. [W] 1..100000 */
  readonly continuousW: number
  /** Its efficiency at full load. 0.1..1 */
  readonly efficiencyFullFraction: number
  /** Nominal voltage of its battery side. [V] 6..120 */
  readonly nominalV: number
  /** Its low-voltage cut-off, where stated. [V] half to 1.2 x nominalV */
  readonly cutOffV?: number | undefined
  /** One-way length from the battery to the inverter. [m] 0..1000 */
  readonly lengthM: number
  readonly wireSizes: WireSizes
  /** Largest drop in the cable as a share of the nominal voltage. 0.001..0.5 */
  readonly dropLimitFraction: number
  /** Rated temperature of the cable's insulation; left out: 75. [degC] 60..300 */
  readonly insulationC?: number | undefined
  /** Temperature of the air; left out: 30. [degC] -60..200 */
  readonly ambientC?: number | undefined
  /** Whether the cable runs through an engine space; left out: no. */
  readonly inEngineSpace?: boolean | undefined
  /** Loaded conductors together; left out: 2, the pair. Parallel pairs are taken to lie apart. 1..1000 */
  readonly bundledCount?: number | undefined
  /** Left out: unknown, the fuse is sized for lithium. */
  readonly chemistry?: BatteryChemistry | undefined
  /** Left out: unknown, the fuse is sized for a large bank. [Ah] */
  readonly bankCapacityAh?: number | undefined
  /** How the inverter is connected; without a limit the connection is taken not to limit. */
  readonly connection: CircuitConnection
  /** Leads that come with the unit: checked, and nothing else chosen. */
  readonly ownLeads?: OwnLeads | undefined
}

/** A connection and the current that it may carry for long. */
export interface CircuitConnection {
  readonly kind: ConnectionKind
  /** [A] */
  readonly limitA?: number | undefined
}

/** A pair of leads that comes with a unit. */
export interface OwnLeads extends StatedSize {
  /** One-way length. [m] 0..1000 */
  readonly lengthM: number
  /** Pairs of leads; left out: 1. 1..10 */
  readonly parallelPairs?: number | undefined
}

/** The conductor of a circuit and what it does at the worst-case current. */
export interface CircuitConductor {
  /** Each conductor. [mm2] */
  readonly areaMm2: number
  readonly awg?: string
  readonly label: string
  readonly parallelPairs: number
  /** Temperature that its insulation is rated for, or taken to be. [degC] */
  readonly insulationC: number
  /** What all parallel pairs together may carry. [A] */
  readonly ampacityA: number
  /** [V] */
  readonly dropV: number
  /** Drop over nominal voltage. */
  readonly dropFraction: number
  /** Out and back, at the conductor's temperature. [ohm] */
  readonly resistanceOhm: number
  /** Temperature of the copper. [degC] */
  readonly conductorTempC: number
  /** Heat given off by the cable. [W] */
  readonly lossW: number
}

/** What made the conductor as thick as it is; `own-leads`: it came with the unit. */
export type GoverningLimit = 'ampacity' | 'fuse' | 'voltage-drop' | 'own-leads'

/** What the connection lets through. */
export interface ConnectionFigures {
  readonly kind: ConnectionKind
  /** [A] */
  readonly limitA?: number
  /** Mains power that it can pass. [W] */
  readonly limitW?: number
}

/** Something wrong with the circuit as it stands. */
export type CircuitProblem =
  | {
      readonly problem: 'connection-below-full-power'
      readonly limitA: number
      readonly limitW: number
      readonly worstCaseA: number
    }
  | {
      readonly problem: 'own-leads-too-thin'
      readonly ampacityA: number
      /** Fuse rating, or 1.25 x the current, that they would have to carry. [A] */
      readonly neededA: number
      /** The thinnest conductor that would do, where there is one. */
      readonly needed?: Pick<CircuitConductor, 'areaMm2' | 'awg' | 'label' | 'parallelPairs'>
    }
  | { readonly problem: 'own-leads-drop'; readonly dropFraction: number; readonly limitFraction: number }
  | { readonly problem: 'own-leads-too-short'; readonly leadsM: number; readonly routeM: number }

/** A battery circuit. */
export interface CircuitDesign {
  readonly ok: true
  /** Battery current at full power and lowest working voltage. [A] */
  readonly worstCaseA: number
  readonly conductor: CircuitConductor
  readonly governedBy: GoverningLimit
  /** Null where none may be named: see `noFuse`. */
  readonly fuse: SafeFuse | null
  /** A vehicle's own fuse stands before its sockets and is never to be replaced by a larger one. */
  readonly noFuse?: NoFuseReason | 'socket-circuit-has-its-own'
  readonly connection: ConnectionFigures
  readonly problems: readonly CircuitProblem[]
  readonly working: readonly WorkingStep[]
}

/** Why nothing standard will do. */
export type CircuitFailureReason =
  /** Not even the thickest conductor in three parallel pairs. */
  | 'no-standard-conductor'
  /** No standard fuse reaches 1.25 x the current. */
  | 'no-standard-fuse'
  /** The unit's own leads are thinner than any tabulated size, or their size cannot be read. */
  | 'own-leads-not-tabulated'

/** A battery circuit that cannot be built of standard parts. */
export interface CircuitFailure {
  readonly ok: false
  readonly reason: CircuitFailureReason
  readonly worstCaseA: number
  /** The thickest that was tried, where conductors were tried. */
  readonly thickest?: CircuitConductor
  /** Which limit the thickest one breaks. */
  readonly brokenLimit?: Exclude<GoverningLimit, 'own-leads'>
  readonly connection: ConnectionFigures
  readonly working: readonly WorkingStep[]
}
