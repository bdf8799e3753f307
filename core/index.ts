/**
 * The public face of the engine: what the service and its tools take from it. The widget and `shared` take single
 * files instead, since every byte that a shopper's browser loads counts.
 */

export { FINDING_CODES } from './advice/finding-codes.ts'
export type { Finding } from './advice/findings.ts'
export { type BatteryAnswer, RECHARGE_WITH, type SteadyAnswer } from './battery-side/battery-answer.ts'
export type { NeededBank } from './battery-side/needed-bank.ts'
export type { CircuitAnswer } from './circuit-side.ts'
export type { Choice, Verdict } from './inverters/choose.ts'
export { type LabelLimit, labelLimitsFor } from './inverters/label-limits.ts'
export type { Supply } from './inverters/need.ts'
export type { WhatIf } from './inverters/what-ifs/what-if.ts'
export { whatIfsFor } from './inverters/what-ifs/what-ifs.ts'
export type { ListedAppliance } from './loads/listed-appliance.ts'
export type { Load } from './loads/load.ts'
export { WAVEFORM_NEEDS } from './loads/vocabulary.ts'
export { newSizes, surgeMultipleOf } from './range/advice/new-sizes.ts'
export { unitsToDrop } from './range/advice/units-to-drop.ts'
export { UNMET_CAUSES, type UnmetRequest, unmetRequestOf } from './range/advice/unmet.ts'
export type { CartAnswer, CartFinding } from './range/cart-check/cart.ts'
export { checkCart } from './range/cart-check/cart-check.ts'
export { type CoverageChanges, compareCoverage } from './range/coverage/compare.ts'
export { coverageSteps } from './range/coverage/coverage.ts'
export type { Coverage, CoverageAnswer, CoverageOptions } from './range/coverage/coverage-types.ts'
export type { EverydayPlan } from './range/coverage/everyday-plans.ts'
export { failingCodes, nearMissOf } from './range/coverage/nearest.ts'
export type { Kit, KitLine } from './range/kit/kit-types.ts'
export { type PreparedRange, prepareRange } from './range/prepare-range.ts'
export type { Inverter, PartBase, RangeDocument } from './range/range-document.ts'
export {
  BATTERY_CHEMISTRIES,
  CONNECTION_KINDS,
  FUSE_STYLES,
  INVERTER_FEATURES,
  INVERTER_WAVEFORMS,
  SUPPLY_VOLTAGES,
} from './range/vocabulary.ts'
export { type RuntimeFault, runtimeFor } from './runtime.ts'
export {
  fitFor,
  kitOf,
  OUTCOMES,
  type Outcome,
  type Plan,
  planFor,
  type Sizing,
  sizeFor,
  type UnitFit,
} from './sizing.ts'
export { sizingWorking } from './sizing-working.ts'
export { BUILT_IN_APPLIANCES } from './tables/appliances/index.ts'
export { SOURCES, type SourceId } from './tables/sources.ts'
export type { WorkingStep } from './working.ts'
