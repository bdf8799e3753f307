import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { BatteryChemistry, ConnectionKind } from '../../core/range/vocabulary.ts'
import { METRES_PER_FOOT } from '../formats.ts'
import { SUPPLY_BOUNDS } from '../limits.ts'
import type { SupplyAnswers } from '../plan.ts'
import { planAfter } from '../plan-state.ts'
import type { LaterView } from '../view.ts'
import { connectionDrawing, distanceDrawing } from './plates.ts'

const CHEMISTRIES: readonly BatteryChemistry[] = ['flooded', 'agm', 'gel', 'lifepo4', 'nmc']
const CONNECTIONS: readonly ConnectionKind[] = ['vehicle-socket', 'quick-connector', 'battery-terminals']
const DISTANCES_M = [0.5, 1, 1.5, 2, 3, 4, 5, 7.5, 10]
const DISTANCES_FT = [2, 3, 4, 6, 8, 10, 15, 20, 30]

/**
 * The third question: voltage, battery, connection and distance, each with "not sure".
 *
 * @param view - What is drawn from
 * @returns The screen's body
 */
export function supplyForm(view: LaterView): TemplateResult {
  const { later, formats } = view
  const { supply } = view.plan
  const voltages = view.setup.shop.supplyVoltages
  return html`
    ${choice(view, 'nominalV', later.voltage, later.voltageHint, [
      ...voltages.map((volts) => ({ value: volts, text: later.volts(formats.number(volts)) })),
      { value: null, text: later.notSure },
    ])}
    ${choice(view, 'battery', later.battery, '', [
      { value: 'have', text: later.batteryHave },
      { value: 'need', text: later.batteryNeed },
      { value: null, text: later.notSure },
    ])}
    ${
      supply.battery === 'have'
        ? html`${choice(view, 'chemistry', later.kind, '', [
            ...CHEMISTRIES.map((kind) => ({ value: kind, text: later.kinds[kind] })),
            { value: null, text: later.notSure },
          ])}${capacity(view)}`
        : nothing
    }
    ${choice(view, 'connection', later.connection, '', [
      ...CONNECTIONS.map((kind) => ({
        value: kind,
        text: later.connections[kind],
        hint: later.connectionHints[kind],
        drawing: connectionDrawing(kind),
      })),
      { value: null, text: later.notSure },
    ])}
    ${distance(view)}`
}

interface Option {
  readonly value: SupplyAnswers[keyof SupplyAnswers]
  readonly text: string
  readonly hint?: string
  readonly drawing?: TemplateResult
}

function choice(
  view: LaterView,
  name: keyof SupplyAnswers,
  legend: string,
  hint: string,
  options: readonly Option[],
): TemplateResult {
  const drawn = options.some(({ drawing }) => drawing !== undefined)
  return html`<fieldset class="ask ${drawn ? 'drawn' : ''}">
    <legend>${legend}</legend>
    ${hint === '' ? nothing : html`<p class="quiet small">${hint}</p>`}
    <div class="options">
      ${options.map(
        (
          option,
        ) => html`<label class="pick"><input type="radio" name=${name} .checked=${view.plan.supply[name] === option.value}
            @change=${() => answer(view, { [name]: option.value })} />
          ${option.drawing ?? nothing}<span>${option.text}${option.hint === undefined ? nothing : html`<small class="quiet">${option.hint}</small>`}</span></label>`,
      )}
    </div>
  </fieldset>`
}

function answer(view: LaterView, change: Partial<SupplyAnswers>): void {
  view.act(planAfter(view.plan, { do: 'supply', change }))
}

function capacity(view: LaterView): TemplateResult {
  const { later, formats, ui } = view
  const { capacityAh } = view.plan.supply
  const text = ui.draft.capacity ?? (capacityAh === null ? '' : formats.number(capacityAh, 1))
  const known = capacityAh !== null || text !== ''
  const { low, high } = SUPPLY_BOUNDS.capacityAh
  const value = formats.readNumber(text)
  const faulty = text !== '' && (value === undefined || value < low || value > high)
  const type = (typed: string) => {
    ui.draft.capacity = typed
    const read = formats.readNumber(typed)
    const fine = read !== undefined && read >= low && read <= high
    answer(view, { capacityAh: fine ? read : null })
  }
  const unsure = () => {
    delete ui.draft.capacity
    answer(view, { capacityAh: null })
  }
  return html`<fieldset class="ask">
    <legend>${later.capacity}</legend>
    <p class="quiet small">${later.capacityHint}</p>
    <div class="options">
      <label class="pick"><input type="radio" name="capacity" .checked=${known} @change=${() => view.focusOn('#capacity')} /><span>${later.capacityKnown}</span></label>
      <span class="unit-field"><input id="capacity" type="text" inputmode="decimal" maxlength="8" autocomplete="off" aria-label="${later.capacity}, ${later.ampHours}"
        aria-invalid=${faulty} aria-describedby=${faulty ? 'capacity-fault' : nothing} .value=${text}
        @input=${(event: InputEvent) => type((event.target as HTMLInputElement).value)} /><span aria-hidden="true">${later.ampHours}</span></span>
      <label class="pick"><input type="radio" name="capacity" .checked=${!known} @change=${unsure} /><span>${later.notSure}</span></label>
    </div>
    ${faulty ? html`<p class="fault" id="capacity-fault">${later.numberFault(later.capacity, formats.number(low), formats.number(high))}</p>` : nothing}
  </fieldset>`
}

function distance(view: LaterView): TemplateResult {
  const { later, formats, setup } = view
  const { oneWayLengthM } = view.plan.supply
  const feet = setup.shop.wireSizes === 'awg'
  const lengths = feet ? DISTANCES_FT.map((length) => round(length * METRES_PER_FOOT)) : [...DISTANCES_M]
  if (oneWayLengthM !== null && !lengths.includes(oneWayLengthM)) lengths.push(oneWayLengthM)
  const set = (event: Event) => {
    const { value } = event.target as HTMLSelectElement
    answer(view, { oneWayLengthM: value === '' ? null : Number(value) })
  }
  return html`<div class="ask">
    <label><b>${later.distance}</b> <span class="quiet small">${later.distanceHint}</span>
      ${distanceDrawing()}
      <select @change=${set}>
        <option value="" .selected=${oneWayLengthM === null}>${later.notSure}</option>
        ${lengths
          .sort((a, b) => a - b)
          .map(
            (length) =>
              html`<option value=${length} .selected=${length === oneWayLengthM}>${formats.length(length)}</option>`,
          )}
      </select></label>
  </div>`
}

function round(lengthM: number): number {
  return Math.round(lengthM * 100) / 100
}
