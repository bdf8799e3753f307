import type { ListedAppliance, PreparedRange } from '../../core/index.ts'
import { applianceIn } from '../../shared/appliance-names/index.ts'
import { type Language, writtenIn } from '../../shared/messages/languages.ts'

const made = new WeakMap<PreparedRange, Map<Language, PreparedRange>>()

/**
 * A range with the built-in appliances named in a caller's language. The shop's own entries keep their names: the
 * shop has written them for its shoppers.
 *
 * @param range - The range in force
 * @param locale - BCP 47 tag
 * @returns The range itself in English; else a copy, made once a language
 */
export function rangeIn(range: PreparedRange, locale: string): PreparedRange {
  const { language } = writtenIn(locale)
  if (language === 'en') return range
  const known = made.get(range) ?? new Map<Language, PreparedRange>()
  made.set(range, known)
  const kept = known.get(language)
  if (kept !== undefined) return kept
  const named = { ...range, appliances: appliancesIn(range, language) }
  known.set(language, named)
  return named
}

function appliancesIn(range: PreparedRange, language: Language): ReadonlyMap<string, ListedAppliance> {
  const own = new Set(range.document.shop.appliances?.map(({ id }) => id))
  const appliances = new Map(range.appliances)
  for (const [id, appliance] of appliances) {
    if (!own.has(id)) appliances.set(id, applianceIn(appliance, language))
  }
  return appliances
}
