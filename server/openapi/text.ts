import { openApiDocument } from './document.ts'

/**
 * The text of `openapi/openapi.json`.
 *
 * @returns The document, indented, with a closing newline
 */
export function openApiText(): string {
  return `${JSON.stringify(openApiDocument(), null, 2)}\n`
}
