import type { Live } from '../store/live.ts'
import type { InFlight } from './in-flight.ts'
import type { Gauge } from './metrics.ts'
import type { Shedding } from './shedding.ts'

/**
 * How busy the service is.
 *
 * @param inFlight - The requests in flight
 * @param shedding - The guard against too many
 * @returns Figures for /metrics
 */
export function loadGauges(inFlight: InFlight, shedding: Shedding): readonly Gauge[] {
  return [
    {
      name: 'http_server_active_requests',
      help: 'Requests in flight.',
      type: 'gauge',
      read: () => inFlight.replies.size,
    },
    {
      name: 'tallywatt_shed_total',
      help: 'Requests turned away because the service was too busy.',
      type: 'counter',
      read: shedding.count,
    },
  ]
}

/**
 * How the store and the ranges in memory are.
 *
 * @param live - The memory
 * @returns Figures for /metrics
 */
export function storeGauges(live: Live): readonly Gauge[] {
  return [
    {
      name: 'tallywatt_store_available',
      help: 'Whether the store answered when it was last asked.',
      type: 'gauge',
      read: () => Number(live.state().available),
    },
    {
      name: 'tallywatt_store_age_seconds',
      help: 'Time since the store last answered.',
      type: 'gauge',
      read: () => live.state().ageMs / 1000,
    },
    {
      name: 'tallywatt_shops',
      help: 'Shops with a range in memory.',
      type: 'gauge',
      read: () => live.ranges.shopIds().length,
    },
    {
      name: 'tallywatt_unchecked_shops',
      help: 'Shops whose range has yet to be held to the contract since the start; each is when it is first asked for, too.',
      type: 'gauge',
      read: () => live.state().unchecked,
    },
    {
      name: 'tallywatt_faulty_shops',
      help: 'Shops whose newest version in the store cannot be used.',
      type: 'gauge',
      read: () => live.state().faulty.size,
    },
  ]
}
