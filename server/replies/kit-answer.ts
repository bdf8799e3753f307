import type { Kit, KitLine, PreparedRange } from '../../core/index.ts'
import type { KitLine as KitLineAnswer, SizingAnswer } from '../../shared/contract/answers.ts'
import type { Writer } from '../../shared/messages/index.ts'
import { roundedValues } from './parts.ts'

/**
 * The kit and its total as the contract has them.
 *
 * @param kit - The engine's kit; undefined where no unit is recommended
 * @param range - The range that it is from
 * @param writer - Whose language it is written in
 * @returns The lines, and the total over what is to be bought
 */
export function kitAnswer(
  kit: Kit | undefined,
  range: PreparedRange,
  writer: Writer,
): Pick<SizingAnswer, 'kit' | 'kitTotal'> {
  if (kit === undefined) return { kit: [], kitTotal: null }
  return {
    kit: kit.lines.map((line) => lineAnswer(line, writer)),
    kitTotal: { amount: kit.total, currency: range.document.shop.currency },
  }
}

function lineAnswer(line: KitLine, writer: Writer): KitLineAnswer {
  const { role, state, quantity, sku, name, price, url, specification, reason, note } = line
  return {
    role,
    sku,
    name,
    quantity,
    specification: writer.kitSpecification(specification),
    reason: reason.code,
    values: roundedValues(reason.values),
    why: [writer.kitReason(reason), writer.kitNote(note)].filter((each) => each !== undefined).join(' '),
    ...(note && { note: { code: note.code, values: { ...note.values } } }),
    price,
    url,
    state,
  }
}
