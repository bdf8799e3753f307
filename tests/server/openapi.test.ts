import { readFileSync } from 'node:fs'
import { createConfig, lintFromString } from '@redocly/openapi-core'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { clientTypesText } from '../../server/openapi/client-types.ts'
import { openApiDocument } from '../../server/openapi/document.ts'
import { replyExamples } from '../../server/openapi/reply-examples.ts'
import { problemsOf } from '../../server/openapi/responses.ts'
import { openApiText, textOf } from '../../server/openapi/text.ts'
import { type Operation, operations } from '../../shared/contract/operations.ts'
import { PROBLEMS } from '../../shared/contract/problem.ts'

const document = openApiDocument() as {
  readonly paths: Readonly<Record<string, Readonly<Record<string, DescribedOperation>>>>
  readonly components: {
    readonly schemas: Readonly<Record<string, object>>
    readonly responses: Readonly<Record<string, ProblemResponse>>
  }
}
interface DescribedOperation {
  readonly requestBody?: { readonly content: Readonly<Record<string, MediaType>> }
  readonly responses: Readonly<Record<string, { readonly content?: Readonly<Record<string, MediaType>> }>>
}
interface MediaType {
  readonly schema: object
  readonly example?: unknown
}
interface ProblemResponse {
  readonly content: Readonly<
    Record<string, { readonly examples: Readonly<Record<string, { readonly value: unknown }>> }>
  >
}

const written = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8')
const everyOperation = Object.values<Operation>(operations)
const describedOf = ({ path, method }: Operation) => document.paths[path]?.[method.toLowerCase()]

describe('the OpenAPI document', () => {
  it('has nothing that a public linter finds', async () => {
    const config = await createConfig({ extends: ['recommended-strict'] })
    const found = await lintFromString({ source: openApiText(), config })
    expect(found.map(({ ruleId, message }) => `${ruleId}: ${message}`)).toEqual([])
  })

  it('and the linter finds what is wrong', async () => {
    const config = await createConfig({ extends: ['recommended-strict'] })
    const source = openApiText().replace('"operationId": "fitUnit"', '"operationId": "sizeShop"')
    expect(await lintFromString({ source, config })).not.toEqual([])
  })

  it('names shapes once: none that is named stands anywhere in full', () => {
    const names = new Map(
      Object.entries(document.components.schemas).map(([name, schema]) => [JSON.stringify(schema), name]),
    )
    const repeated: string[] = []
    const visit = (node: unknown, path: string): void => {
      if (typeof node !== 'object' || node === null) return
      const name = names.get(JSON.stringify(node))
      if (name !== undefined && path !== `/components/schemas/${name}`) repeated.push(`${path} is ${name}`)
      for (const [key, part] of Object.entries(node)) visit(part, `${path}/${key}`)
    }
    visit({ paths: document.paths, components: document.components }, '')
    expect(repeated).toEqual([])
  })

  it.each(everyOperation)(
    '$id shows an example of its body and of its reply that keep their schemas',
    (operation) => {
      const ajv = new Ajv2020({ strict: false, allErrors: true, logger: false })
      ajv.addSchema({ $id: 'document', ...document })
      const pointer = `/paths/${encodeURIComponent(operation.path.replaceAll('/', '~1'))}/${operation.method.toLowerCase()}`
      const described = describedOf(operation)
      const reply = Object.entries(described?.responses['200']?.content ?? {})
      const request = Object.entries(described?.requestBody?.content ?? {})
      expect(reply.length).toBeGreaterThan(0)
      expect(request.length > 0).toBe(operation.body !== undefined)
      for (const [place, contents] of [
        ['responses/200', reply],
        ['requestBody', request],
      ] as const) {
        for (const [type, { example }] of contents) {
          expect(example, `${operation.id} ${place} ${type}`).toBeDefined()
          const key = encodeURIComponent(type.replaceAll('/', '~1'))
          const validate = ajv.getSchema(`document#${pointer}/${place}/content/${key}/schema`)
          expect(validate?.(example), ajv.errorsText(validate?.errors)).toBe(true)
        }
      }
    },
  )

  it.each(everyOperation)('$id lists each status that it can send, with the codes', (operation) => {
    const statuses = new Set(problemsOf(operation).map((code) => String(PROBLEMS[code].status)))
    const listed = Object.keys(describedOf(operation)?.responses ?? {}).filter((status) => status >= '400')
    expect(listed.sort()).toEqual([...statuses].sort())
  })

  it('documents every problem with an example', () => {
    const shown = new Set(
      Object.values(document.components.responses).flatMap(({ content }) =>
        Object.values(content).flatMap(({ examples }) => Object.keys(examples)),
      ),
    )
    // Another method than an operation's own belongs to none of them.
    shown.add('method-not-allowed')
    expect([...shown].sort()).toEqual(Object.keys(PROBLEMS).sort())
  })
})

describe('what npm run openapi writes', () => {
  it('is what is in the repository', async () => {
    const examples = await replyExamples()
    const current = {
      'shared/examples/replies.json': textOf(examples),
      'openapi/openapi.json': openApiText(examples),
      'openapi/client-types.ts': clientTypesText(),
    }
    const stale = Object.entries(current).flatMap(([path, text]) => (written(path) === text ? [] : [path]))
    expect(stale, 'run npm run openapi').toEqual([])
  })
})
