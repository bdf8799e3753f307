import { live } from 'lit/directives/live.js'
import { html, nothing, type TemplateResult } from 'lit/html.js'
import { rateLoad } from '../../core/loads/rate-load.ts'
import type { Rating } from '../../core/loads/rating.ts'
import type { SetupAppliance } from '../../shared/contract/setup.ts'
import { parseNumber } from '../formats.ts'
import { LIMITS } from '../limits.ts'
import type { LaterView } from '../view.ts'
import { nameOf } from './load-bar.ts'
import { plateDrawing, twoWattsDrawing } from './plates.ts'

/** Ways in which somebody knows a power. */
const WAYS = ['typical', 'cooking', 'plate', 'watts', 'volts-amps'] as const
type Way = (typeof WAYS)[number]

/** What the typed fields come to: a rating, a fault to show, or nothing typed yet. */
interface Typed {
  readonly rating?: Rating
  readonly fault?: string
}

/**
 * The editor of one load's power, or of a load of the shopper's own. Every change counts at once.
 *
 * @param view - What is drawn from
 * @param id - The load, or `own` for a new one
 * @returns A group of fields
 */
export function editor(view: LaterView, id: string): TemplateResult {
  const { later, ui } = view
  const load = view.plan.loads.find((one) => one.id === id)
  const listed = view.setup.appliances.find((one) => one.id === load?.appliance)
  const way = (ui.draft.way as Way | undefined) ?? wayOf(load?.rating, listed)
  const ways = WAYS.filter(
    (one) =>
      (one !== 'cooking' || listed?.ratedByCookingPower) && (one !== 'typical' || listed !== undefined),
  )
  const typed = typedRating(view, way, load?.rating, listed)
  return html`<div class="editor" part="editor">
    ${id === 'own' ? field(view, 'name', later.ownName, later.ownNameHint) : nothing}
    <fieldset>
      <legend>${later.howKnown}</legend>
      ${ways.map(
        (one) => html`<label class="pick"><input type="radio" name="way" .checked=${live(one === way)}
          @change=${() => choose(view, id, one, listed)} /><span>${wayText(view, one, listed)}</span></label>`,
      )}
    </fieldset>
    ${listed?.ratedByCookingPower ? twoWatts(view) : way === 'plate' ? plateWhere(view) : nothing}
    ${fields(view, way, load?.rating, (name, text) => type(view, id, name, text, listed))}
    ${typed.fault === undefined ? nothing : html`<p class="fault" id="power-fault">${typed.fault}</p>`}
    ${ui.draft.tried === undefined || typed.fault !== undefined ? nothing : html`<p class="fault">${later.ownFault}</p>`}
    ${typed.rating === undefined || way === 'watts' ? nothing : readAs(view, typed.rating, listed)}
    <div class="row">
      ${
        id === 'own'
          ? html`<button type="button" class="go" @click=${() => addOwn(view, typed)}>${later.ownAdd}</button>`
          : html`<button type="button" @click=${() => close(view, id)}>${later.done}</button>`
      }
    </div>
  </div>`
}

function wayOf(rating: Rating | undefined, listed: SetupAppliance | undefined): Way {
  switch (rating?.basis) {
    case undefined:
      return listed === undefined ? 'plate' : 'typical'
    case 'cooking-watts':
      return 'cooking'
    case 'label-text':
      return 'plate'
    case 'volts-amps':
      return 'volts-amps'
    default:
      return 'watts'
  }
}

function wayText({ later, formats }: LaterView, way: Way, listed: SetupAppliance | undefined): string {
  if (way === 'typical') return later.asTypical(formats.watts(listed?.sizingW ?? 0))
  if (way === 'plate') return later.fromPlate
  if (way === 'cooking') return later.fromCooking
  return way === 'watts' ? later.fromWatts : later.fromVoltsAmps
}

function twoWatts({ later }: LaterView): TemplateResult {
  return html`<figure class="where">
    ${twoWattsDrawing()}
    <figcaption class="small"><b>${later.twoWatts}</b>
      <ol><li>${later.twoWattsCooking}</li><li>${later.twoWattsInput}</li></ol></figcaption>
  </figure>`
}

function plateWhere({ later }: LaterView): TemplateResult {
  return html`<figure class="where">${plateDrawing()}<figcaption class="small">${later.plateWhere}</figcaption></figure>`
}

type Told = (name: string, text: string) => void

function fields(view: LaterView, way: Way, rating: Rating | undefined, tell: Told): TemplateResult {
  const { later } = view
  if (way === 'typical') return html``
  if (way === 'plate') return field(view, 'plate', later.plateLabel, later.plateHint, tell, rating)
  if (way === 'volts-amps') {
    return html`<div class="pair">${field(view, 'volts', later.voltsLabel, '', tell, rating)}
      ${field(view, 'amps', later.ampsLabel, '', tell, rating)}</div>`
  }
  return field(view, 'watts', way === 'cooking' ? later.cookingLabel : later.wattsLabel, '', tell, rating)
}

