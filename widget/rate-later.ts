import type { RatedLoad } from '../core/loads/rate-load.ts'
import type { RatedPower, RatingRefusal } from '../core/loads/rated-power.ts'

let loaded: ((load: RatedLoad) => RatedPower | RatingRefusal) | undefined

/**
 * Fetches the conversion of ratings: reading plates is the largest piece of the load arithmetic, and needed only
 * once somebody states a power. The bundle puts {@link rateLoad} below in its place (see build.ts).
 *
 * @returns True once ratings can be converted
 */
export async function loadRates(): Promise<true> {
  loaded ??= (await import('../core/loads/rate-load.ts')).rateLoad
  return true
}

/**
 * Stands in for the core's conversion inside the bundle.
 *
 * @param load - A rating with what it belongs to
 * @returns What the core makes of it; `nothing-read` until that is here
 */
export function rateLoad(load: RatedLoad): RatedPower | RatingRefusal {
  return loaded?.(load) ?? { ok: false, refusal: 'nothing-read' }
}
