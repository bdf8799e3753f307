import { Ajv2020 } from 'ajv/dist/2020.js'
import type { FastifyInstance, LightMyRequestResponse } from 'fastify'
import { openApiDocument } from '../../server/openapi/document.ts'
import { problemSchema } from '../../shared/contract/problem.ts'

interface Described {
  readonly responses: Readonly<Record<string, { readonly $ref?: string; readonly content?: object }>>
}
type Paths = Readonly<Record<string, Readonly<Record<string, Described>>>>

let known: { readonly paths: Paths; readonly ajv: Ajv2020 } | undefined

/** The document in force and a validator that knows it, made once for each test file that needs them. */
function contract() {
  if (known === undefined) {
    const document = openApiDocument()
    const ajv = new Ajv2020({ strict: false, allErrors: true, logger: false })
    ajv.addSchema({ $id: 'document', ...document })
    known = { paths: document.paths as Paths, ajv }
  }
  return known
}

/**
 * Holds every reply of a service to the OpenAPI document: a status that the operation lists, the media type that it
 * lists for it, and a body of that schema. What the document does not know must be a page or a problem.
 *
 * @param app - A service
 * @returns The same service; `inject` rejects where a reply breaks the contract
 */
export function checkedReplies(app: FastifyInstance): FastifyInstance {
  const inject = app.inject.bind(app) as (options: unknown) => Promise<LightMyRequestResponse>
  const checked = async (options: string | { readonly method?: string; readonly url?: unknown }) => {
    const reply = await inject(options)
    const asked = typeof options === 'string' ? { url: options } : options
    const fault = faultOf(asked.method ?? 'GET', String(asked.url ?? '/'), reply)
    if (fault !== undefined) throw new Error(`${asked.method ?? 'GET'} ${String(asked.url)}: ${fault}`)
    return reply
  }
  return Object.assign(app, { inject: checked })
}

/**
 * What a reply has against the document.
 *
 * @param method - Of the request
 * @param url - Path and query of the request
 * @param reply - What came back
 * @returns A sentence, or undefined where nothing is wrong
 */
export function faultOf(
  method: string,
  url: string,
  reply: Pick<LightMyRequestResponse, 'statusCode' | 'headers' | 'body'>,
): string | undefined {
  const { statusCode, headers, body } = reply
  const type = String(headers['content-type'] ?? '').split(';', 1)[0] ?? ''
  if (statusCode >= 400 && type !== 'application/problem+json') return `${statusCode} as "${type}"`
  const path = templateOf(url.split('?', 1)[0] ?? '')
  const operation = path === undefined ? undefined : contract().paths[path]?.[keyOf(method)]
  if (path === undefined || operation === undefined) {
    if (statusCode < 400 || method === 'HEAD') return undefined
    return problemSchema.safeParse(JSON.parse(body)).error?.message
  }
  if (statusCode === 204 && method === 'OPTIONS') return undefined
  const described = operation.responses[String(statusCode)]
  if (described === undefined) return `status ${statusCode} is not listed: ${body.slice(0, 200)}`
  if (body === '') return undefined
  const base = described.$ref?.slice(1) ?? `/paths/${escaped(path)}/${keyOf(method)}/responses/${statusCode}`
  return bodyFault(`${base}/content/${escaped(type)}/schema`, type, body)
}

function bodyFault(pointer: string, type: string, body: string): string | undefined {
  const { ajv } = contract()
  const validate = ajv.getSchema(`document#${pointer}`)
  if (validate === undefined) return `media type "${type}" is not listed`
  const value: unknown = type.endsWith('json') ? JSON.parse(body) : body
  if (validate(value)) return undefined
  return ajv.errorsText(validate.errors).slice(0, 600)
}

function keyOf(method: string): string {
  return method === 'HEAD' ? 'get' : method.toLowerCase()
}

function templateOf(path: string): string | undefined {
  return Object.keys(contract().paths).find((template) =>
    new RegExp(`^${template.replaceAll(/\{\w+\}/g, '[^/]+').replaceAll('.', '\\.')}$`).test(path),
  )
}

function escaped(part: string): string {
  return encodeURIComponent(part.replaceAll('~', '~0').replaceAll('/', '~1'))
}
