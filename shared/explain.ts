import { z } from 'zod/v3'
import { pointerOf } from './pointer.ts'

/** One fault of a document: where, and what to do about it. */
export interface DocumentFault {
  readonly pointer: string
  readonly message: string
}

/**
 * Explains everything that is wrong with a document, in words and with the allowed range.
 *
 * @param schema - What the document should be
 * @param document - What came
 * @returns All faults; none where the document keeps the schema
 */
export function explainFaults(schema: z.ZodTypeAny, document: unknown): readonly DocumentFault[] {
  const overlong = overlongLists(schema, document)
  if (overlong.length > 0) return overlong
  const parsed = schema.safeParse(document)
  return parsed.success ? [] : parsed.error.issues.flatMap(faultsOf)
}

/**
 * Lists that are longer than they may be. They are told by themselves: to explain each entry of a list of millions
 * would take longer than all other requests together.
 *
 * @param schema - What the document should be
 * @param document - What came
 * @returns A fault for each such list
 */
export function overlongLists(schema: z.ZodTypeAny, document: unknown): readonly DocumentFault[] {
  const faults: DocumentFault[] = []
  const visit = (part: z.ZodTypeAny, value: unknown, path: readonly (string | number)[]): void => {
    if (part instanceof z.ZodOptional || part instanceof z.ZodDefault) {
      visit(part._def.innerType, value, path)
    } else if (part instanceof z.ZodArray && Array.isArray(value)) {
      const most = part._def.maxLength?.value ?? Number.POSITIVE_INFINITY
      if (value.length > most) {
        faults.push({ pointer: pointerOf(path), message: boundSentence('array', `at most ${most}`) })
        return
      }
      for (const [index, entry] of value.entries()) visit(part._def.type, entry, [...path, index])
    } else if (part instanceof z.ZodObject && typeof value === 'object' && value !== null) {
      for (const [name, member] of Object.entries(part.shape as z.ZodRawShape)) {
        if (Object.hasOwn(value, name)) {
          visit(member, (value as Readonly<Record<string, unknown>>)[name], [...path, name])
        }
      }
    }
  }
  visit(schema, document, [])
  return faults
}

function faultsOf(issue: z.ZodIssue): readonly DocumentFault[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      pointer: pointerOf([...issue.path, key]),
      message: 'There is no such property here; check its spelling.',
    }))
  }
  if (issue.code === 'invalid_union') {
    const nearest = issue.unionErrors.at(0)?.issues ?? []
    const literals = nearest.every((inner) => inner.path.length <= issue.path.length)
    if (!literals) return nearest.flatMap(faultsOf)
  }
  return [{ pointer: pointerOf(issue.path), message: sentenceOf(issue) }]
}

function sentenceOf(issue: z.ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.received === 'undefined'
        ? `This is missing; it must be ${withArticle(issue.expected)}.`
        : `Must be ${withArticle(issue.expected)}, not ${withArticle(issue.received)}.`
    case 'too_small':
      return boundSentence(issue.type, `${issue.inclusive ? 'at least' : 'more than'} ${issue.minimum}`)
    case 'too_big':
      return boundSentence(issue.type, `${issue.inclusive ? 'at most' : 'less than'} ${issue.maximum}`)
    case 'invalid_enum_value':
      return `Must be one of ${issue.options.join(', ')}.`
    case 'invalid_union_discriminator':
      return `Must be one of ${issue.options.map(String).join(', ')}.`
    case 'invalid_literal':
      return `Must be ${JSON.stringify(issue.expected)}.`
    case 'invalid_union':
      return `Must be one of ${literalsOf(issue).join(', ')}.`
    case 'invalid_string':
      return `Must be ${issue.message}.`
    case 'not_finite':
      return 'Must be a finite number.'
    default:
      return `${issue.message}.`
  }
}

function literalsOf(issue: z.ZodInvalidUnionIssue): readonly string[] {
  return issue.unionErrors.flatMap((error) =>
    error.issues.map((inner) =>
      inner.code === 'invalid_literal'
        ? JSON.stringify(inner.expected)
        : inner.code === 'invalid_type'
          ? withArticle(inner.expected)
          : inner.message,
    ),
  )
}

function boundSentence(type: string, bound: string): string {
  if (type === 'string') return `Must be ${bound} characters long.`
  if (type === 'array') return `Must hold ${bound} entries.`
  return `Must be ${bound}.`
}

function withArticle(type: string): string {
  if (type === 'null' || type === 'nan') return type
  return /^[aeiou]/.test(type) ? `an ${type}` : `a ${type}`
}
