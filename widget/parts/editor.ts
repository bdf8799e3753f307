import { html, nothing, type TemplateResult } from 'lit/html.js'
import { rateLoad } from '../../core/loads/rate-load.ts'
import type { Rating } from '../../core/loads/rating.ts'
import type { SetupAppliance } from '../../shared/contract/setup.ts'
import { LIMITS } from '../limits.ts'
import { withChange, withLoad } from '../plan.ts'
import type { LaterView } from '../view.ts'
import { plateDrawing, twoWattsDrawing } from './editor-drawings.ts'
import { editorStyles } from './editor-styles.ts'

/** The sheet that comes with the editor. */
export const styles = [editorStyles]

/** Ways in which somebody knows a power. */
const WAYS = ['typical', 'cooking', 'plate', 'watts', 'volts-amps'] as const
type Way = (typeof WAYS)[number]

/** What the typed fields come to: a rating, a fault to show, or nothing typed yet. */
interface Typed {
  readonly rating?: Rating
  readonly fault?: string
  /** What stands in each field before anything is typed, by name. */
  readonly texts?: Readonly<Record<string, string>>
}

/**
 * The editor of one load's power, or of a load of the shopper's own. Every change counts at once.
 *
 * @param view - What is drawn from
 * @param id - The load, or `own` for a new one
 * @returns A group of fields
 */
