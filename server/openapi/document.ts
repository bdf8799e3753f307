import { type Operation, operations } from '../../shared/contract/operations.ts'
import { PROBLEMS, type ProblemCode, problemSchema } from '../../shared/contract/problem.ts'
import { jsonSchemaOf } from '../../shared/json-schema.ts'

/**
 * The OpenAPI 3.1 document, made from the schemas that the service validates with.
 *
 * @returns The document as plain data
 */
export function openApiDocument(): Readonly<Record<string, unknown>> {
  const paths: Record<string, Record<string, unknown>> = {}
  for (const operation of Object.values<Operation>(operations)) {
    const path = paths[operation.path] ?? {}
    path[operation.method.toLowerCase()] = describeOperation(operation)
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
    components: { schemas: { Problem: jsonSchemaOf(problemSchema) } },
  }
}

const TAGS = [
  { name: 'sizing', description: 'From loads to an inverter.' },
  { name: 'appliances', description: 'The built-in appliance list.' },
  { name: 'shops', description: 'What a page needs to know of a shop.' },
  { name: 'service', description: 'The service itself.' },
]

function describeOperation(operation: Operation): Readonly<Record<string, unknown>> {
  const parameters = [...operation.path.matchAll(/\{(\w+)\}/g)].map(([, name]) => ({
    name,
    in: 'path',
    required: true,
    schema: { type: 'string', maxLength: 64 },
    description: 'Id of a shop.',
  }))
  return {
    operationId: operation.id,
    tags: [operation.tag],
    summary: operation.summary,
    description: operation.description,
    ...(parameters.length > 0 ? { parameters } : {}),
    ...(operation.body === undefined ? {} : { requestBody: requestBody(operation.body) }),
    responses: {
      '200': {
        description: operation.reply.description,
        content: { 'application/json': { schema: jsonSchemaOf(operation.reply.schema) } },
      },
      ...problemResponses(operation.problems),
    },
  }
}

function requestBody(body: NonNullable<Operation['body']>) {
  return {
    required: true,
    content: { 'application/json': { schema: jsonSchemaOf(body.schema), example: body.example } },
  }
}

function problemResponses(codes: readonly ProblemCode[]): Readonly<Record<string, unknown>> {
  const byStatus = new Map<number, ProblemCode[]>()
  for (const code of codes) {
    const { status } = PROBLEMS[code]
    byStatus.set(status, [...(byStatus.get(status) ?? []), code])
  }
  return Object.fromEntries(
    [...byStatus].map(([status, of]) => [
      String(status),
      {
        description: of.map((code) => `\`${code}\`: ${PROBLEMS[code].title}.`).join(' '),
        content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
      },
    ]),
  )
}
