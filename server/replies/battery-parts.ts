import {
  type BatteryAnswer,
  type CircuitAnswer as CoreCircuit,
  type NeededBank,
  RECHARGE_WITH,
  type SteadyAnswer,
} from '../../core/index.ts'
import type { CircuitAnswer, RuntimeAnswer, SizingAnswer } from '../../shared/contract/answers.ts'
import type { Writer } from '../../shared/messages/index.ts'
import { findingAnswer } from './parts.ts'
import { hundredth, tenThousandth } from './rounding.ts'

/**
 * Cable and fuse as the contract has them.
 *
 * @param circuit - The engine's circuit
 * @param writer - Whose language its findings are written in
 * @returns The circuit, or null where none can be built of standard parts
 */
export function circuitAnswer(circuit: CoreCircuit | undefined, writer: Writer): CircuitAnswer | null {
  if (circuit === undefined || !circuit.design.ok) return null
  const { design } = circuit
  const { conductor, fuse } = design
  return {
    worstCaseA: hundredth(design.worstCaseA),
    oneWayLengthM: hundredth(circuit.oneWayLengthM),
    conductor: {
      areaMm2: hundredth(conductor.areaMm2),
      awg: conductor.awg,
      label: conductor.label,
      parallelPairs: conductor.parallelPairs,
      insulationC: conductor.insulationC,
      ampacityA: hundredth(conductor.ampacityA),
      dropV: tenThousandth(conductor.dropV),
      dropFraction: tenThousandth(conductor.dropFraction),
    },
    governedBy: design.governedBy,
    fuse:
      fuse === null
        ? null
        : {
            ratingA: fuse.ratingA,
            style: fuse.style,
            minA: hundredth(fuse.minA),
            maxA: hundredth(fuse.maxA),
            breakingCapacityA: fuse.requiredBreakingCapacityA,
            voltageV: hundredth(fuse.requiredVoltageV),
          },
    connection: design.connection,
    findings: circuit.findings.map((found) => findingAnswer(found, writer)),
  }
}

/**
 * Run time as the contract has it; of a plan with its day and recharge.
 *
 * @param battery - The engine's answer
 * @param writer - Whose language its findings are written in
 * @returns The run time
 */
export function runtimeAnswer(battery: BatteryAnswer | SteadyAnswer, writer: Writer): RuntimeAnswer {
  const { runtime } = battery
  return {
    hours: hundredth(runtime.hours),
    hoursLow: hundredth(runtime.hoursLow),
    hoursHigh: hundredth(runtime.hoursHigh),
    limitedBy: runtime.limitedBy,
    usableWh: hundredth(runtime.usableWh),
    averageA: hundredth(runtime.averageA),
    ...('day' in battery ? planParts(battery) : {}),
    curve: runtime.curve.map((point) => ({
      hours: tenThousandth(point.hours),
      socFraction: tenThousandth(point.socFraction),
      terminalV: hundredth(point.terminalV),
      currentA: hundredth(point.currentA),
    })),
    findings: battery.findings.map((found) => findingAnswer(found, writer)),
  }
}

function planParts({
  day,
  recharge,
}: BatteryAnswer): Pick<RuntimeAnswer, 'daysOfAutonomy' | 'day' | 'recharge'> {
  return {
    daysOfAutonomy: hundredth(day.daysOfAutonomy),
    day: {
      energyWh: hundredth(day.wantedWh),
      fits: day.ok,
      remainingSocFraction: tenThousandth(day.socLeftFraction),
    },
    recharge: {
      energyWh: hundredth(recharge.energyFromSourceWh),
      chargeAh: hundredth(recharge.chargeAh),
      solarW: hundredth(recharge.solarW ?? 0),
      chargerHours: hundredth(recharge.chargerHours ?? 0),
      absorptionHours: recharge.absorptionHours,
      ...RECHARGE_WITH,
    },
  }
}

/**
 * The battery that the plan takes, as the contract has it.
 *
 * @param bank - The engine's figure
 * @returns The bank, or null where there is no unit to feed
 */
export function bankAnswer(bank: NeededBank | undefined): SizingAnswer['bank'] {
  if (bank === undefined) return null
  const { chemistry, nominalV, days, energyWhPerDay, size } = bank
  return {
    chemistry,
    nominalV,
    days,
    energyWhPerDay: hundredth(energyWhPerDay),
    neededCapacityAh: hundredth(size.capacityAh),
    boundBy: size.boundBy,
  }
}
