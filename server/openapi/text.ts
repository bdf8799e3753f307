import { openApiDocument } from './document.ts'

/**
 * The text of `openapi/openapi.json`.
 *
 * @param examples - A reply for each operation, by id; those written down where left out
 * @returns The document, indented, with a closing newline
 */
export function openApiText(examples?: Readonly<Record<string, unknown>>): string {
  return textOf(openApiDocument(examples))
}

/**
 * JSON as the generated files have it.
 *
 * @param data - Plain data
 * @returns JSON, indented, with a closing newline
 */
export function textOf(data: unknown): string {
  return `${JSON.stringify(data, null, 2)}\n`
}
