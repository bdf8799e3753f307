import { type Operation, operations } from '../../../shared/contract/operations.ts'
import { PROBLEMS, type ProblemCode } from '../../../shared/contract/problem.ts'
import type { JsonSchema } from '../../../shared/json-schema.ts'
import { openApiDocument } from '../../openapi/document.ts'
import { exampleOf } from '../../openapi/responses.ts'
import { escapeHtml, prose } from '../html.ts'
import { curlOf } from './curl.ts'
import { clientSample, RULES } from './guide.ts'
import { copyable, type DescribedOperation, operationSection } from './operation.ts'
import { PROBLEM_HELP } from './problem-help.ts'
import { kindOf, propertiesOf } from './schemas.ts'

/** What the page reads of the OpenAPI document. */
interface Document {
  readonly info: { readonly title: string; readonly version: string }
  readonly tags: readonly { readonly name: string; readonly description: string }[]
  readonly paths: Readonly<Record<string, Readonly<Record<string, DescribedOperation>>>>
  readonly components: { readonly schemas: Readonly<Record<string, JsonSchema>> }
}

/**
 * The API reference as a page, made from the OpenAPI document. It works without a script; with one, calls can be
 * tried and examples copied.
 *
 * @param origin - Where the service is reached
 * @returns HTML
 */
export function docsPage(origin: string): string {
  const document = openApiDocument() as unknown as Document
  const groups = document.tags.map((tag) => ({
    ...tag,
    operations: Object.values<Operation>(operations).filter((operation) => operation.tag === tag.name),
  }))
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Tallywatt API reference</title>
<link rel="stylesheet" href="/docs/style.css">
<script type="module" src="/docs/try-it.js"></script>
</head>
<body>
<a class="skip" href="#main">Skip to the reference</a>
<header><p class="brand"><a href="/">Tallywatt</a></p><h1>API reference</h1><p>Version ${escapeHtml(document.info.version)} · <a href="/openapi.json">OpenAPI 3.1 document</a> · <a href="/docs/figures">Published figures and what we compute</a></p></header>
<div class="columns">
<nav aria-label="Contents">${contents(groups)}</nav>
<main id="main">
<section id="first-call"><h2>First call</h2>
<p>No key is needed to size. Copy this; the shop <code>kingcup</code> is a made-up one that comes with the service.</p>
${copyable(curlOf(operations.sizeShop, origin), 'First call')}
<h3>From a program</h3>${copyable(clientSample(origin), 'Use of the client')}
</section>
<section id="rules"><h2>Good to know</h2><dl class="rules">${RULES.map(({ name, text }) => `<dt>${escapeHtml(name)}</dt><dd>${prose(text)}</dd>`).join('')}</dl></section>
${groups.map((group) => groupSection(group, document, origin)).join('\n')}
<section id="problems"><h2>Problems</h2>
<p>Whatever goes wrong is answered as <code>application/problem+json</code> (RFC 9457). Codes are part of the contract and stay; titles and sentences may be reworded.</p>
${(Object.keys(PROBLEMS) as ProblemCode[]).map(problemArticle).join('\n')}
</section>
<section id="shapes"><h2>Shapes</h2>
${Object.entries(document.components.schemas).map(shapeArticle).join('\n')}
</section>
</main>
</div>
</body>
</html>`
}

interface Group {
  readonly name: string
  readonly description: string
  readonly operations: readonly Operation[]
}

function contents(groups: readonly Group[]): string {
  const lists = groups.map(
    ({ name, operations: own }) =>
      `<li><a href="#tag-${name}">${escapeHtml(name)}</a><ul>${own.map(({ id, summary }) => `<li><a href="#op-${id}">${escapeHtml(summary)}</a></li>`).join('')}</ul></li>`,
  )
  return `<details open><summary>Contents</summary><ul>
<li><a href="#first-call">First call</a></li><li><a href="#rules">Good to know</a></li>
${lists.join('')}
<li><a href="#problems">Problems</a></li><li><a href="#shapes">Shapes</a></li></ul></details>`
}

function groupSection(
  { name, description, operations: own }: Group,
  document: Document,
  origin: string,
): string {
  const sections = own.flatMap((operation) => {
    const described = document.paths[operation.path]?.[operation.method.toLowerCase()]
    return described === undefined ? [] : [operationSection(operation, described, origin)]
  })
  return `<section id="tag-${name}"><h2>${escapeHtml(name)}</h2><p>${prose(description)}</p>${sections.join('\n')}</section>`
}

function problemArticle(code: ProblemCode): string {
  const { status, title } = PROBLEMS[code]
  const { cause, fix } = PROBLEM_HELP[code]
  const example = JSON.stringify(exampleOf(code), null, 2)
  return `<article class="problem" id="problem-${code}"><h3><code>${code}</code> <span class="status">${status}</span></h3>
<p class="title">${escapeHtml(title)}.</p>
<dl><dt>Why</dt><dd>${prose(cause)}</dd><dt>What to do</dt><dd>${prose(fix)}</dd></dl>
<details><summary>Example of <code>${code}</code></summary>${copyable(example, `Example of ${code}`)}</details></article>`
}

function shapeArticle([name, schema]: readonly [string, JsonSchema]): string {
  const note = typeof schema.description === 'string' ? `<p>${prose(schema.description)}</p>` : ''
  const choices = Array.isArray(schema.anyOf) ? (schema.anyOf as readonly JsonSchema[]) : undefined
  const properties =
    choices === undefined
      ? propertiesOf(schema)
      : choices.map((choice) => `<p class="kind">One of:</p>${propertiesOf(choice)}`).join('')
  return `<details class="named" id="shape-${name}"><summary><code>${name}</code></summary>${note}${properties === '' ? `<p class="kind">${kindOf(schema)}</p>` : properties}</details>`
}
