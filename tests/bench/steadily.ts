import { setTimeout as pause } from 'node:timers/promises'

/**
 * Calls at a steady rate, whatever comes back, as many callers who don't know of each other do.
 *
 * @param call - One call
 * @param perSecond - How many calls begin each second
 * @param seconds - How long
 * @returns What the calls came to, once the last has ended
 */
export async function steadily<T>(
  call: () => Promise<T>,
  perSecond: number,
  seconds: number,
): Promise<readonly T[]> {
  const calls: Promise<T>[] = []
  const start = performance.now()
  for (let now = 0; now < 1000 * seconds; now = performance.now() - start) {
    while (calls.length < (now / 1000) * perSecond) calls.push(call())
    await pause(1)
  }
  return Promise.all(calls)
}
