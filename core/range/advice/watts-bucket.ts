import { LARGEST_BUCKET_W, PREFERRED_R10, SMALLEST_BUCKET_W } from '../../tables/preferred-numbers.ts'

/**
 * The bucket that a power is counted in: the next preferred number at or above it.
 *
 * @param watts - Power. [W] 0 or more
 * @returns Upper end of the bucket, 10 to 1,000,000: what a unit must have to serve all that is in it. [W]
 * @source iso-3
 * @example wattsBucket(1100) //=> 1250
 */
export function wattsBucket(watts: number): number {
  const wanted = Math.min(Math.max(watts, SMALLEST_BUCKET_W), LARGEST_BUCKET_W)
  let decade = SMALLEST_BUCKET_W
  while (wanted > decade * 10) decade *= 10
  for (const step of PREFERRED_R10) {
    const edge = Math.round(step * decade)
    if (wanted <= edge) return edge
  }
  return decade * 10
}
