import type { FindingCode } from '../../advice/findings.ts'
import { bankModel } from '../../battery/bank.ts'
import { dcPower, fedBy } from '../../battery-side/fed-inverter.ts'
import { type BatteryOutlook, type SteadyOutlook, steadyOutlook } from '../../battery-side/outlook.ts'
import type { CircuitAnswer } from '../../circuit-side.ts'
import type { Load } from '../../loads/load.ts'
import type { PreparedInverter } from '../../range/prepare-range.ts'
import { bankOf, outlookOf, wireOhm } from '../../supply-side.ts'
import { type Capability, capabilityOf, startLimitW } from '../capability.ts'
import { type Block, type BlockStart, blocksOf, idsOf } from './blocks.ts'
import {
  circuitOf,
  compareOutcomes,
  type Ground,
  gainOf,
  isUnbearable,
  mindingAlso,
  type Standing,
  smallestThatFits,
  standingOf,
} from './ground.ts'
import { type ChangedPlan, restricted } from './plan-change.ts'
import type { WhatIf } from './what-if.ts'

/** Two units are told of beside one that does only where they cost this much less. Our own bound. */
const CHEAPER_BY_FRACTION = 0.2

/** So many blocks are dealt out in every way, 511 splits at most; smaller ones stay together as one block. */
const BLOCKS_DEALT = 10

/** Splits that are sized in full, best first by wave form and price. */
const SPLITS_SIZED = 2

/** Room for the last bits of sums made in another order; the checks decide there. [W] */
const SLACK_W = 1e-6

/**
 * The loads split over two units of the range, where none alone carries them or where two cost much less.
 *
 * Every split of up to ten blocks (take-turns groups and single loads) is looked at; beyond ten the smallest
 * stay together as one. Each part gets the smallest unit that fits it. Of all splits the one with the least
 * wave-form trouble, then the lowest price, is taken.
 *
 * @param ground - The ground
 * @returns At most one
 */
export function twoUnits(ground: Ground): readonly WhatIf[] {
  const { now, plan, unit } = ground
  if (now.outcome === 'not-advised') return []
  const blocks = dealt(blocksOf(plan))
  if (blocks.length < 2) return []
  const mostPrice =
    unit === undefined ? Number.POSITIVE_INFINITY : (1 - CHEAPER_BY_FRACTION) * unit.priceNumber
  for (const { secondMask } of cheapestSplits(ground, blocks, mostPrice)) {
    const isSecond = (index: number) => (secondMask & (1 << index)) !== 0
    const first = blocks.filter((_, index) => !isSecond(index))
    const second = blocks.filter((_, index) => isSecond(index))
    const whatIf = sizedSplit(ground, [first, second])
    const price = Number(whatIf?.price ?? Number.POSITIVE_INFINITY)
    if (whatIf === undefined || price > mostPrice || isUnbearable(now, whatIf)) continue
    const worse = compareOutcomes(whatIf.outcome, now.outcome)
    if (worse < 0 || (worse === 0 && unit !== undefined && isNothingNew(ground, whatIf.cares)))
      return [whatIf]
  }
  return []
}

/** Whether what has to be minded is no more than now; anything is, where nothing fits. */
function isNothingNew({ unit, now }: Ground, cares: ReadonlySet<FindingCode>): boolean {
  if (unit === undefined) return true
  for (const code of cares) if (!now.cares.has(code)) return false
  return true
}

/** The smallest blocks beyond the limit as one. */
function dealt(blocks: readonly Block[]): readonly Block[] {
  if (blocks.length <= BLOCKS_DEALT) return blocks
  const rest = blocks.slice(BLOCKS_DEALT - 1)
  const runningW = sumOf(rest.map((block) => block.runningW))
  const joined: Block = {
    loads: rest.flatMap(({ loads }) => loads),
    runningW,
    runningVA: sumOf(rest.map(({ runningVA }) => runningVA)),
    minutes: sumOf(rest.map(({ minutes }) => minutes)),
    starts: rest.flatMap((block) =>
      block.starts.map((start) => ({ ...start, aloneW: runningW + start.overW })),
    ),
  }
  return [...blocks.slice(0, BLOCKS_DEALT - 1), joined]
}

