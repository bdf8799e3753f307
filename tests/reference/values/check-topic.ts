import { describe, expect, it } from 'vitest'
import { isWithin, type Topic } from './published.ts'

/**
 * Holds what core computes to the published figures of a topic, each within the tolerance of its table; a figure that
 * is known to be printed wrong must not be met.
 *
 * @param topic - The topic
 */
export function checkTopic({ title, tables, traps }: Topic): void {
  describe(`${title}: published figures`, () => {
    describe.each(tables)('$document, $table, $quantity', ({ rows, tolerance }) => {
      it.each(rows)('%s: %d', (_what, printed, compute) => {
        const computed = compute()
        const near = isWithin(printed, computed, tolerance)
        expect(near, `${JSON.stringify(computed)} for ${printed}`).toBe(true)
      })
    })
    for (const { what, printed, why, compute } of traps) {
      it(`${what}: not the misprinted ${printed} (${why})`, () => {
        // A misprint that is met within a hundredth would tell nothing apart.
        expect(isWithin(printed, compute(), { relative: 0.01 })).toBe(false)
      })
    }
  })
}
