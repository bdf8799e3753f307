import type { Finding } from '../../advice/findings.ts'
import { finding } from '../../advice/findings.ts'
import { fuseSuits } from '../../wiring/fuse-suits.ts'
import { mostPairs } from '../kit/cables.ts'
import { fusePlace } from '../kit/circuit-need.ts'
import type { BankCheck } from './bank-check.ts'
import { type Cart, type CartFinding, cartFinding } from './cart.ts'
import { fuseFinding } from './circuit-check.ts'

/**
 * Checks the cables and fuses of a cart without a unit against one another, the bank and the stated length. No
 * current is known here, so a fuse can be too large for every cable but not too small.
 *
 * @param cart - The cart
 * @param bank - The bank, as far as it is known
 * @returns Findings
 * @source conductor-protection
 */
export function checkLoneParts(cart: Cart, { bank, kind }: BankCheck): readonly CartFinding[] {
  const found: Finding[] = []
  const carried = cart.cables.map(({ cable, pairs }) => cable.ampacityA * Math.min(pairs, mostPairs(cable)))
  const maxA = carried.length === 0 ? Number.POSITIVE_INFINITY : Math.max(...carried)
  const nominalV = cart.supply?.nominalV ?? bank?.nominalV
  // Of a bank that nobody has named nothing is asked of the fuse.
  const place =
    nominalV === undefined || kind.chemistry === undefined
      ? { requiredVoltageV: 0, requiredBreakingCapacityA: 0 }
      : fusePlace(nominalV, kind)
  for (const { fuse } of cart.fuses) {
    const { part } = fuse
    for (const fault of fuseSuits(part, { ...place, minA: 0, maxA })) {
      const right = cart.range.parts.fuses.find(
        (other) =>
          other.part.inStock &&
          (fault.fault === 'rating-above-conductor' || other.part.ratingA === part.ratingA) &&
          fuseSuits(other.part, { ...place, minA: 0, maxA }).length === 0,
      )
      // Which smaller fuse it should be goes by the unit, and there is none.
      const use =
        fault.fault === 'rating-above-conductor' || right === undefined
          ? undefined
          : { useSku: right.part.sku }
      found.push(fuseFinding(fault, part.sku, use))
    }
  }
  const routeM = cart.supply?.oneWayLengthM ?? 0
  if (cart.cables.every(({ cable }) => cable.part.lengthM < routeM)) {
    for (const { cable } of cart.cables) {
      const { sku, lengthM } = cable.part
      found.push(finding('cable-too-short', 'fail', { sku, lengthM, routeM }))
    }
  }
  return found.map((each) => cartFinding(each))
}
