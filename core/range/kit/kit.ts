import type { BatteryBank } from '../../battery/bank.ts'
import { bankCarries } from '../../battery-side/battery-answer.ts'
import { fedBy } from '../../battery-side/fed-inverter.ts'
import { bankOf } from '../../supply-side.ts'
import type { PartBase } from '../range-document.ts'
import { type AtHand, atHandOf } from './at-hand.ts'
import {
  type BankQuestion,
  type BlockBank,
  banksFor,
  blockBank,
  chemistryGroups,
  neededByChemistry,
} from './banks.ts'
import { type BankKind, type CircuitNeed, circuitNeed, fusePlace, standardCable } from './circuit-need.ts'
import { connectorFor } from './connectors.ts'
import type { ChosenBank, ChosenParts, KitQuestion } from './kit-choice.ts'
import { kitLines } from './kit-lines.ts'
import type { Kit } from './kit-types.ts'
import type { Priced } from './parts.ts'
import { type Wiring, wirings } from './wiring.ts'

/**
 * The cheapest kit of a range that passes every check, for a unit and a plan.
 *
 * First as few missing parts as can be, then the lowest cost of battery, cable and fuse together. Ties: the
 * battery with fewer blocks and then the first SKU; then as {@link wirings} has it; connectors by price and SKU.
 * A battery is in it where the buyer states none, where the stated one does not carry the plan, or where one
 * is asked for; behind a vehicle socket it is always the vehicle's own.
 *
 * @param question - The range, the recommended unit, the plan, and what the buyer has
 * @returns The kit; a part that nothing of the range suits for is told by its specification
 */
export function kitFor(question: KitQuestion): Kit {
  const { range, inverter, wish } = question
  const need = circuitNeed(range, inverter, question.supply)
  const atHand = atHandOf(range, inverter.unit, wish?.owned ?? [])
  const plan = planOf(question)
  const chosen = chooseParts({ ...question, need, atHand, plan, neededAh: neededByChemistry(plan) })
  const connector = connectorFor(need, atHand.connectors, onSale(question, range.parts.connectors))
  return kitLines({ question, need, atHand, chosen, connector })
}

interface Search extends KitQuestion {
  readonly need: CircuitNeed
  readonly atHand: AtHand
  readonly plan: BankQuestion['plan']
  readonly neededAh: BankQuestion['neededAh']
}

function chooseParts(search: Search): ChosenParts {
  const owned = ownedBank(search)
  if (search.need.kind === 'vehicle-socket') return socketParts(search, owned)
  const wiringOf = wiringsByBank(search)
  const best = owned && bestOf(search, [owned], wiringOf)
  if (best !== undefined) return best
  const leastAh = search.wish?.buyBattery === true ? (search.supply.battery?.capacityAh ?? 0) : 0
  const { plan, neededAh } = search
  const question = { plan, neededAh, leastAh }
  const batteries = onSale(search, search.range.parts.batteries)
  for (const chemistries of chemistryGroups(search.supply.battery?.chemistry)) {
    const found = bestOf(search, bought(search, banksFor(question, batteries, chemistries)), wiringOf)
    if (found !== undefined) return found
  }
  const bank = standardBank(search)
  const wiring = wiringOf(bank.bank ?? {})[0]
  return wiring === undefined ? { bank } : { bank, wiring }
}

/** Behind a vehicle socket there is one battery and one cable: the vehicle's. */
function socketParts(search: Search, owned: ChosenBank | undefined): ChosenParts {
  const { resistanceOhm } = standardCable(search.need, {})
  const does = owned !== undefined && carries(search, owned, resistanceOhm)
  return { bank: does ? owned : standardBank(search) }
}

/** The best of banks, given cheapest first, with the wiring that goes with each. */
function bestOf(
  search: Search,
  banks: Iterable<ChosenBank>,
  wiringOf: (bank: BankKind) => readonly Wiring[],
): Found | undefined {
  let best: Found | undefined
  for (const bank of banks) {
    // A dearer bank can win no more, unless a part is missing with the best so far.
    if (best !== undefined && best.wiring.missing === 0 && bank.cost >= costOf(best)) break
    const wiring = bestWiring(search, bank, { options: wiringOf(bank.bank ?? {}), best })
    if (wiring !== undefined) best = { bank, wiring }
  }
  return best
}

interface Found {
  readonly bank: ChosenBank
  readonly wiring: Wiring
}

function costOf({ bank, wiring }: Found): number {
  return bank.cost + wiring.cost
}

/** The first wiring with which a bank carries the plan, as long as it beats what has been found. */
function bestWiring(
  search: Search,
  bank: ChosenBank,
  { options, best }: { readonly options: readonly Wiring[]; readonly best: Found | undefined },
): Wiring | undefined {
  let tried = false
  for (const wiring of options) {
    if (best !== undefined && !isBetter({ bank, wiring }, best)) return undefined
    if (carries(search, bank, wiring.cable.resistanceOhm)) return wiring
    if (tried) continue
    tried = true
    // A bank that not even the cable of least resistance helps is passed over at once.
    const leastOhm = options.reduce((ohm, { cable }) => Math.min(ohm, cable.resistanceOhm), Infinity)
    if (!carries(search, bank, leastOhm)) return undefined
  }
  return undefined
}

