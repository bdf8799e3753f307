import type { Schema } from './schema.ts'

/** One operation as the document describes it. */
export interface DescribedOperation {
  readonly id: string
  readonly method: string
  readonly path: string
  readonly isKeyed: boolean
  readonly parameters: readonly Parameter[]
  /** Schemas of bodies by media type; empty where it takes none. */
  readonly bodies: Readonly<Record<string, Schema>>
}

/** A parameter of an operation. */
export interface Parameter {
  readonly name: string
  readonly in: 'path' | 'query' | 'header'
  readonly schema: Schema
}

interface OperationObject {
  readonly operationId: string
  readonly security?: readonly unknown[]
  readonly parameters?: readonly Parameter[]
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly schema: Schema }>> }
}

/**
 * The operations of an OpenAPI document.
 *
 * @param document - The document as it is served
 * @returns All of them
 */
export function operationsOf(document: object): readonly DescribedOperation[] {
  const { paths } = document as {
    readonly paths: Readonly<Record<string, Readonly<Record<string, OperationObject>>>>
  }
  return Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({
      id: operation.operationId,
      method: method.toUpperCase(),
      path,
      isKeyed: (operation.security ?? []).length > 0,
      parameters: operation.parameters ?? [],
      bodies: Object.fromEntries(
        Object.entries(operation.requestBody?.content ?? {}).map(([type, { schema }]) => [type, schema]),
      ),
    })),
  )
}
