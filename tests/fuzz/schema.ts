import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js'

/** A JSON Schema as it stands in an OpenAPI 3.1 document, with the keywords that are understood here. */
export interface Schema {
  readonly $ref?: string
  readonly type?: string | readonly string[]
  readonly enum?: readonly unknown[]
  readonly const?: unknown
  readonly properties?: Readonly<Record<string, Schema>>
  readonly required?: readonly string[]
  readonly additionalProperties?: boolean | Schema
  readonly items?: Schema
  readonly minItems?: number
  readonly maxItems?: number
  readonly minLength?: number
  readonly maxLength?: number
  readonly pattern?: string
  readonly format?: string
  readonly minimum?: number
  readonly maximum?: number
  readonly exclusiveMinimum?: number
  readonly exclusiveMaximum?: number
  readonly anyOf?: readonly Schema[]
  readonly oneOf?: readonly Schema[]
  readonly allOf?: readonly Schema[]
}

const UNDERSTOOD = new Set([
  ...['$ref', 'type', 'enum', 'const', 'properties', 'required', 'additionalProperties', 'items'],
  ...['minItems', 'maxItems', 'minLength', 'maxLength', 'pattern', 'format', 'minimum', 'maximum'],
  ...['exclusiveMinimum', 'exclusiveMaximum', 'anyOf', 'oneOf', 'allOf'],
  // Annotations: they forbid nothing.
  ...['description', 'default', 'title', 'example', 'examples', 'deprecated', 'readOnly', 'writeOnly'],
])

/** The schemas of one document, with what refers from one to another. */
export interface Schemas {
  /** A schema without a reference at its top, and with the schemas of `allOf` drawn into one. */
  resolve(schema: Schema): Schema
  /** Whether a value keeps a schema. */
  holds(schema: Schema, value: unknown): boolean
}

/**
 * Reads the schemas of a document.
 *
 * @param document - An OpenAPI 3.1 document, or any object that `#/...` references point into
 * @returns Its schemas
 * @throws Error at a keyword that is not understood here, so that none is passed over
 */
export function schemasOf(document: object): Schemas {
  const ajv = new Ajv2020({ strict: false, allErrors: false, logger: false, validateFormats: false })
  ajv.addSchema({ $id: 'fuzzed', ...document })
  const validators = new Map<Schema, ValidateFunction>()

  function resolve(schema: Schema): Schema {
    for (const keyword of Object.keys(schema)) {
      if (!UNDERSTOOD.has(keyword)) throw new Error(`The keyword "${keyword}" is not understood here.`)
    }
    if (schema.$ref !== undefined) return resolve(pointedAt(document, schema.$ref))
    if (schema.allOf === undefined) return schema
    const { allOf, ...own } = schema
    return [own, ...allOf.map(resolve)].reduce(both)
  }

  function holds(schema: Schema, value: unknown): boolean {
    let validate = validators.get(schema)
    if (validate === undefined) {
      validate = ajv.compile(withReferencesInto(schema) as object)
      validators.set(schema, validate)
    }
    return validate(value) === true
  }

  return { resolve, holds }
}

function pointedAt(document: object, ref: string): Schema {
  let node: unknown = document
  for (const step of ref.slice(2).split('/')) {
    const key = step.replaceAll('~1', '/').replaceAll('~0', '~')
    node = (node as Readonly<Record<string, unknown>> | undefined)?.[key]
  }
  if (typeof node !== 'object' || node === null) throw new Error(`${ref} points at nothing.`)
  return node
}

/** The same schema, its references pointing into the document that the validator knows. */
function withReferencesInto(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(withReferencesInto)
  if (typeof node !== 'object' || node === null) return node
  return Object.fromEntries(
    Object.entries(node).map(([key, part]) => [
      key,
      key === '$ref' && typeof part === 'string' ? `fuzzed${part}` : withReferencesInto(part),
    ]),
  )
}

/** What two schemas ask for together. */
function both(one: Schema, other: Schema): Schema {
  return {
    ...one,
    ...other,
    properties: { ...one.properties, ...other.properties },
    required: [...(one.required ?? []), ...(other.required ?? [])],
  }
}
