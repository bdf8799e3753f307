import { loadRates } from './rate-later.ts'
import type { Sheet } from './sheet.ts'

/** Modules that load when they are needed, by name. */
export interface Modules {
  readonly list: typeof import('./parts/list.ts')
  readonly steps: typeof import('./parts/later.ts')
  readonly answer: typeof import('./guide/answer-desk.ts')
  readonly rates: true
}
export type ModuleName = keyof Modules

/** How each is fetched; the path must stand here as a whole for the bundler to see it. */
export const FETCH: { readonly [K in ModuleName]: () => Promise<Modules[K]> } = {
  list: () => import('./parts/list.ts'),
  steps: () => import('./parts/later.ts'),
  answer: () => import('./guide/answer-desk.ts'),
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
