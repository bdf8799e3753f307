import { requireInRange } from '../errors.ts'
import { AMPACITY_TABLE_AMBIENT_C, ASSUMED_INSULATION_C } from '../tables/ampacity.ts'
import { FUSE_OVER_CURRENT_FACTOR } from '../tables/fuses.ts'
import type { WorkingStep } from '../working.ts'
import { connectionLimitW, lowestWorkingV, worstCaseCurrentA } from './battery-current.ts'
import { type ConductorDemand, chooseConductor, type LoadedPairs, loadPairs } from './choose-conductor.ts'
import type {
  CircuitConductor,
  CircuitDesign,
  CircuitFailure,
  CircuitInput,
  CircuitProblem,
  ConnectionFigures,
  GoverningLimit,
  OwnLeads,
} from './circuit-types.ts'
import { conductorSteps, connectionSteps, currentSteps, fuseStep } from './circuit-working.ts'
import { conductorOfSize } from './conductor.ts'
import { type FuseQuestion, fuseWindow, nextFuse } from './fuse.ts'

/**
 * The circuit between a battery and an inverter: conductor, fuse and what the connection lets through.
 *
 * @param input - The inverter, its battery and the way between them
 * @returns The circuit with its problems, or the reason why nothing standard will do
 * @throws CoreError `out_of_range` for a figure outside the bounds that {@link CircuitInput} states
 * @remarks Worst-case current = continuous power / efficiency at full load / lowest working voltage. The
 * conductor is the smallest standard size that carries the fuse and keeps the drop over twice the one-way
 * length. The drop is that of the cable alone, at the temperature it has at that current.
 * @source nec-125-percent, 33-cfr-183-425, iso10133, iec60228, abyc-e11-drop
 */
export function circuit(input: CircuitInput): CircuitDesign | CircuitFailure {
  requireInRange('continuousW', input.continuousW, 1, 100_000)
  requireInRange('lengthM', input.lengthM, 0, 1000)
  requireInRange('dropLimitFraction', input.dropLimitFraction, 0.001, 0.5)
  const start = startOf(input)
  if (input.ownLeads !== undefined) return checkedLeads(start, input.ownLeads)
  const fuse = fuseOrNone(start)
  if (fuse === undefined) return failure(start, 'no-standard-fuse')
  const demand = demandOf(start, fuse.ratingA, input.lengthM)
  const choice = chooseConductor(input.wireSizes, demand)
  if (choice.ok)
    return designed(start, choice.chosen, { governedBy: choice.governedBy, lengthM: input.lengthM })
  return {
    ...failure(start, 'no-standard-conductor'),
    ...(choice.thickest && { thickest: conductorFigures(choice.thickest, start) }),
    brokenLimit: choice.brokenLimit,
  }
}

/** What is known before the conductor is. */
interface Start {
  readonly input: CircuitInput
  readonly worstCaseA: number
  readonly connection: ConnectionFigures
  readonly fuseQuestion: Omit<FuseQuestion, 'conductorAmpacityA'>
  readonly working: readonly WorkingStep[]
}

function startOf(input: CircuitInput): Start {
  const { efficiencyFullFraction, nominalV, chemistry, bankCapacityAh } = input
  const lowestV = lowestWorkingV(input)
  const worstCaseA = worstCaseCurrentA({ ...input, lowestV })
  const { kind, limitA } = input.connection
  const limits = limitA !== undefined && {
    limitA,
    limitW: connectionLimitW({ limitA, lowestV, efficiencyFullFraction }),
  }
  const connection = { kind, ...limits }
  return {
    input,
    worstCaseA,
    connection,
    fuseQuestion: { currentA: worstCaseA, nominalV, chemistry, bankCapacityAh },
    working: [
      ...currentSteps(input, lowestV, worstCaseA),
      ...connectionSteps(connection, lowestV, efficiencyFullFraction),
    ],
  }
}

/** Rating that the conductor must carry; behind a vehicle socket, whose fuse is not ours, 1.25 x the current. */
function fuseOrNone(start: Start): { readonly ratingA: number } | undefined {
  if (start.connection.kind !== 'vehicle-socket') return nextFuse(start.fuseQuestion)
  return { ratingA: start.worstCaseA * FUSE_OVER_CURRENT_FACTOR }
}

