/** Percentiles of a timed call, and its best batch: what other work on the machine took away least of. [microseconds] */
export interface Timing {
  readonly least: number
  readonly p50: number
  readonly p95: number
  readonly p99: number
}

/**
 * Times a call in batches, after warming it up.
 *
 * @param call - What to time; its result is used, so that it can't be optimised away
 * @param batches - How many batches are timed
 * @param perBatch - Calls a batch; a batch's mean is one sample
 * @returns Percentiles over the batches. [microseconds a call]
 */
export function timeCall(call: () => unknown, batches = 200, perBatch = 50): Timing {
  let sink: unknown
  for (let index = 0; index < 2000; index += 1) sink = call()
  const samples: number[] = []
  for (let batch = 0; batch < batches; batch += 1) {
    const start = process.hrtime.bigint()
    for (let index = 0; index < perBatch; index += 1) sink = call()
    samples.push(Number(process.hrtime.bigint() - start) / 1000 / perBatch)
  }
  if (sink === undefined) throw new Error('the call returned nothing')
  samples.sort((a, b) => a - b)
  const at = (share: number) => samples[Math.min(samples.length - 1, Math.floor(share * samples.length))] ?? 0
  return { least: at(0), p50: at(0.5), p95: at(0.95), p99: at(0.99) }
}

/** One line of a timing. */
export function timingLine(what: string, { least, p50, p95, p99 }: Timing): string {
  const us = (value: number) => value.toFixed(1).padStart(8)
  return `${what.padEnd(58)} least ${us(least)}  p50 ${us(p50)}  p95 ${us(p95)}  p99 ${us(p99)} µs`
}
