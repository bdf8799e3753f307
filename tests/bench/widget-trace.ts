import type { Browser } from 'playwright-core'
import type { Rig } from '../widget/support/rig.ts'
import { walkOf } from './widget-walk.ts'

/** The longest task of the page's main thread during one step of the walk. */
export interface StepTask {
  readonly name: string
  /** Time that the thread itself took: other programs on the machine are not in it. [ms] */
  readonly threadMs: number
  /** The same by the clock. [ms] */
  readonly wallMs: number
}

interface TraceEvent {
  readonly name: string
  readonly ph: string
  readonly pid: number
  readonly tid: number
  readonly dur?: number
  readonly tdur?: number
  readonly args?: { readonly name?: string }
}

/**
 * Walks to the answer and takes the longest task of each step; of several walks the shortest counts, since what
 * disturbs a measure only ever lengthens it.
 *
 * @param rig - Shop, service and browser
 * @param head - What the page has in its head
 * @param throttle - How many times the processor is slowed
 * @param runs - How many walks
 * @returns The tasks, by step
 */
export async function longestTasks(
  rig: Rig,
  head: string,
  throttle: number,
  runs: number,
): Promise<readonly StepTask[]> {
  const least = new Map<string, StepTask>()
  for (let run = 0; run < runs; run += 1) {
    const context = await rig.browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true })
    const page = await context.newPage()
    const session = await context.newCDPSession(page)
    await session.send('Emulation.setCPUThrottlingRate', { rate: throttle })
    const body = `<tallywatt-guide shop="kingcup" api="${rig.api}"></tallywatt-guide><p>The rest of the page</p>`
    for (const { name, act } of walkOf(session)) {
      await rig.browser.startTracing(page, { categories: ['toplevel', 'devtools.timeline'] })
      if (name === 'load') await session.send('Page.navigate', { url: rig.page(body, { head }) })
      await act()
      const task = await longest(rig.browser, name)
      if (task.threadMs < (least.get(name)?.threadMs ?? Number.POSITIVE_INFINITY)) least.set(name, task)
    }
    await context.close()
  }
  return [...least.values()]
}

async function longest(browser: Browser, name: string): Promise<StepTask> {
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as {
    traceEvents: readonly TraceEvent[]
  }
  const place = ({ pid, tid }: TraceEvent) => `${pid}/${tid}`
  const threads = new Set(
    traceEvents.filter(({ args }) => args?.name === 'CrRendererMain').map((event) => place(event)),
  )
  const tasks = traceEvents.filter(
    (event) => event.ph === 'X' && event.name.endsWith('RunTask') && threads.has(place(event)),
  )
  const [most] = [...tasks].sort((a, b) => (b.tdur ?? 0) - (a.tdur ?? 0))
  if (most === undefined) throw new Error(`no task was traced during "${name}"`)
  return { name, threadMs: (most.tdur ?? 0) / 1000, wallMs: (most.dur ?? 0) / 1000 }
}
