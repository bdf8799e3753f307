import {
  bankSizeWorking,
  inverterInputWorking,
  rechargeWorking,
  runtimeWorking,
} from './battery/battery-working.ts'
import { RECHARGE_WITH } from './battery-side/battery-answer.ts'
import { dcPower, fedBy } from './battery-side/fed-inverter.ts'
import type { Load } from './loads/load.ts'
import type { Sizing } from './sizing.ts'
import type { WorkingStep } from './working.ts'

/**
 * Every step from rating plate to fuse and run time, in the order of the arithmetic.
 *
 * @param sizing - The engine's answer
 * @returns Steps with names, numbers, units and sources
 */
export function sizingWorking(sizing: Sizing): readonly WorkingStep[] {
  return [
    ...sizing.plan.demand.loads.flatMap(loadSteps),
    ...demandSteps(sizing),
    ...unitSteps(sizing),
    ...(sizing.circuit?.design.working ?? []),
    ...batterySteps(sizing),
  ]
}

function loadSteps(load: Load): readonly WorkingStep[] {
  const { id: loadId, quantity, runningW, startingW, startingS, typicalW, dutyFraction, minutesPerDay } = load
  const steps: WorkingStep[] = load.working.map((step) => ({ ...step, loadId }))
  if (startingW > runningW) {
    steps.push({ step: 'load-start', values: { runningW, startingW, startingS }, loadId })
  }
  steps.push({
    step: 'load-energy',
    values: { quantity, typicalW, dutyFraction, minutesPerDay, energyWhPerDay: load.energyWhPerDay },
    loadId,
  })
  return steps
}

function demandSteps({ plan }: Sizing): readonly WorkingStep[] {
  const { demand, need } = plan
  const { runningW, runningVA, typicalRunningW, startingW, startingS, energyWhPerDay } = demand
  return [
    {
      step: 'demand-running',
      values: { runningW, runningVA, typicalRunningW },
      source: 'cooperative-generator-table',
    },
    {
      step: 'demand-starting',
      values: { runningW, startingW, startingS },
      source: 'cooperative-generator-table',
    },
    { step: 'demand-energy', values: { energyWhPerDay } },
    {
      step: 'headroom',
      values: {
        runningW,
        headroomFraction: need.policy.headroomFraction,
        requiredContinuousW: need.requiredContinuousW,
      },
      source: 'nec-210-19',
    },
  ]
}

function unitSteps({ recommended }: Sizing): readonly WorkingStep[] {
  if (recommended === undefined) return []
  const { unit, figures } = recommended.inverter
  const { continuousW, surgeW, surgeS } = unit
  const { continuousVA, efficiencyFullFraction, idleW, cutOffV } = figures
  return [
    {
      step: 'unit-limits',
      values: {
        sku: unit.sku,
        continuousW,
        continuousVA,
        surgeW,
        surgeS,
        efficiencyFullFraction,
        idleW,
        cutOffV,
      },
      source: 'shop-stated',
    },
  ]
}

function batterySteps({ plan, recommended, circuit, battery, neededBank }: Sizing): readonly WorkingStep[] {
  if (recommended === undefined || neededBank === undefined) return []
  const inverter = fedBy(recommended.inverter)
  const { battery: stated, nominalV } = plan.need.supply
  const outputW = plan.demand.typicalRunningW
  const steps: WorkingStep[] = [inverterInputWorking({ ...inverter, outputW })]
  if (battery !== undefined && stated !== undefined) {
    const bank = { ...stated, nominalV }
    const cableResistanceOhm = circuit?.design.ok ? circuit.design.conductor.resistanceOhm : 0
    const question = {
      bank,
      dcPowerW: dcPower(inverter, outputW),
      cutOffV: inverter.cutOffV,
      cableResistanceOhm,
    }
    steps.push(...runtimeWorking(question, battery.runtime))
    steps.push(rechargeWorking({ bank, energyWh: battery.day.energyWh, ...RECHARGE_WITH }, battery.recharge))
  }
  steps.push(bankSizeWorking(neededBank, neededBank.size))
  return steps
}
