import { type Operation, operations } from '../../shared/contract/operations.ts'
import { PART_LISTS } from '../../shared/contract/range-admin.ts'
import replyExamples from '../../shared/examples/replies.json' with { type: 'json' }
import { jsonSchemaOf } from '../../shared/json-schema.ts'
import { COLUMNS } from '../range-files/columns.ts'
import { type Components, schemaComponents } from './components.ts'
import { type ProblemResponses, problemResponses, RESPONSE_HEADERS, replyHeaders } from './responses.ts'

/**
 * The OpenAPI 3.1 document, made from the schemas that the service validates with.
 *
 * @param examples - A reply for each operation, by id; those that `npm run openapi` has written down
 * @returns The document as plain data
 */
export function openApiDocument(
  examples: Readonly<Record<string, unknown>> = replyExamples,
): Readonly<Record<string, unknown>> {
  const context: Context = { components: schemaComponents(), problems: problemResponses(), examples }
  const paths: Record<string, Record<string, unknown>> = {}
  for (const operation of Object.values<Operation>(operations)) {
    const path = paths[operation.path] ?? {}
    path[operation.method.toLowerCase()] = describeOperation(operation, context)
    paths[operation.path] = path
  }
  return {
    openapi: '3.1.0',
    info: {
      title: 'Tallywatt',
      version: '1.0.0',
      description: 'Which inverter runs these things from this battery, from a shop’s own range.',
      license: { name: 'MIT', identifier: 'MIT' },
    },
    servers: [{ url: '/', description: 'This service' }],
    tags: TAGS,
    paths,
    components: {
      schemas: context.components.schemas,
      responses: context.problems.components,
      headers: RESPONSE_HEADERS,
      securitySchemes: {
        secretKey: {
          type: 'http',
          scheme: 'bearer',
          description: 'A secret key of the shop, from a server or from the staff page of this service.',
        },
      },
    },
  }
}

interface Context {
  readonly components: Components
  readonly problems: ProblemResponses
  readonly examples: Readonly<Record<string, unknown>>
}

const TAGS = [
  { name: 'sizing', description: 'From loads to an inverter.' },
  { name: 'appliances', description: 'The built-in appliance list.' },
  { name: 'shops', description: 'What a page needs to know of a shop.' },
  { name: 'range', description: 'What a shop sells: for its staff and servers, with a secret key.' },
  { name: 'staff', description: 'What the range lacks and what shoppers ask for: with a secret key.' },
  { name: 'service', description: 'The service itself.' },
]

function describeOperation(operation: Operation, context: Context): Readonly<Record<string, unknown>> {
  const { components, problems } = context
  const parameters = parametersOf(operation)
  return {
    operationId: operation.id,
    tags: [operation.tag],
    summary: operation.summary,
    description: operation.description,
    ...(parameters.length > 0 ? { parameters } : {}),
    security: operation.scope === undefined ? [] : [{ secretKey: [] }],
    ...(operation.body === undefined
      ? {}
      : { requestBody: requestBody(operation.body, { components, csv: operation.csv?.body }) }),
    responses: {
      '200': goodReply(operation, context),
      ...(operation.headers?.some(({ name }) => name === 'If-None-Match') === true
        ? { '304': { description: 'The caller holds it already.', headers: replyHeaders(operation) } }
        : {}),
      ...problems.of(operation),
    },
  }
}

function goodReply(operation: Operation, { components, examples }: Context) {
  const { schema, description, mediaType = 'application/json' } = operation.reply
  const example = examples[operation.id]
  return {
    description,
    headers: replyHeaders(operation),
    content: {
      [mediaType]: {
        schema: components.refer(jsonSchemaOf(schema)),
        ...(example === undefined ? {} : { example }),
      },
      ...csvContent(operation.csv?.reply),
    },
  }
}

function parametersOf(operation: Operation): readonly unknown[] {
  const names = [...operation.path.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name)
  return [
    ...names.map((name) => ({ name, in: 'path', required: true, ...PATH_PARAMETERS[name] })),
    ...queryParametersOf(operation),
    ...(operation.headers ?? []).map((header) => ({ ...header, in: 'header', schema: { type: 'string' } })),
  ]
}

const PATH_PARAMETERS: Readonly<Record<string, object>> = {
  shopId: { schema: { type: 'string', maxLength: 64 }, description: 'Id of a shop.' },
  version: { schema: { type: 'string', pattern: '^[1-9]\\d{0,8}$' }, description: 'Number of a version.' },
}

function queryParametersOf({ query }: Operation): readonly unknown[] {
  if (query === undefined) return []
  const { properties } = jsonSchemaOf(query)
  return Object.entries(properties ?? {}).map(([name, { description, ...schema }]) => ({
    name,
    in: 'query',
    required: false,
    schema,
    ...(description === undefined ? {} : { description }),
  }))
}

function requestBody(
  body: NonNullable<Operation['body']>,
  { components, csv }: { readonly components: Components; readonly csv: string | undefined },
) {
  return {
    required: true,
    content: {
      'application/json': { schema: components.refer(jsonSchemaOf(body.schema)), example: body.example },
      ...csvContent(csv),
    },
  }
}

/** CSV with its columns, which are the same for what is sent and what is given. */
function csvContent(example: string | undefined) {
  if (example === undefined) return {}
  const columns = PART_LISTS.map((list) => {
    const names = COLUMNS[list].map(({ name, required }) => (required ? `${name} (needed)` : name))
    return `${list}: ${names.join(', ')}.`
  })
  return {
    'text/csv': {
      schema: {
        type: 'string',
        description: `One list of parts. Columns, in any order: ${columns.join(' ')}`,
      },
      example,
    },
  }
}
