import type { Shop, ShopPolicy } from './range-document.ts'

/** A policy with every rule filled in. */
export type FullPolicy = Required<{ [K in keyof ShopPolicy]: NonNullable<ShopPolicy[K]> }>

/**
 * The rules of a shop that states none.
 *
 * Headroom 0.2: a load that runs for three hours or more may take 80 % of what carries it (NEC 210.19(A),
 * 210.20(A), 2017). Drop 0.03: ABYC E-11 main feeders; ISO 13297. Vehicle socket 10 A: common practice, no
 * published source (the circuit is fused at 10 to 20 A and its contacts warm). Quick connector 50 A: the
 * size class of the common two-pole connector, common practice.
 */
export const DEFAULT_POLICY: FullPolicy = {
  headroomFraction: 0.2,
  dropLimitFraction: 0.03,
  notAdvised: [],
  socketLimitA: 10,
  quickConnectorLimitA: 50,
}

/**
 * A shop's rules with the defaults filled in.
 *
 * @param shop - The shop's part of a range document
 * @returns Every rule, the shop's own where it states one
 */
export function policyOf(shop: Pick<Shop, 'policy'>): FullPolicy {
  const stated = shop.policy ?? {}
  return {
    headroomFraction: stated.headroomFraction ?? DEFAULT_POLICY.headroomFraction,
    dropLimitFraction: stated.dropLimitFraction ?? DEFAULT_POLICY.dropLimitFraction,
    notAdvised: stated.notAdvised ?? DEFAULT_POLICY.notAdvised,
    socketLimitA: stated.socketLimitA ?? DEFAULT_POLICY.socketLimitA,
    quickConnectorLimitA: stated.quickConnectorLimitA ?? DEFAULT_POLICY.quickConnectorLimitA,
  }
}
