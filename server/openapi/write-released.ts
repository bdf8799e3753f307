import { writeFileSync } from 'node:fs'
import { openApiDocument } from './document.ts'
import { textOf } from './text.ts'

/** What callers can't depend on: the words of a description, and what an example shows. */
const TEXTS = new Set(['description', 'summary', 'example'])

function withoutTexts(node: unknown, isNames = false): unknown {
  if (Array.isArray(node)) return node.map((part) => withoutTexts(part))
  if (typeof node !== 'object' || node === null) return node
  const kept = Object.entries(node).filter(([name]) => isNames || !TEXTS.has(name))
  return Object.fromEntries(
    kept.map(([name, part]) => {
      // The names of examples are the codes of problems.
      if (name === 'examples' && !isNames)
        return [name, Object.fromEntries(Object.keys(part).map((code) => [code, {}]))]
      // Below `properties` stand names of members, of which one may be called "description".
      return [name, withoutTexts(part, name === 'properties' && !isNames)]
    }),
  )
}

// Run at a release, never to make a test pass: what it writes is what callers have been promised.
writeFileSync(
  new URL('../../openapi/released.json', import.meta.url),
  textOf(withoutTexts(openApiDocument())),
)
