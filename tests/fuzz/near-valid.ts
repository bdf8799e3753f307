import * as fc from 'fast-check'
import { pointerOf } from '../../shared/pointer.ts'
import { hostileText, PROTOTYPE_NAMES } from './hostile.ts'
import type { Schema, Schemas } from './schema.ts'
import { typesOf } from './valid.ts'

/** A value that breaks one thing. */
export interface Breach {
  /** The whole value as JSON; numbers that no double holds stand in it as they are. */
  readonly text: string
  /** JSON Pointer of what was broken. */
  readonly at: string
}

interface Change {
  readonly path: readonly (string | number)[]
  /** What takes the place of the value at the path. */
  readonly value: unknown
  /** The member of it that is to blame, where it isn't the value itself. */
  readonly member?: string
}

/**
 * Values that keep a schema but for one change at one place: another type, over or under a bound, a missing or an
 * unknown member, null, a number beyond doubles, text that code trips over. Now and then the change is allowed.
 *
 * @param schemas - The document that the schema stands in
 * @param schema - The schema
 * @param valid - Values that keep it
 * @returns The changed values as JSON, with the place of the change
 */
export function nearValidTexts(
  schemas: Schemas,
  schema: Schema,
  valid: fc.Arbitrary<unknown>,
): fc.Arbitrary<Breach> {
  return fc.tuple(valid, fc.nat(), fc.nat(), hostileText).map(([value, where, how, text]) => {
    const places = placesIn(schemas, schema, value)
    const place = places[where % places.length]
    const changes = place === undefined ? [] : changesAt(schemas, place, text)
    const change = changes[how % changes.length]
    if (change === undefined) return { text: JSON.stringify(value), at: '' }
    const { path, member } = change
    return {
      text: withRawNumbers(JSON.stringify(changed(value, path, change.value))),
      at: pointerOf(member === undefined ? path : [...path, member]),
    }
  })
}

interface Place {
  readonly path: readonly (string | number)[]
  readonly schema: Schema
  readonly value: unknown
}

/** Every place of a value with the schema that it is held to there. */
function placesIn(schemas: Schemas, unresolved: Schema, root: unknown): readonly Place[] {
  const places: Place[] = []
  const visit = (raw: Schema, value: unknown, path: readonly (string | number)[]): void => {
    const schema = chosen(schemas, raw, value)
    places.push({ path, schema, value })
    if (Array.isArray(value)) {
      for (const [index, item] of value.entries()) visit(schema.items ?? {}, item, [...path, index])
    } else if (typeof value === 'object' && value !== null) {
      for (const [name, member] of Object.entries(value)) {
        const { additionalProperties: rest } = schema
        visit(schema.properties?.[name] ?? (typeof rest === 'object' ? rest : {}), member, [...path, name])
      }
    }
  }
  visit(unresolved, root, [])
  return places
}

/** A schema resolved, of several choices the one that the value keeps. */
function chosen(schemas: Schemas, raw: Schema, value: unknown): Schema {
  const schema = schemas.resolve(raw)
  const choices = schema.anyOf ?? schema.oneOf
  const choice = choices?.find((candidate) => schemas.holds(candidate, value))
  return choice === undefined ? schema : chosen(schemas, choice, value)
}

const SAMPLES: Readonly<Record<string, readonly unknown[]>> = {
  string: ['', '12', 'NaN'],
  number: [0, -1, 1.5, 1e308],
  boolean: [true, false],
  null: [null],
  array: [[], [[]], [null]],
  object: [{}, { length: 1 }, { toString: 1 }],
}

function changesAt(schemas: Schemas, { path, schema, value }: Place, text: string): readonly Change[] {
  const allowed = new Set(typesOf(schema).map((type) => (type === 'integer' ? 'number' : type)))
  const others = Object.entries(SAMPLES).flatMap(([type, samples]) => (allowed.has(type) ? [] : samples))
  const replacements: unknown[] = [
    ...others,
    raw('1e999'),
    raw('-1e999'),
    raw('123456789012345678901234567890'),
  ]
  if (typeof value === 'number') replacements.push(...numbersOut(schema, value))
  if (typeof value === 'string') replacements.push(...textsOut(schema, value), text, text, text)
  if (Array.isArray(value)) replacements.push(...listsOut(schema, value))
  const changes: Change[] = replacements.map((replacement) => ({ path, value: replacement }))
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    changes.push(...membersOut(schemas, { path, schema, value }, text))
  }
  return changes
}

