/** A long turn counts as the one before for so long. [ms] */
const LONG_TURN_COUNTS_MS = 1000

/**
 * Watches how long requests wait for the processor. All that have arrived are read in one turn of the event loop,
 * one after the other, so one that is read late in a turn has waited since the turn began.
 *
 * @param limitMs - How long they may wait. [ms]
 * @returns Whether the request that is being read has waited longer, in this turn and in the one before
 */
export function turnWatch(limitMs: number): { isLate(): boolean } {
  let startedAt: number | undefined
  let longTurnEndedAt = Number.NEGATIVE_INFINITY
  const end = (): void => {
    const now = performance.now()
    if (startedAt !== undefined && now - startedAt > limitMs) longTurnEndedAt = now
    startedAt = undefined
  }
  return {
    isLate: () => {
      const now = performance.now()
      if (startedAt === undefined) {
        startedAt = now
        setImmediate(end)
        return false
      }
      return now - startedAt > limitMs && startedAt - longTurnEndedAt < LONG_TURN_COUNTS_MS
    },
  }
}
