import { SUPPLY_VOLTAGES, UNMET_CAUSES, type UnmetRequest, WAVEFORM_NEEDS } from '../../core/index.ts'

/** What is counted. `choice`: the units that fit, the recommended one first; `code`: why a unit does not. */
export const DEMAND_KINDS = [
  'outcome',
  'appliance',
  'combination',
  'choice',
  'code',
  'unmet',
  'voltage',
] as const
export type DemandKind = (typeof DEMAND_KINDS)[number]

/** Key of what has been merged with others. */
export const MERGED_KEY = ''

/** In the place of an appliance that is not in the list: what the shopper calls it is never kept. */
export const UNLISTED = '*'

/** Key of a request that states no supply voltage. */
export const VOLTAGE_NOT_STATED = 'not-stated'

/** Appliances in a combination at most: larger ones are near to one of a kind and are merged. */
const LARGEST_COMBINATION = 8

/** Units of a choice that are kept: one more than may be dropped together. */
const UNITS_KEPT = 4

/**
 * The key of appliances that are asked for together.
 *
 * @param ids - Ids, each once
 * @returns The ids sorted; the merged key where they are too many
 */
export function combinationKey(ids: readonly string[]): string {
  return ids.length > LARGEST_COMBINATION ? MERGED_KEY : [...ids].sort().join(' ')
}

/** The appliances of a {@link combinationKey}. */
export function appliancesOf(key: string): readonly string[] {
  return key.split(' ')
}

/**
 * The key of the units that fit a request.
 *
 * @param skus - In the order of choice
 * @returns The first few as JSON
 */
export function choiceKey(skus: readonly string[]): string {
  return JSON.stringify(skus.slice(0, UNITS_KEPT))
}

/** The units of a {@link choiceKey}. */
export function unitsOf(key: string): readonly string[] {
  const units: unknown = JSON.parse(key)
  return Array.isArray(units) ? units.map(String) : []
}

/** The key of an unmet need. */
export function unmetKey({ nominalV, continuousW, surgeW, waveform, cause }: UnmetRequest): string {
  return [nominalV, continuousW, surgeW, waveform, cause].join(' ')
}

/** The unmet need of an {@link unmetKey}; undefined for one of another release that this one can't read. */
export function unmetOf(key: string): UnmetRequest | undefined {
  const [volts, watts, surge, form, why] = key.split(' ')
  const nominalV = SUPPLY_VOLTAGES.find((each) => each === Number(volts))
  const waveform = WAVEFORM_NEEDS.find((each) => each === form)
  const cause = UNMET_CAUSES.find((each) => each === why)
  if (nominalV === undefined || waveform === undefined || cause === undefined) return undefined
  return { nominalV, continuousW: Number(watts), surgeW: Number(surge), waveform, cause }
}
