import type { KitRole, KitState } from '../../advice/vocabulary.ts'
import type { PartBase } from '../range-document.ts'
import type { AtHand } from './at-hand.ts'
import type { LaidCable, PartOrigin } from './cables.ts'
import { type CircuitNeed, fusePlace, type StandardCable, standardCable } from './circuit-need.ts'
import { type PlacedConnector, takesConnector } from './connectors.ts'
import type { ChosenBank, ChosenParts, KitQuestion } from './kit-choice.ts'
import type { Kit, KitLine, KitReason, KitSpecification } from './kit-types.ts'
import { moneyText, thousandthsOf } from './money.ts'
import { sizeNote } from './size-note.ts'
import type { Wiring } from './wiring.ts'

/** A kit as it was chosen. */
export interface ChosenKit {
  readonly question: KitQuestion
  readonly need: CircuitNeed
  readonly atHand: AtHand
  readonly chosen: ChosenParts
  readonly connector: PlacedConnector
}

const STATES: Readonly<Record<PartOrigin, KitState>> = {
  included: 'included',
  owned: 'owned',
  unchecked: 'owned',
  buy: 'buy',
  standard: 'not-in-range',
}

/**
 * Writes a chosen kit down as lines with reasons, specifications and the total.
 *
 * @param kit - What was chosen
 * @returns The kit: unit, cable, fuse, connector, battery, as far as the circuit takes them
 */
export function kitLines(kit: ChosenKit): Kit {
  const { chosen, need, connector } = kit
  const lines: KitLine[] = [inverterLine(kit)]
  if (chosen.wiring !== undefined) lines.push(...wiringLines(kit, chosen.wiring))
  if (takesConnector(need)) lines.push(connectorLine(kit, connector))
  lines.push(batteryLine(kit, chosen.bank))
  let total = 0
  for (const { state, price, quantity } of lines) {
    if (state === 'buy' && price !== undefined) total += thousandthsOf(price) * quantity
  }
  return {
    lines,
    total: moneyText(
      total,
      lines.flatMap(({ price }) => price ?? []),
    ),
    complete: lines.every(({ state }) => state !== 'not-in-range'),
  }
}

function inverterLine({ question }: ChosenKit): KitLine {
  const { inverter, requiredContinuousW, wish, preferences } = question
  const { unit } = inverter
  const { continuousW, inputNominalV, waveform } = unit
  const owned = wish?.owned?.some(
    ({ role, sku }) => role === 'inverter' && (sku === undefined || sku === unit.sku),
  )
  return {
    role: 'inverter',
    state: owned === true ? 'owned' : 'buy',
    quantity: 1,
    ...named(unit),
    specification: { role: 'inverter', continuousW, inputNominalV, waveform },
    reason: {
      code: preferences.sku === unit.sku ? 'unit-asked-for' : 'smallest-that-fits',
      values: { requiredContinuousW, continuousW },
    },
  }
}

function wiringLines(kit: ChosenKit, wiring: Wiring): readonly KitLine[] {
  const { need, chosen, question } = kit
  const { cable, fuse } = wiring
  const { minA, nominalV, worstCaseA, lengthM } = need
  const { ampacityA, dropFraction, pairs } = cable
  const bank = chosen.bank.bank ?? {}
  const { requiredVoltageV, requiredBreakingCapacityA } = fusePlace(nominalV, bank)
  const standard = cable.cable === undefined ? standardCable(need, bank) : undefined
  return [
    {
      role: 'cable',
      state: STATES[cable.origin],
      quantity: pairs,
      ...(cable.cable && named(cable.cable.part)),
      specification: cableSpecification(need, cable, standard),
      note: sizeNote(need, wiring, standard, question.circuit),
      reason: reasonFor(kit, cable.origin, 'cable', {
        code: 'carries-full-power',
        values: { worstCaseA, ampacityA, dropFraction, lengthM: cable.cable?.part.lengthM ?? lengthM },
      }),
    },
    {
      role: 'fuse',
      state: STATES[fuse.origin],
      quantity: 1,
      ...(fuse.fuse && named(fuse.fuse.part)),
      specification: {
        role: 'fuse',
        minA,
        maxA: ampacityA,
        voltageV: requiredVoltageV,
        breakingCapacityA: requiredBreakingCapacityA,
      },
      reason: reasonFor(kit, fuse.origin, 'fuse', {
        code: 'protects-cable',
        values: { minA, maxA: ampacityA },
      }),
    },
  ]
}

