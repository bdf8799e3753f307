import { BATTERY_SOURCES } from './battery-sources.ts'
import { GENERAL_SOURCES } from './general-sources.ts'
import { LOAD_SOURCES } from './load-sources.ts'
import { RATING_SOURCES } from './rating-sources.ts'
import type { Source } from './source.ts'
import { WIRING_SOURCES } from './wiring-sources.ts'

/** Every source that a figure of this project names, by id. */
export const SOURCES = {
  ...GENERAL_SOURCES,
  ...LOAD_SOURCES,
  ...RATING_SOURCES,
  ...WIRING_SOURCES,
  ...BATTERY_SOURCES,
} as const satisfies Readonly<Record<string, Source>>

/** The id of a source in {@link SOURCES}. */
export type SourceId = keyof typeof SOURCES
