import type { KitLine } from '../shared/contract/answers.ts'

/**
 * What parts cost together, exact to the smallest coin: money is added as whole thousandths.
 *
 * @param lines - Parts of a kit
 * @returns A decimal string in the shop's currency
 */
export function kitSum(lines: readonly Pick<KitLine, 'price' | 'quantity'>[]): string {
  let thousandths = 0
  for (const { price, quantity } of lines) thousandths += Math.round(Number(price ?? 0) * 1000) * quantity
  return (thousandths / 1000).toFixed(thousandths % 10 === 0 ? 2 : 3)
}
