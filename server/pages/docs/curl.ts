import type { Operation } from '../../../shared/contract/operations.ts'

/** A shop that every new store has. */
export const DEMO_SHOP = 'kingcup'

/**
 * A call of an operation as a command to copy.
 *
 * @param operation - The operation
 * @param origin - Where the service is reached
 * @returns One command, over several lines
 */
export function curlOf(operation: Operation, origin: string): string {
  const path = operation.path.replace('{shopId}', DEMO_SHOP).replace('{version}', '1')
  const isDry = operation.query !== undefined && 'dryRun' in operation.query.shape
  const isWrite = operation.headers?.some(({ name }) => name === 'If-Match') === true
  const { body } = operation
  const parts = [
    `curl -s ${quoted(`${origin}${path}${isDry ? '?dryRun=true' : ''}`)}`,
    ...(operation.method === 'GET' || (operation.method === 'POST' && body !== undefined)
      ? []
      : [`-X ${operation.method}`]),
    ...(operation.scope === undefined ? [] : ['-H "Authorization: Bearer $TALLYWATT_KEY"']),
    ...(isWrite ? [`-H 'If-Match: *'`] : []),
    ...(body === undefined
      ? []
      : [`-H 'Content-Type: application/json'`, `--data ${quoted(JSON.stringify(body.example))}`]),
  ]
  return parts.join(' \\\n  ')
}

/** Quoted for a POSIX shell. */
function quoted(text: string): string {
  return `'${text.replaceAll("'", `'\\''`)}'`
}
