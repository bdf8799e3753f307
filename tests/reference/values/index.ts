import { AMPACITY } from './ampacity.ts'
import { APPLIANCES } from './appliances.ts'
import { BATTERY } from './battery.ts'
import { CONDUCTORS } from './conductors.ts'
import { DEMAND } from './demand.ts'
import { FUSES } from './fuses.ts'
import { INVERTERS } from './inverters.ts'
import { MOTORS } from './motors.ts'
import type { Topic } from './published.ts'
import { RATINGS } from './ratings.ts'
import { RUNTIME } from './runtime.ts'
import { VOLTAGE_DROP } from './voltage-drop.ts'

/** Everything that is compared with published figures, in the order of the page. */
export const TOPICS: readonly Topic[] = [
  AMPACITY,
  CONDUCTORS,
  VOLTAGE_DROP,
  FUSES,
  RUNTIME,
  BATTERY,
  INVERTERS,
  MOTORS,
  RATINGS,
  DEMAND,
  APPLIANCES,
]