function demandOf({ input, worstCaseA }: Start, fuseRatingA: number, lengthM: number): ConductorDemand {
  return {
    currentA: worstCaseA,
    minA: worstCaseA * FUSE_OVER_CURRENT_FACTOR,
    fuseRatingA,
    lengthM,
    dropLimitV: input.dropLimitFraction * input.nominalV,
    laid: {
      insulationC: input.insulationC ?? ASSUMED_INSULATION_C,
      ambientC: input.ambientC ?? AMPACITY_TABLE_AMBIENT_C,
      inEngineSpace: input.inEngineSpace ?? false,
      bundledCount: input.bundledCount ?? 2,
    },
  }
}

function checkedLeads(start: Start, leads: OwnLeads): CircuitDesign | CircuitFailure {
  requireInRange('ownLeads.lengthM', leads.lengthM, 0, 1000)
  const conductor = conductorOfSize(leads)
  if (conductor === undefined) return failure(start, 'own-leads-not-tabulated')
  const { input, worstCaseA } = start
  const minA = worstCaseA * FUSE_OVER_CURRENT_FACTOR
  const neededA = fuseOrNone(start)?.ratingA ?? minA
  const demand = demandOf(start, neededA, leads.lengthM)
  const loaded = loadPairs({ conductor, parallelPairs: leads.parallelPairs ?? 1 }, demand)
  const design = designed(start, loaded, { governedBy: 'own-leads', lengthM: leads.lengthM })
  const { ampacityA, dropFraction } = design.conductor
  const problems: CircuitProblem[] = [...design.problems]
  const isThin = ampacityA < minA || design.noFuse === 'no-standard-rating-in-window'
  if (isThin) problems.push({ problem: 'own-leads-too-thin', ampacityA, neededA, ...neededOf(start, demand) })
  if (dropFraction > input.dropLimitFraction) {
    problems.push({ problem: 'own-leads-drop', dropFraction, limitFraction: input.dropLimitFraction })
  }
  if (leads.lengthM < input.lengthM) {
    problems.push({ problem: 'own-leads-too-short', leadsM: leads.lengthM, routeM: input.lengthM })
  }
  return { ...design, problems }
}

function neededOf({ input }: Start, demand: ConductorDemand) {
  const choice = chooseConductor(input.wireSizes, demand)
  if (!choice.ok) return {}
  const { conductor, parallelPairs } = choice.chosen
  const { areaMm2, awg, label } = conductor
  return { needed: { areaMm2, ...(awg !== undefined && { awg }), label, parallelPairs } }
}

function designed(
  start: Start,
  loaded: LoadedPairs,
  how: { readonly governedBy: GoverningLimit; readonly lengthM: number },
): CircuitDesign {
  const { input, worstCaseA, connection } = start
  const conductor = conductorFigures(loaded, start)
  const isSocket = connection.kind === 'vehicle-socket'
  const window = fuseWindow({ ...start.fuseQuestion, conductorAmpacityA: loaded.ampacityA })
  const fuse = window.ok && !isSocket ? window : null
  const noFuse = isSocket ? 'socket-circuit-has-its-own' : window.ok ? undefined : window.reason
  const { dropLimitFraction } = input
  const run = { currentA: worstCaseA, lengthM: how.lengthM, dropLimitFraction }
  return {
    ok: true,
    worstCaseA,
    conductor,
    governedBy: how.governedBy,
    fuse,
    ...(noFuse && { noFuse }),
    connection,
    problems: connectionProblems(start),
    working: [
      ...start.working,
      ...(isSocket ? [] : [fuseStep(window, worstCaseA)]),
      ...conductorSteps(loaded, conductor, run),
    ],
  }
}

function conductorFigures(loaded: LoadedPairs, { input, worstCaseA }: Start): CircuitConductor {
  const { conductor, parallelPairs, ampacityA, conductorTempC, dropV } = loaded
  const { areaMm2, awg, label } = conductor
  return {
    areaMm2,
    ...(awg !== undefined && { awg }),
    label,
    parallelPairs,
    insulationC: input.insulationC ?? ASSUMED_INSULATION_C,
    ampacityA,
    dropV,
    dropFraction: dropV / input.nominalV,
    resistanceOhm: dropV / worstCaseA,
    conductorTempC,
    lossW: dropV * worstCaseA,
  }
}

function connectionProblems({ connection, worstCaseA }: Start): CircuitProblem[] {
  const { limitA, limitW } = connection
  if (limitA === undefined || limitW === undefined || worstCaseA <= limitA) return []
  return [{ problem: 'connection-below-full-power', limitA, limitW, worstCaseA }]
}

function failure(start: Start, reason: CircuitFailure['reason']): CircuitFailure {
  const { worstCaseA, connection, working } = start
  return { ok: false, reason, worstCaseA, connection, working }
}