function isBetter(a: Found, b: Found): boolean {
  if (a.wiring.missing !== b.wiring.missing) return a.wiring.missing < b.wiring.missing
  return costOf(a) < costOf(b)
}

/** A bank that nothing is known of is trusted; a cable of less resistance never does harm. */
function carries(search: Search, { bank, origin, blocks }: ChosenBank, cableResistanceOhm: number): boolean {
  if (bank === undefined) return true
  const { known } = search
  if (known !== undefined && origin === 'owned' && blocks === undefined) {
    if (known.carries && cableResistanceOhm <= known.cableResistanceOhm) return true
    if (!known.carries && cableResistanceOhm >= known.cableResistanceOhm) return false
  }
  return bankCarries({ ...search.plan, cableResistanceOhm }, bank)
}

function wiringsByBank(search: Search): (bank: BankKind) => readonly Wiring[] {
  const { need, atHand, range } = search
  if (need.kind === 'vehicle-socket') return () => []
  const cables = onSale(search, range.parts.cables)
  const fuses = onSale(search, range.parts.fuses)
  // Of a bank nothing counts here but the short-circuit current that its fuse must break.
  const known = new Map<number, readonly Wiring[]>()
  return (bank) => {
    const { requiredBreakingCapacityA } = fusePlace(need.nominalV, bank)
    const made = known.get(requiredBreakingCapacityA) ?? wirings({ need, bank, atHand, cables, fuses })
    known.set(requiredBreakingCapacityA, made)
    return made
  }
}

/** The battery that the buyer has, or may be taken to have; undefined where one is to be bought. */
function ownedBank(search: Search): ChosenBank | undefined {
  const { supply, atHand, need, wish } = search
  const vehicle = need.kind === 'vehicle-socket'
  const isWish = wish?.buyBattery === true && !vehicle
  const stated = bankOf(supply)
  if (stated !== undefined && !isWish) return asChosen(search, 'owned', stated)
  for (const { battery, quantity } of isWish ? [] : atHand.batteries) {
    const inSeries = supply.nominalV / battery.part.nominalV
    if (quantity % inSeries !== 0) continue
    const joined = { nominalV: supply.nominalV, inParallel: quantity / inSeries, conditions: {} }
    const blocks = blockBank(battery, joined)
    if (blocks !== undefined) return { ...asChosen(search, 'owned', blocks.bank), blocks }
  }
  const trusted = vehicle || (atHand.unchecked.has('battery') && !isWish)
  return trusted ? asChosen(search, 'unchecked', undefined) : undefined
}

function asChosen(search: Search, origin: ChosenBank['origin'], bank: BatteryBank | undefined): ChosenBank {
  const chemistry = bank?.chemistry ?? search.supply.battery?.chemistry ?? 'agm'
  return { origin, bank, chemistry, neededCapacityAh: search.neededAh(chemistry), cost: 0 }
}

function* bought(search: Search, banks: readonly BlockBank[]): Iterable<ChosenBank> {
  for (const blocks of banks) {
    yield { ...asChosen(search, 'buy', blocks.bank), blocks, cost: blocks.cost }
  }
}

/** What a bank from elsewhere would have to be: what the energy takes, or more where the currents do. */
function standardBank(search: Search): ChosenBank {
  const { supply, wish, need } = search
  const chosen = asChosen(search, 'standard', undefined)
  const { chemistry } = chosen
  const wishedAh = wish?.buyBattery === true ? (supply.battery?.capacityAh ?? 0) : 0
  const temperatureC = supply.battery?.temperatureC
  const { resistanceOhm } = standardCable(need, { chemistry, capacityAh: LARGEST_STANDARD_AH })
  const bankWith = (capacityAh: number): BatteryBank => {
    return { nominalV: supply.nominalV, chemistry, capacityAh, temperatureC }
  }
  const does = (capacityAh: number) =>
    carries(search, { ...chosen, bank: bankWith(capacityAh) }, resistanceOhm)
  const capacityAh = leastThatDoes(Math.max(1, chosen.neededCapacityAh, wishedAh), does)
  return { ...chosen, neededCapacityAh: capacityAh, bank: bankWith(capacityAh) }
}

/** Largest bank that is named. [Ah] */
const LARGEST_STANDARD_AH = 10_000

/** From a capacity upwards, to within a twentieth; the largest where none does. */
function leastThatDoes(fromAh: number, does: (capacityAh: number) => boolean): number {
  let high = fromAh
  while (high < LARGEST_STANDARD_AH && !does(high)) high *= 2
  if (high === fromAh) return high
  let low = high / 2
  for (let step = 0; step < 4; step += 1) {
    const middle = Math.sqrt(low * high)
    if (does(middle)) high = middle
    else low = middle
  }
  return high
}

function planOf({ demand, supply, inverter }: KitQuestion): BankQuestion['plan'] {
  return { demand, supply, inverter: fedBy(inverter) }
}

function onSale<T extends Priced<PartBase>>({ preferences }: KitQuestion, parts: readonly T[]): readonly T[] {
  return preferences.inStockOnly ? parts.filter(({ part }) => part.inStock) : parts
}
