import type { PlanState } from './plan.ts'

/** Written first in every link, so that a later form can tell this one. */
const FORM = 1

/**
 * Writes a plan for the fragment of an address. Nothing is stored anywhere else.
 *
 * @param plan - The shopper's answers
 * @returns Letters, digits, `-` and `_` only
 */
export function encodePlan(plan: PlanState): string {
  const { supply } = plan
  const place = new Map(plan.loads.map((load, index) => [load.id, index]))
  const compact = [
    FORM,
    plan.loads.map((load) => [
      load.appliance ?? 0,
      load.name ?? 0,
      load.quantity,
      load.minutesPerDay ?? -1,
      load.rating ?? 0,
      ...(load.start === undefined ? [] : [load.start.startingW, load.start.durationS ?? 0]),
    ]),
    plan.takeTurns.map((group) => group.map((id) => place.get(id) ?? -1)),
    [
      supply.nominalV,
      supply.battery,
      supply.chemistry,
      supply.capacityAh,
      supply.connection,
      supply.oneWayLengthM,
    ],
    ...(plan.sku === undefined ? [] : [plan.sku]),
  ]
  const bytes = new TextEncoder().encode(JSON.stringify(compact))
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('')
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
}

/**
 * The page's address with a plan in its fragment; the other parts of the fragment stay.
 *
 * @param name - Name of the guide's part of the fragment
 * @param plan - The shopper's answers
 * @returns The address
 */
export function addressWith(name: string, plan: PlanState): string {
  const parts = fragment()
  parts.set(name, encodePlan(plan))
  const address = new URL(location.href)
  address.hash = parts.toString()
  return address.href
}

/**
 * Writes a plan into the page's address without a step in its history.
 *
 * @param name - Name of the guide's part of the fragment
 * @param plan - The shopper's answers
 */
export function keepInAddress(name: string, plan: PlanState): void {
  history.replaceState(history.state, '', addressWith(name, plan))
}

function fragment(): URLSearchParams {
  return new URLSearchParams(location.hash.includes('=') ? location.hash.slice(1) : '')
}
