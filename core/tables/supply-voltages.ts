/** Volts per 12 V of nominal taken as the lowest working voltage. Source: lead-acid-end-voltage */
export const LOWEST_V_PER_12V = 10.5

/**
 * Highest charging voltage of a bank over its nominal voltage: 2.4 V a lead-acid cell, 14.4 V for 12 V.
 * With it a 32 V link serves 12 and 24 V and a 58 V link serves 48 V, as the scopes of ISO 8820 say.
 * Source: common-practice
 */
export const CHARGING_OVER_NOMINAL_FACTOR = 1.2
