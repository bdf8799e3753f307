import type { FastifyInstance, FastifyReply } from 'fastify'
import type { Settings } from '../settings.ts'
import { sendProblem } from './problems.ts'

declare module 'fastify' {
  interface FastifyContextConfig {
    /** Answered however busy the service is and whatever the caller has used up: health and the like. */
    unlimited?: boolean
  }
}

/** What the guard has done. */
export interface Shedding {
  /** Requests turned away since the start. */
  count(): number
}

/** A long turn counts as the one before for so long. [ms] */
const LONG_TURN_COUNTS_MS = 1000

/**
 * Turns requests away before the process drowns. Two signs: requests have waited too long for the processor in
 * this turn of the event loop and in the one before (a single long turn, such as a large import, is no
 * overload), or too many are being worked on. Those whose body is still to come are not being worked on: slow
 * senders must not shut others out.
 *
 * @param app - The service
 * @param settings - The bounds
 * @returns What there is to measure
 */
export function registerShedding(app: FastifyInstance, settings: Settings): Shedding {
  const turns = turnWatch(settings.shedAfterMs)
  let working = 0
  let shed = 0

  function turnAway(reply: FastifyReply): void {
    shed += 1
    const waitS = 1 + Math.floor(Math.random() * 3)
    sendProblem(reply.header('retry-after', String(waitS)), 'overloaded')
  }

  app.addHook('onRequest', (request, reply, done) => {
    if (turns.isLate() && request.routeOptions.config.unlimited !== true) return turnAway(reply)
    done()
  })
  app.addHook('preHandler', (request, reply, done) => {
    if (working >= settings.maxInFlight && request.routeOptions.config.unlimited !== true) {
      return turnAway(reply)
    }
    working += 1
    reply.raw.once('close', () => {
      working -= 1
    })
    done()
  })
  return { count: () => shed }
}

/**
 * Watches how long requests wait for the processor. All that have arrived are read in one turn of the event loop,
 * one after the other, so one that is read late in a turn has waited since the turn began.
 */
function turnWatch(limitMs: number): { isLate(): boolean } {
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
