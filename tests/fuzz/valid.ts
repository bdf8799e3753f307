import * as fc from 'fast-check'
import { soundText } from './hostile.ts'
import type { Schema, Schemas } from './schema.ts'

/** Values that mean something to the service, by the name of the property that holds them. */
export type Known = Readonly<Record<string, readonly unknown[]>>

/** Below this depth only what must be there is there, so that schemas that hold themselves come to an end. */
const FULL_DEPTH = 8
/** Members of most lists; a few are as long as they may be. */
const FEW = 3
const MANY = 45

/**
 * Values that keep a schema.
 *
 * @param schemas - The document that the schema stands in
 * @param schema - The schema
 * @param known - Values to prefer where the schema allows them
 * @returns Values of every kind that the schema allows, its bounds included
 */
export function validValues(schemas: Schemas, schema: Schema, known: Known = {}): fc.Arbitrary<unknown> {
  return valuesAt({ schemas, known }, schema, { depth: 0, name: '' })
}

interface Context {
  readonly schemas: Schemas
  readonly known: Known
}

interface Place {
  readonly depth: number
  /** Name of the property that it is, or is listed in. */
  readonly name: string
}

function valuesAt(context: Context, unresolved: Schema, place: Place): fc.Arbitrary<unknown> {
  const schema = context.schemas.resolve(unresolved)
  if (place.depth > 4 * FULL_DEPTH) throw new Error('This schema holds itself without an end.')
  const made = plainValues(context, schema, place)
  const { [place.name]: names = [] } = context.known
  const usable = names.filter((value) => context.schemas.holds(schema, value))
  if (usable.length === 0) return made
  return fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...usable) }, { weight: 1, arbitrary: made })
}

function plainValues(context: Context, schema: Schema, place: Place): fc.Arbitrary<unknown> {
  if (schema.const !== undefined) return fc.constant(schema.const)
  if (schema.enum !== undefined) return fc.constantFrom(...schema.enum)
  const choices = schema.anyOf ?? schema.oneOf
  if (choices !== undefined) {
    const drawn = fc.oneof(...choices.map((choice) => valuesAt(context, choice, place)))
    return schema.oneOf === undefined ? drawn : drawn.filter((value) => context.schemas.holds(schema, value))
  }
  const types = typesOf(schema)
  return fc.oneof(...types.map((type) => ofType(type, context, schema, place)))
}

function ofType(type: string, context: Context, schema: Schema, place: Place): fc.Arbitrary<unknown> {
  switch (type) {
    case 'object':
      return objects(context, schema, place)
    case 'array':
      return lists(context, schema, place)
    case 'string':
      return texts(schema)
    case 'integer':
      return integers(schema)
    case 'number':
      return numbers(schema)
    case 'boolean':
      return fc.boolean()
    case 'null':
      return fc.constant(null)
    default:
      throw new Error(`There is no type "${type}".`)
  }
}

/**
 * The types that a schema allows.
 *
 * @param schema - A resolved schema
 * @returns Names of types, all of them where it names none
 */
export function typesOf(schema: Schema): readonly string[] {
  const { type } = schema
  if (typeof type === 'string') return [type]
  if (type !== undefined) return type
  if (schema.properties !== undefined) return ['object']
  return ['object', 'array', 'string', 'number', 'boolean', 'null']
}

function objects(context: Context, schema: Schema, { depth }: Place): fc.Arbitrary<unknown> {
  const required = new Set(schema.required ?? [])
  const members: Record<string, fc.Arbitrary<unknown>> = {}
  for (const [name, property] of Object.entries(schema.properties ?? {})) {
    if (depth >= FULL_DEPTH && !required.has(name)) continue
    members[name] = valuesAt(context, property, { depth: depth + 1, name })
  }
  const stated = fc.record(members, {
    requiredKeys: Object.keys(members).filter((name) => required.has(name)),
    noNullPrototype: true,
  })
  const { additionalProperties: others } = schema
  const closed = others === false || (others === undefined && schema.properties !== undefined)
  if (closed || depth >= FULL_DEPTH) return stated
  const other = typeof others === 'object' ? others : {}
  const value =
    typeof others === 'object' ? valuesAt(context, other, { depth: depth + 1, name: '' }) : fc.jsonValue()
  const names = fc.string({ minLength: 1, maxLength: 8 }).filter((name) => !(name in members))
  return fc
    .tuple(stated, fc.dictionary(names, value, { maxKeys: 3, noNullPrototype: true }))
    .map(([own, rest]) => ({ ...rest, ...own }))
}

