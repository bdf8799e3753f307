import type { JsonSchema } from '../../../shared/json-schema.ts'
import { escapeHtml, prose } from '../html.ts'

/**
 * What a schema takes, in a line: its type or values, its bounds, and links to named shapes.
 *
 * @param schema - A schema of the OpenAPI document
 * @returns HTML
 */
export function kindOf(schema: JsonSchema): string {
  const { $ref, type, items } = schema
  if (typeof $ref === 'string') return shapeLink($ref)
  if (Array.isArray(schema.enum)) return schema.enum.map(literal).join(' or ')
  if ('const' in schema) return literal(schema.const)
  const choices = schema.anyOf ?? schema.oneOf
  if (Array.isArray(choices)) return choices.map((choice) => kindOf(choice as JsonSchema)).join(' or ')
  if (type === 'array') return `list of ${kindOf((items ?? {}) as JsonSchema)}${boundsOf(schema)}`
  if (type === 'object' && !('properties' in schema)) return 'object by name'
  if (typeof type === 'string') return `${type}${boundsOf(schema)}`
  return Array.isArray(type) ? type.join(' or ') : 'anything'
}

/**
 * The properties of an object, those of objects in it below them.
 *
 * @param schema - A schema of the OpenAPI document
 * @returns HTML, empty where the schema has no properties to list
 */
export function propertiesOf(schema: JsonSchema): string {
  const nested = objectIn(schema)
  if (nested === undefined) return ''
  const required = new Set(Array.isArray(nested.required) ? nested.required : [])
  const rows = Object.entries(nested.properties as Readonly<Record<string, JsonSchema>>).map(
    ([name, part]) => {
      const note = typeof part.description === 'string' ? `<p>${prose(part.description)}</p>` : ''
      const need = required.has(name) ? '<span class="need">needed</span>' : ''
      return `<dt><code>${escapeHtml(name)}</code> ${need}</dt><dd><span class="kind">${kindOf(part)}</span>${note}${propertiesOf(part)}</dd>`
    },
  )
  return `<dl class="shape">${rows.join('')}</dl>`
}

/** The object that a schema is, or is a list of, or is one choice of. */
function objectIn(schema: JsonSchema): JsonSchema | undefined {
  if ('properties' in schema) return schema
  if (typeof schema.items === 'object') return objectIn(schema.items as JsonSchema)
  if (!Array.isArray(schema.anyOf)) return undefined
  return schema.anyOf.map((choice) => objectIn(choice as JsonSchema)).find((found) => found !== undefined)
}

function shapeLink(ref: string): string {
  const name = ref.slice(ref.lastIndexOf('/') + 1)
  return `<a href="#shape-${escapeHtml(name)}">${escapeHtml(name)}</a>`
}

function literal(value: unknown): string {
  return `<code>${escapeHtml(JSON.stringify(value))}</code>`
}

const BOUNDS: readonly (readonly [keyword: string, words: string])[] = [
  ['minimum', 'from #'],
  ['exclusiveMinimum', 'over #'],
  ['maximum', 'up to #'],
  ['exclusiveMaximum', 'below #'],
  ['minItems', 'at least #'],
  ['maxItems', 'at most #'],
  ['maxLength', 'at most # characters'],
]

function boundsOf(schema: JsonSchema): string {
  const bounds = BOUNDS.flatMap(([keyword, words]) => {
    const bound = schema[keyword]
    return typeof bound === 'number' ? [words.replace('#', String(bound))] : []
  })
  return bounds.length === 0 ? '' : `, ${bounds.join(', ')}`
}