function numbersOut(schema: Schema, value: number): readonly unknown[] {
  const { minimum, maximum, exclusiveMinimum, exclusiveMaximum } = schema
  const beyond = (bound: number, sign: 1 | -1) => [
    bound + sign * Math.max(1, Math.abs(bound) * 1e-9),
    sign * 1e300,
  ]
  return [
    ...(minimum === undefined ? [] : beyond(minimum, -1)),
    ...(maximum === undefined ? [] : beyond(maximum, 1)),
    ...(exclusiveMinimum === undefined ? [] : [exclusiveMinimum, exclusiveMinimum - 1]),
    ...(exclusiveMaximum === undefined ? [] : [exclusiveMaximum, exclusiveMaximum + 1]),
    value + 0.5,
    -value,
    5e-324,
    Number.MAX_SAFE_INTEGER + 2,
    String(value),
    'NaN',
  ]
}

function textsOut(schema: Schema, value: string): readonly unknown[] {
  const { minLength = 0, maxLength } = schema
  return [
    ...(maxLength === undefined ? [] : ['x'.repeat(maxLength + 1), '🜁'.repeat(maxLength + 1)]),
    ...(minLength > 0 ? ['x'.repeat(minLength - 1)] : []),
    value.toUpperCase(),
    `${value} `,
    `${value}\u200b`,
    `\u202e${value}`,
    value.normalize('NFD'),
    [value],
  ]
}

function listsOut(schema: Schema, value: readonly unknown[]): readonly unknown[] {
  const { minItems = 0, maxItems } = schema
  const sample = value[0] ?? 0
  return [
    ...(maxItems === undefined ? [] : [Array.from({ length: Math.min(maxItems, 300) + 1 }, () => sample)]),
    ...(minItems > 0 ? [value.slice(0, minItems - 1)] : []),
    [...value, ...value],
    [...value, null],
    { ...value },
  ]
}

function membersOut(
  schemas: Schemas,
  { path, schema, value }: Place & { readonly value: object },
  text: string,
): readonly Change[] {
  const gone = Object.keys(value).map((name) => {
    const { [name]: _, ...rest } = value as Readonly<Record<string, unknown>>
    return { path, value: rest, member: name }
  })
  const names = [...PROTOTYPE_NAMES, text, text.slice(0, 20), 'Id', 'quantity ', '0']
  const extra = names
    .filter((name) => !Object.hasOwn(value, name))
    .map((name) => ({ path, value: withMember(value, name, 1), member: name }))
  // A member that the schema knows but that stands elsewhere, or has stood there under another spelling.
  const misspelt = Object.keys(schema.properties ?? {}).flatMap((name) => {
    const [first = '', ...rest] = name
    const spelling = first.toUpperCase() + rest.join('')
    return schemas.resolve(schema.properties?.[name] ?? {}).const === undefined
      ? [{ path, value: withMember(value, spelling, 1), member: spelling }]
      : []
  })
  return [...gone, ...extra, ...misspelt.slice(0, 3)]
}

/** A copy with one more member of its own, whatever its name means to JavaScript. */
function withMember(value: object, name: string, member: unknown): object {
  const copy = { ...value }
  Object.defineProperty(copy, name, { value: member, enumerable: true, configurable: true, writable: true })
  return copy
}

function changed(root: unknown, path: readonly (string | number)[], value: unknown): unknown {
  const [step, ...rest] = path
  if (step === undefined) return value
  if (Array.isArray(root)) return root.map((item, at) => (at === step ? changed(item, rest, value) : item))
  const member = (root as Readonly<Record<string, unknown>>)[step]
  return withMember(root as object, String(step), changed(member, rest, value))
}

/** Marks text that is to stand in JSON without quotation marks. */
const RAW = '\ue000raw:'

function raw(number: string): string {
  return `${RAW}${number}`
}

function withRawNumbers(text: string): string {
  return text.replaceAll(new RegExp(`"${RAW}([^"]*)"`, 'g'), '$1')
}
