/**
 * A JSON Pointer (RFC 6901) of a path.
 *
 * @param path - Property names and array indexes from the root
 * @returns The pointer; the empty string for the root
 * @example pointerOf(['loads', 0, 'a/b']) //=> '/loads/0/a~1b'
 */
export function pointerOf(path: readonly (string | number)[]): string {
  return path.map((part) => `/${String(part).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
}
