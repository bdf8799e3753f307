import type { FastifyInstance } from 'fastify'

/** What {@link stopGracefully} needs. */
export interface Stopping {
  readonly app: FastifyInstance
  /** How long to answer on while those in front notice that this instance is going. [ms] */
  readonly drainMs: number
  /** Closes what is behind the service, once no request is under way. */
  readonly close: () => Promise<void>
}

/** Longest time from the end of the draining to the exit; what is under way then is broken off. [ms] */
const CLOSE_WITHIN_MS = 7000

/**
 * Stops the process in good order on SIGTERM or SIGINT: says that it isn't ready, answers on for a while and closes
 * each connection with the reply on it, finishes what is under way, closes the store, exits with 0. A second signal
 * exits at once.
 *
 * @param stopping - What to stop
 */
export function stopGracefully({ app, drainMs, close }: Stopping): void {
  let stopping = false
  const stop = (signal: string): void => {
    if (stopping) process.exit(1)
    stopping = true
    app.log.info({ signal }, 'stopping')
    app.draining.begin()
    setTimeout(() => process.exit(1), drainMs + CLOSE_WITHIN_MS).unref()
    setTimeout(() => {
      app
        .close()
        .then(close)
        .then(
          () => process.exit(0),
          (error: unknown) => {
            app.log.error({ err: error }, 'could not stop in good order')
            process.exit(1)
          },
        )
    }, drainMs)
  }
  process.on('SIGTERM', stop)
  process.on('SIGINT', stop)
}
