/** Plain JSON. */
type Json = null | boolean | number | string | readonly Json[] | { readonly [name: string]: Json }
type Node = Readonly<Record<string, Json>>

/** Whether callers send what a schema describes, or read it. */
type Side = 'request' | 'reply'

/**
 * What of an OpenAPI document has changed so that calls written for the older one no longer work: what the table in
 * DEVELOPERS.md, "Versions and compatibility", calls breaking as far as a document can show it.
 *
 * @param older - The document of the version that callers were written for
 * @param newer - The document now
 * @returns A sentence for each breaking change; none where there are only additions
 */
export function breakingChanges(older: object, newer: object): readonly string[] {
  const faults: string[] = []
  const documents = { older: older as Node, newer: newer as Node }
  for (const [path, methods] of Object.entries(child(documents.older, 'paths'))) {
    for (const [method, was] of Object.entries(methods as Node)) {
      const name = `${method.toUpperCase()} ${path}`
      const is = child(child(documents.newer, 'paths'), path)[method]
      if (is === undefined) faults.push(`${name} is gone`)
      else compareOperations({ name, was: was as Node, is: is as Node, documents, faults })
    }
  }
  return faults
}

interface Comparison {
  readonly name: string
  readonly was: Node
  readonly is: Node
  readonly documents: { readonly older: Node; readonly newer: Node }
  readonly faults: string[]
}

function compareOperations({ name, was, is, documents, faults }: Comparison): void {
  if (was.operationId !== is.operationId) faults.push(`${name} has another operationId`)
  if (JSON.stringify(was.security ?? []) !== JSON.stringify(is.security ?? [])) {
    faults.push(`${name} asks for another key`)
  }
  const parameters = (operation: Node) =>
    new Map(listOf(operation.parameters).map((one) => [`${one.in} parameter ${one.name}`, one]))
  const [before, now] = [parameters(was), parameters(is)]
  for (const [parameter, old] of before) {
    const kept = now.get(parameter)
    if (kept === undefined) {
      faults.push(`${name}: ${parameter} is gone`)
      continue
    }
    if (kept.required === true && old.required !== true) faults.push(`${name}: ${parameter} is needed now`)
    const at = `${name}: ${parameter}`
    compareSchemas(
      { name: at, was: child(old, 'schema'), is: child(kept, 'schema'), documents, faults },
      'request',
    )
  }
  for (const [parameter, { required }] of now) {
    if (required === true && !before.has(parameter)) faults.push(`${name}: ${parameter} is new and needed`)
  }
  const [body, bodyNow] = [child(was, 'requestBody'), child(is, 'requestBody')]
  if (bodyNow.required === true && body.required !== true) faults.push(`${name}: a body is needed now`)
  compareContents({ name: `${name} body`, was: body, is: bodyNow, documents, faults }, 'request')
  for (const [status, old] of Object.entries(child(was, 'responses'))) {
    const kept = child(is, 'responses')[status]
    const at = `${name} ${status}`
    if (kept === undefined) {
      // A fault that no longer happens breaks nobody; an answer does.
      if (status < '400') faults.push(`${at} is gone`)
      continue
    }
    const resolved = {
      was: resolve(documents.older, old as Node),
      is: resolve(documents.newer, kept as Node),
    }
    for (const header of Object.keys(child(resolved.was, 'headers'))) {
      if (!(header in child(resolved.is, 'headers'))) faults.push(`${at}: header ${header} is gone`)
    }
    for (const code of codesOf(resolved.was)) {
      if (!codesOf(resolved.is).includes(code)) faults.push(`${at}: problem ${code} is gone`)
    }
    compareContents({ name: at, ...resolved, documents, faults }, 'reply')
  }
}

/** Codes of problems stand in a document as the names of their examples. */
function codesOf(response: Node): readonly string[] {
  return Object.keys(child(child(child(response, 'content'), 'application/problem+json'), 'examples'))
}

function compareContents(comparison: Comparison, side: Side): void {
  const { name, was, is, faults } = comparison
  for (const [type, media] of Object.entries(child(was, 'content'))) {
    const kept = child(is, 'content')[type]
    const at = `${name} (${type})`
    if (kept === undefined) faults.push(`${at} is gone`)
    else {
      const [old, now] = [child(media as Node, 'schema'), child(kept as Node, 'schema')]
      compareSchemas({ ...comparison, name: at, was: old, is: now }, side)
    }
  }
}

function compareSchemas(comparison: Comparison, side: Side): void {
  const { name, documents, faults } = comparison
  const was = resolve(documents.older, comparison.was)
  const is = resolve(documents.newer, comparison.is)
  const compare = (at: string, old: Node, now: Node) =>
    compareSchemas({ ...comparison, name: `${name}${at}`, was: old, is: now }, side)
  const [types, typesNow] = [typesOf(was), typesOf(is)]
  const lost = types.filter(
    (type) => !typesNow.includes(type) && !(type === 'integer' && typesNow.includes('number')),
  )
  const gained = typesNow.filter(
    (type) => !types.includes(type) && !(type === 'integer' && types.includes('number')),
  )
  if (side === 'request' && typesNow.length > 0 && (lost.length > 0 || types.length === 0)) {
    faults.push(`${name} no longer takes ${lost.join(', ') || 'any type'}`)
  }
  if (side === 'reply' && types.length > 0 && (gained.length > 0 || typesNow.length === 0)) {
    faults.push(`${name} may now be ${gained.join(', ') || 'of any type'}`)
  }
  compareValues(comparison, { was, is, side })
  compareBounds(comparison, { was, is, side })
  compareMembers(comparison, { was, is, side, compare })
  if (was.items !== undefined && is.items !== undefined)
    compare('/*', child(was, 'items'), child(is, 'items'))
  compareChoices({ ...comparison, was, is }, side, compare)
}

