import type { FindingCode } from '../../advice/findings.ts'
import { circuitAnswer } from '../../circuit-side.ts'
import { type ConnectionKind, SUPPLY_VOLTAGES } from '../../range/vocabulary.ts'
import type { Supply } from '../need.ts'
import { circuitOf, type Ground, tried } from './ground.ts'
import type { Proposal, ProposalOf, WhatIf } from './what-if.ts'

/** Findings that a stronger connection takes away. */
const CONNECTION_CODES: readonly FindingCode[] = ['connection-limit', 'connection-below-full-power']

/** Findings about the leads in a unit's box that a larger wire takes away. */
const WIRE_CODES: readonly FindingCode[] = ['own-leads-too-thin', 'own-leads-drop', 'own-leads-too-short']

/** Findings about a battery's voltage that a shorter cable may take away. */
const VOLTAGE_CODES: readonly FindingCode[] = [
  'cut-off-while-running',
  'cut-off-while-starting',
  'voltage-sag',
]

/** Findings about large currents, which a higher voltage halves. */
const CURRENT_CODES: readonly FindingCode[] = [
  ...CONNECTION_CODES,
  ...WIRE_CODES,
  ...VOLTAGE_CODES,
  'no-standard-conductor',
  'no-standard-fuse',
  'no-safe-fuse',
  'discharge-limit-running',
  'discharge-limit-starting',
]

/** As near to the battery as a unit is usually brought. [m] Our own figure. */
const NEAR_BATTERY_M = 1

/** Steps in which a cable's length is told. [1/m] */
const STEPS_PER_METRE = 10

/**
 * A stronger connection, a shorter cable, a larger wire, a higher voltage: where these failed or are what a
 * finding is about.
 *
 * @param ground - The ground
 * @returns At most one of each
 */
export function supplyChanges(ground: Ground): readonly WhatIf[] {
  return [
    ...strongerConnection(ground),
    ...shorterCable(ground),
    ...largerWire(ground),
    ...higherVoltage(ground),
  ]
}

/**
 * A pure sine wave unit in place of a modified one that wants care.
 *
 * @param ground - The ground
 * @returns The smallest that fits, where there is one
 */
export function pureSine(ground: Ground): readonly WhatIf[] {
  if (!ground.now.cares.has('wave-form-care')) return []
  const pure = ground.sizing.choice.verdicts.find(
    ({ fits, inverter }) => fits && inverter.unit.waveform === 'pure-sine',
  )
  if (pure === undefined) return []
  const { sku } = pure.inverter.unit
  return some(tried(ground, { kind: 'pure-sine', loadIds: [], change: { sku }, values: {} }))
}

function strongerConnection(ground: Ground): readonly WhatIf[] {
  const { connection } = ground.plan.need.supply
  if (connection === undefined || connection.kind === 'battery-terminals') return []
  const failed = ground.sizing.choice.verdicts.some(({ findings }) =>
    findings.some(({ code }) => code === 'connection-limit'),
  )
  if (!failed && !hasAny(ground, CONNECTION_CODES)) return []
  const stronger: readonly ConnectionKind[] =
    connection.kind === 'vehicle-socket' ? ['quick-connector', 'battery-terminals'] : ['battery-terminals']
  let best: WhatIf | undefined
  for (const kind of stronger) {
    const whatIf = tried(ground, {
      ...supplying(ground, { connection: { kind } }),
      kind: 'other-connection',
      values: { connection: kind },
    })
    if (whatIf === undefined) continue
    if (!CONNECTION_CODES.some((code) => whatIf.cares.has(code))) return [whatIf]
    best ??= whatIf
  }
  return some(best)
}

function shorterCable(ground: Ground): readonly WhatIf[] {
  const oneWayLengthM = helpfulLengthM(ground)
  if (oneWayLengthM === undefined) return []
  return some(
    tried(ground, {
      ...supplying(ground, { oneWayLengthM }),
      kind: 'shorter-cable',
      values: { oneWayLengthM },
    }),
  )
}

function helpfulLengthM({ range, plan, unit, sizing, now }: Ground): number | undefined {
  if (unit === undefined || sizing.circuit === undefined) return undefined
  const { design, oneWayLengthM, findings } = sizing.circuit
  for (const found of findings) if (found.code === 'own-leads-too-short') return found.values.leadsM
  if (now.cares.has('no-standard-conductor')) {
    const { supply } = plan.need
    const can = (lengthM: number) =>
      circuitAnswer(range, unit, { ...supply, oneWayLengthM: lengthM }).design.ok
    return longestThat(can, oneWayLengthM)
  }
  const isSag = VOLTAGE_CODES.some((code) => now.cares.has(code))
  return isSag && design.ok && oneWayLengthM > NEAR_BATTERY_M ? NEAR_BATTERY_M : undefined
}

