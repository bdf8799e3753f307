import { escapeHtml } from '../../html.ts'
import {
  type Computed,
  FIGURES,
  type FigureRow,
  type FigureSource,
  type FigureTable,
  type FigureTopic,
  type Misprint,
  type Standing,
} from './figures-data.ts'

const STANDINGS: Readonly<Record<Standing, string>> = {
  read: 'read',
  memory: 'from memory',
  derived: 'worked out',
}

/**
 * Whether figures of a document stand on the page.
 *
 * @param id - Any text
 * @returns True for the id of a document
 */
export function isFigureSource(id: string): boolean {
  return Object.hasOwn(FIGURES.sources, id)
}

/**
 * The page of published figures beside what the service computes for them. It works without a script.
 *
 * @param only - Id of the one document to show; left out: all
 * @returns HTML
 */
export function figuresPage(only?: string): string {
  const source = only === undefined ? undefined : FIGURES.sources[only]
  const topics = FIGURES.topics.flatMap((topic) => topicOf(topic, only))
  const title = source === undefined ? 'Published figures' : `Published figures of ${source.name}`
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(title)} - Tallywatt</title>
<link rel="stylesheet" href="/docs/style.css">
</head>
<body>
<a class="skip" href="#main">Skip to the figures</a>
<header><p class="brand"><a href="/">Tallywatt</a></p><h1>Published figures</h1><p>What standards, handbooks and measurements print, beside what this service computes · <a href="/docs">API reference</a></p></header>
<div class="columns">
<nav aria-label="Contents">${contents(topics, only)}</nav>
<main id="main">
${source === undefined ? summary() : sourceHead(source)}
${topics.map(topicSection).join('\n')}
${misprintSection(topics.flatMap(({ misprints }) => misprints))}
${only === undefined ? sourceList() : ''}
</main>
</div>
</body>
</html>`
}

function topicOf(topic: FigureTopic, only: string | undefined): readonly FigureTopic[] {
  if (only === undefined) return [topic]
  const tables = topic.tables.filter(({ source }) => source === only)
  const misprints = topic.misprints.filter(({ source }) => source === only)
  return tables.length + misprints.length === 0 ? [] : [{ ...topic, tables, misprints }]
}

const countOf = (tables: readonly FigureTable[]) => tables.reduce((sum, { count }) => sum + count, 0)

function contents(topics: readonly FigureTopic[], only: string | undefined): string {
  const items = topics.flatMap(({ id, title, tables }) =>
    tables.length === 0 ? [] : [contentsItem(`#${id}`, title, countOf(tables))],
  )
  const wrong = topics.flatMap(({ misprints }) => misprints).length
  if (wrong > 0) items.push(contentsItem('#misprints', 'Printed wrong', wrong))
  const whole =
    only === undefined
      ? [contentsItem('#summary', 'In short'), ...items, contentsItem('#sources', 'One source at a time')]
      : [...items, contentsItem('/docs/figures', 'All sources')]
  return `<details open><summary>Contents</summary><ul>${whole.join('')}</ul></details>`
}

function contentsItem(target: string, title: string, count?: number): string {
  const counted = count === undefined ? '' : ` <span class="place">${count}</span>`
  return `<li><a href="${target}">${escapeHtml(title)}</a>${counted}</li>`
}

function summary(): string {
  const tables = FIGURES.topics.flatMap((topic) => topic.tables)
  const misprints = FIGURES.topics.flatMap((topic) => topic.misprints).length
  const within = tables.reduce((sum, table) => sum + table.within, 0)
  const held = countOf(tables.filter(({ how }) => how === 'held'))
  const of = (standing: Standing) => countOf(tables.filter((table) => table.standing === standing))
  const documents = new Set(tables.map(({ source }) => source)).size
  return `<section id="summary"><h2>In short</h2>
<dl class="tally">
<div><dt>figures compared</dt><dd>${countOf(tables)}</dd></div>
<div><dt>within their tolerance</dt><dd>${within}</dd></div>
<div><dt>documents</dt><dd>${documents}</dd></div>
<div><dt>from memory</dt><dd>${of('memory')}</dd></div>
<div><dt>known misprints</dt><dd>${misprints}</dd></div>
</dl>
<p>Each figure was typed from the document named above it. What stands under “computed” comes from the engine that answers shoppers, run when this version was made; nobody typed it. A test fails when one leaves its tolerance, or when this page is not what the engine computes now.</p>
<p>${held} figures are <b>held</b>: the engine has the printed table, or a band that must cover the figure, and the comparison shows that it was copied and read rightly. ${countOf(tables) - held} are <b>computed</b> by a law or a model; these show whether the law is right.</p>
<p>${of('read')} figures were read in the document or the copy named. ${of('memory')} are known <b>from memory</b>: the document was not at hand. ${of('derived')} were <b>worked out</b> from a printed law or row, apart from the engine. Of longer tables that are not free to copy some rows are quoted, the one farthest off always among them; all are compared.</p>
<p>Where your local rules differ, they hold.</p>
</section>`
}

