import type { FindingCode } from '../../advice/findings.ts'
import type { Verdict } from '../../inverters/choose.ts'
import type { Need } from '../../inverters/need.ts'
import { failingCodes } from '../coverage/nearest.ts'
import type { UnmetNeed } from './new-sizes.ts'
import { wattsBucket } from './watts-bucket.ts'

/**
 * Why nothing of a range fits. `stock`: a unit would that is not in stock; `wishes`: one would but for its price or
 * a feature; `connection`: where the buyer means to connect, no unit gets current enough; `size`: no unit of the
 * supply voltage is large enough or gives the right output.
 */
export const UNMET_CAUSES = ['size', 'stock', 'wishes', 'connection'] as const
export type UnmetCause = (typeof UNMET_CAUSES)[number]

/** An unmet need in its buckets, with its cause. */
export type UnmetRequest = Omit<UnmetNeed, 'count'> & { readonly cause: UnmetCause }

/**
 * What a request that nothing fits would have taken, in buckets that tell one request from no other like it.
 *
 * @param need - What was asked
 * @param verdicts - Verdicts of the whole range, none of which fits
 * @returns Continuous power (headroom and apparent power counted) and surge as upper ends of their buckets, wave
 * form, supply voltage, and why nothing fits
 * @source iso-3
 */
export function unmetRequestOf(need: Need, verdicts: readonly Verdict[]): UnmetRequest {
  const { demand, requiredContinuousW, supply } = need
  const { nominalV } = supply
  return {
    nominalV,
    continuousW: wattsBucket(Math.max(requiredContinuousW, demand.runningVA)),
    surgeW: wattsBucket(demand.startingW),
    waveform: demand.waveform,
    cause: causeOf(
      need,
      verdicts.filter(({ inverter }) => inverter.unit.inputNominalV === nominalV),
    ),
  }
}

const STOCK: readonly FindingCode[] = ['out-of-stock']
const WISHES: readonly FindingCode[] = [...STOCK, 'over-price', 'feature-missing']

function causeOf(need: Need, verdicts: readonly Verdict[]): UnmetCause {
  const failsOnly = (codes: readonly FindingCode[]) =>
    verdicts.some((verdict) => failingCodes(verdict).every((code) => codes.includes(code)))
  if (failsOnly(STOCK)) return 'stock'
  if (failsOnly(WISHES)) return 'wishes'
  const wanted = need.supply.connection?.kind
  const limited = ({ findings }: Verdict) =>
    findings.some((found) => found.code === 'connection-limit' && found.values.kind === wanted)
  if (wanted !== undefined && verdicts.length > 0 && verdicts.every(limited)) return 'connection'
  return 'size'
}
