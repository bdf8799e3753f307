import { requireInRange } from '../errors.ts'
import { collectLabel } from './label/collect.ts'
import { concludeLabel } from './label/conclude.ts'
import type { LabelContext, LabelReading } from './label/reading.ts'
import { tokenizeLabel } from './label/tokens.ts'

export type {
  LabelBasis,
  LabelContext,
  LabelFigure,
  LabelNote,
  LabelNoteCode,
  LabelPower,
  LabelQuantity,
  LabelReading,
  LabelRefusal,
  LabelRefusalCode,
  LabelRole,
} from './label/reading.ts'
export { LABEL_BASES, LABEL_NOTES, LABEL_QUANTITIES, LABEL_REFUSALS, LABEL_ROLES } from './label/reading.ts'

/**
 * Reads the input power from the text of a rating plate, as typed or as a scanner took it.
 *
 * @param text - Any text, in one line or several. The work is linear in its length.
 * @param context.mainsV - Nominal mains voltage of the shop. [V] 100..240
 * @param context.ratedByCookingPower - True for a microwave oven.
 * @returns Input power [W] to size for and to expect, apparent power [VA], what it rests on and what was
 * assumed; or a refusal with the figures that were seen. No text makes it throw.
 * @throws CoreError `out_of_range` for a mainsV outside its bounds
 * @remarks Rated input watts count before volt-amperes, which count before powers that need converting. What
 * a device gives out is never taken for what it takes. Without a power factor W = VA, the safe side.
 * @source iec-62368-1 (rated current and power of electronic equipment), common-practice
 * @example readLabel('220-240V~ 50/60Hz 850W', { mainsV: 230 }) //=> { ok: true, inputW: 850, ... }
 */
export function readLabel(text: string, context: LabelContext): LabelReading {
  requireInRange('mainsV', context.mainsV, 100, 240)
  const { mainsV, ratedByCookingPower = false } = context
  const key = `${mainsV} ${ratedByCookingPower} ${text}`
  const known = readings.get(key)
  if (known !== undefined) return known
  const { tokens } = tokenizeLabel(text)
  const reading = concludeLabel(collectLabel({ text, tokens }), context)
  if (text.length > MOST_REMEMBERED_LENGTH) return reading
  if (readings.size >= MOST_REMEMBERED) readings.clear()
  readings.set(key, reading)
  return reading
}

/** The same few plates are read again with every change that a shopper makes: theirs, and those shops sell most of. */
const readings = new Map<string, LabelReading>()
const MOST_REMEMBERED = 500
const MOST_REMEMBERED_LENGTH = 100
