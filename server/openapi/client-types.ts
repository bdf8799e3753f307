import { type Operation, operations } from '../../shared/contract/operations.ts'
import { type JsonSchema, jsonSchemaOf } from '../../shared/json-schema.ts'
import { schemaComponents } from './components.ts'

/**
 * The contract as TypeScript, for those who ask it from a program: a type for each named schema, what each operation
 * takes and answers, and where it is. It needs neither zod nor the schemas.
 *
 * @returns Source text of a module
 */
export function clientTypesText(): string {
  const { schemas, refer } = schemaComponents()
  const shapes = Object.entries(schemas).map(([name, schema]) => `export type ${name} = ${typeOf(schema)}\n`)
  const all = Object.values<Operation>(operations)
  const described = all.map(
    (operation) =>
      `  readonly ${operation.id}: {\n    readonly input: ${inputOf(operation, refer)}\n    readonly data: ${dataOf(operation, refer)}\n  }\n`,
  )
  const addresses = all.map(
    ({ id, method, path }) => `  ${id}: { method: ${literal(method)}, path: ${literal(path)} },\n`,
  )
  return [
    '// Made from the contract by `npm run openapi`. Not to be edited by hand.\n\n',
    '/** A list of parts as the text of a CSV file. */\nexport type CsvText = { readonly csv: string }\n\n',
    ...shapes,
    `\n/** What each operation takes and answers. */\nexport type Operations = {\n${described.join('')}}\n`,
    `\n/** Where each operation is. */\nexport const ADDRESSES = {\n${addresses.join('')}} as const\n`,
  ].join('')
}

type Refer = (schema: JsonSchema) => JsonSchema

function inputOf(operation: Operation, refer: Refer): string {
  const { path, body, query, headers = [], csv } = operation
  const names = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => `readonly ${name}: string | number`)
  const bodyTypes = body === undefined ? [] : [typeOf(refer(jsonSchemaOf(body.schema)))]
  if (csv?.body !== undefined) bodyTypes.push('readonly unknown[]', 'CsvText')
  const parts = [
    ...names,
    ...(bodyTypes.length === 0 ? [] : [`readonly body: ${bodyTypes.join(' | ')}`]),
    ...(query === undefined ? [] : [`readonly query?: ${typeOf(jsonSchemaOf(query))}`]),
    ...(headers.some(({ name }) => name === 'If-Match') ? ['readonly ifMatch?: string'] : []),
    ...(headers.some(({ name }) => name === 'If-None-Match') ? ['readonly ifNoneMatch?: string'] : []),
  ]
  return parts.length === 0 ? '{ readonly nothing?: never }' : `{ ${parts.join('; ')} }`
}

function dataOf({ reply, csv }: Operation, refer: Refer): string {
  const type = typeOf(refer(jsonSchemaOf(reply.schema)))
  return csv?.reply === undefined ? type : `${type} | string`
}

function typeOf(schema: JsonSchema): string {
  const { $ref, type, items } = schema
  if (typeof $ref === 'string') return $ref.slice($ref.lastIndexOf('/') + 1)
  if (Array.isArray(schema.enum)) return schema.enum.map(literal).join(' | ')
  if ('const' in schema) return literal(schema.const)
  const choices = schema.anyOf ?? schema.oneOf
  if (Array.isArray(choices)) return choices.map((choice) => typeOf(choice as JsonSchema)).join(' | ')
  if (Array.isArray(type)) return type.map((one) => typeOf({ ...schema, type: one })).join(' | ')
  if (type === 'array') return `readonly (${typeOf((items ?? {}) as JsonSchema)})[]`
  if (type === 'object') return objectOf(schema)
  return type === undefined ? 'unknown' : (SIMPLE.get(String(type)) ?? unknownType(schema))
}

const SIMPLE: ReadonlyMap<string, string> = new Map([
  ['string', 'string'],
  ['number', 'number'],
  ['integer', 'number'],
  ['boolean', 'boolean'],
  ['null', 'null'],
])

function unknownType(schema: JsonSchema): never {
  throw new Error(`No TypeScript for ${JSON.stringify(schema).slice(0, 200)}`)
}

function objectOf({ properties, required, additionalProperties }: JsonSchema): string {
  if (properties === undefined) {
    const values =
      typeof additionalProperties === 'object' ? typeOf(additionalProperties as JsonSchema) : 'unknown'
    return `{ readonly [name: string]: ${values} }`
  }
  const needed = new Set(Array.isArray(required) ? required : [])
  const parts = Object.entries(properties as Readonly<Record<string, JsonSchema>>).map(
    ([name, part]) =>
      `readonly ${/^\w+$/.test(name) ? name : literal(name)}${needed.has(name) ? '' : '?'}: ${typeOf(part)}`,
  )
  return `{ ${parts.join('; ')} }`
}

function literal(value: unknown): string {
  return JSON.stringify(value)
}
