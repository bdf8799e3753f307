import { z } from 'zod/v3'
import { cartRequestExample } from '../examples/carts.ts'
import { fitRequestExample, runtimeRequestExample, sizingRequestExample } from '../examples/plans.ts'
import { rangeDocumentExample } from '../examples/range.ts'
import { fitAnswerSchema, runtimeAnswerSchema, sizingAnswerSchema } from './answers.ts'
import { applianceListSchema, localeQuerySchema } from './appliances.ts'
import { cartAnswerSchema, cartRequestSchema } from './cart.ts'
import {
  coveragePreviewQuerySchema,
  coveragePreviewSchema,
  coverageQuerySchema,
  coverageReplySchema,
} from './coverage.ts'
import { demandQuerySchema, demandReplySchema } from './demand.ts'
import { healthSchema, readinessSchema } from './health.ts'
import { fitRequestSchema, runtimeRequestSchema, sizingRequestSchema } from './plan.ts'
import type { ProblemCode } from './problem.ts'
import { rangeDocumentSchema } from './range.ts'
import {
  type KeyScope,
  rangeQuerySchema,
  rangeVersionsSchema,
  rangeWriteAnswerSchema,
  rangeWriteQuerySchema,
  versionsQuerySchema,
} from './range-admin.ts'
import { setupSchema } from './setup.ts'

/** One operation of the API: what it takes, what it answers, how it can fail. */
export interface Operation {
  readonly id: string
  readonly method: 'GET' | 'POST' | 'PUT'
  /** Path with `{name}` parameters. */
  readonly path: string
  readonly tag: string
  readonly summary: string
  readonly description: string
  /** Scope that the caller's secret key must have; left out where no key is needed. */
  readonly scope?: KeyScope
  readonly query?: z.AnyZodObject
  /** Request headers that change what it does. */
  readonly headers?: readonly OperationHeader[]
  /** CSV that it takes as a body or gives as a reply, beside JSON; it then reads its body itself. */
  readonly csv?: { readonly body?: string; readonly reply?: string }
  readonly body?: { readonly schema: z.ZodTypeAny; readonly example: unknown }
  readonly reply: {
    readonly schema: z.ZodTypeAny
    readonly description: string
    /** `application/json` where left out. */
    readonly mediaType?: string
  }
  readonly problems: readonly ProblemCode[]
}

/** A request header of an operation. */
export interface OperationHeader {
  readonly name: string
  readonly required: boolean
  readonly description: string
}

const ifMatch: OperationHeader = {
  name: 'If-Match',
  required: true,
  description: 'ETag of the version that you have changed, or `*` for whichever is in force.',
}

const ifNoneMatch: OperationHeader = {
  name: 'If-None-Match',
  required: false,
  description: 'ETag that you hold: 304 without a body where it is still right.',
}

const keyProblems = [
  'bad-request',
  'key-in-address',
  'unauthorised',
  'key-in-browser',
  'scope-too-small',
  'unknown-shop',
  'internal-error',
  'store-unavailable',
] as const satisfies readonly ProblemCode[]

const csvExample = [
  'sku,name,price,inStock,kind,limitA',
  'X-50,Two-pole connector 50 A,12.50,yes,quick-connector,50',
].join('\n')

const bodyProblems = [
  'unreadable-json',
  'bad-request',
  'unknown-shop',
  'body-too-large',
  'unsupported-media-type',
  'contract-broken',
  'internal-error',
] as const satisfies readonly ProblemCode[]