function lists(context: Context, schema: Schema, { depth, name }: Place): fc.Arbitrary<unknown> {
  const { minItems = 0, maxItems = Number.POSITIVE_INFINITY, items = {} } = schema
  if (depth >= FULL_DEPTH && minItems === 0) return fc.constant([])
  const item = valuesAt(context, items, { depth: depth + 1, name })
  const few = Math.min(maxItems, Math.max(minItems, depth >= FULL_DEPTH ? 0 : FEW))
  const many = Math.min(maxItems, Math.max(minItems, MANY))
  const short = fc.array(item, { minLength: minItems, maxLength: few, size: 'max' })
  // Lists of lists of everything would be larger than any request.
  if (many <= few || depth > 1) return short
  return fc.oneof(
    { weight: 30, arbitrary: short },
    { weight: 1, arbitrary: fc.array(item, { minLength: minItems, maxLength: many, size: 'max' }) },
  )
}

/** Formats that schemas name, each with texts that keep it. */
const FORMATS: Readonly<Record<string, fc.Arbitrary<string>>> = {
  'date-time': fc.date({ noInvalidDate: true, min: new Date(0) }).map((date) => date.toISOString()),
  date: fc.date({ noInvalidDate: true, min: new Date(0) }).map((date) => date.toISOString().slice(0, 10)),
  uri: fc.webUrl(),
  uuid: fc.uuid(),
  email: fc.emailAddress(),
}

function texts(schema: Schema): fc.Arbitrary<string> {
  const { minLength = 0, maxLength = 60, pattern, format } = schema
  const isSized = (text: string) => {
    const { length } = [...text]
    return length >= minLength && length <= maxLength
  }
  if (pattern !== undefined) return fc.stringMatching(new RegExp(pattern)).filter(isSized)
  if (format === undefined) return soundText(minLength, maxLength)
  const known = FORMATS[format]
  if (known === undefined) throw new Error(`The format "${format}" is not understood here.`)
  return known.filter(isSized)
}

function integers(schema: Schema): fc.Arbitrary<number> {
  const { minimum, maximum, exclusiveMinimum, exclusiveMaximum } = schema
  const min = Math.max(
    minimum === undefined ? Number.MIN_SAFE_INTEGER : Math.ceil(minimum),
    exclusiveMinimum === undefined ? Number.MIN_SAFE_INTEGER : Math.floor(exclusiveMinimum) + 1,
  )
  const max = Math.min(
    maximum === undefined ? Number.MAX_SAFE_INTEGER : Math.floor(maximum),
    exclusiveMaximum === undefined ? Number.MAX_SAFE_INTEGER : Math.ceil(exclusiveMaximum) - 1,
  )
  const small = fc.integer({ min, max: Math.min(max, Math.max(min, 4)) })
  return fc.oneof(
    { weight: 3, arbitrary: small },
    { weight: 2, arbitrary: fc.integer({ min, max }) },
    { weight: 1, arbitrary: fc.constantFrom(min, max) },
  )
}

function numbers(schema: Schema): fc.Arbitrary<number> {
  const { minimum, maximum, exclusiveMinimum, exclusiveMaximum } = schema
  const min = Math.max(minimum ?? -Number.MAX_VALUE, exclusiveMinimum ?? -Number.MAX_VALUE)
  const max = Math.min(maximum ?? Number.MAX_VALUE, exclusiveMaximum ?? Number.MAX_VALUE)
  const isIn = (n: number) =>
    n >= min && n <= max && n !== exclusiveMinimum && n !== exclusiveMaximum && Number.isFinite(n)
  const plain = [0, 0.5, 1, 2, 5, 10, 12, 20, 24, 50, 60, 100, 230, 250, 1000, 1500].filter(isIn)
  const bounds = [min, max].filter(isIn)
  const inside = fc.double({
    min,
    max,
    minExcluded: min === exclusiveMinimum,
    maxExcluded: max === exclusiveMaximum,
    noNaN: true,
    noDefaultInfinity: true,
  })
  return fc.oneof(
    { weight: 3, arbitrary: inside },
    ...(plain.length === 0 ? [] : [{ weight: 4, arbitrary: fc.constantFrom(...plain) }]),
    ...(bounds.length === 0 ? [] : [{ weight: 1, arbitrary: fc.constantFrom(...bounds) }]),
  )
}
