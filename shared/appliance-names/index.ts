import type { Language } from '../messages/languages.ts'
import type { ApplianceName, ApplianceNames } from './appliance-name.ts'
import { namesDe } from './de.ts'
import { namesEs } from './es.ts'
import { namesFr } from './fr.ts'

/** English names stand in the appliance list itself. */
const NAMES: Readonly<Record<Exclude<Language, 'en'>, ApplianceNames>> = {
  de: namesDe,
  fr: namesFr,
  es: namesEs,
}

/**
 * An entry of the built-in appliance list with its name, synonyms and note in a language.
 *
 * @param appliance - A built-in entry, whole or at one mains voltage
 * @param language - The language
 * @returns The entry; in English as it is
 */
export function applianceIn<T extends ApplianceName & { readonly id: string }>(
  appliance: T,
  language: Language,
): T {
  const words = language === 'en' ? undefined : NAMES[language][appliance.id]
  if (words === undefined) return appliance
  const { name, synonyms, note = appliance.note } = words
  return { ...appliance, name, synonyms, ...(appliance.note !== undefined && { note }) }
}