function field(
  view: LaterView,
  name: string,
  label: string,
  hint: string,
  tell: Told = (key, text) => {
    view.ui.draft[key] = text
  },
  rating?: Rating,
): TemplateResult {
  const value = view.ui.draft[name] ?? storedText(view, name, rating)
  const faulty = name !== 'name' && value !== '' && faultOf(view, name, value) !== undefined
  return html`<label class="field"><b>${label}</b>
    <input type="text" name=${name} .value=${live(value)} inputmode=${name === 'plate' || name === 'name' ? 'text' : 'decimal'}
      maxlength=${name === 'name' ? LIMITS.nameCharacters : LIMITS.labelCharacters} autocomplete="off"
      aria-invalid=${faulty} aria-describedby=${faulty ? 'power-fault' : nothing}
      @input=${(event: InputEvent) => tell(name, (event.target as HTMLInputElement).value)} />
    ${hint === '' ? nothing : html`<span class="quiet small">${hint}</span>`}</label>`
}

function storedText({ formats }: LaterView, name: string, rating: Rating | undefined): string {
  if (rating === undefined) return ''
  if (rating.basis === 'label-text') return name === 'plate' ? rating.text : ''
  const value = (rating as unknown as Record<string, unknown>)[name]
  return typeof value === 'number'
    ? new Intl.NumberFormat(formats.locale, { useGrouping: false }).format(value)
    : ''
}

function boundsOf(name: string): { low: number; high: number } {
  return { low: name === 'watts' ? 1 : 0.01, high: name === 'watts' ? LIMITS.watts : LIMITS.volts }
}

function faultOf({ formats, later }: LaterView, name: string, text: string): string | undefined {
  if (name === 'plate') return undefined
  const { low, high } = boundsOf(name)
  const value = parseNumber(text, formats.locale)
  if (value !== undefined && value >= low && value <= high) return undefined
  const label = { watts: later.wattsLabel, volts: later.voltsLabel, amps: later.ampsLabel }[name] ?? name
  return later.numberFault(label, formats.number(low, 2), formats.number(high))
}

function typedRating(
  view: LaterView,
  way: Way,
  stored: Rating | undefined,
  listed: SetupAppliance | undefined,
): Typed {
  const text = (name: string) => (view.ui.draft[name] ?? storedText(view, name, stored)).trim()
  if (way === 'typical') return {}
  if (way === 'plate') return plateRating(view, text('plate'), listed)
  const names = way === 'volts-amps' ? ['volts', 'amps'] : ['watts']
  const fault = names
    .filter((name) => text(name) !== '')
    .flatMap((name) => faultOf(view, name, text(name)) ?? [])[0]
  if (fault !== undefined) return { fault }
  const [first, second] = names.map((name) => parseNumber(text(name), view.formats.locale))
  if (first === undefined) return {}
  if (way === 'cooking') return { rating: { basis: 'cooking-watts', watts: first } }
  if (way === 'watts') return { rating: { basis: 'input-watts', watts: first } }
  return second === undefined ? {} : { rating: { basis: 'volts-amps', volts: first, amps: second } }
}

function plateRating(view: LaterView, text: string, listed: SetupAppliance | undefined): Typed {
  if (text === '') return {}
  const rating = { basis: 'label-text', text } as const
  const power = rateLoad({ rating, appliance: listed, mainsV: view.setup.shop.mainsV })
  if (power.ok) return { rating }
  return { fault: view.later.plateRefusals[power.refusal] ?? view.later.notRead }
}

function readAs(view: LaterView, rating: Rating, listed: SetupAppliance | undefined): TemplateResult {
  const power = rateLoad({ rating, appliance: listed, mainsV: view.setup.shop.mainsV })
  return power.ok ? html`<p class="read">${view.later.readAs(view.formats.watts(power.inputW))}</p>` : html``
}

function choose(view: LaterView, id: string, way: Way, listed: SetupAppliance | undefined): void {
  view.ui.draft = { ...(view.ui.draft.name === undefined ? {} : { name: view.ui.draft.name }), way }
  if (way === 'typical') change(view, id, undefined)
  else settle(view, id, listed)
  view.redraw()
}

function type(
  view: LaterView,
  id: string,
  name: string,
  text: string,
  listed: SetupAppliance | undefined,
): void {
  view.ui.draft[name] = text
  settle(view, id, listed)
  view.redraw()
}

/** Takes what is typed into the plan once it makes a rating; a half-typed number changes nothing. */
function settle(view: LaterView, id: string, listed: SetupAppliance | undefined): void {
  const load = view.plan.loads.find((one) => one.id === id)
  if (load === undefined) return
  const way = (view.ui.draft.way as Way | undefined) ?? wayOf(load.rating, listed)
  view.ui.draft.way = way
  const { rating } = typedRating(view, way, load.rating, listed)
  if (rating !== undefined) change(view, id, rating)
}

function change(view: LaterView, id: string, rating: Rating | undefined): void {
  view.act({ do: 'set-rating', id, rating }, (totals) =>
    view.words.changed(view.formats.watts(totals.demand.runningW)),
  )
}

function addOwn(view: LaterView, { rating, fault }: Typed): void {
  const name = (view.ui.draft.name ?? '').trim()
  if (name === '' || rating === undefined) {
    view.say(fault ?? view.later.ownFault)
    view.ui.draft.tried = 'yes'
    view.redraw()
    return
  }
  view.act({ do: 'add-own', name, rating }, (totals) =>
    view.words.added(name, view.formats.watts(totals.demand.runningW)),
  )
  view.ui.editing = undefined
  view.ui.draft = {}
  view.redraw()
  view.focusOn('[data-own]')
}

function close(view: LaterView, id: string): void {
  view.ui.editing = undefined
  view.ui.draft = {}
  view.say(nameOf(view, id))
  view.redraw()
  view.focusOn(`[data-edit="${id}"]`)
}
