import type { Operation } from '../../../shared/contract/operations.ts'
import { PROBLEMS } from '../../../shared/contract/problem.ts'
import type { JsonSchema } from '../../../shared/json-schema.ts'
import { problemsOf } from '../../openapi/responses.ts'
import { escapeHtml, prose } from '../html.ts'
import { curlOf, DEMO_SHOP } from './curl.ts'
import { kindOf, propertiesOf } from './schemas.ts'

/** What the OpenAPI document says of an operation, as far as the page shows it. */
export interface DescribedOperation {
  readonly parameters?: readonly {
    readonly name: string
    readonly in: string
    readonly required?: boolean
    readonly description?: string
    readonly schema: JsonSchema
  }[]
  readonly requestBody?: { readonly content: Readonly<Record<string, MediaType>> }
  readonly responses: Readonly<Record<string, { readonly content?: Readonly<Record<string, MediaType>> }>>
}

interface MediaType {
  readonly schema: JsonSchema
  readonly example?: unknown
}

/**
 * The part of the reference about one operation.
 *
 * @param operation - The operation
 * @param described - The same in the OpenAPI document
 * @param origin - Where the service is reached
 * @returns HTML
 */
export function operationSection(
  operation: Operation,
  described: DescribedOperation,
  origin: string,
): string {
  const { id, method, path, summary, description, scope } = operation
  return `<section class="operation" id="op-${id}" aria-labelledby="title-${id}">
<h3 id="title-${id}">${escapeHtml(summary)}</h3>
<p class="call"><span class="method">${method}</span> <code>${escapeHtml(path)}</code></p>
<p>${prose(description)}${scope === undefined ? '' : ` <strong>Needs a secret key with the scope <code>${scope}</code>.</strong>`}</p>
${parametersTable(described)}
${copyable(curlOf(operation, origin), `Command that calls ${id}`)}
${tryIt(operation, described)}
${bodies(described, id)}
${problemList(operation)}
</section>`
}

function parametersTable({ parameters = [] }: DescribedOperation): string {
  if (parameters.length === 0) return ''
  const rows = parameters.map(
    ({ name, in: place, required, description = '', schema }) =>
      `<dt><code>${escapeHtml(name)}</code> <span class="place">${place}</span> ${required === true ? '<span class="need">needed</span>' : ''}</dt><dd><span class="kind">${kindOf(schema)}</span><p>${prose(description)}</p></dd>`,
  )
  return `<h4>Parameters</h4><dl class="shape">${rows.join('')}</dl>`
}

/**
 * Text to copy, with a button that the page's script brings to life.
 *
 * @param text - The text
 * @param label - What it is, for those who don't see it
 * @returns HTML
 */
export function copyable(text: string, label: string): string {
  return `<figure class="copyable"><pre tabindex="0" role="region" aria-label="${escapeHtml(label)}">${escapeHtml(text)}</pre><button type="button" data-copy hidden>Copy</button></figure>`
}

/** A form for operations without a key: no page but the staff page may hold one. */
function tryIt(operation: Operation, { parameters = [] }: DescribedOperation): string {
  const { id, method, path, scope, body } = operation
  if (scope !== undefined) return ''
  const fields = parameters
    .filter(({ in: place }) => place !== 'header')
    .map(
      ({ name, in: place }) =>
        `<label>${escapeHtml(name)} <input name="${escapeHtml(name)}" data-place="${place}" value="${name === 'shopId' ? DEMO_SHOP : ''}" autocomplete="off" spellcheck="false"></label>`,
    )
  const text =
    body === undefined
      ? ''
      : `<label>Body <textarea name="body" rows="14" spellcheck="false">${escapeHtml(JSON.stringify(body.example, null, 2))}</textarea></label>`
  return `<details class="try" hidden><summary>Try it here</summary>
<form data-try data-method="${method}" data-path="${escapeHtml(path)}" aria-label="Try ${id}">
${fields.join('')}${text}
<button type="submit">Send</button>
<div role="status" class="outcome"></div>
<pre class="reply" tabindex="0" role="region" aria-label="Reply of ${id}" hidden></pre>
</form></details>`
}

function bodies({ requestBody, responses }: DescribedOperation, id: string): string {
  const request = requestBody?.content ?? {}
  const reply = responses['200']?.content ?? {}
  return [
    ...Object.entries(request).map(([type, media]) => bodyDetails('Body', type, media, id)),
    ...Object.entries(reply).map(([type, media]) => bodyDetails('Reply 200', type, media, id)),
  ].join('')
}

function bodyDetails(title: string, type: string, { schema, example }: MediaType, id: string): string {
  const text = typeof example === 'string' ? example : JSON.stringify(example, null, 2)
  const note = typeof schema.description === 'string' ? `<p>${prose(schema.description)}</p>` : ''
  return `<details><summary>${title} <code>${escapeHtml(type)}</code></summary>
<p class="kind">${kindOf(schema)}</p>${note}${propertiesOf(schema)}
${example === undefined ? '' : `<p>Such as:</p>${copyable(text, `${title} of ${id} as ${type}`)}`}
</details>`
}

function problemList(operation: Operation): string {
  const items = problemsOf(operation).map(
    (code) => `<li>${PROBLEMS[code].status} <a href="#problem-${code}">${code}</a></li>`,
  )
  return `<details><summary>Problems it may answer with</summary><ul class="problems">${items.join('')}</ul></details>`
}