/** Every operation, by name. */
export const operations = {
  listAppliances: {
    id: 'listAppliances',
    method: 'GET',
    path: '/v1/appliances',
    tag: 'appliances',
    summary: 'List the built-in appliances',
    description:
      'Every appliance with its figures and the source of each, named in the language asked for, else in English. Carries an ETag.',
    query: localeQuerySchema,
    headers: [ifNoneMatch],
    reply: { schema: applianceListSchema, description: 'The list.' },
    problems: ['contract-broken', 'internal-error'],
  },
  readSetup: {
    id: 'readSetup',
    method: 'GET',
    path: '/v1/shops/{shopId}/setup',
    tag: 'shops',
    summary: 'Read what a page needs to ask a shopper',
    description:
      "The shop's rules and the appliance list at the shop's mains voltage, named in the language asked for, else the shop's. Carries an ETag.",
    query: localeQuerySchema,
    headers: [ifNoneMatch],
    reply: { schema: setupSchema, description: 'The set-up.' },
    problems: ['unknown-shop', 'contract-broken', 'internal-error'],
  },
  sizeShop: {
    id: 'sizeShop',
    method: 'POST',
    path: '/v1/shops/{shopId}/sizing',
    tag: 'sizing',
    summary: 'Recommend the smallest suitable inverter',
    description: 'From loads and, if known, the supply: the smallest unit that fits, and why others do not.',
    body: { schema: sizingRequestSchema, example: sizingRequestExample },
    reply: { schema: sizingAnswerSchema, description: 'The answer; `recommended` is null where none fits.' },
    problems: bodyProblems,
  },
  fitUnit: {
    id: 'fitUnit',
    method: 'POST',
    path: '/v1/shops/{shopId}/fit',
    tag: 'sizing',
    summary: 'Judge one inverter',
    description: 'Whether one named unit of the range runs the loads, and the smallest that would.',
    body: { schema: fitRequestSchema, example: fitRequestExample },
    reply: { schema: fitAnswerSchema, description: 'The verdict.' },
    problems: [...bodyProblems, 'unknown-sku'],
  },
  checkCart: {
    id: 'checkCart',
    method: 'POST',
    path: '/v1/shops/{shopId}/cart-check',
    tag: 'sizing',
    summary: 'Check a cart',
    description:
      'Whether the lines of a cart go together, are safe, and run the loads where there are any: every mismatch with the part that is wrong and the one that is right.',
    body: { schema: cartRequestSchema, example: cartRequestExample },
    reply: { schema: cartAnswerSchema, description: 'What was found; `ok` where nothing fails.' },
    problems: bodyProblems,
  },
  readRange: {
    id: 'readRange',
    method: 'GET',
    path: '/v1/shops/{shopId}/range',
    tag: 'range',
    summary: 'Read the range in force',
    description:
      'The whole document as JSON, or one list of parts as CSV with `part`. Its ETag is what a write names in If-Match.',
    scope: 'read',
    query: rangeQuerySchema,
    headers: [ifNoneMatch],
    csv: { reply: csvExample },
    reply: { schema: rangeDocumentSchema, description: 'The range.' },
    problems: keyProblems,
  },
  writeRange: {
    id: 'writeRange',
    method: 'PUT',
    path: '/v1/shops/{shopId}/range',
    tag: 'range',
    summary: 'Put a new range in force',
    description:
      'The whole document as JSON, or one list of parts with `part`: as CSV, or as a JSON array. The rest of the range stays. All faults come at once and then the old version stays in force. With `dryRun=true` nothing is written, and If-Match may be left out.',
    scope: 'range',
    query: rangeWriteQuerySchema,
    headers: [ifMatch],
    csv: { body: csvExample },
    body: { schema: rangeDocumentSchema, example: rangeDocumentExample },
    reply: { schema: rangeWriteAnswerSchema, description: 'What changed.' },
    problems: [
      ...keyProblems,
      'unreadable-json',
      'body-too-large',
      'unsupported-media-type',
      'contract-broken',
      'precondition-required',
      'precondition-failed',
    ],
  },
  listRangeVersions: {
    id: 'listRangeVersions',
    method: 'GET',
    path: '/v1/shops/{shopId}/range/versions',
    tag: 'range',
    summary: 'List the versions of the range',
    description: 'Newest first, with who made each, when and how.',
    scope: 'read',
    query: versionsQuerySchema,
    reply: { schema: rangeVersionsSchema, description: 'A page of versions.' },
    problems: keyProblems,
  },
  readRangeVersion: {
    id: 'readRangeVersion',
    method: 'GET',
    path: '/v1/shops/{shopId}/range/versions/{version}',
    tag: 'range',
    summary: 'Read one version of the range',
    description: 'The document as it was.',
    scope: 'read',
    reply: { schema: rangeDocumentSchema, description: 'The range of that version.' },
    problems: [...keyProblems, 'unknown-version'],
  },
  restoreRangeVersion: {
    id: 'restoreRangeVersion',
    method: 'POST',
    path: '/v1/shops/{shopId}/range/versions/{version}/restore',
    tag: 'range',
    summary: 'Put an old version in force again',
    description: 'Makes a new version with the old document, byte for byte.',
    scope: 'range',
    headers: [ifMatch],
    reply: { schema: rangeWriteAnswerSchema, description: 'What changed.' },
    // It takes no body, and refuses one that can't be read.
    problems: [
      ...keyProblems,
      'unreadable-json',
      'body-too-large',
      'unsupported-media-type',
      'unknown-version',
      'contract-broken',
      'precondition-required',
      'precondition-failed',
    ],
  },
  readCoverage: {
    id: 'readCoverage',
    method: 'GET',
    path: '/v1/shops/{shopId}/coverage',
    tag: 'staff',
    summary: "Read what the range can and can't serve",
    description:
      'The answer to each everyday plan at each supply voltage that the range serves, units that are never recommended, gaps, missing parts of kits, and what each battery carries. The plans are every appliance of the list by itself and forty combinations. Carries an ETag.',
    scope: 'read',
    query: coverageQuerySchema,
    headers: [ifNoneMatch],
    reply: { schema: coverageReplySchema, description: 'The coverage of the range in force.' },
    problems: keyProblems,
  },
  previewCoverage: {
    id: 'previewCoverage',
    method: 'POST',
    path: '/v1/shops/{shopId}/coverage/preview',
    tag: 'staff',
    summary: 'Tell which everyday plans a draft range would answer otherwise',
    description:
      'Takes what a write of the range takes, and writes nothing: the whole document as JSON, or one list of parts with `part`, as CSV or as a JSON array.',
    scope: 'range',
    query: coveragePreviewQuerySchema,
    csv: { body: csvExample },
    body: { schema: rangeDocumentSchema, example: rangeDocumentExample },
    reply: { schema: coveragePreviewSchema, description: 'What would change for shoppers.' },
    problems: [
      ...keyProblems,
      'unreadable-json',
      'body-too-large',
      'unsupported-media-type',
      'contract-broken',
    ],
  },
  readDemand: {
    id: 'readDemand',
    method: 'GET',
    path: '/v1/shops/{shopId}/demand',
    tag: 'staff',
    summary: 'Read what shoppers asked for, and advice on what to stock',
    description:
      'Counts of sizing and fit calls in a period, without anything personal, and which new sizes would serve most and which units could go. What was counted fewer than five times is told only together with others. The newest seconds of other instances may be missing.',
    scope: 'demand',
    query: demandQuerySchema,
    reply: { schema: demandReplySchema, description: 'The counts and the advice.' },
    problems: keyProblems,
  },
  readReadiness: {
    id: 'readReadiness',
    method: 'GET',
    path: '/readyz',
    tag: 'service',
    summary: 'Tell whether the service can answer shoppers',
    description:
      'Ready as long as there are ranges in memory. `degraded` means that the store does not answer or that a range in it is faulty: shoppers are served from the last good ranges, and nothing can be stored.',
    reply: { schema: readinessSchema, description: 'It can answer.' },
    problems: ['not-ready', 'internal-error'],
  },
  predictRuntime: {
    id: 'predictRuntime',
    method: 'POST',
    path: '/v1/shops/{shopId}/runtime',
    tag: 'sizing',
    summary: 'Predict how long a battery lasts',
    description: 'For watts or loads, by a unit of the range or one whose figures are stated.',
    body: { schema: runtimeRequestSchema, example: runtimeRequestExample },
    reply: { schema: runtimeAnswerSchema, description: 'The run time with its curve and band.' },
    problems: [...bodyProblems, 'unknown-sku'],
  },
  readHealth: {
    id: 'readHealth',
    method: 'GET',
    path: '/healthz',
    tag: 'service',
    summary: 'Tell whether the service runs',
    description: 'Answers as long as the process can answer; touches nothing else.',
    reply: { schema: healthSchema, description: 'It runs.' },
    problems: ['internal-error'],
  },
  readMetrics: {
    id: 'readMetrics',
    method: 'GET',
    path: '/metrics',
    tag: 'service',
    summary: 'Read what the service measures of itself',
    description:
      'In the Prometheus text format. With a password set, by HTTP Basic under any user name; without one, only from the machine that the service runs on. Others are told that there is nothing here.',
    reply: {
      schema: z.string().describe('Figures, one a line, with what each means above it.'),
      description: 'The figures.',
      mediaType: 'text/plain',
    },
    problems: ['not-found', 'internal-error'],
  },
  readContract: {
    id: 'readContract',
    method: 'GET',
    path: '/openapi.json',
    tag: 'service',
    summary: 'Read this document',
    description: 'The contract as an OpenAPI 3.1 document. Carries an ETag.',
    headers: [ifNoneMatch],
    reply: { schema: z.object({ openapi: z.string() }).passthrough(), description: 'The document.' },
    problems: ['internal-error'],
  },
} as const satisfies Readonly<Record<string, Operation>>
