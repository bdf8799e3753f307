import { Ajv, type ValidateFunction } from 'ajv'
import type { FastifyInstance, FastifySchemaCompiler, FastifyServerOptions } from 'fastify'
import type { JsonSchema } from '../../shared/json-schema.ts'

/** How requests are held to their schemas: nothing converted, nothing dropped, refused at the first fault. */
export const AJV_OPTIONS = {
  coerceTypes: false,
  removeAdditional: false,
  allErrors: false,
  useDefaults: true,
  addUsedSchema: false,
  // The tests hold the schemas to their own schema.
  validateSchema: false,
  // Tidying the code that it writes takes half of the making, and the engine does that again.
  code: { optimize: false },
} as const

/** Between two validators that are made beside requests: the largest takes tens of milliseconds. */
const PAUSE_MS = 100

type SchemaController = NonNullable<FastifyServerOptions['schemaController']>
type Factories = NonNullable<SchemaController['compilersFactory']>

/** Validators that are made when they are first needed. */
export interface Validators {
  /** Fastify's option. */
  readonly schemaController: SchemaController
  /** Makes those that no request has needed yet once the service listens, one at a time. */
  register(app: FastifyInstance): void
}

/**
 * Makes a route's validator with the first request that needs it: all of them take a quarter of a second, and the
 * start need not wait for that.
 *
 * @returns What Fastify is told, and the making of the rest
 */
export function lazyValidators(): Validators {
  const ajv = new Ajv(AJV_OPTIONS)
  /** How to make those that are still to be made. */
  const unmade = new Set<() => void>()

  const compile: FastifySchemaCompiler<JsonSchema> = ({ schema }) => {
    let made: ValidateFunction | undefined
    const make = (): ValidateFunction => {
      unmade.delete(make)
      made = ajv.compile(schema)
      return made
    }
    unmade.add(make)
    const validate: ReturnType<typeof compile> = (data: unknown) => {
      const ready = made ?? make()
      const isValid = ready(data)
      validate.errors = ready.errors
      return isValid
    }
    return validate
  }

  return {
    schemaController: { compilersFactory: factoriesOf(compile) },
    register(app) {
      let timer: NodeJS.Timeout | undefined
      function makeNext(): void {
        const [make] = unmade
        make?.()
        timer = unmade.size === 0 ? undefined : setTimeout(makeNext, PAUSE_MS).unref()
      }
      app.addHook('onListen', async () => {
        timer = setTimeout(makeNext, PAUSE_MS).unref()
      })
      app.addHook('onClose', async () => clearTimeout(timer))
    },
  }
}

function factoriesOf(compile: FastifySchemaCompiler<JsonSchema>): Factories {
  return {
    // Fastify's type has a bare schema handed over; what it hands over is a route's part with its schema.
    buildValidator: (() => compile) as unknown as NonNullable<Factories['buildValidator']>,
    // No route names a schema of its replies.
    buildSerializer: () => () => JSON.stringify,
  }
}
