import type { Problem } from '../../openapi/client-types.ts'

/** Codes of problems. */
export type ProblemCode = Problem['code']

/** The service has answered that something is wrong. Decide by `code`; titles and sentences may be reworded. */
export class ProblemError extends Error {
  override readonly name = 'ProblemError'
  readonly code: ProblemCode
  readonly status: number
  readonly problem: Problem
  /** Id of the request, to ask the operator about. */
  readonly requestId: string
  /** When the service said to come back. [s] */
  readonly retryAfterS: number | undefined

  constructor(problem: Problem, retryAfterS: number | undefined) {
    super([problem.title, problem.detail, problem.errors?.[0]?.message].filter(Boolean).join(': '))
    this.code = problem.code
    this.status = problem.status
    this.problem = problem
    this.requestId = problem.instance
    this.retryAfterS = retryAfterS
  }
}

/** The service could not be reached, did not answer in time, or what answered was not the service. */
export class ConnectionError extends Error {
  override readonly name = 'ConnectionError'
  /** `aborted` where the caller's own signal ended the call. */
  readonly code: 'unreachable' | 'timed-out' | 'aborted' | 'unexpected-reply'

  constructor(code: ConnectionError['code'], message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause })
    this.code = code
  }
}
