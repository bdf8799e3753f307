import type { FastifyReply } from 'fastify'
import { type Plan, type PreparedRange, planFor, type RuntimeFault } from '../../core/index.ts'
import type { SizingRequest } from '../../shared/contract/plan.ts'
import { type Writer, writerFor } from '../../shared/messages/index.ts'
import { pointerOf } from '../../shared/pointer.ts'
import { sendProblem } from '../plugins/problems.ts'
import { rangeIn } from '../replies/range-in.ts'
import type { Ranges } from '../store/ranges.ts'

/** What every route that reads a plan works with. */
export interface PlanContext {
  readonly range: PreparedRange
  readonly plan: Plan
  readonly writer: Writer
}

/**
 * Reads a plan for a shop, or answers with the problem.
 *
 * @param ranges - The ranges in force
 * @param shopId - From the path
 * @param body - A body that keeps the contract
 * @param reply - Receives the problem where there is one
 * @returns The plan, or undefined where the problem has been sent
 */
export function readPlan(
  ranges: Ranges,
  shopId: string,
  body: SizingRequest,
  reply: FastifyReply,
): PlanContext | undefined {
  const shop = findShop(ranges, shopId, body.locale, reply)
  if (shop === undefined) return undefined
  const result = planFor(shop.range, { ...body, preferences: body.preferences ?? { inStockOnly: true } })
  if (!result.ok) {
    sendFaults(reply, result.faults, shop.writer)
    return undefined
  }
  return { ...shop, plan: result.plan }
}

/**
 * A shop's range with appliances named in the caller's language, and the writer for that caller, or the problem.
 *
 * @param ranges - The ranges in force
 * @param shopId - From the path
 * @param locale - The caller's wish; the shop's own where there is none
 * @param reply - Receives the problem where there is one
 * @returns Both, or undefined where the problem has been sent
 */
export function findShop(
  ranges: Ranges,
  shopId: string,
  locale: string | undefined,
  reply: FastifyReply,
): Omit<PlanContext, 'plan'> | undefined {
  const range = ranges.current(shopId)
  if (range !== undefined) {
    const { shop } = range.document
    const wished = locale ?? shop.locale
    return { range: rangeIn(range, wished), writer: writerFor(wished, shop.wireSizes) }
  }
  sendProblem(reply, 'unknown-shop', {
    errors: [{ pointer: '', message: 'Check the shop id in the address.' }],
  })
  return undefined
}

/**
 * Answers with every fault of a body that keeps the contract's shape but can't be answered.
 *
 * @param reply - The reply to send on
 * @param faults - The faults
 * @param writer - Whose language they are written in
 * @returns The reply, sent
 */
export function sendFaults(
  reply: FastifyReply,
  faults: readonly RuntimeFault[],
  writer: Writer,
): FastifyReply {
  const errors = faults.map((fault) => ({ pointer: pointerOf(fault.path), message: writer.fault(fault) }))
  return sendProblem(reply, 'contract-broken', { errors })
}
