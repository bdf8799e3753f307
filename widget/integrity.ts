import { createHash } from 'node:crypto'

/** What a page needs to check every file of one release of the widget (Subresource Integrity, W3C). */
export interface IntegrityList {
  readonly release: string
  /** SHA-384 of each file, as the `integrity` attribute and an import map's `integrity` have it, by file name. */
  readonly files: Readonly<Record<string, string>>
}

/** Name of the list beside the files. */
export const INTEGRITY_FILE = 'integrity.json'

/**
 * Lists the files of a release with what they must hash to.
 *
 * @param release - Number of the release
 * @param files - Bytes of each file, by its name
 * @returns The list, names sorted
 */
export function integrityOf(release: string, files: ReadonlyMap<string, Uint8Array>): IntegrityList {
  const names = [...files.keys()].filter((name) => name.endsWith('.js')).sort()
  const hash = (name: string) =>
    createHash('sha384')
      .update(files.get(name) ?? '')
      .digest('base64')
  return { release, files: Object.fromEntries(names.map((name) => [name, `sha384-${hash(name)}`])) }
}
