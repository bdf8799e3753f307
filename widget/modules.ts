import { loadRates } from './rate-later.ts'
import type { Sheet } from './sheet.ts'

/** Modules that load when they are needed, by name. */
export interface Modules {
  /** All but the first question. */
  readonly screens: typeof import('./screens.ts')
  /** The editor of a load's power. */
  readonly editor: typeof import('./parts/editor.ts')
  /** The reader of links. */
  readonly links: typeof import('./plan-link-reader.ts')
  /** The conversion of ratings. */
  readonly rates: true
}
export type ModuleName = keyof Modules

/** How each is fetched; the path must stand here as a whole for the bundler to see it. */
export const FETCH: { readonly [K in ModuleName]: () => Promise<Modules[K]> } = {
  screens: () => import('./screens.ts'),
  editor: () => import('./parts/editor.ts'),
  links: () => import('./plan-link-reader.ts'),
  rates: loadRates,
}

/**
 * The sheets that a module brings along.
 *
 * @param module - Any module
 * @returns Its `styles`, none where it has none
 */
export function sheetsOf(module: unknown): readonly Sheet[] {
  return (module as { readonly styles?: readonly Sheet[] }).styles ?? []
}