/** The longest length below this one that serves, in tenths of a metre. */
function longestThat(serves: (lengthM: number) => boolean, belowM: number): number | undefined {
  let low = 0
  let high = Math.ceil(belowM * STEPS_PER_METRE)
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (serves(middle / STEPS_PER_METRE)) low = middle
    else high = middle
  }
  return low === 0 ? undefined : low / STEPS_PER_METRE
}

function largerWire(ground: Ground): readonly WhatIf[] {
  const { unit, plan } = ground
  if (unit === undefined || !hasAny(ground, WIRE_CODES)) return []
  const { oneWayLengthM } = circuitOf(ground, unit)
  const supply = { ...plan.need.supply, oneWayLengthM, replaceLeads: true }
  const { design } = circuitAnswer(ground.range, unit, supply)
  if (!design.ok) return []
  const { label, parallelPairs } = design.conductor
  return some(
    tried(ground, {
      kind: 'larger-wire',
      loadIds: [],
      change: { supply },
      values: { cable: parallelPairs > 1 ? `${parallelPairs} × ${label}` : label },
    }),
  )
}

/** The next voltage that the range serves and that helps: two steps up where one does not do. */
function higherVoltage(ground: Ground): readonly WhatIf[] {
  if (ground.now.outcome !== 'none-fits' && !hasAny(ground, CURRENT_CODES)) return []
  for (const proposal of higherVoltages(ground)) {
    const whatIf = tried(ground, proposal)
    if (whatIf !== undefined) return [whatIf]
  }
  return []
}

/**
 * The higher voltages that a range serves. The buyer's battery is taken to hold as much energy there.
 *
 * @param ground - The ground
 * @returns A proposal for each, lowest first
 */
export function higherVoltages({ range, plan }: Ground): readonly ProposalOf<'higher-voltage'>[] {
  const { supply } = plan.need
  const served = new Set<number>(range.inverters.map(({ unit }) => unit.inputNominalV))
  const proposals: ProposalOf<'higher-voltage'>[] = []
  for (const nominalV of SUPPLY_VOLTAGES) {
    if (nominalV <= supply.nominalV || !served.has(nominalV)) continue
    const battery = supply.battery && inSeries(supply.battery, nominalV / supply.nominalV)
    if (battery !== undefined && !isStatable(battery)) continue
    const changed = battery === undefined ? { ...supply, nominalV } : { ...supply, nominalV, battery }
    proposals.push({ kind: 'higher-voltage', loadIds: [], change: { supply: changed }, values: { nominalV } })
  }
  return proposals
}

/** Whether a request could state such a battery. [Ah] 1 or more, [ohm] at most 1 */
function isStatable({
  capacityAh,
  internalResistanceOhm = 0,
  otherRates = [],
}: NonNullable<Supply['battery']>): boolean {
  const ratesStatable = otherRates.every((rate) => rate.capacityAh >= 0.1)
  return capacityAh >= 1 && internalResistanceOhm <= 1 && ratesStatable
}

/** The same cells, more of them in series and fewer side by side. */
function inSeries(battery: NonNullable<Supply['battery']>, ratio: number): NonNullable<Supply['battery']> {
  const { maxDischargeA, internalResistanceOhm, otherRates } = battery
  return {
    ...battery,
    capacityAh: battery.capacityAh / ratio,
    ...(otherRates && {
      otherRates: otherRates.map(({ hourRateH, capacityAh }) => ({
        hourRateH,
        capacityAh: capacityAh / ratio,
      })),
    }),
    ...(maxDischargeA !== undefined && { maxDischargeA: maxDischargeA / ratio }),
    ...(internalResistanceOhm !== undefined && { internalResistanceOhm: internalResistanceOhm * ratio ** 2 }),
  }
}

function supplying({ plan }: Ground, changes: Partial<Supply>): Pick<Proposal, 'loadIds' | 'change'> {
  return { loadIds: [], change: { supply: { ...plan.need.supply, ...changes } } }
}

function hasAny({ now }: Ground, codes: readonly FindingCode[]): boolean {
  return codes.some((code) => now.cares.has(code))
}

function some(whatIf: WhatIf | undefined): readonly WhatIf[] {
  return whatIf === undefined ? [] : [whatIf]
}
