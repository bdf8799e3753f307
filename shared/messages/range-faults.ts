import type { RangeFault } from '../../core/range/check-range.ts'

/**
 * The sentence of a range fault, for shop staff.
 *
 * @param fault - The fault
 * @returns What is wrong and what would be right
 */
export function rangeFaultMessage({ code, values: v }: RangeFault): string {
  switch (code) {
    case 'duplicate-sku':
      return `The SKU "${v.sku}" stands twice in the range; each part needs its own.`
    case 'unknown-included-sku':
      return `No part of the range has the SKU "${v.sku}".`
    case 'surge-below-continuous':
      return `Surge power ${v.surgeW} W is below continuous power ${v.continuousW} W.`
    case 'apparent-below-continuous':
      return `Continuous apparent power ${v.continuousVA} VA is below continuous power ${v.continuousW} W.`
    case 'cut-off-out-of-reach':
      return `A cut-off of ${v.cutOffV} V can't be right here; it lies between ${v.lowV} and ${v.highV} V.`
    case 'restart-below-cut-off':
      return `Restart at ${v.restartV} V is below the cut-off of ${v.cutOffV} V.`
    case 'one-conductor-size':
      return `Cable "${v.sku}" needs areaMm2 or awg, and only one of them.`
    case 'band-out-of-order':
      return `The figures of "${v.id}" must rise: low, typical, high.`
    case 'unknown-source':
      return `There is no source "${v.sourceId}"; figures of your own have the source "shop-stated".`
    case 'duplicate-appliance-id':
      return `Two own appliances have the id "${v.id}".`
  }
}
