import { type Finding, finding } from '../advice/findings.ts'
import type { StartMoment } from '../loads/added-up.ts'
import type { PreparedInverter } from '../range/prepare-range.ts'
import { connectionFindings } from './connection.ts'
import type { Need } from './need.ts'

/** Room for the last bit of a floating-point product, so that "just enough" is enough. */
export const ROUNDING = 1 + 1e-9

/**
 * Mains voltages that count as the same. Appliances for 220, 230 and 240 V run on each other's supply, as do
 * those for 110, 115 and 120 V.
 *
 * @source iec60038 (230 V +-10 %; 120 V systems)
 */
const SAME_MAINS_FRACTION = 0.1

/**
 * Every check of one inverter against a need; those of the battery come after the choice.
 *
 * @param inverter - The inverter to judge
 * @param need - What is asked of it
 * @returns Findings, the gravest reasons first; none of severity `fail` where the unit fits
 */
export function checkInverter(inverter: PreparedInverter, need: Need): readonly Finding[] {
  const findings: Finding[] = []
  policyFindings(need, findings)
  inputFindings(inverter, need, findings)
  outputFindings(inverter, need, findings)
  powerFindings(inverter, need, findings)
  startingFindings(inverter, need, findings)
  waveformFindings(inverter, need, findings)
  connectionFindings(inverter, need, findings)
  wishFindings(inverter, need, findings)
  return findings
}

/**
 * Whether a unit with these findings may be recommended.
 *
 * @param findings - What {@link checkInverter} found
 * @returns True where nothing rules it out
 */
export function fits(findings: readonly Finding[]): boolean {
  return !findings.some((found) => found.severity === 'fail')
}

function policyFindings({ notAdvised, notAdvisedCategories }: Need, findings: Finding[]): void {
  if (notAdvised.length === 0) return
  const ids = notAdvised.map((load) => load.id)
  findings.push(finding('not-advised', 'fail', { categories: notAdvisedCategories }, ids))
}

function inputFindings({ unit }: PreparedInverter, { supply }: Need, findings: Finding[]): void {
  if (unit.inputNominalV === supply.nominalV) return
  const values = { inputNominalV: unit.inputNominalV, supplyNominalV: supply.nominalV }
  findings.push(finding('input-voltage-mismatch', 'fail', values))
}

function outputFindings({ unit }: PreparedInverter, { mains }: Need, findings: Finding[]): void {
  if (Math.abs(unit.outputV - mains.nominalV) > SAME_MAINS_FRACTION * mains.nominalV) {
    const values = { outputV: unit.outputV, mainsV: mains.nominalV }
    findings.push(finding('output-voltage-mismatch', 'fail', values))
  }
  if (unit.outputHz !== mains.frequencyHz) {
    const values = { outputHz: unit.outputHz, mainsHz: mains.frequencyHz }
    findings.push(finding('output-frequency-mismatch', 'fail', values))
  }
}

function powerFindings({ unit, figures }: PreparedInverter, need: Need, findings: Finding[]): void {
  const { runningW, runningVA } = need.demand
  if (need.requiredContinuousW > unit.continuousW * ROUNDING) {
    findings.push(
      finding('continuous-power-short', 'fail', {
        runningW,
        requiredContinuousW: need.requiredContinuousW,
        continuousW: unit.continuousW,
        headroomFraction: need.policy.headroomFraction,
      }),
    )
  }
  if (runningVA > figures.continuousVA * ROUNDING) {
    findings.push(finding('apparent-power-short', 'fail', { runningVA, continuousVA: figures.continuousVA }))
  }
}

function startingFindings({ unit }: PreparedInverter, need: Need, findings: Finding[]): void {
  let overSurge: StartMoment | undefined
  let overTime: StartMoment | undefined
  for (const moment of need.demand.startMoments) {
    if (moment.startingW <= unit.continuousW) continue
    if (moment.startingW > unit.surgeW * ROUNDING) {
      if (overSurge === undefined || moment.startingW > overSurge.startingW) overSurge = moment
    } else if (moment.startingS > unit.surgeS) {
      if (overTime === undefined || moment.startingS > overTime.startingS) overTime = moment
    }
  }
  if (overSurge !== undefined) {
    const values = { startingW: overSurge.startingW, surgeW: unit.surgeW }
    findings.push(finding('starting-power-short', 'fail', values, [overSurge.loadId]))
  }
  if (overTime !== undefined) {
    const values = {
      startingW: overTime.startingW,
      startingS: overTime.startingS,
      surgeS: unit.surgeS,
      continuousW: unit.continuousW,
    }
    findings.push(finding('surge-time-short', 'fail', values, [overTime.loadId]))
  }
}

function waveformFindings({ unit }: PreparedInverter, need: Need, findings: Finding[]): void {
  if (unit.waveform === 'pure-sine') return
  if (need.sineRequired.length > 0) {
    findings.push(finding('wave-form-unsuitable', 'fail', {}, need.sineRequired))
  }
  if (need.sineAdvised.length > 0) {
    findings.push(finding('wave-form-care', 'care', {}, need.sineAdvised))
  }
}

function wishFindings({ unit, priceNumber }: PreparedInverter, need: Need, findings: Finding[]): void {
  const { preferences } = need
  if (preferences.inStockOnly && !unit.inStock) findings.push(finding('out-of-stock', 'fail', {}))
  const missing = preferences.features?.filter((feature) => !unit.features.includes(feature)) ?? []
  if (missing.length > 0) findings.push(finding('feature-missing', 'fail', { features: missing }))
  if (preferences.maxPrice !== undefined && priceNumber > need.maxPriceNumber) {
    const values = { price: unit.price, maxPrice: preferences.maxPrice, currency: need.currency }
    findings.push(finding('over-price', 'fail', values))
  }
  const needed = need.demand.outletsNeeded
  if (needed > unit.outlets) {
    findings.push(finding('outlets-short', 'note', { outlets: unit.outlets, needed }))
  }
}