export function editor(view: LaterView, id: string): TemplateResult {
  const { ui } = view
  const { editor: power } = view.later
  const load = view.plan.loads.find((one) => one.id === id)
  const listed = view.setup.appliances.find((one) => one.id === load?.appliance)
  const way = (ui.draft.way as Way | undefined) ?? wayOf(load?.rating, listed)
  const ways = WAYS.filter(
    (one) =>
      (one !== 'cooking' || listed?.ratedByCookingPower) && (one !== 'typical' || listed !== undefined),
  )
  const typed = typedRating(view, way, load?.rating, listed)
  const tellName: Told = (_, text) => {
    ui.draft.name = text
  }
  const tell: Told = (name, text) => type(view, id, name, text, listed)
  return html`<div class="editor" part="editor">
    ${id === 'own' ? field(view, { name: 'name', label: power.ownName, hint: power.ownNameHint, tell: tellName }) : nothing}
    <fieldset>
      <legend>${power.howKnown}</legend>
      ${ways.map(
        (one) => html`<label class="pick"><input type="radio" name="way" .checked=${one === way}
          @change=${() => choose(view, id, one, listed)} /><span>${wayText(view, one, listed)}</span></label>`,
      )}
    </fieldset>
    ${listed?.ratedByCookingPower ? twoWatts(view) : way === 'plate' ? plateWhere(view) : nothing}
    ${fields(view, way, typed, tell)}
    ${typed.rating === undefined || way === 'watts' ? nothing : readAs(view, typed.rating, listed)}
    <div class="row">
      ${
        id === 'own'
          ? html`<button class="go" @click=${() => addOwn(view, typed)}>${power.ownAdd}</button>`
          : html`<button @click=${() => close(view, id, load?.name ?? listed?.name ?? '')}>${power.done}</button>`
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

function wayText(
  { formats, later: { editor: power } }: LaterView,
  way: Way,
  listed: SetupAppliance | undefined,
): string {
  if (way === 'typical') return power.asTypical(formats.watts(listed?.sizingW ?? 0))
  if (way === 'plate') return power.fromPlate
  if (way === 'cooking') return power.fromCooking
  return way === 'watts' ? power.fromWatts : power.fromVoltsAmps
}

function twoWatts({ later: { editor: power } }: LaterView): TemplateResult {
  return html`<figure class="where">
    ${twoWattsDrawing()}
    <figcaption class="small"><b>${power.twoWatts}</b>
      <ol><li>${power.twoWattsCooking}</li><li>${power.twoWattsInput}</li></ol></figcaption>
  </figure>`
}

function plateWhere({ later: { editor: power } }: LaterView): TemplateResult {
  return html`<figure class="where">${plateDrawing()}<figcaption class="small">${power.plateWhere}</figcaption></figure>`
}

type Told = (name: string, text: string) => void

function fields(view: LaterView, way: Way, { texts, fault }: Typed, tell: Told): TemplateResult {
  const { editor: power } = view.later
  const one = (name: string, label: string, hint?: string) =>
    field(view, { name, label, hint, tell, text: texts?.[name], fault: name === 'plate' ? fault : undefined })
  if (way === 'typical') return html``
  if (way === 'plate') return one('plate', power.plateLabel, power.plateHint)
  if (way === 'volts-amps') {
    return html`<div class="pair">${one('volts', power.voltsLabel)} ${one('amps', power.ampsLabel)}</div>`
  }
  return one('watts', way === 'cooking' ? power.cookingLabel : power.wattsLabel)
}

interface Field {
  readonly name: string
  readonly label: string
  readonly hint?: string | undefined
  /** What stands in it before anything is typed. */
  readonly text?: string | undefined
  /** What is wrong with a text that only the reader of plates can judge. */
  readonly fault?: string | undefined
  readonly tell: Told
}

/** One field with its fault below it: named, tied to it, and shown only once it was typed in or asked for. */
function field(view: LaterView, { name, label, hint, text = '', fault: known, tell }: Field): TemplateResult {
  const { ui } = view
  const { editor: power } = view.later
  const value = ui.draft[name] ?? text
  const missing = value.trim() === '' && ui.draft.tried !== undefined
  const fault = missing
    ? power.missing(label)
    : value === ''
      ? undefined
      : (known ?? faultOf(view, name, value))
  return html`<label class="field"><b>${label}</b>
    <input type="text" name=${name} .value=${value} inputmode=${name === 'plate' || name === 'name' ? 'text' : 'decimal'}
      maxlength=${name === 'name' ? LIMITS.nameCharacters : LIMITS.labelCharacters} autocomplete="off"
      aria-invalid=${fault !== undefined} aria-describedby=${fault === undefined ? nothing : `${name}-fault`}
      @input=${(event: InputEvent) => tell(name, (event.target as HTMLInputElement).value)} />
    ${hint && html`<span class="quiet small">${hint}</span>`}</label>
    ${fault && html`<p class="fault" id="${name}-fault">${fault}</p>`}`
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
  if (name === 'plate' || name === 'name') return undefined
  const { low, high } = boundsOf(name)
  const value = formats.readNumber(text)
  if (value !== undefined && value >= low && value <= high) return undefined
  const { editor: power } = later
  const label = { watts: power.wattsLabel, volts: power.voltsLabel, amps: power.ampsLabel }[name] ?? name
  return later.numberFault(label, formats.number(low, 2), formats.number(high))
}

function typedRating(
  view: LaterView,
  way: Way,
  stored: Rating | undefined,
  listed: SetupAppliance | undefined,
): Typed {
  if (way === 'typical') return {}
  const names = way === 'plate' ? ['plate'] : way === 'volts-amps' ? ['volts', 'amps'] : ['watts']
  const texts = Object.fromEntries(names.map((name) => [name, storedText(view, name, stored)]))
  const typed = names.map((name) => (view.ui.draft[name] ?? texts[name] ?? '').trim())
  if (way === 'plate') return { texts, ...plateRating(view, typed[0] ?? '', listed) }
  const fault = names.flatMap((name, place) => {
    const text = typed[place] ?? ''
    return text === '' ? [] : (faultOf(view, name, text) ?? [])
  })[0]
  if (fault !== undefined) return { texts, fault }
  const [first, second] = typed.map((text) => view.formats.readNumber(text))
  if (first === undefined || (way === 'volts-amps' && second === undefined)) return { texts }
  if (way === 'cooking') return { texts, rating: { basis: 'cooking-watts', watts: first } }
  if (second === undefined) return { texts, rating: { basis: 'input-watts', watts: first } }
  return { texts, rating: { basis: 'volts-amps', volts: first, amps: second } }
}

function plateRating(view: LaterView, text: string, listed: SetupAppliance | undefined): Typed {
  if (text === '') return {}
  const rating = { basis: 'label-text', text } as const
  const power = rateLoad({ rating, appliance: listed, mainsV: view.setup.shop.mainsV })
  if (power.ok) return { rating }
  return { fault: view.later.editor.plateRefusals[power.refusal] ?? view.later.editor.notRead }
}

function readAs(view: LaterView, rating: Rating, listed: SetupAppliance | undefined): TemplateResult {
  const power = rateLoad({ rating, appliance: listed, mainsV: view.setup.shop.mainsV })
  return power.ok ? html`<p class="read">${view.later.editor.readAs(view.watts(power.inputW))}</p>` : html``
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
  view.act(withChange(view.plan, id, { rating }), (totals) =>
    view.later.changed(view.watts(totals.demand.runningW)),
  )
}

function addOwn(view: LaterView, { rating, fault }: Typed): void {
  const name = (view.ui.draft.name ?? '').trim()
  if (name === '' || rating === undefined) {
    view.ui.draft.tried = 'yes'
    const { editor: power } = view.later
    view.say(name === '' ? power.missing(power.ownName) : (fault ?? power.missing(power.plateLabel)))
    view.focusOn('.editor [aria-invalid=true]')
    return
  }
  view.act(withLoad(view.plan, { name, rating }), (totals) =>
    view.words.added(name, view.watts(totals.demand.runningW)),
  )
  view.ui.editing = undefined
  view.ui.draft = {}
  view.redraw()
  view.focusOn('[data-own]')
}

function close(view: LaterView, id: string, name: string): void {
  view.ui.editing = undefined
  view.ui.draft = {}
  view.say(name)
  view.redraw()
  view.focusOn(`[data-edit="${id}"]`)
}
