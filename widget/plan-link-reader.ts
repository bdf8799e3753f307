import type { Rating } from '../core/loads/rating.ts'
import { LIMITS, SUPPLY_BOUNDS } from './limits.ts'
import type { PlanLoad, PlanState, SupplyAnswers } from './plan.ts'

/** The form of link that is read: written first in each. */
const FORM = 1

const BATTERY_STANCES = ['have', 'need'] as const
const CHEMISTRIES = ['flooded', 'agm', 'gel', 'lifepo4', 'nmc'] as const
const CONNECTIONS = ['vehicle-socket', 'quick-connector', 'battery-terminals'] as const
const VOLTAGES = [12, 24, 36, 48] as const

/** The part of a rating that a link carries: its numbers by name and its text. */
const RATING_FIELDS: Readonly<Record<Rating['basis'], readonly string[]>> = {
  'input-watts': ['watts'],
  'measured-watts': ['watts'],
  'cooking-watts': ['watts'],
  'volts-amps': ['volts', 'amps', 'powerFactor'],
  'volt-amperes': ['voltAmperes', 'powerFactor'],
  'motor-output': ['watts', 'horsepower'],
  'cooling-capacity': ['btuPerHour', 'eer'],
  'label-text': ['text'],
}

/**
 * Reads what `encodePlan` of plan-link.ts wrote. Anybody can write a link, so every part is checked.
 *
 * @param text - From the fragment of an address
 * @returns The plan, or undefined where the text is none
 */
export function decodePlan(text: string): PlanState | undefined {
  try {
    const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'))
    const bytes = Uint8Array.from(binary, (letter) => letter.charCodeAt(0))
    return readPlan(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)))
  } catch {
    return undefined
  }
}

/**
 * The plan that the page's address carries for one guide.
 *
 * @param name - Name of the guide's part of the fragment
 * @returns The plan, or undefined where there is none
 */
export function planInAddress(name: string): PlanState | undefined {
  return decodePlan(new URLSearchParams(location.hash.slice(1)).get(name) ?? '')
}

function readPlan(value: unknown): PlanState | undefined {
  const [form, rawLoads, rawTurns, rawSupply, rawSku] = listOf(value)
  const loads = listOf(rawLoads)
  if (form !== FORM || loads.length > LIMITS.loads) return undefined
  const read = loads.map(readLoad)
  const seen = new Set<number>()
  const sku = textOf(rawSku, 64)
  const takeTurns = listOf(rawTurns)
    .slice(0, LIMITS.takeTurnsGroups)
    .map((group) => readGroup(group, read.length, seen))
  return {
    loads: read,
    takeTurns: takeTurns.filter((group) => group.length > 1),
    supply: readSupply(rawSupply),
    ...(sku === undefined ? {} : { sku }),
  }
}

function readLoad(value: unknown, index: number): PlanLoad {
  const [appliance, name, quantity, minutes, rating, startingW, durationS] = listOf(value)
  const load = {
    id: idAt(index),
    appliance: textOf(appliance, 64),
    name: textOf(name, LIMITS.nameCharacters),
    quantity: Math.round(numberOf(quantity, 1, LIMITS.quantity) ?? 1),
    minutesPerDay: numberOf(minutes, 0, 1440),
    rating: readRating(rating),
    start: readStart(startingW, durationS),
  }
  if (load.appliance === undefined && load.rating === undefined) throw new TypeError('a load without power')
  return load
}

function readRating(value: unknown): Rating | undefined {
  if (typeof value !== 'object' || value === null) return undefined
  const raw = value as Record<string, unknown>
  const fields = RATING_FIELDS[raw.basis as Rating['basis']]
  if (fields === undefined) return undefined
  const rating: Record<string, unknown> = { basis: raw.basis }
  for (const field of fields) {
    const read = field === 'text' ? textOf(raw.text, LIMITS.labelCharacters) : numberOf(raw[field], 0, 1e5)
    if (read !== undefined && read !== 0) rating[field] = read
  }
  return Object.keys(rating).length > 1 ? (rating as unknown as Rating) : undefined
}

function readStart(startingW: unknown, durationS: unknown): PlanLoad['start'] {
  const watts = numberOf(startingW, 0.1, LIMITS.watts * 10)
  return watts === undefined ? undefined : { startingW: watts, durationS: numberOf(durationS, 0.001, 60) }
}

function readGroup(value: unknown, count: number, seen: Set<number>): readonly string[] {
  const ids: string[] = []
  for (const place of listOf(value)) {
    const index = numberOf(place, 0, count - 1)
    if (index === undefined || seen.has(index)) continue
    seen.add(index)
    ids.push(idAt(index))
  }
  return ids
}

function readSupply(value: unknown): SupplyAnswers {
  const [nominalV, battery, chemistry, capacityAh, connection, oneWayLengthM] = listOf(value)
  const { capacityAh: capacity, oneWayLengthM: length } = SUPPLY_BOUNDS
  return {
    nominalV: oneOf(nominalV, VOLTAGES),
    battery: oneOf(battery, BATTERY_STANCES),
    chemistry: oneOf(chemistry, CHEMISTRIES),
    capacityAh: numberOf(capacityAh, capacity.low, capacity.high) ?? null,
    connection: oneOf(connection, CONNECTIONS),
    oneWayLengthM: numberOf(oneWayLengthM, length.low, length.high) ?? null,
  }
}

function idAt(index: number): string {
  return `load-${index + 1}`
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : []
}

function textOf(value: unknown, characters: number): string | undefined {
  return typeof value === 'string' && value !== '' ? value.slice(0, characters) : undefined
}

function numberOf(value: unknown, low: number, high: number): number | undefined {
  return typeof value === 'number' && value >= low && value <= high ? value : undefined
}

function oneOf<T>(value: unknown, choices: readonly T[]): T | null {
  return choices.find((choice) => choice === value) ?? null
}
