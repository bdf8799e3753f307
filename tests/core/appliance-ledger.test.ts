import { describe, expect, it } from 'vitest'
import type { Appliance, Band, MainsBands } from '../../core/loads/appliance.ts'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'

/*
 * A ledger, not a proof: it shows that no figure of the list changes by accident. Whether a figure is right is
 * shown by tests/reference/appliances.test.ts and appliance-figures.test.ts, as far as something is published.
 * Whoever changes a figure writes the ledger anew (npx vitest run --config tests/vitest.config.ts -u
 * tests/core/appliance-ledger.test.ts) and sees in its diff what else has changed.
 */

const figures = ({ low, typical, high }: Band) => `${low} ${typical} ${high}`

const byMains = ({ at120V, at230V }: MainsBands) => `at 120 V ${figures(at120V)}, at 230 V ${figures(at230V)}`

function entry({ id, inputW, powerFactor, start, standbyW, use }: Appliance): string {
  const starting = start.startingW === undefined ? '' : `; starting W ${byMains(start.startingW)}`
  return [
    id,
    `  input W ${byMains(inputW)}`,
    `  power factor ${figures(powerFactor)}`,
    `  start ${start.kind}, ${start.durationS} s, times ${figures(start.multiple)}${starting}`,
    `  standby W ${figures(standbyW)}`,
    `  minutes a day ${figures(use.minutesPerDay)}, duty ${figures(use.dutyFraction)}`,
  ].join('\n')
}

describe('the figures of the appliance list', () => {
  it('are those of the ledger', async () => {
    const ledger = `${BUILT_IN_APPLIANCES.map(entry).join('\n')}\n`
    await expect(ledger).toMatchFileSnapshot('data/appliance-ledger.txt')
  })
})
