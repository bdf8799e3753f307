import { pathToFileURL } from 'node:url'
import type { CDPSession } from 'playwright-core'
import { type Rig, startRig } from '../widget/support/rig.ts'
import { longestTasks, type StepTask } from './widget-trace.ts'
import { walkOf } from './widget-walk.ts'

/** Slowing of the processor, as the bar has it: a cheap phone beside this machine. */
const THROTTLE = 4

/** What a page with one guide measured. Times in [ms]. */
export interface WidgetFigures {
  /** Layout shift added up, but for what an interaction of the last half second moved. */
  readonly shift: number
  /** Longest interaction: from the tap to the next picture. */
  readonly interactionMs: number
  readonly longestTaskMs: number
  /** Time over 50 ms of each task, added up until the guide was usable. */
  readonly blockedMs: number
  /** From the start of the page to tiles that can be tapped. */
  readonly usableMs: number
}

const RESERVE = `<style>body { margin: 0 } tallywatt-guide:not(:defined) { display: block; min-block-size: 42em }
  @media (max-width: 40em) { tallywatt-guide:not(:defined) { min-block-size: 54em } }</style>`

/** Watches the page from its first moment; read back at the end. */
const WATCH = `<script>customElements.whenDefined('tallywatt-guide').then(() => { const look = () =>
    document.querySelector('tallywatt-guide')?.shadowRoot?.querySelector('.tile') ? window.usable = performance.now() : requestAnimationFrame(look); look() })
  window.seen = { shift: 0, interaction: 0, task: 0, blocked: 0 };
  new PerformanceObserver((list) => { for (const entry of list.getEntries()) if (!entry.hadRecentInput) seen.shift += entry.value })
    .observe({ type: 'layout-shift', buffered: true });
  new PerformanceObserver((list) => { for (const entry of list.getEntries()) if (entry.interactionId) seen.interaction = Math.max(seen.interaction, entry.duration) })
    .observe({ type: 'event', durationThreshold: 16, buffered: true });
  new PerformanceObserver((list) => { for (const entry of list.getEntries()) {
    seen.task = Math.max(seen.task, entry.duration); seen.blocked += entry.duration - 50 } })
    .observe({ type: 'longtask', buffered: true })</script>`

/**
 * Measures the guide on the documented snippet at a slowed processor: loading, then the path to the answer by taps.
 *
 * @param rig - Shop, service and browser
 * @param withGuide - False: the same page without the guide, to compare with
 * @returns What the browser measured
 */
export async function measureWidget(rig: Rig, withGuide = true): Promise<WidgetFigures> {
  const context = await rig.browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true })
  const page = await context.newPage()
  const session: CDPSession = await context.newCDPSession(page)
  await session.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE })
  const body = withGuide ? `<tallywatt-guide shop="kingcup" api="${rig.api}"></tallywatt-guide>` : ''
  await page.goto(rig.page(`${body}<p>The rest of the page</p>`, { head: RESERVE + WATCH }))
  let usableMs = 0
  if (withGuide) {
    for (const { name, act } of walkOf(session)) {
      await act()
      if (name === 'load') usableMs = await page.evaluate(() => Reflect.get(window, 'usable') as number)
    }
  }
  await page.waitForTimeout(500)
  const seen = await page.evaluate(() => Reflect.get(window, 'seen') as Record<string, number>)
  await context.close()
  return {
    shift: seen.shift ?? Number.NaN,
    interactionMs: seen.interaction ?? Number.NaN,
    longestTaskMs: seen.task ?? Number.NaN,
    blockedMs: seen.blocked ?? Number.NaN,
    usableMs,
  }
}

/** Prints the medians of several runs. */
export async function benchWidget(runs = 5): Promise<void> {
  const rig = await startRig()
  const figures: WidgetFigures[] = []
  for (let run = 0; run < runs; run += 1) figures.push(await measureWidget(rig))
  const bare = await measureWidget(rig, false)
  const tasks = await longestTasks(rig, RESERVE, THROTTLE, runs)
  await rig.close()
  const median = (of: (one: WidgetFigures) => number) =>
    figures.map(of).sort((a, b) => a - b)[Math.floor(runs / 2)] ?? Number.NaN
  console.log(
    `\nThe guide on a page, processor slowed ${THROTTLE} times, median of ${runs} (bars in brackets)`,
  )
  console.log(`  layout shift        ${median(({ shift }) => shift).toFixed(3)} [0.000]`)
  console.log(`  longest interaction ${median(({ interactionMs }) => interactionMs).toFixed(0)} ms [100]`)
  console.log(
    `  longest task        ${median(({ longestTaskMs }) => longestTaskMs).toFixed(0)} ms [50; 0 stands for none over 50], ` +
      `${bare.longestTaskMs.toFixed(0)} ms without the guide`,
  )
  console.log(
    `  blocked over 50 ms  ${median(({ blockedMs }) => blockedMs).toFixed(0)} ms [50], ${bare.blockedMs.toFixed(0)} ms without`,
  )
  console.log(`  usable after        ${median(({ usableMs }) => usableMs).toFixed(0)} ms`)
  console.log('  longest task of each step by the time of its own thread, least of the runs [50]')
  for (const task of tasks) console.log(taskLine(task))
}

function taskLine({ name, threadMs, wallMs }: StepTask): string {
  return `    ${name.padEnd(24)} ${threadMs.toFixed(0).padStart(4)} ms, ${wallMs.toFixed(0)} ms by the clock`
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await benchWidget()
