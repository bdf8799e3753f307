import type { WorkingStep } from '../working.ts'
import { bankModel } from './bank.ts'
import type { BankSize, BankSizeQuestion } from './bank-size.ts'
import { type InverterLosses, inverterInputW } from './inverter-input.ts'
import { operatingPoint } from './operating-point.ts'
import { capacityAtCurrentAh } from './rate-capacity.ts'
import type { Recharge, RechargeQuestion } from './recharge.ts'
import type { RuntimePrediction, RuntimeQuestion } from './runtime.ts'

/**
 * The steps behind a run time, so that it can be followed by hand.
 *
 * @param question - The question asked
 * @param answer - Its answer
 * @returns Steps in the order of the arithmetic
 * @source battery-model-fit
 */
export function runtimeWorking(question: RuntimeQuestion, answer: RuntimePrediction): readonly WorkingStep[] {
  const model = bankModel(question.bank)
  const { dcPowerW, cutOffV = model.ratedEndV, cableResistanceOhm = 0 } = question
  const start = operatingPoint(model, model.startSocFraction, dcPowerW, cableResistanceOhm)
  return [
    {
      step: 'battery-rate-law',
      values: {
        law: model.rate.law,
        basis: model.rate.basis,
        ratedAh: model.bank.capacityAh,
        hourRateH: model.bank.hourRateH ?? 20,
        slowChargeAh: model.rate.chargeAh,
        scaleA: model.rate.scaleA,
        exponent: model.rate.exponent,
      },
      source: model.figures.kind.family === 'lead-acid' ? 'galushkin-2021' : 'lfp-block-sheets',
    },
    {
      step: 'battery-resistance',
      values: {
        internalResistanceOhm: model.resistanceOhm,
        cableResistanceOhm,
        assumed: model.bank.internalResistanceOhm === undefined,
      },
      source: 'battery-model-fit',
    },
    {
      step: 'battery-current-at-start',
      values: {
        dcPowerW,
        currentA: start?.currentA ?? 0,
        terminalV: start?.terminalV ?? 0,
        inverterV: start?.inverterV ?? 0,
        collapsed: start === undefined,
      },
      source: 'elementary-circuits',
    },
    {
      step: 'battery-capacity-at-current',
      values: {
        averageA: answer.averageA,
        capacityAh: capacityAtCurrentAh(model.rate, answer.averageA) * model.capacityShare,
        healthFraction: model.healthFraction,
        temperatureC: model.temperatureC,
      },
      source: 'battery-model-fit',
    },
    {
      step: 'battery-run-end',
      values: {
        startSocFraction: model.startSocFraction,
        minSocFraction: model.minSocFraction,
        endSocFraction: answer.endSocFraction,
        cutOffV,
        limitedBy: answer.limitedBy,
      },
    },
    {
      step: 'battery-run-time',
      values: {
        hours: answer.hours,
        hoursLow: answer.hoursLow,
        hoursHigh: answer.hoursHigh,
        usableWh: answer.usableWh,
      },
      source: 'battery-model-fit',
    },
  ]
}

/**
 * The step from an inverter's output to its input.
 *
 * @param inverter - Losses and output power, as for {@link inverterInputW}
 * @returns One step
 * @source cec-inverter-tests
 */
export function inverterInputWorking(inverter: InverterLosses & { readonly outputW: number }): WorkingStep {
  const inputW = inverterInputW(inverter)
  const { outputW, continuousW } = inverter
  return {
    step: 'inverter-input',
    values: {
      outputW,
      continuousW,
      loadFraction: outputW / continuousW,
      inputW,
      lossW: inputW - outputW,
      efficiencyFraction: outputW / inputW,
    },
    source: 'cec-inverter-tests',
  }
}

/**
 * The step from a day's energy to a bank.
 *
 * @param question - The question asked
 * @param answer - Its answer
 * @returns One step
 * @source ieee-1013
 */
export function bankSizeWorking(question: BankSizeQuestion, answer: BankSize): WorkingStep {
  return {
    step: 'bank-size',
    values: {
      energyWhPerDay: question.energyWhPerDay,
      days: question.days,
      nominalV: question.nominalV,
      usableFraction: answer.usableFraction,
      temperatureFraction: answer.temperatureFraction,
      endOfLifeFraction: question.endOfLifeFraction ?? 1,
      marginFraction: question.marginFraction ?? 0,
      byEnergyAh: answer.byEnergyAh,
      byCurrentAh: answer.byCurrentAh,
      capacityAh: answer.capacityAh,
    },
    source: 'ieee-1013',
  }
}

/**
 * The step from energy taken to what puts it back.
 *
 * @param question - The question asked
 * @param answer - Its answer
 * @returns One step; a way of charging that was not asked for is left out
 * @source battery-handbooks
 */
export function rechargeWorking(question: RechargeQuestion, answer: Recharge): WorkingStep {
  const { sunHours, chargerA } = question
  return {
    step: 'recharge',
    values: {
      energyWh: question.energyWh,
      nominalV: question.bank.nominalV,
      chargeAh: answer.chargeAh,
      energyFromSourceWh: answer.energyFromSourceWh,
      ...(sunHours !== undefined && answer.solarW !== undefined ? { sunHours, solarW: answer.solarW } : {}),
      ...(chargerA !== undefined && answer.chargerHours !== undefined
        ? { chargerA, chargerHours: answer.chargerHours, absorptionHours: answer.absorptionHours }
        : {}),
    },
    source: 'battery-handbooks',
  }
}
