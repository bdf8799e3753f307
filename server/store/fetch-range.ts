import { isIP } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import type { Agent, request } from 'undici'
import { RANGE_BODY_LIMIT_BYTES } from '../../shared/contract/range-admin.ts'
import { isPublicAddress, publicLookup, type Resolve } from './public-address.ts'

/** What came from a configured address. */
export type Fetched =
  | { readonly kind: 'unchanged' }
  | { readonly kind: 'document'; readonly bytes: Uint8Array; readonly etag: string | undefined }

/** Thrown where nothing usable came; the message is for the operator's log. */
export class FetchRangeError extends Error {
  /** Whether another try may help. */
  readonly passing: boolean

  constructor(message: string, passing: boolean, cause?: unknown) {
    super(message, { cause })
    this.name = 'FetchRangeError'
    this.passing = passing
  }
}

/** How ranges are fetched. */
export interface FetcherOptions {
  /** Whether `http:` and addresses inside the operator's own network may be fetched from. */
  readonly allowPrivate: boolean
  readonly resolve?: Resolve
  /** Pause before the second try; the third waits twice as long. [ms] */
  readonly retryMs?: number
  /** Until an answer begins, and between two parts of it. [ms] */
  readonly answerMs?: number
  /** For one try, whatever trickles in. [ms] */
  readonly wholeMs?: number
}

/** Fetches ranges from addresses that the operator has configured. */
export interface RangeFetcher {
  /** Fetches one, unless it still has the ETag `known`. */
  fetch(url: string, known: string | undefined): Promise<Fetched>
  close(): Promise<void>
}

const TRIES = 3
const CONNECT_MS = 3000
const ANSWER_MS = 10_000
const WHOLE_MS = 30_000

/**
 * Makes a fetcher: https only, no redirects, public addresses only (looked at when connecting), bounded in time
 * and size, three tries.
 *
 * @param options - Whether the operator's own network is allowed
 * @returns The fetcher
 */
export function rangeFetcher(options: FetcherOptions): RangeFetcher {
  const { allowPrivate, resolve, retryMs = 1000, answerMs = ANSWER_MS, wholeMs = WHOLE_MS } = options
  let agent: Agent | undefined
  /** Loaded when it is first needed: most services have nothing to fetch, and the start need not wait for it. */
  const open = async () => {
    const undici = await import('undici')
    agent ??= new undici.Agent({
      connect: { timeout: CONNECT_MS, ...(allowPrivate ? {} : { lookup: publicLookup(resolve) }) },
      headersTimeout: answerMs,
      bodyTimeout: answerMs,
      maxResponseSize: RANGE_BODY_LIMIT_BYTES,
    })
    return { agent, request: undici.request }
  }
  return {
    async fetch(url, known) {
      const address = allowedUrl(url, allowPrivate)
      for (let tried = 1; ; tried += 1) {
        try {
          return await fetchOnce({ ...(await open()), url: address, known, wholeMs })
        } catch (error) {
          const passing = error instanceof FetchRangeError && error.passing
          if (!passing || tried === TRIES) throw error
          await pause(retryMs * 2 ** (tried - 1))
        }
      }
    },
    close: async () => agent?.destroy(),
  }
}

function allowedUrl(text: string, allowPrivate: boolean): URL {
  const url = URL.canParse(text) ? new URL(text) : undefined
  if (url === undefined || (url.protocol !== 'https:' && !(allowPrivate && url.protocol === 'http:'))) {
    throw new FetchRangeError('The address must begin with https://.', false)
  }
  const host = url.hostname.replace(/^\[|\]$/g, '')
  // Names are looked at when connecting; an address written out never comes by there.
  if (!allowPrivate && isIP(host) !== 0 && !isPublicAddress(host)) {
    throw new FetchRangeError(`${host} is not a public address.`, false)
  }
  return url
}

async function fetchOnce(asked: {
  readonly agent: Agent
  readonly request: typeof request
  readonly url: URL
  readonly known: string | undefined
  readonly wholeMs: number
}): Promise<Fetched> {
  const { agent, url, known, wholeMs } = asked
  let status: number
  let etag: string | undefined
  let bytes: Uint8Array
  try {
    const answer = await asked.request(url, {
      dispatcher: agent,
      signal: AbortSignal.timeout(wholeMs),
      headers: { accept: 'application/json', ...(known === undefined ? {} : { 'if-none-match': known }) },
    })
    status = answer.statusCode
    const tag = answer.headers.etag
    etag = typeof tag === 'string' ? tag : undefined
    bytes = await answer.body.bytes()
  } catch (error) {
    throw new FetchRangeError(`No answer: ${reasonOf(error)}.`, !isFinal(error), error)
  }
  if (status === 304 && known !== undefined) return { kind: 'unchanged' }
  if (status !== 200) {
    throw new FetchRangeError(`It answered with status ${status}.`, status === 429 || status >= 500)
  }
  return { kind: 'document', bytes, etag }
}

function isFinal(error: unknown): boolean {
  const code = error instanceof Error && 'code' in error ? error.code : undefined
  return code === 'UND_ERR_RES_EXCEEDED_MAX_SIZE' || /isn't public/.test(reasonOf(error))
}

function reasonOf(error: unknown): string {
  if (error instanceof AggregateError && error.errors.length > 0) return reasonOf(error.errors[0])
  return error instanceof Error ? error.message : String(error)
}