interface Pair {
  readonly was: Node
  readonly is: Node
  readonly side: Side
}

function compareValues({ name, faults }: Comparison, { was, is, side }: Pair): void {
  const values = (schema: Node) =>
    schema.const === undefined ? (schema.enum as readonly Json[] | undefined) : [schema.const]
  const [before, now] = [values(was), values(is)]
  if (now === undefined || before === now) return
  if (before === undefined) {
    if (side === 'request') faults.push(`${name} takes only ${JSON.stringify(now)} now`)
    return
  }
  const gone = before.filter((value) => !now.includes(value))
  // A value that replies no longer hold is gone for those who wait for it, too.
  if (gone.length > 0) faults.push(`${name}: ${JSON.stringify(gone)} is gone`)
}

/** Bounds that let less through as they rise, and those that do as they fall. */
const LOWER = ['minimum', 'exclusiveMinimum', 'minLength', 'minItems'] as const
const UPPER = ['maximum', 'exclusiveMaximum', 'maxLength', 'maxItems'] as const

function compareBounds({ name, faults }: Comparison, { was, is, side }: Pair): void {
  if (side === 'reply') return
  const bound = (schema: Node, key: string, none: number) =>
    typeof schema[key] === 'number' ? schema[key] : none
  for (const key of LOWER) {
    const none = Number.NEGATIVE_INFINITY
    if (bound(is, key, none) > bound(was, key, none)) faults.push(`${name}: ${key} has risen`)
  }
  for (const key of UPPER) {
    const none = Number.POSITIVE_INFINITY
    if (bound(is, key, none) < bound(was, key, none)) faults.push(`${name}: ${key} has fallen`)
  }
  if (is.pattern !== undefined && is.pattern !== was.pattern) faults.push(`${name}: another pattern`)
  if (JSON.stringify(is.default) !== JSON.stringify(was.default) && was.default !== undefined) {
    faults.push(`${name}: another default`)
  }
}

function compareMembers(
  { name, faults }: Comparison,
  { was, is, side, compare }: Pair & { readonly compare: (at: string, was: Node, is: Node) => void },
): void {
  const [needed, neededNow] = [namesIn(was.required), namesIn(is.required)]
  for (const [member, old] of Object.entries(child(was, 'properties'))) {
    const kept = child(is, 'properties')[member]
    if (kept === undefined) {
      faults.push(`${name}/${member} is gone`)
      continue
    }
    if (side === 'request' && neededNow.includes(member) && !needed.includes(member)) {
      faults.push(`${name}/${member} is needed now`)
    }
    if (side === 'reply' && needed.includes(member) && !neededNow.includes(member)) {
      faults.push(`${name}/${member} may now be missing`)
    }
    compare(`/${member}`, old as Node, kept as Node)
  }
  if (side === 'reply') return
  for (const member of neededNow) {
    if (!(member in child(was, 'properties'))) faults.push(`${name}/${member} is new and needed`)
  }
}

/** Choices are told apart by their constants, as `basis` has them, else by their place. */
function compareChoices(
  { name, was, is, documents, faults }: Comparison,
  side: Side,
  compare: (at: string, was: Node, is: Node) => void,
): void {
  const choices = (document: Node, schema: Node) =>
    new Map(
      [...listOf(schema.anyOf), ...listOf(schema.oneOf)].map((choice, at) => [
        markOf(resolve(document, choice)) ?? String(at),
        choice,
      ]),
    )
  const [before, now] = [choices(documents.older, was), choices(documents.newer, is)]
  for (const [mark, old] of before) {
    const kept = now.get(mark)
    if (kept === undefined) faults.push(`${name}: the choice ${mark} is gone`)
    else compare(`(${mark})`, old, kept)
  }
  const nullNow = [...now.values()].some((choice) => choice.type === 'null')
  if (side === 'reply' && nullNow && ![...before.values()].some((choice) => choice.type === 'null')) {
    faults.push(`${name} may now be null`)
  }
}

function markOf(schema: Node): string | undefined {
  const marks = Object.entries(child(schema, 'properties')).flatMap(([member, part]) => {
    const { const: constant } = part as Node
    return constant === undefined ? [] : [`${member} ${JSON.stringify(constant)}`]
  })
  return marks.length > 0 ? marks.join(', ') : typeof schema.type === 'string' ? schema.type : undefined
}

function typesOf({ type }: Node): readonly string[] {
  return type === undefined ? [] : typeof type === 'string' ? [type] : (type as readonly string[])
}

function resolve(document: Node, schema: Node): Node {
  const { $ref } = schema
  if (typeof $ref !== 'string') return schema
  const target = $ref
    .slice(2)
    .split('/')
    .reduce<Node>((node, step) => child(node, step.replaceAll('~1', '/').replaceAll('~0', '~')), document)
  return resolve(document, target)
}

function child(node: Node, name: string): Node {
  const found = node[name]
  return typeof found === 'object' && found !== null && !Array.isArray(found) ? (found as Node) : {}
}

function listOf(value: Json | undefined): readonly Node[] {
  return Array.isArray(value) ? (value as readonly Node[]) : []
}

function namesIn(value: Json | undefined): readonly string[] {
  return Array.isArray(value) ? (value as readonly string[]) : []
}
