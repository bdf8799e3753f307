import type { DemandReply } from '../../../../../shared/contract/demand.ts'
import type { Words } from '../words.ts'

/**
 * Advice to the buyer in sentences: the sizes that would serve most of what nothing fits, and what could go.
 *
 * @param advice - As the service worked it out
 * @param words - The language
 * @returns Sentences, with the method and its source last
 */
export function adviceSentences(
  advice: DemandReply['advice'],
  words: Words,
): {
  readonly stock: readonly string[]
  readonly drop: readonly string[]
  readonly methods: readonly string[]
} {
  const { newSizes, unmetBySize, surgeMultiple, drop } = advice
  const useful = newSizes.filter(
    ({ sizes, served }, index) => sizes.length > 0 && served > (newSizes[index - 1]?.served ?? 0),
  )
  const methods = new Set(
    [...useful, ...drop].map(({ method }) =>
      words.method(method.name, method.guaranteeFraction, method.sourceDocument),
    ),
  )
  return {
    stock: [
      unmetBySize === 0 ? words.nothingUnmet : words.unmetBySize(unmetBySize),
      ...useful.map(({ sizes, served }) => words.newSizes(sizes, served, unmetBySize)),
      ...(useful.length === 0 ? [] : [words.surgeTaken(surgeMultiple)]),
    ],
    drop: drop.map(({ skus, lost, moved }) => words.drop(skus, lost, moved)),
    methods: [...methods],
  }
}
