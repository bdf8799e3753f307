import type { CartAnswer, CartFinding, PreparedRange } from '../../core/index.ts'
import type { CartCheckAnswer } from '../../shared/contract/cart.ts'
import type { Writer } from '../../shared/messages/index.ts'
import { demandAnswer, findingAnswer } from './parts.ts'

/**
 * The reply of POST cart-check.
 *
 * @param range - The range that the cart was checked against
 * @param answer - The engine's answer
 * @param writer - Whose language it is written in
 * @returns The body
 */
export function cartAnswer(range: PreparedRange, answer: CartAnswer, writer: Writer): CartCheckAnswer {
  const { ok, findings, unknownSkus, outcome, plan } = answer
  return {
    ok,
    findings: findings.map((each) => cartFindingAnswer(each, writer)),
    unknownSkus: [...unknownSkus],
    outcome,
    demand: plan && demandAnswer(plan),
    range: { shopId: range.document.shop.id, version: range.version },
  }
}

/** Findings that know nothing of carts get the SKUs into their values, and the right part into their sentence. */
function cartFindingAnswer({ found, skus, useSku }: CartFinding, writer: Writer) {
  const { values, message, ...rest } = findingAnswer(found, writer)
  const named = 'sku' in values || skus[0] === undefined ? values : { ...values, sku: skus[0] }
  const told = useSku === undefined || 'useSku' in values
  return {
    ...rest,
    values: useSku === undefined ? named : { ...named, useSku },
    message: told ? message : `${message} ${writer.useInstead(useSku)}`,
    skus: [...skus],
    ...(useSku === undefined ? {} : { useSku }),
  }
}
