import type { Finding, Load, Plan, PreparedRange, Verdict, WorkingStep } from '../../core/index.ts'
import type { DemandAnswer, FindingAnswer, SizingAnswer } from '../../shared/contract/answers.ts'
import type { Writer } from '../../shared/messages/index.ts'
import { hundredth, hundredthOrFiner, tenThousandth } from './rounding.ts'

/**
 * A finding with its sentence and wire-ready values.
 *
 * @param found - The finding
 * @param writer - Whose language it is written in
 * @returns The finding as the contract has it
 */
export function findingAnswer(found: Finding, writer: Writer): FindingAnswer {
  const values = roundedValues(found.values)
  const message = writer.finding(found)
  const { code, severity, loadIds } = found
  return loadIds === undefined
    ? { code, severity, values, message }
    : { code, severity, loadIds: [...loadIds], values, message }
}

/**
 * A step of the working as the contract has it.
 *
 * @param step - The step
 * @param writer - Whose language its title is written in
 * @returns The step with title and source
 */
export function workingAnswer(
  step: WorkingStep,
  writer: Writer,
): NonNullable<SizingAnswer['working']>[number] {
  return {
    step: step.step,
    title: writer.step(step.step),
    loadId: step.loadId,
    values: roundedValues(step.values),
    shown: writer.stepValues(step.values).map((value) => ({ ...value })),
    source: step.source,
    sourceDocument: step.source === undefined ? undefined : writer.source(step.source),
  }
}

/**
 * Values as they go over the wire: numbers rounded, the rest as it is.
 *
 * @param values - Values of a finding, a reason or a step
 * @returns The same, rounded
 */
export function roundedValues(values: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const rounded: Record<string, unknown> = {}
  for (const name of Object.keys(values)) {
    const value = values[name]
    rounded[name] = typeof value === 'number' ? hundredthOrFiner(value) : value
  }
  return rounded
}

/**
 * The demand as the contract has it.
 *
 * @param plan - The plan that the request made
 * @returns Demand with one entry a load
 */
export function demandAnswer({ demand, need }: Plan): DemandAnswer {
  return {
    runningW: hundredth(demand.runningW),
    runningVA: hundredth(demand.runningVA),
    startingW: hundredth(demand.startingW),
    startingS: hundredth(demand.startingS),
    requiredContinuousW: hundredth(need.requiredContinuousW),
    energyWhPerDay: hundredth(demand.energyWhPerDay),
    waveform: demand.waveform,
    loads: demand.loads.map(loadAnswer),
  }
}

function loadAnswer(load: Load): DemandAnswer['loads'][number] {
  return {
    id: load.id,
    name: load.name,
    appliance: load.applianceId,
    quantity: load.quantity,
    runningW: hundredth(load.runningW),
    runningVA: hundredth(load.runningVA),
    startingW: hundredth(load.startingW),
    startingS: load.startingS,
    startKind: load.startKind,
    minutesPerDay: load.minutesPerDay,
    energyWhPerDay: hundredth(load.energyWhPerDay),
    waveform: load.waveform,
    medical: load.medical,
    estimated: load.estimated,
  }
}

/**
 * The recommended unit as the contract has it, with what it was assumed to have.
 *
 * @param verdict - The unit's verdict
 * @param plan - The plan it was judged by
 * @param range - The range it is from
 * @param writer - Whose language it is written in
 * @returns The unit with its findings
 */
export function recommendedAnswer(
  verdict: Verdict,
  plan: Plan,
  range: PreparedRange,
  writer: Writer,
): NonNullable<SizingAnswer['recommended']> {
  const { unit, figures } = verdict.inverter
  return {
    sku: unit.sku,
    name: unit.name,
    continuousW: unit.continuousW,
    surgeW: unit.surgeW,
    loadFraction: tenThousandth(plan.demand.runningW / unit.continuousW),
    price: unit.price,
    currency: range.document.shop.currency,
    url: unit.url,
    imageUrl: unit.imageUrl,
    findings: [...verdict.findings, ...figures.assumed].map((found) => findingAnswer(found, writer)),
  }
}

/**
 * A unit that was considered, as the contract has it.
 *
 * @param verdict - Its verdict
 * @param writer - Whose language it is written in
 * @returns The unit, whether it fits and why not
 */
export function consideredAnswer(verdict: Verdict, writer: Writer): SizingAnswer['considered'][number] {
  const { unit } = verdict.inverter
  return {
    sku: unit.sku,
    name: unit.name,
    continuousW: unit.continuousW,
    fits: verdict.fits,
    findings: verdict.findings.map((found) => findingAnswer(found, writer)),
  }
}
