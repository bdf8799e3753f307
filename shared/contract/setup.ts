import { z } from 'zod/v3'
import {
  APPLIANCE_CATEGORIES,
  START_KINDS,
  THERMAL_KINDS,
  WAVEFORM_NEEDS,
  WAVEFORM_REASONS,
} from '../../core/loads/vocabulary.ts'
import { SUPPLY_VOLTAGES, WIRE_SIZES } from '../../core/range/vocabulary.ts'

/** An appliance at one shop's mains voltage, without sources: what a page needs to add loads up. */
const setupApplianceSchema = z
  .object({
    id: z.string(),
    name: z.string(),
    synonyms: z.array(z.string()),
    category: z.enum(APPLIANCE_CATEGORIES),
    sizingW: z.number().describe('The high figure: for sizing where no plate is read.'),
    typicalW: z.number(),
    powerFactor: z.number(),
    startKind: z.enum(START_KINDS),
    startS: z.number(),
    startMultiple: z.number(),
    startingW: z.number().optional().describe('Measured starting power, whatever the running power.'),
    minutesPerDay: z.number(),
    dutyFraction: z.number(),
    waveform: z.enum(WAVEFORM_NEEDS),
    waveformReason: z.enum(WAVEFORM_REASONS),
    thermal: z.enum(THERMAL_KINDS),
    medical: z.boolean(),
    ratedByCookingPower: z.boolean(),
  })
  .strict()
export type SetupAppliance = z.output<typeof setupApplianceSchema>

/** Reply of GET setup. */
export const setupSchema = z
  .object({
    shop: z
      .object({
        id: z.string(),
        name: z.string(),
        locale: z.string(),
        currency: z.string(),
        mainsV: z.number(),
        mainsHz: z.number(),
        wireSizes: z.enum(WIRE_SIZES),
        headroomFraction: z.number(),
        notAdvised: z.array(z.enum(APPLIANCE_CATEGORIES)),
        supplyVoltages: z
          .array(z.number())
          .describe(`Of ${SUPPLY_VOLTAGES.join(', ')} V, those that it serves.`),
        contactUrl: z.string().optional(),
        countsDemand: z
          .boolean()
          .describe('Whether what shoppers ask for is counted; a page tells its shoppers so.'),
      })
      .strict(),
    appliances: z.array(setupApplianceSchema),
    range: z.object({ version: z.number() }).strict(),
  })
  .strict()
export type Setup = z.output<typeof setupSchema>