function cableSpecification(
  { lengthM, dropLimitFraction, minA }: CircuitNeed,
  { pairs }: LaidCable,
  standard: StandardCable | undefined,
): KitSpecification {
  const limits = { role: 'cable', carriesA: minA, lengthM, dropLimitFraction, pairs } as const
  if (standard?.label === undefined) return limits
  return { ...limits, carriesA: standard.ampacityA, standard: standard.label }
}

function connectorLine(kit: ChosenKit, { origin, connector }: PlacedConnector): KitLine {
  const { kind, connectorA } = kit.need
  return {
    role: 'connector',
    state: STATES[origin],
    quantity: 1,
    ...(connector && named(connector.part)),
    specification: { role: 'connector', kind, limitA: connectorA },
    reason: reasonFor(kit, origin, 'connector', { code: 'joins-unit', values: { connectorA } }),
  }
}

function batteryLine(kit: ChosenKit, bank: ChosenBank): KitLine {
  const { supply } = kit.question
  const { origin, blocks, chemistry, neededCapacityAh } = bank
  const capacityAh = bank.bank?.capacityAh ?? neededCapacityAh
  const joined = blocks && { inSeries: blocks.inSeries, inParallel: blocks.inParallel }
  return {
    role: 'battery',
    state: STATES[origin],
    quantity: blocks === undefined ? 1 : blocks.inSeries * blocks.inParallel,
    ...(blocks && named(blocks.block.part)),
    specification: {
      role: 'battery',
      chemistry,
      nominalV: supply.nominalV,
      capacityAh: origin === 'owned' || origin === 'buy' ? capacityAh : neededCapacityAh,
      ...joined,
    },
    reason: batteryReason(kit, bank, capacityAh),
  }
}

function batteryReason(kit: ChosenKit, bank: ChosenBank, capacityAh: number): KitReason {
  const { supply, wish } = kit.question
  const { origin, neededCapacityAh } = bank
  if (origin === 'standard' && kit.need.kind === 'vehicle-socket') {
    return { code: 'vehicle-battery-too-small', values: {} }
  }
  const replaced = supply.battery !== undefined && wish?.buyBattery !== true
  if (origin === 'buy' && replaced) {
    return { code: 'your-battery-too-small', values: { neededCapacityAh, capacityAh } }
  }
  const days = supply.autonomyDays ?? 1
  return reasonFor(kit, origin, 'battery', {
    code: 'lasts-plan',
    values: { neededCapacityAh, capacityAh, days },
  })
}

function reasonFor(
  { atHand, question }: ChosenKit,
  origin: PartOrigin,
  role: KitRole,
  bought: KitReason,
): KitReason {
  switch (origin) {
    case 'included':
      return { code: 'in-the-box', values: {} }
    case 'owned':
      return { code: 'yours-does', values: {} }
    case 'unchecked':
      return { code: 'yours-unchecked', values: {} }
    case 'standard':
      return { code: 'none-in-range', values: {} }
    case 'buy': {
      if (role === 'battery' && question.wish?.buyBattery === true) return bought
      if (atHand.owned.has(role)) return { code: 'yours-unsuitable', values: {} }
      return atHand.included.has(role) ? { code: 'box-unsuitable', values: {} } : bought
    }
  }
}

function named({ sku, name, price, url }: PartBase) {
  return { sku, name, price, url }
}
