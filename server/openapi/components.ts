import { z } from 'zod/v3'
import * as answers from '../../shared/contract/answers.ts'
import * as appliances from '../../shared/contract/appliances.ts'
import * as cart from '../../shared/contract/cart.ts'
import * as coverage from '../../shared/contract/coverage.ts'
import * as demand from '../../shared/contract/demand.ts'
import * as health from '../../shared/contract/health.ts'
import * as plan from '../../shared/contract/plan.ts'
import * as problem from '../../shared/contract/problem.ts'
import * as range from '../../shared/contract/range.ts'
import * as rangeAdmin from '../../shared/contract/range-admin.ts'
import * as setup from '../../shared/contract/setup.ts'
import { type JsonSchema, jsonSchemaOf } from '../../shared/json-schema.ts'

const MODULES = [answers, appliances, cart, coverage, demand, health, plan, problem, range, rangeAdmin, setup]

/** Shorter schemas are read more easily where they stand. [characters of JSON] */
const WORTH_A_NAME = 150

/** Schemas by name, and the way to name them wherever they stand. */
export interface Components {
  /** The named schemas, each with those in it named. */
  readonly schemas: Readonly<Record<string, JsonSchema>>
  /** A schema with every named schema in it replaced by a reference. */
  refer(schema: JsonSchema): JsonSchema
}

/**
 * Names the schemas that the contract's modules export: `fooBarSchema` becomes `FooBar`.
 *
 * @returns The components of the OpenAPI document
 */
export function schemaComponents(): Components {
  const names = new Map<string, string>()
  const whole = new Map<string, JsonSchema>()
  for (const module of MODULES) {
    // Sorted, for not every way to load a module lists its exports in one order.
    for (const [exported, value] of Object.entries(module).sort(([a], [b]) => (a < b ? -1 : 1))) {
      if (!/(?<!Query)Schema$/.test(exported) || !(value instanceof z.ZodType)) continue
      const schema = jsonSchemaOf(value)
      const text = JSON.stringify(schema)
      if (text.length < WORTH_A_NAME || names.has(text)) continue
      const name = exported.charAt(0).toUpperCase() + exported.slice(1, -'Schema'.length)
      if (whole.has(name)) throw new Error(`Two schemas are called ${exported}.`)
      names.set(text, name)
      whole.set(name, schema)
    }
  }
  const refer = (schema: JsonSchema): JsonSchema => named(schema, names) as JsonSchema
  const schemas = [...whole].map(([name, schema]) => [name, partsNamed(schema, names)] as const)
  return { schemas: Object.fromEntries(schemas), refer }
}

/** A node as a reference where it has a name, else with the nodes in it so. */
function named(node: unknown, names: ReadonlyMap<string, string>): unknown {
  if (typeof node !== 'object' || node === null) return node
  const name = names.get(JSON.stringify(node))
  if (name !== undefined) return { $ref: `#/components/schemas/${name}` }
  if ('description' in node) {
    const { description, ...rest } = node
    const plainName = names.get(JSON.stringify(rest))
    if (plainName !== undefined) return { $ref: `#/components/schemas/${plainName}`, description }
  }
  return partsNamed(node as JsonSchema, names)
}

function partsNamed(node: JsonSchema, names: ReadonlyMap<string, string>): JsonSchema {
  if (Array.isArray(node)) return node.map((part) => named(part, names)) as unknown as JsonSchema
  return Object.fromEntries(Object.entries(node).map(([key, part]) => [key, named(part, names)]))
}