/** A unit with what its choice for one part turns on. */
interface Candidate {
  readonly inverter: PreparedInverter
  readonly capability: Capability
  readonly pure: boolean
}

/** A split of the blocks; the bits of `secondMask` stand for those of the second part. */
interface Split {
  readonly secondMask: number
  /** Parts that a modified sine wave unit would feed with loads that are better off without. */
  readonly waveCares: number
  readonly price: number
}

/** The sums of a set of blocks. */
interface Sums {
  readonly runningW: number
  readonly runningVA: number
  readonly sineRequired: boolean
  readonly sineAdvised: boolean
  readonly starts: readonly BlockStart[]
}

function cheapestSplits(ground: Ground, blocks: readonly Block[], mostPrice: number): readonly Split[] {
  const { need } = ground.plan
  const candidates = ground.hopefuls.map(({ inverter }) => ({
    inverter,
    capability: capabilityOf(inverter, need),
    pure: inverter.unit.waveform === 'pure-sine',
  }))
  const sums = sumsOfSets(ground, blocks)
  const splits: Split[] = []
  const all = sums.length - 1
  // The first block stays in the first part: its mirror image is the same split.
  for (let secondMask = 2; secondMask <= all; secondMask += 2) {
    const split = pricedSplit(candidates, sums, secondMask)
    if (split === undefined || split.price > mostPrice) continue
    const place = splits.findIndex(
      (kept) => (split.waveCares - kept.waveCares || split.price - kept.price) < 0,
    )
    splits.splice(place < 0 ? splits.length : place, 0, split)
    if (splits.length > SPLITS_SIZED) splits.pop()
  }
  return splits
}

/** Sums of every set of blocks, each made of a smaller set's and one block; the index is the set's bits. */
function sumsOfSets({ plan: { need } }: Ground, blocks: readonly Block[]): readonly Sums[] {
  const sineRequired = new Set(need.sineRequired)
  const sineAdvised = new Set(need.sineAdvised)
  const empty = { runningW: 0, runningVA: 0, sineRequired: false, sineAdvised: false, starts: [] }
  const sums: Sums[] = [empty]
  for (const { runningW, runningVA, starts, loads } of blocks) {
    const required = loads.some(({ id }) => sineRequired.has(id))
    const advised = loads.some(({ id }) => sineAdvised.has(id))
    for (const set of [...sums]) {
      sums.push({
        runningW: set.runningW + runningW,
        runningVA: set.runningVA + runningVA,
        sineRequired: set.sineRequired || required,
        sineAdvised: set.sineAdvised || advised,
        starts: starts.length === 0 ? set.starts : [...set.starts, ...starts],
      })
    }
  }
  return sums
}

function pricedSplit(
  candidates: readonly Candidate[],
  sums: readonly Sums[],
  secondMask: number,
): Split | undefined {
  const first = sums[sums.length - 1 - secondMask]
  const second = sums[secondMask]
  const one = first && smallestFor(candidates, first)
  const two = one && second && smallestFor(candidates, second)
  if (first === undefined || second === undefined || one === undefined || two === undefined) return undefined
  const cares = ({ pure }: Candidate, part: Sums) => (!pure && part.sineAdvised ? 1 : 0)
  return {
    secondMask,
    waveCares: cares(one, first) + cares(two, second),
    price: one.inverter.priceNumber + two.inverter.priceNumber,
  }
}

/** The smallest unit by sums that are there already; a hair too kind, the checks follow. */
function smallestFor(candidates: readonly Candidate[], part: Sums): Candidate | undefined {
  const runningW = part.runningW - SLACK_W
  for (const candidate of candidates) {
    const { capability, pure } = candidate
    if (runningW > capability.runningW || part.runningVA - SLACK_W > capability.runningVA) continue
    if (part.sineRequired && !pure) continue
    const starts = part.starts.every(
      ({ overW, startingS }) => runningW + overW <= startLimitW(capability, startingS),
    )
    if (starts) return candidate
  }
  return undefined
}

