import type { SetupAppliance } from '../../../../../shared/contract/setup.ts'
import {
  type PlanLoad,
  type PlanState,
  planAfter,
  requestFor,
  type SupplyAnswers,
  search,
} from '../from-widget.ts'
import type { DeskState, Page } from '../state.ts'
import { planWith, ratingOf, readLine, withTurns } from './typed-line.ts'

/** Pause after the last change before the service is asked. [ms] */
const PAUSE_MS = 250

let waiting: ReturnType<typeof setTimeout> | undefined

/** Changes some of the desk's state. */
export function setDesk(page: Page, change: Partial<DeskState>): void {
  page.set({ desk: { ...page.state.desk, ...change } })
}

/** What the typed line finds, best first. */
export function hitsOf(page: Page): readonly SetupAppliance[] {
  const { typed } = page.state.desk
  return search(page.state.setup?.appliances ?? [], readLine(typed).query, 6)
}

/** The plan as it is asked for: with its take-turns groups. */
export function deskPlan({ plan, turns }: DeskState): PlanState {
  return withTurns(plan, turns)
}

/** Adds what the line says, the marked hit or a thing of its own. */
export function addTyped(page: Page, hit: SetupAppliance | undefined): void {
  const { plan, typed } = page.state.desk
  const line = readLine(typed)
  if (line.query === '') return
  const next = planWith(plan, line, hit)
  if (next === plan) {
    page.say(page.words.needsWatts)
    setDesk(page, { hit: 0 })
    return
  }
  setDesk(page, { typed: '', hit: 0 })
  update(page, next)
  page.say(page.words.addedThing(hit?.name ?? line.query))
}

/** Changes one thing of the plan. */
export function changeLoad(page: Page, id: string, change: Partial<PlanLoad>): void {
  const { plan } = page.state.desk
  update(page, { ...plan, loads: plan.loads.map((load) => (load.id === id ? { ...load, ...change } : load)) })
}

/** States the power of one thing; undefined goes back to the list's figure. */
export function stateWatts(page: Page, load: PlanLoad, watts: number | undefined): void {
  const listed = page.state.setup?.appliances.find(({ id }) => id === load.appliance)
  changeLoad(page, load.id, { rating: watts === undefined ? undefined : ratingOf(watts, listed) })
}

/** Takes a thing off the list. */
export function removeLoad(page: Page, id: string): void {
  update(page, planAfter(page.state.desk.plan, { do: 'remove', ids: [id] }))
}

/** Puts a thing into a group that takes turns; 0: it runs with the rest. */
export function setTurns(page: Page, id: string, group: number): void {
  setDesk(page, { turns: { ...page.state.desk.turns, [id]: group } })
  update(page, page.state.desk.plan)
}

/** Answers part of the third question. */
export function setSupply(page: Page, supply: Partial<SupplyAnswers>): void {
  update(page, planAfter(page.state.desk.plan, { do: 'supply', change: supply }))
}

/** Begins anew for the next caller. */
export function nextCaller(page: Page, empty: PlanState): void {
  clearTimeout(waiting)
  setDesk(page, { plan: empty, turns: {}, typed: '', hit: 0, answer: undefined, asking: false })
  page.focus('#desk-search')
}

function update(page: Page, plan: PlanState): void {
  const some = plan.loads.length > 0
  setDesk(page, { plan, asking: some, ...(some ? {} : { answer: undefined }) })
  clearTimeout(waiting)
  if (some) waiting = setTimeout(() => void ask(page), PAUSE_MS)
}

async function ask(page: Page): Promise<void> {
  const { setup, desk } = page.state
  if (setup === undefined) return
  const { request } = requestFor(deskPlan(desk), setup, page.formats.locale)
  const reply = await page.api.sizing(request)
  const now = page.state.desk
  if (now.plan !== desk.plan || now.turns !== desk.turns) return
  if (!reply.ok) {
    setDesk(page, { asking: false, answer: undefined })
    return page.failed(reply)
  }
  setDesk(page, { asking: false, answer: reply.value })
  page.say(page.words.answerReady(page.words.outcomes[reply.value.outcome]))
}
