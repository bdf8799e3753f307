import { sizingRequestExample } from './plans.ts'

/** A cart with a unit, a cable that is too thin for it and no fuse, and what it is to run. */
export const cartRequestExample = {
  lines: [
    { sku: 'KC-ST12-1480', quantity: 1 },
    { sku: 'KC-CAB-16-2', quantity: 1 },
  ],
  loads: sizingRequestExample.loads,
  takeTurns: sizingRequestExample.takeTurns,
  supply: sizingRequestExample.supply,
} as const
