/**
 * Preferred numbers of the R10 series, from one power of ten up to the next: ten steps, each about a quarter
 * over the one before. Source: iso-3
 */
export const PREFERRED_R10 = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8] as const

/** Ends of the buckets that powers are counted in. [W] Our own bounds. */
export const SMALLEST_BUCKET_W = 10
export const LARGEST_BUCKET_W = 1_000_000