function sourceHead({ name, count, standing, copy }: FigureSource): string {
  return `<p class="lead">${escapeHtml(name)}</p>
<p>${count} figures, ${STANDINGS[standing]}${copy === undefined ? '' : `: ${escapeHtml(copy)}`}. <a href="/docs/figures">All sources</a></p>`
}

function topicSection(topic: FigureTopic): string {
  const { id, title, about, tables } = topic
  if (tables.length === 0) return ''
  return `<section id="${id}"><h2>${escapeHtml(title)}</h2><p>${escapeHtml(about)}</p>
${tables.map((table, index) => figureTable(table, `${id}-${index}`)).join('\n')}
</section>`
}

function figureTable(table: FigureTable, id: string): string {
  const { source, table: place, quantity, unit, how, standing, count, within, rows } = table
  const name = FIGURES.sources[source]?.name ?? source
  const some = rows.length < count ? `, ${rows.length} shown` : ''
  return `<div class="figures">
<table aria-describedby="about-${id}">
<caption><a href="/docs/figures?source=${source}">${escapeHtml(name)}</a><br>${escapeHtml(place)}</caption>
<thead><tr><th scope="col">${escapeHtml(capital(quantity))}</th><th scope="col">Printed${unitOf(unit)}</th><th scope="col">Computed</th><th scope="col">Difference</th></tr></thead>
<tbody>${rows.map(figureRow).join('')}</tbody>
</table>
<p id="about-${id}" class="about">${STANDINGS[standing]}, ${how} · ${within} of ${count} within tolerance${some} · tolerance ${escapeHtml(`${table.tolerance} (${table.because})`)}</p>
</div>`
}

function figureRow([what, printed, computed, difference, share]: FigureRow): string {
  return `<tr><th scope="row">${escapeHtml(what)}</th><td>${figure(printed)}</td><td>${computedText(computed)}</td><td>${differenceText(computed, difference, share)}</td></tr>`
}

function differenceText(computed: Computed, difference: number, share: number): string {
  if (difference === 0) return typeof computed === 'number' ? '0' : 'within'
  const sign = difference > 0 ? '+' : ''
  if (share === 0) return `${sign}${figure(difference)}`
  return `${sign}${figure(difference)} <span class="share">${sign}${figure(Number((share * 100).toPrecision(2)))} %</span>`
}

function computedText(computed: Computed): string {
  if (typeof computed === 'number') return figure(computed)
  return `${figure(computed[0])} to ${figure(computed[1])}`
}

function misprintSection(misprints: readonly Misprint[]): string {
  if (misprints.length === 0) return ''
  const items = misprints.map(
    ({ source, table, what, unit, printed, computed, why }) =>
      `<li><a href="/docs/figures?source=${source}">${escapeHtml(FIGURES.sources[source]?.name ?? source)}</a>, ${escapeHtml(table)}: ${escapeHtml(what)}, printed <b>${figure(printed)}${unitAfter(unit)}</b>, computed <b>${computedText(computed)}${unitAfter(unit)}</b>: ${escapeHtml(why)}.</li>`,
  )
  return `<section id="misprints"><h2>Printed wrong</h2>
<p>These figures are wrong in the document or the copy that was read, or far from what was measured. A test holds that the engine does not agree with them.</p>
<ul class="misprints">${items.join('')}</ul></section>`
}

function sourceList(): string {
  const items = Object.entries(FIGURES.sources)
    .sort(([, a], [, b]) => a.name.localeCompare(b.name, 'en'))
    .map(
      ([id, { name, count, standing, copy }]) =>
        `<li><a href="/docs/figures?source=${id}">${escapeHtml(name)}</a> <span class="place">${count}, ${STANDINGS[standing]}${copy === undefined ? '' : `: ${escapeHtml(copy)}`}</span></li>`,
    )
  return `<section id="sources"><h2>One source at a time</h2><ul class="sources">${items.join('')}</ul></section>`
}

const unitOf = (unit: string) => (unit === '1' ? '' : `, ${escapeHtml(unit)}`)
const unitAfter = (unit: string) => (unit === '1' ? '' : ` ${escapeHtml(unit)}`)
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)

/** A figure with a true minus sign and no exponent. */
function figure(value: number): string {
  const text = Math.abs(value) < 1e-6 && value !== 0 ? value.toFixed(10) : String(value)
  return text.replace('-', '−')
}
