import { sizingRequestExample } from '../../shared/examples/plans.ts'

const { battery: _, ...supply } = sizingRequestExample.supply

/** What is asked of the sizing endpoint, from the least to the whole answer. */
export const BENCH_BODIES = {
  /** Unit, cable and fuse. */
  unit: { ...sizingRequestExample, supply, include: [] },
  /** The same with run time. */
  runtime: { ...sizingRequestExample, include: [] },
  /** With kit, what-ifs and label limits. */
  whole: sizingRequestExample,
  /** With the working and every unit too. */
  full: { ...sizingRequestExample, detail: 'full' },
} as const
export type BenchBody = keyof typeof BENCH_BODIES
