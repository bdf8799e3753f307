/**
 * Bounds of the contract that the page keeps to by itself. The contract's own stand beside its schemas, which a
 * page must not load; a test holds the two equal.
 */
export const LIMITS = {
  loads: 40,
  takeTurnsGroups: 20,
  quantity: 100,
  watts: 100_000,
  volts: 1000,
  amps: 1000,
  labelCharacters: 2000,
  nameCharacters: 120,
} as const

/** Bounds of a battery and its cable, as the contract has them. [Ah] and [m] */
export const SUPPLY_BOUNDS = {
  capacityAh: { low: 1, high: 10_000 },
  oneWayLengthM: { low: 0.1, high: 50 },
} as const