interface SizedPart {
  readonly plan: ChangedPlan
  readonly inverter: PreparedInverter
  readonly circuit: CircuitAnswer
  readonly standing: Standing
  readonly outlook: BatteryOutlook | undefined
  readonly loadIds: readonly string[]
}

function sizedSplit(ground: Ground, split: readonly (readonly Block[])[]): WhatIf | undefined {
  const parts: SizedPart[] = []
  for (const blocks of split) {
    const part = sizedPart(ground, blocks)
    if (part === undefined) return undefined
    parts.push(part)
  }
  const [one, two] = parts
  if (one === undefined || two === undefined) return undefined
  const together = onOneBattery(ground, [one, two])
  const [worse, better] =
    compareOutcomes(one.standing.outcome, two.standing.outcome) > 0 ? [one, two] : [two, one]
  const both = mindingAlso(worse.standing, better.standing.cares)
  const standing = together === undefined ? both : mindingAlso(both, together.cares)
  const units = parts.map(({ inverter }) => inverter)
  return {
    kind: 'two-units',
    loadIds: two.loadIds,
    change: { split: parts.map(({ loadIds, inverter }) => ({ loadIds, sku: inverter.unit.sku })) },
    values: {},
    ...gainOf(ground, standing, units, together?.hours),
  }
}

function sizedPart(ground: Ground, blocks: readonly Block[]): SizedPart | undefined {
  const ids = new Set(blocks.flatMap(idsOf))
  const loads: readonly Load[] = ground.plan.demand.loads.filter(({ id }) => ids.has(id))
  const plan = restricted(ground.plan, loads)
  const verdict = smallestThatFits(ground, plan)
  if (verdict === undefined) return undefined
  const { inverter } = verdict
  const circuit = circuitOf(ground, inverter)
  const alone = standingOf(plan, verdict, circuit.findings)
  const outlook = outlookOf(plan, inverter, circuit, (cares) => isNothingNew(ground, cares))
  if (outlook === undefined && plan.need.supply.battery !== undefined) return undefined
  const standing = outlook === undefined ? alone : mindingAlso(alone, outlook.cares)
  return { plan, inverter, circuit, standing, outlook, loadIds: loads.map(({ id }) => id) }
}

/** Both units draw on the same battery: what it goes through at once, and in a day. */
function onOneBattery({ plan }: Ground, parts: readonly [SizedPart, SizedPart]): SteadyOutlook | undefined {
  const bank = bankOf(plan.need.supply)
  if (bank === undefined) return undefined
  const drawn = (power: 'typicalRunningW' | 'runningW' | 'startingW') =>
    parts.map(({ plan: { demand }, inverter }) => dcPower(fedBy(inverter), demand[power]))
  const running = drawn('runningW')
  const starting = drawn('startingW')
  const extra = running.map((runningW, index) => (starting[index] ?? runningW) - runningW)
  const steady = steadyOutlook({
    bank,
    dcPowerW: sumOf(drawn('typicalRunningW')),
    dcPowerRunningW: sumOf(running),
    dcPowerStartingW: sumOf(running) + Math.max(...extra),
    cutOffV: Math.max(...parts.map(({ inverter }) => inverter.figures.cutOffV)),
    cableResistanceOhm: Math.max(...parts.map(({ circuit }) => wireOhm(circuit))) / 2,
  })
  const { startSocFraction, minSocFraction } = bankModel(bank)
  const left = parts.map(({ outlook }) => outlook?.socLeftFraction ?? startSocFraction)
  const used = sumOf(left.map((socFraction) => startSocFraction - socFraction))
  const runsOut = startSocFraction - used < minSocFraction
  return runsOut ? { ...steady, cares: new Set([...steady.cares, 'day-not-carried']) } : steady
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0)
}
