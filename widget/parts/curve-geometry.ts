import type { RuntimeAnswer } from '../../shared/contract/answers.ts'

/** A point of the curve as fractions 0..1 from the lower corner where reading starts. */
export interface CurvePoint {
  readonly x: number
  readonly y: number
}

/** The run-time curve laid out as fractions of its frame. */
export interface CurveGeometry {
  /** Time at the far end. [h] */
  readonly spanH: number
  /** Distance of the marks on the time line. [h] */
  readonly tickH: number
  readonly ticks: readonly { readonly hours: number; readonly x: number }[]
  readonly charge: readonly CurvePoint[]
  readonly end: CurvePoint
  /** Shortest and longest run time that is to be expected. */
  readonly lowX: number
  readonly highX: number
}

/** Steps of the time line. [h] */
const TICKS_H = [0.05, 0.1, 0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 96, 168, 336, 720]

/** Marks that stay readable on the narrowest page. */
const MOST_TICKS = 5

/**
 * Lays the run-time curve out: state of charge over hours, its end and the spread of the end.
 *
 * @param runtime - The service's answer
 * @returns Fractions of the frame
 */
export function curveGeometry(runtime: RuntimeAnswer): CurveGeometry {
  const furthestH = Math.max(runtime.hours, runtime.hoursHigh, 0.02)
  const tickH = TICKS_H.find((step) => furthestH / step <= MOST_TICKS) ?? furthestH
  const spanH = furthestH * 1.04
  const at = (hours: number) => Math.min(1, Math.max(0, hours / spanH))
  const charge = runtime.curve.map(({ hours, socFraction }) => ({
    x: at(hours),
    y: Math.min(1, Math.max(0, socFraction)),
  }))
  const last = charge.at(-1) ?? { x: at(runtime.hours), y: 0 }
  const ticks: { hours: number; x: number }[] = []
  for (let hours = 0; hours <= spanH; hours += tickH) ticks.push({ hours, x: at(hours) })
  return {
    spanH,
    tickH,
    ticks,
    charge,
    end: { x: at(runtime.hours), y: last.y },
    lowX: at(runtime.hoursLow),
    highX: at(runtime.hoursHigh),
  }
}

/**
 * Points as the data of an SVG path in a box of 1000 by 1000, origin at the top.
 *
 * @param points - Fractions from the lower corner
 * @param mirrored - True where reading goes from right to left
 * @returns Path data; empty for fewer than two points
 */
export function pathOf(points: readonly CurvePoint[], mirrored: boolean): string {
  if (points.length < 2) return ''
  const at = (fraction: number) => Math.round(fraction * 1000)
  return points
    .map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${at(mirrored ? 1 - x : x)} ${at(1 - y)}`)
    .join('')
}
