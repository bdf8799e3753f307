import type { RunLimit } from '../battery/discharge.ts'
import type { GoverningLimit } from '../wiring/circuit-types.ts'

/** What made a conductor the size it is. */
export const CIRCUIT_LIMITS = [
  'ampacity',
  'voltage-drop',
  'fuse',
  'own-leads',
] as const satisfies readonly GoverningLimit[]

/** What ends a discharge. */
export const RUNTIME_LIMITS = [
  'state-of-charge',
  'cut-off-voltage',
  'discharge-limit',
] as const satisfies readonly RunLimit[]

/** Parts of a kit. */
export const KIT_ROLES = ['inverter', 'cable', 'fuse', 'connector', 'battery'] as const
export type KitRole = (typeof KIT_ROLES)[number]

/** Whether a part is to be bought here, comes in a box, is the buyer's already, or is not in the range. */
export const KIT_STATES = ['buy', 'included', 'owned', 'not-in-range'] as const
export type KitState = (typeof KIT_STATES)[number]

/** Changes of a plan. */
export const WHAT_IF_KINDS = [
  'take-turns',
  'lower-rating',
  'leave-out',
  'other-connection',
  'shorter-cable',
  'larger-wire',
  'higher-voltage',
  'pure-sine',
  'larger-battery',
  'other-chemistry',
  'two-units',
  'soft-start',
  'combined',
] as const
export type WhatIfKind = (typeof WHAT_IF_KINDS)[number]
