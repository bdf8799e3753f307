import type { z } from 'zod/v3'
import { zodToJsonSchema } from 'zod-to-json-schema'

/** A JSON Schema as plain data. */
export type JsonSchema = { readonly [key: string]: unknown }

/**
 * The JSON Schema of a zod schema: what the server validates with and what the OpenAPI document shows.
 *
 * @param schema - A schema of `zod/v3`; one of another zod version would come out empty
 * @returns JSON Schema draft 7 keywords that draft 2020-12 reads alike, everything inline
 */
export function jsonSchemaOf(schema: z.ZodTypeAny): JsonSchema {
  const { $schema: _, ...rest } = zodToJsonSchema(schema, { target: 'jsonSchema7', $refStrategy: 'none' })
  return rest
}
