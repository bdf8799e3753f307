import type { CircuitDesign, CircuitFailure } from '../../wiring/circuit-types.ts'
import { conductorOfSize } from '../../wiring/conductor.ts'
import { cableFaults, type LaidCable, laidCable } from './cables.ts'
import type { CircuitNeed, StandardCable } from './circuit-need.ts'
import type { KitNote } from './kit-types.ts'
import type { Wiring } from './wiring.ts'

/** The cable that the circuit of the same answer names. */
interface NamedSize {
  /** As '35 mm²' or '2 × 2/0 AWG' */
  readonly otherSize: string
  /** Temperature that its insulation is taken to be rated for. [degC] */
  readonly otherInsulationC: number
  readonly areaMm2: number
  readonly awg?: string | undefined
  readonly pairs: number
  /** Of the fuse before it, where one is named. [A] */
  readonly otherRatingA?: number | undefined
}

/**
 * Why the kit's cable is of another size than the one that the circuit of the same answer names.
 *
 * @param need - The circuit
 * @param wiring - The kit's cable and fuse
 * @param standard - What the kit tells to buy elsewhere, where its cable is not of the range
 * @param shown - The circuit of the answer; left out: there is nothing to compare with
 * @returns The reason; undefined where both are of one size, or where the line's own reason tells it
 */
export function sizeNote(
  need: CircuitNeed,
  { cable, fuse }: Wiring,
  standard: StandardCable | undefined,
  shown: CircuitDesign | CircuitFailure | undefined,
): KitNote | undefined {
  const named = namedSize(shown)
  const size = sizeOf(cable, standard)
  if (named === undefined || size === undefined || size === named.otherSize) return undefined
  const { otherSize, otherInsulationC, otherRatingA } = named
  const isThicker = areaOf(cable) > named.areaMm2 * named.pairs
  const fuseA = fuse.fuse?.part.ratingA ?? need.minA
  const insulationC = cable.cable?.laid.insulationC ?? otherInsulationC
  if (insulationC > otherInsulationC && !doesWith(need, cable, { insulationC: otherInsulationC, fuseA })) {
    return { code: 'hotter-insulation', values: { size, insulationC, otherSize, otherInsulationC } }
  }
  if (isThicker && insulationC < otherInsulationC && needsMore(need, { cable, named, insulationC, fuseA })) {
    return { code: 'cooler-insulation', values: { size, insulationC, otherSize, otherInsulationC } }
  }
  if (isThicker) return { code: 'next-size-we-have', values: { size, otherSize } }
  const ratingA = fuse.fuse?.part.ratingA
  const otherA = otherRatingA ?? fuseA
  if (cable.cable !== undefined && doesWith(need, cable, { insulationC: otherInsulationC, fuseA: otherA })) {
    return { code: 'does-too', values: { size, otherSize } }
  }
  return ratingA !== undefined && otherRatingA !== undefined && ratingA < otherRatingA
    ? { code: 'smaller-fuse', values: { size, ratingA, otherSize, otherRatingA } }
    : { code: 'for-this-kit', values: { size, otherSize } }
}

/** The size that an answer's circuit asks for: of leads in the box that are too thin, the one to put in their place. */
function namedSize(shown: CircuitDesign | CircuitFailure | undefined): NamedSize | undefined {
  if (shown === undefined || !shown.ok) return undefined
  const { conductor, fuse, governedBy, problems } = shown
  const { insulationC: otherInsulationC } = conductor
  if (governedBy !== 'own-leads') {
    const { areaMm2, awg, label, parallelPairs: pairs } = conductor
    const otherRatingA = fuse?.ratingA
    return { otherSize: sizeText(label, pairs), otherInsulationC, areaMm2, awg, pairs, otherRatingA }
  }
  for (const found of problems) {
    if (found.problem !== 'own-leads-too-thin' || found.needed === undefined) continue
    const { label, parallelPairs: pairs, areaMm2, awg } = found.needed
    return { otherSize: sizeText(label, pairs), otherInsulationC, areaMm2, awg, pairs }
  }
  return undefined
}

function sizeOf({ cable, pairs }: LaidCable, standard: StandardCable | undefined): string | undefined {
  const label = cable === undefined ? standard?.label : cable.conductor?.label
  return label === undefined ? undefined : sizeText(label, pairs)
}

function sizeText(label: string, pairs: number): string {
  return pairs > 1 ? `${pairs} × ${label}` : label
}

function areaOf({ cable, pairs }: LaidCable): number {
  return (cable?.conductor?.areaMm2 ?? 0) * pairs
}

/** Whether the cable would do if its insulation were rated for another temperature. */
function doesWith(
  need: CircuitNeed,
  { cable, pairs, origin }: LaidCable,
  { insulationC, fuseA }: { readonly insulationC: number; readonly fuseA: number },
): boolean {
  if (cable === undefined) return true
  const laid = laidCable(need, { ...cable, laid: { ...cable.laid, insulationC } }, { pairs, origin })
  return cableFaults(need, laid).length === 0 && laid.ampacityA >= fuseA
}

/** Whether it is the insulation, and not its length or the fuse, that keeps the named size from doing. */
function needsMore(
  need: CircuitNeed,
  compared: {
    readonly cable: LaidCable
    readonly named: NamedSize
    readonly insulationC: number
    readonly fuseA: number
  },
): boolean {
  const { named, insulationC, fuseA } = compared
  const { cable, origin } = compared.cable
  const { areaMm2, awg, pairs } = named
  const conductor = conductorOfSize(awg === undefined ? { areaMm2 } : { awg })
  if (cable === undefined || conductor === undefined) return false
  const thinner = laidCable(need, { ...cable, conductor }, { pairs, origin })
  return (
    !doesWith(need, thinner, { insulationC, fuseA }) &&
    doesWith(need, thinner, { insulationC: named.otherInsulationC, fuseA })
  )
}
