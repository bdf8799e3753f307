/** What an appliance is called in one language. */
export interface ApplianceName {
  readonly name: string
  /** Other words that people search for. */
  readonly synonyms: readonly string[]
  /** In words; there where the built-in entry has one. */
  readonly note?: string
}

/** Names of the built-in appliances in one language, by id. */
export type ApplianceNames = Readonly<Record<string, ApplianceName>>
