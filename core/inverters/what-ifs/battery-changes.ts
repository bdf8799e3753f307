import type { Finding, FindingCode } from '../../advice/findings.ts'
import type { Supply } from '../need.ts'
import { type Ground, tried } from './ground.ts'
import type { WhatIf } from './what-if.ts'

type Battery = NonNullable<Supply['battery']>

/** Findings that say that a battery is too small for its loads. */
const TOO_SMALL_CODES: ReadonlySet<FindingCode> = new Set([
  'discharge-limit-running',
  'discharge-limit-starting',
  'cut-off-while-running',
  'cut-off-while-starting',
  'voltage-sag',
  'day-not-carried',
  'runs-too-long',
  'nothing-usable',
  'heavier-than-advised',
  'under-20-minutes',
])

/** Capacities are told in steps of this. [Ah] */
const STEP_AH = 5

/** A capacity that does not do yet is raised by the first of these, then the next. */
const GROWTHS = [1.2, 1.2, 1.2, 1.5, 1.5, 1.5, 1.5]

/** No larger bank than this many of the buyer's, nor than a request may state. [Ah] */
const MOST_TIMES = 10
const MOST_AH = 10_000

/** The chemistry that gives large currents and most of its charge. */
const OTHER_CHEMISTRY = 'lifepo4'

/**
 * A larger battery, or one of another chemistry, where current, voltage, a day or a long run failed.
 *
 * The larger one starts from what the findings name and grows, by a fifth at first, until none of them is left;
 * where that is not to be had, until the answer is better.
 *
 * @param ground - The ground
 * @returns At most one of each
 */
export function batteryChanges(ground: Ground): readonly WhatIf[] {
  const { battery } = ground.plan.need.supply
  const { battery: answer } = ground.sizing
  if (battery === undefined || answer === undefined) return []
  const tooSmall = answer.findings.filter(
    ({ severity, code }) => severity !== 'note' && TOO_SMALL_CODES.has(code),
  )
  if (tooSmall.length === 0) return []
  return [larger(ground, battery, tooSmall), lithium(ground, battery)].filter(
    (whatIf) => whatIf !== undefined,
  )
}

function larger(ground: Ground, battery: Battery, tooSmall: readonly Finding[]): WhatIf | undefined {
  const mostAh = Math.min(MOST_AH, MOST_TIMES * battery.capacityAh)
  const capacitiesAh: number[] = []
  const named = tooSmall.map((found) => namedCapacityAh(found, battery.capacityAh))
  let capacityAh = Math.max(...named, battery.capacityAh + STEP_AH)
  for (const growth of [1, ...GROWTHS]) {
    capacityAh = Math.ceil((capacityAh * growth) / STEP_AH) * STEP_AH
    if (capacityAh > mostAh) break
    capacitiesAh.push(capacityAh)
  }
  const first = (isOfUse: (cares: ReadonlySet<FindingCode>) => boolean) => {
    for (const largerAh of capacitiesAh) {
      const supply = { ...ground.plan.need.supply, battery: enlarged(battery, largerAh) }
      const whatIf = tried(
        ground,
        { kind: 'larger-battery', loadIds: [], change: { supply }, values: { capacityAh: largerAh } },
        isOfUse,
      )
      if (whatIf !== undefined) return whatIf
    }
    return undefined
  }
  return first((cares) => !tooSmall.some(({ code }) => cares.has(code))) ?? first(() => true)
}

/** What a finding says that it takes; where it says nothing, what there is. [Ah] */
function namedCapacityAh(found: Finding, capacityAh: number): number {
  switch (found.code) {
    case 'discharge-limit-running':
    case 'discharge-limit-starting':
      return (capacityAh * found.values.currentA) / found.values.limitA
    case 'day-not-carried':
    case 'runs-too-long':
      return found.values.neededCapacityAh ?? capacityAh
    default:
      return capacityAh
  }
}

/** Bounds that a request may state, so that a change can be asked as it stands: amps or amp-hours, and ohms. */
const MOST_STATED = 100_000
const LEAST_OHM = 0.000001

/** More of the same side by side: what is stated of one battery grows or falls with the capacity. */
function enlarged(battery: Battery, capacityAh: number): Battery {
  const ratio = capacityAh / battery.capacityAh
  const { maxDischargeA, internalResistanceOhm, otherRates } = battery
  return {
    ...battery,
    capacityAh,
    ...(otherRates && {
      otherRates: otherRates.map((rate) => ({
        hourRateH: rate.hourRateH,
        capacityAh: Math.min(MOST_STATED, rate.capacityAh * ratio),
      })),
    }),
    ...(maxDischargeA !== undefined && { maxDischargeA: Math.min(MOST_STATED, maxDischargeA * ratio) }),
    ...(internalResistanceOhm !== undefined && {
      internalResistanceOhm: Math.max(LEAST_OHM, internalResistanceOhm / ratio),
    }),
  }
}

/** A lithium bank of the same capacity; the figures stated of the lead-acid one don't hold for it. */
function lithium(ground: Ground, battery: Battery): WhatIf | undefined {
  if (battery.chemistry === 'lifepo4' || battery.chemistry === 'nmc') return undefined
  const { capacityAh, startSocFraction, temperatureC } = battery
  const other: Battery = {
    chemistry: OTHER_CHEMISTRY,
    capacityAh,
    ...(startSocFraction !== undefined && { startSocFraction }),
    ...(temperatureC !== undefined && { temperatureC }),
  }
  return tried(ground, {
    kind: 'other-chemistry',
    loadIds: [],
    change: { supply: { ...ground.plan.need.supply, battery: other } },
    values: { chemistry: OTHER_CHEMISTRY },
  })
}
