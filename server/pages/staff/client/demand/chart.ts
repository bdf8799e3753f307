import type { DemandReply } from '../../../../../shared/contract/demand.ts'

type Outcome = DemandReply['days'][number]['outcomes'][number]['outcome']

/** Requests of one day, or of seven from that day on. */
export interface Bar {
  /** Its first day. */
  readonly day: string
  /** Days that it adds up. */
  readonly days: number
  /** Requests at least: days with one to four count with none. */
  readonly requests: number
  /** Days of it with one to four requests. */
  readonly fewDays: number
  readonly outcomes: Readonly<Partial<Record<Outcome, number>>>
}

const DAY_MS = 86_400_000

/** Bars that stay tellable apart on the narrowest page. */
const MOST_BARS = 62

/**
 * Daily counts as bars: one a day, or one for seven days where there would be too many.
 *
 * @param reply.from - First day of the period
 * @param reply.to - Last day
 * @param reply.days - Days with a request
 * @returns Bars without a gap from the first day to the last
 */
export function barsOf({ from, to, days }: Pick<DemandReply, 'from' | 'to' | 'days'>): readonly Bar[] {
  const start = Date.parse(from)
  const count = Math.round((Date.parse(to) - start) / DAY_MS) + 1
  const each = count <= MOST_BARS ? 1 : 7 * Math.ceil(count / 7 / MOST_BARS)
  const bars = Array.from({ length: Math.ceil(count / each) }, (_, index) => ({
    day: new Date(start + index * each * DAY_MS).toISOString().slice(0, 10),
    days: Math.min(each, count - index * each),
    requests: 0,
    fewDays: 0,
    outcomes: {} as Partial<Record<Outcome, number>>,
  }))
  for (const { day, requests, outcomes } of days) {
    const bar = bars[Math.floor((Date.parse(day) - start) / DAY_MS / each)]
    if (bar === undefined) continue
    if (requests === null) bar.fewDays += 1
    else bar.requests += requests
    for (const { outcome, count: asked } of outcomes) {
      bar.outcomes[outcome] = (bar.outcomes[outcome] ?? 0) + asked
    }
  }
  return bars
}

/**
 * Marks of a scale that begins at nothing: at most five, at 1, 2 or 5 times a power of ten.
 *
 * @param most - Largest value
 * @returns The marks, the last one not below the largest value
 */
export function scaleMarks(most: number): readonly number[] {
  const top = Math.max(1, most)
  const power = 10 ** Math.floor(Math.log10(top / 4))
  const step = Math.max(1, [1, 2, 5, 10].map((each) => each * power).find((each) => top / each <= 4) ?? top)
  const marks: number[] = []
  for (let at = 0; at < top + step; at += step) marks.push(at)
  return marks
}
