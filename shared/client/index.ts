import type { Dispatcher } from 'undici'
import { ADDRESSES, type CsvText, type Operations } from '../../openapi/client-types.ts'
import { type CallSettings, call, type Incoming, type Outgoing, parsed } from './call.ts'
import { ConnectionError } from './errors.ts'
import { DEFAULT_RETRIES, type RetryPolicy } from './retries.ts'

export type * from '../../openapi/client-types.ts'
export { ConnectionError, type ProblemCode, ProblemError } from './errors.ts'
export type { RetryPolicy } from './retries.ts'

/** Names of the operations. */
export type OperationId = keyof Operations
/** What an operation takes. */
export type Input<Id extends OperationId> = Operations[Id]['input']
/** What an operation answers; text where CSV is asked for. */
export type Data<Id extends OperationId> = Operations[Id]['data']

/** What a client is made with. */
export interface ClientOptions {
  /** Where the service is, such as `https://sizing.shop.example`. */
  readonly baseUrl: string
  /** Secret key of the shop, for its range. For a server: a page that holds it shows it to whoever opens the page. */
  readonly secretKey?: string
  /** Time for one try; 5 s where left out. [ms] */
  readonly timeoutMs?: number
  readonly retry?: Partial<RetryPolicy>
  /** An undici dispatcher: a pool, a proxy, a mock. */
  readonly dispatcher?: Dispatcher
}

/** What one call may differ in. */
export interface CallOptions {
  readonly signal?: AbortSignal
  readonly timeoutMs?: number
  readonly retry?: Partial<RetryPolicy>
  /** Shows up in the service's log. */
  readonly requestId?: string
}

/** A reply: the data, or `notModified` where the caller holds it already. */
export type Reply<Id extends OperationId> = ReplyMeta &
  (
    | { readonly notModified: false; readonly data: Data<Id> }
    | ('ifNoneMatch' extends keyof Input<Id>
        ? { readonly notModified: true; readonly data: undefined }
        : never)
  )

/** What comes with every reply. */
export interface ReplyMeta {
  readonly etag: string | undefined
  readonly requestId: string | undefined
}

/** Every operation of the API as a method. */
export type Client = {
  readonly [Id in OperationId]: Record<string, never> extends Input<Id>
    ? (input?: Input<Id>, options?: CallOptions) => Promise<Reply<Id>>
    : (input: Input<Id>, options?: CallOptions) => Promise<Reply<Id>>
}

/**
 * Makes a client of one service.
 *
 * @param options - Where the service is, and how to call it
 * @returns One method for each operation; they throw ProblemError and ConnectionError
 */
export function createClient(options: ClientOptions): Client {
  const ids = Object.keys(ADDRESSES) as OperationId[]
  const methods = ids.map((id) => [
    id,
    async (input: LooseInput = {}, callOptions: CallOptions = {}) =>
      replyOf(await call(outgoingOf(id, { input, options, callOptions }), settingsOf(options, callOptions))),
  ])
  return Object.fromEntries(methods) as Client
}

/** What all inputs together may hold; which of it an operation takes is held by {@link Input}. */
interface LooseInput {
  readonly body?: unknown
  readonly query?: Readonly<Record<string, string | undefined>>
  readonly ifMatch?: string
  readonly ifNoneMatch?: string
  readonly [parameter: string]: unknown
}

interface Asked {
  readonly input: LooseInput
  readonly options: ClientOptions
  readonly callOptions: CallOptions
}

function outgoingOf(id: OperationId, { input, options, callOptions }: Asked): Outgoing {
  const { method, path } = ADDRESSES[id]
  const { body, query = {}, ifMatch, ifNoneMatch } = input
  const filled = path.replaceAll(/\{(\w+)\}/g, (_, name) => encodeURIComponent(String(input[name])))
  const url = new URL(options.baseUrl.replace(/\/+$/, '') + filled)
  for (const [name, value] of Object.entries(query)) {
    if (value !== undefined) url.searchParams.set(name, value)
  }
  const headers = {
    accept: 'application/json, text/csv, application/problem+json',
    ...(options.secretKey === undefined ? {} : { authorization: `Bearer ${options.secretKey}` }),
    ...(callOptions.requestId === undefined ? {} : { 'x-request-id': callOptions.requestId }),
    ...(ifMatch === undefined ? {} : { 'if-match': ifMatch }),
    ...(ifNoneMatch === undefined ? {} : { 'if-none-match': ifNoneMatch }),
  }
  if (body === undefined) return { url: url.href, method, headers, body: undefined }
  const isCsv = isCsvText(body)
  return {
    url: url.href,
    method,
    headers: { ...headers, 'content-type': isCsv ? 'text/csv; charset=utf-8' : 'application/json' },
    body: isCsv ? body.csv : JSON.stringify(body),
  }
}

function isCsvText(body: unknown): body is CsvText {
  return typeof body === 'object' && body !== null && 'csv' in body && typeof body.csv === 'string'
}

function settingsOf(options: ClientOptions, callOptions: CallOptions): CallSettings {
  return {
    timeoutMs: callOptions.timeoutMs ?? options.timeoutMs ?? 5000,
    retry: { ...DEFAULT_RETRIES, ...options.retry, ...callOptions.retry },
    signal: callOptions.signal,
    dispatcher: options.dispatcher,
  }
}

function replyOf({ status, headers, text }: Incoming) {
  const meta: ReplyMeta = { etag: headers.etag, requestId: headers['x-request-id'] }
  if (status === 304) return { ...meta, notModified: true, data: undefined }
  const type = headers['content-type'] ?? ''
  if (!type.startsWith('application/json')) return { ...meta, notModified: false, data: text }
  const data = parsed(text)
  if (data === undefined) throw new ConnectionError('unexpected-reply', 'The reply is not readable JSON.')
  return { ...meta, notModified: false, data }
}
