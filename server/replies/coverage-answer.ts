import type {
  Coverage,
  CoverageAnswer,
  CoverageChanges,
  EverydayPlan,
  PreparedRange,
} from '../../core/index.ts'
import type { CoveragePreview, CoverageReply } from '../../shared/contract/coverage.ts'
import { hundredth } from './rounding.ts'

type Stock = CoverageReply['stock']
type ReplyAnswer = CoverageReply['plans'][number]['answers'][number]

/**
 * The reply of GET coverage.
 *
 * @param range - The range that was tried
 * @param coverage - What it can and can't serve
 * @param stock - What counted
 * @returns The body
 */
export function coverageReply(range: PreparedRange, coverage: Coverage, stock: Stock): CoverageReply {
  return {
    range: { shopId: range.document.shop.id, version: range.version },
    stock,
    voltages: [...coverage.voltages],
    plans: coverage.plans.map(({ plan, answers }) => ({
      ...planReply(plan),
      loads: plan.loads.map(({ appliance, quantity = 1 }) => ({ appliance, quantity })),
      takeTurns: (plan.takeTurns ?? []).map((group) => [...group]),
      answers: answers.map(answerReply),
    })),
    units: coverage.units.map((unit) => ({
      ...unit,
      shadowedBy: [...unit.shadowedBy],
      codes: [...unit.codes],
    })),
    gaps: coverage.gaps.map((gap) => ({
      ...gap,
      lowestNeedW: hundredth(gap.lowestNeedW),
      highestNeedW: hundredth(gap.highestNeedW),
      planIds: [...gap.planIds],
      codes: [...gap.codes],
    })),
    kits: coverage.kits.map((kit) => ({
      ...kit,
      missing: [...kit.missing],
      batterySkus: [...kit.batterySkus],
    })),
    batteries: coverage.batteries.map((battery) => ({
      ...battery,
      shortPlanIds: [...battery.shortPlanIds],
    })),
  }
}

/**
 * The reply of POST coverage/preview.
 *
 * @param range - The range in force
 * @param changes - What a draft changes
 * @param stock - What counted
 * @returns The body
 */
export function coveragePreview(
  range: PreparedRange,
  changes: CoverageChanges,
  stock: Stock,
): CoveragePreview {
  const { totals, changed, nowNeverRecommended, nowRecommended } = changes
  return {
    range: { shopId: range.document.shop.id, version: range.version },
    stock,
    totals: { combination: { ...totals.combination }, appliance: { ...totals.appliance } },
    changed: changed.map(({ plan, answers }) => ({
      ...planReply(plan),
      answers: answers.map(({ nominalV, before, after }) => ({
        nominalV,
        before: before === undefined ? null : answerReply(before),
        after: after === undefined ? null : answerReply(after),
      })),
    })),
    nowNeverRecommended: [...nowNeverRecommended],
    nowRecommended: [...nowRecommended],
  }
}

function planReply({ id, kind, name }: EverydayPlan) {
  return { id, kind, name }
}

function answerReply(answer: CoverageAnswer): ReplyAnswer {
  const { nominalV, outcome, requiredContinuousW, recommended, overTwice, codes, nearestSku } = answer
  return {
    nominalV,
    outcome,
    requiredContinuousW: hundredth(requiredContinuousW),
    sku: recommended?.sku ?? null,
    continuousW: recommended?.continuousW ?? null,
    overTwice,
    codes: [...codes],
    nearestSku: nearestSku ?? null,
  }
}
