import type { Appliance } from '../../loads/appliance.ts'
import { CLIMATE } from './climate.ts'
import { DRINKS_AND_COOKING } from './drinks-and-cooking.ts'
import { ELECTRONICS } from './electronics.ts'
import { HOUSEHOLD } from './household.ts'
import { KITCHEN_AND_COLD } from './kitchen-and-cold.ts'
import { LIGHTING_AND_CHARGING } from './lighting-and-charging.ts'
import { MEDICAL } from './medical.ts'
import { TOOLS_AND_PUMPS } from './tools-and-pumps.ts'
import { TRADE } from './trade.ts'

/** Every built-in appliance, category by category, in the order they are shown. */
export const BUILT_IN_APPLIANCES: readonly Appliance[] = [
  ...DRINKS_AND_COOKING,
  ...KITCHEN_AND_COLD,
  ...CLIMATE,
  ...HOUSEHOLD,
  ...ELECTRONICS,
  ...LIGHTING_AND_CHARGING,
  ...TOOLS_AND_PUMPS,
  ...TRADE,
  ...MEDICAL,
]
