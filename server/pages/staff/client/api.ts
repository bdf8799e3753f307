import type { SizingAnswer } from '../../../../shared/contract/answers.ts'
import type { CoveragePreview, CoverageReply } from '../../../../shared/contract/coverage.ts'
import type { DemandReply } from '../../../../shared/contract/demand.ts'
import type { SizingRequest } from '../../../../shared/contract/plan.ts'
import type { Problem } from '../../../../shared/contract/problem.ts'
import type { RangeVersions, RangeWriteAnswer } from '../../../../shared/contract/range-admin.ts'
import type { Setup } from '../../../../shared/contract/setup.ts'
import type { PartList } from './range/draft.ts'

/** An answer of the service, or why there is none. */
export type Reply<T> =
  | { readonly ok: true; readonly value: T; readonly etag: string }
  | { readonly ok: false; readonly status: number; readonly problem: Partial<Problem>; readonly etag: string }

/** A range to be checked or looked at: a whole document, or a CSV file of one list. */
export type RangeBody =
  | { readonly document: unknown }
  | { readonly csv: Uint8Array<ArrayBuffer>; readonly part: PartList }

/** Which parts count: those in stock, as shoppers see it, or all. */
export type Stock = 'in-stock' | 'all'

/** The calls of the staff page. None ever rejects. */
export interface StaffApi {
  setup(): Promise<Reply<Setup>>
  range(): Promise<Reply<object>>
  rangeCsv(part: PartList): Promise<Reply<string>>
  checkRange(body: RangeBody, etag: string): Promise<Reply<RangeWriteAnswer>>
  publish(document: unknown, etag: string): Promise<Reply<RangeWriteAnswer>>
  effect(document: unknown): Promise<Reply<CoveragePreview>>
  versions(before?: number): Promise<Reply<RangeVersions>>
  version(number: number): Promise<Reply<object>>
  restore(number: number, etag: string): Promise<Reply<RangeWriteAnswer>>
  coverage(stock: Stock): Promise<Reply<CoverageReply>>
  demand(query: { readonly from: string; readonly to: string }): Promise<Reply<DemandReply>>
  sizing(request: SizingRequest): Promise<Reply<SizingAnswer>>
}

/**
 * The service as one shop's staff reach it.
 *
 * @param shopId - The shop
 * @param key - Its secret key; it leaves this page only in a header to the page's own service
 * @param locale - Language of names and sentences
 * @returns Its calls
 */
export function staffApi(shopId: string, key: string, locale: string): StaffApi {
  const shop = `/v1/shops/${encodeURIComponent(shopId)}`
  const authorization = `Bearer ${key}`
  const keyed = <T>(path: string, init: RequestInit = {}) =>
    ask<T>(`${shop}${path}`, { ...init, headers: { authorization, ...init.headers } })
  const json = (method: string, body: unknown, headers: Record<string, string> = {}): RequestInit => ({
    method,
    headers: { 'content-type': 'application/json', ...headers },
    body: JSON.stringify(body),
  })
  return {
    setup: () => ask(`${shop}/setup?locale=${encodeURIComponent(locale)}`, {}),
    range: () => keyed('/range'),
    rangeCsv: (part) => keyed(`/range?part=${part}`),
    checkRange: (body, etag) =>
      'csv' in body
        ? keyed(`/range?dryRun=true&part=${body.part}`, {
            method: 'PUT',
            headers: { 'content-type': 'text/csv', 'if-match': etag },
            body: body.csv,
          })
        : keyed('/range?dryRun=true', json('PUT', body.document, { 'if-match': etag })),
    publish: (document, etag) => keyed('/range', json('PUT', document, { 'if-match': etag })),
    effect: (document) => keyed('/coverage/preview', json('POST', document)),
    versions: (before) => keyed(`/range/versions?limit=20${before === undefined ? '' : `&before=${before}`}`),
    version: (number) => keyed(`/range/versions/${number}`),
    restore: (number, etag) =>
      keyed(`/range/versions/${number}/restore`, { method: 'POST', headers: { 'if-match': etag } }),
    coverage: (stock) => keyed(`/coverage?stock=${stock}`),
    demand: ({ from, to }) => keyed(`/demand?from=${from}&to=${to}&newSizes=3`),
    sizing: (request) => ask(`${shop}/sizing`, json('POST', request)),
  }
}

async function ask<T>(url: string, init: RequestInit): Promise<Reply<T>> {
  try {
    const response = await fetch(url, { ...init, credentials: 'omit', cache: 'no-store', redirect: 'error' })
    const etag = response.headers.get('etag') ?? ''
    const text = await response.text()
    const type = response.headers.get('content-type') ?? ''
    const value: unknown = /json/.test(type) ? JSON.parse(text) : text
    if (response.ok) return { ok: true, value: value as T, etag }
    const problem = typeof value === 'object' && value !== null ? (value as Partial<Problem>) : {}
    return { ok: false, status: response.status, problem, etag }
  } catch {
    return { ok: false, status: 0, problem: {}, etag: '' }
  }
}
