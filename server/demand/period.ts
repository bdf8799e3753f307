/** Days, both ends counted, as `YYYY-MM-DD` in UTC. */
export interface Period {
  readonly from: string
  readonly to: string
}

/** A period taken apart: whole months, and the days before and after them. */
export interface PeriodParts {
  /** `YYYY-MM`, both ends counted. */
  readonly months: Period | undefined
  readonly days: readonly Period[]
}

const DAY_MS = 86_400_000

/**
 * The day of a moment.
 *
 * @param at - The moment. [ms since 1970]
 * @returns `YYYY-MM-DD` in UTC
 */
export function dayOf(at: number): string {
  if (at < knownDay.start || at >= knownDay.start + DAY_MS) {
    const start = Math.floor(at / DAY_MS) * DAY_MS
    knownDay = { start, text: new Date(start).toISOString().slice(0, 10) }
  }
  return knownDay.text
}

/** Nearly every call is about the same day. */
let knownDay = { start: 0, text: '1970-01-01' }

/**
 * Another day.
 *
 * @param day - `YYYY-MM-DD`
 * @param days - How many later; negative for earlier
 * @returns `YYYY-MM-DD`
 */
export function addDays(day: string, days: number): string {
  return new Date(Date.parse(day) + days * DAY_MS).toISOString().slice(0, 10)
}

/**
 * How many days a period has.
 *
 * @param period - The period
 * @returns Its days; below 1 where it ends before it begins
 */
export function daysIn({ from, to }: Period): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS) + 1
}

/**
 * Whether a text is a day of the calendar.
 *
 * @param text - Such as `2026-02-28`
 * @returns False for the 30th of February
 */
export function isDay(text: string): boolean {
  return /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(text)) && addDays(text, 0) === text
}

/**
 * Takes a period apart, so that whole months are read as such.
 *
 * @param period - One day or more
 * @returns Its parts, which overlap nowhere and leave nothing out
 */
export function partsOf({ from, to }: Period): PeriodParts {
  const firstMonth = from.endsWith('-01') ? monthOf(from) : nextMonth(monthOf(from))
  const lastMonth = addDays(to, 1).endsWith('-01') ? monthOf(to) : monthBefore(monthOf(to))
  if (firstMonth > lastMonth) return { months: undefined, days: [{ from, to }] }
  const days: Period[] = []
  if (!from.endsWith('-01')) days.push({ from, to: addDays(`${firstMonth}-01`, -1) })
  const after = `${nextMonth(lastMonth)}-01`
  if (after <= to) days.push({ from: after, to })
  return { months: { from: firstMonth, to: lastMonth }, days }
}

/**
 * The month of a day.
 *
 * @param day - `YYYY-MM-DD`
 * @returns `YYYY-MM`
 */
export function monthOf(day: string): string {
  return day.slice(0, 7)
}

function nextMonth(month: string): string {
  return monthOf(addDays(`${month}-28`, 4))
}

function monthBefore(month: string): string {
  return monthOf(addDays(`${month}-01`, -1))
}
