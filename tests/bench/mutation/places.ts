/** What is changed: a figure of a table, the bound of a comparison, or its outcome. */
export type MutationKind = 'figure' | 'bound' | 'outcome'

/** One change of one place of a source file. */
export interface Mutant {
  /** Path from the root of the project. */
  readonly file: string
  readonly line: number
  readonly kind: MutationKind
  readonly start: number
  readonly before: string
  readonly after: string
}

/** The same comparison with its bound moved: what holds "at the limit" changes. */
const BOUND_MOVED: Readonly<Record<string, string>> = { '<': '<=', '<=': '<', '>': '>=', '>=': '>' }

/** The comparison that holds just where the first does not. */
const OUTCOME_TURNED: Readonly<Record<string, string>> = {
  '<': '>=',
  '<=': '>',
  '>': '<=',
  '>=': '<',
  '===': '!==',
  '!==': '===',
}

/** Comments and texts are skipped whole; what is left is a number, or a comparison between two spaces. */
const TOKENS =
  /(?<skip>\/\*[\s\S]*?\*\/|\/\/[^\n]*|'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`)|(?<number>(?<![\w.$])\d[\d_]*(?:\.\d+)?(?:e[+-]?\d+)?(?![\w$]))|(?<=\s)(?<comparison><=|>=|<|>|===|!==)(?=\s)/g

/**
 * Every change of a table's figures by a tenth, up and down. Noughts stay, as a tenth of nothing is nothing.
 *
 * @param file - Path of the table
 * @param text - Its source
 * @returns Two changes for each numeric literal
 */
export function figureMutants(file: string, text: string): readonly Mutant[] {
  return tokensOf(text, 'number').flatMap(({ start, before }) => {
    const value = Number(before.replaceAll('_', ''))
    if (value === 0) return []
    return [1.1, 0.9].map((factor) => ({
      file,
      line: lineAt(text, start),
      kind: 'figure' as const,
      start,
      before,
      after: String(Number((value * factor).toPrecision(12))),
    }))
  })
}

/**
 * Every change of a comparison: its bound moved, and its outcome turned round.
 *
 * @param file - Path of the source file
 * @param text - Its source, formatted with spaces round operators
 * @returns Two changes for an ordering, one for an equality
 */
export function comparisonMutants(file: string, text: string): readonly Mutant[] {
  return tokensOf(text, 'comparison').flatMap(({ start, before }) => {
    const line = lineAt(text, start)
    const bound = BOUND_MOVED[before]
    const outcome = OUTCOME_TURNED[before]
    return [
      ...(bound === undefined ? [] : [{ file, line, kind: 'bound' as const, start, before, after: bound }]),
      ...(outcome === undefined
        ? []
        : [{ file, line, kind: 'outcome' as const, start, before, after: outcome }]),
    ]
  })
}

/**
 * The source with one change in it.
 *
 * @param text - The source that the change was found in
 * @param mutant - The change
 * @returns The changed source
 */
export function mutated(text: string, { start, before, after }: Mutant): string {
  if (text.slice(start, start + before.length) !== before) throw new Error('the source is another one')
  return text.slice(0, start) + after + text.slice(start + before.length)
}

function tokensOf(text: string, group: 'number' | 'comparison') {
  return [...text.matchAll(TOKENS)].flatMap((match) => {
    const before = match.groups?.[group]
    return before === undefined ? [] : [{ start: match.index, before }]
  })
}

function lineAt(text: string, index: number): number {
  return text.slice(0, index).split('\n').length
}
