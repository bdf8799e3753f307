import { CAUTION_CODES } from '../../core/advice/cautions.ts'
import { FINDING_CODES } from '../../core/advice/finding-codes.ts'
import { ASSUMABLE_FIGURES, type FindingCode, type FindingValues } from '../../core/advice/findings.ts'
import { KIT_ROLES, WHAT_IF_KINDS, type WhatIfKind } from '../../core/advice/vocabulary.ts'
import type { WhatIfValues } from '../../core/inverters/what-ifs/what-if.ts'
import { RATING_NOTES, RATING_REFUSALS, type RatingNoteCode } from '../../core/loads/rate-load.ts'
import { APPLIANCE_CATEGORIES } from '../../core/loads/vocabulary.ts'
import {
  KIT_NOTES,
  KIT_REASONS,
  type KitNoteCode,
  type KitNoteValues,
  type KitReasonCode,
  type KitReasonValues,
  type KitSpecification,
} from '../../core/range/kit/kit-types.ts'
import { BATTERY_CHEMISTRIES, CONNECTION_KINDS, INVERTER_FEATURES } from '../../core/range/vocabulary.ts'
import type { PlanFault } from '../../core/sizing.ts'
import {
  STEP_CODES,
  WORKING_CHOICES,
  WORKING_FIGURES,
  WORKING_FLAGS,
  WORKING_TEXTS,
  WORKING_WORDS,
} from '../../core/working.ts'
import type { Catalogue, RatingNoteValues, WhatIfTold } from '../../shared/messages/catalogue.ts'
import { type Formats, formatsFor } from '../../shared/messages/formats.ts'

/** A large number, one with a decimal, a fraction: what languages write differently. */
const LARGE = 12_345.6
const SMALL = 12.5
const FRACTION = 0.125
const SKU = 'PART-A'
const OTHER = 'PART-B'

const either = [SKU, undefined] as const
const withSku = <T extends object>(values: T) => either.map((useSku) => ({ ...values, sku: SKU, useSku }))

/** Values of every finding, each branch of its sentence among them. */
const FINDINGS: { readonly [C in FindingCode]: readonly FindingValues[C][] } = {
  'continuous-power-short': [
    { runningW: LARGE, requiredContinuousW: LARGE, continuousW: SMALL, headroomFraction: FRACTION },
  ],
  'apparent-power-short': [{ runningVA: LARGE, continuousVA: SMALL }],
  'starting-power-short': [{ startingW: LARGE, surgeW: SMALL }],
  'surge-time-short': [{ startingW: LARGE, startingS: SMALL, surgeS: 3, continuousW: LARGE }],
  'wave-form-unsuitable': [{}],
  'wave-form-care': [{}],
  'output-voltage-mismatch': [{ outputV: 120, mainsV: 230 }],
  'output-frequency-mismatch': [{ outputHz: 60, mainsHz: 50 }],
  'input-voltage-mismatch': [{ inputNominalV: 24, supplyNominalV: 12 }],
  'connection-limit': CONNECTION_KINDS.map((kind) => ({
    kind,
    limitA: SMALL,
    currentA: SMALL,
    limitW: LARGE,
    runningW: LARGE,
  })),
  'connection-below-full-power': CONNECTION_KINDS.map((kind) => ({
    kind,
    limitA: SMALL,
    limitW: LARGE,
    continuousW: LARGE,
  })),
  'outlets-short': [
    { outlets: 2, needed: 3 },
    { outlets: 1, needed: 2 },
  ],
  'feature-missing': INVERTER_FEATURES.map((feature) => ({ features: [feature] })),
  'out-of-stock': [{}],
  'over-price': [{ price: '1234.50', maxPrice: '99.00', currency: 'EUR' }],
  'not-advised': APPLIANCE_CATEGORIES.map((category) => ({ categories: [category] })),
  'figure-assumed': ASSUMABLE_FIGURES.map((figure) => ({ figure, value: SMALL })),
  'rating-estimated': [{ sizingW: LARGE }],
  'rating-read': [{ note: 'shaft-power-assumed', shaftW: LARGE }],
  'minutes-assumed': [{ minutesPerDay: SMALL }],
  'start-assumed-none': [{}],
  'restart-together': [
    { startingW: LARGE, count: 3 },
    { startingW: LARGE, count: 2 },
  ],
  'inrush-not-sized': [{}],
  'supply-voltage-assumed': [{ nominalV: 12 }],
  'cable-length-assumed': [{ lengthM: SMALL }],
  'own-leads-too-thin': either.map((needed) => ({ ampacityA: SMALL, neededA: LARGE, needed })),
  'own-leads-drop': [{ dropFraction: FRACTION, limitFraction: 0.03 }],
  'own-leads-too-short': [{ leadsM: 1, routeM: SMALL }],
  'no-standard-conductor': [{ worstCaseA: LARGE }],
  'no-standard-fuse': [{ worstCaseA: LARGE }],
  'no-safe-fuse': [
    { minA: SMALL, maxA: 10, reason: 'cable-too-thin' as FindingValues['no-safe-fuse']['reason'] },
  ],
  'socket-fuse-stays': [{}],
  'discharge-limit-running': [true, false].map((limitAssumed) => ({
    currentA: LARGE,
    limitA: SMALL,
    limitAssumed,
  })),
  'discharge-limit-starting': [true, false].map((limitAssumed) => ({
    currentA: LARGE,
    limitA: SMALL,
    limitAssumed,
  })),
  'cut-off-while-running': [
    { inverterV: 0, cutOffV: SMALL },
    { inverterV: 9, cutOffV: SMALL },
  ],
  'cut-off-while-starting': [
    { inverterV: 0, cutOffV: SMALL },
    { inverterV: 9, cutOffV: SMALL },
  ],
  'voltage-sag': [{ sagFraction: FRACTION, sagLimitFraction: 0.1 }],
  'day-not-carried': [{ neededCapacityAh: LARGE, capacityAh: SMALL, atH: SMALL }],
  'occasional-use': [{ minutes: SMALL, continuousMinutes: 45 }],
  'runs-too-long': [undefined, LARGE].map((neededCapacityAh) => ({
    minutes: LARGE,
    continuousMinutes: SMALL,
    neededCapacityAh,
  })),
  'under-20-minutes': [{}],
  'nothing-usable': [{}],
  'heavier-than-advised': [{}],
  'longer-than-a-year': [{}],
  'self-discharge-not-counted': [{}],
  'gel-figures-unverified': [{}],
  'cold-lithium-charge': [{}],
  'charge-temperature-outside-range': [{}],
  'battery-figure-assumed': (
    [
      'minSocFraction',
      'internalResistanceOhm',
      'maxDischargeA',
      'shortRateCapacity',
      'cellsInSeries',
    ] as const
  ).map((field) => ({ field, value: SMALL })),
  'inverter-off-between': [{ hoursOn: SMALL }],
  'inverter-missing': either.map((useSku) => ({ useSku })),
  'unit-voltage-mismatch': withSku({ inputNominalV: 24, supplyNominalV: 12 }),
  'battery-string-mismatch': withSku({ quantity: 3, blockV: 12, wantedV: 24 }),
  'unlike-batteries': [{ sku: SKU, otherSku: OTHER }],
  'too-many-strings': withSku({ strings: 6, mostStrings: 4 }),
  'battery-missing': [{ sku: SKU }],
  'battery-below-full-power': [true, false].map((limitAssumed) => ({
    sku: SKU,
    currentA: LARGE,
    limitA: SMALL,
    limitAssumed,
  })),
  'cut-off-below-battery': [{ sku: SKU, cutOffV: SMALL, lowestV: 11 }],
  'cut-off-above-battery': [{ sku: SKU, cutOffV: SMALL, restingV: 13 }],
  'cable-missing': withSku({ neededA: LARGE }),
  'cable-too-thin': withSku({ ampacityA: SMALL, neededA: LARGE }),
  'cable-drop': withSku({ dropFraction: FRACTION, limitFraction: 0.03 }),
  'cable-too-short': withSku({ lengthM: 1, routeM: SMALL }),
  'fuse-missing': withSku({ minA: SMALL, maxA: 40 }),
  'fuse-too-small': withSku({ ratingA: 10, minA: SMALL }),
  'fuse-too-large': withSku({ ratingA: 50, maxA: SMALL }),
  'fuse-voltage-short': withSku({ voltageV: SMALL, requiredVoltageV: 16 }),
  'fuse-breaking-short': withSku({ breakingCapacityA: SMALL, requiredBreakingCapacityA: LARGE }),
  'connector-missing': CONNECTION_KINDS.flatMap((kind) => withSku({ kind, neededA: LARGE })),
  'connector-under-rated': withSku({ limitA: SMALL, neededA: LARGE }),
  'owned-unchecked': KIT_ROLES.map((role) => ({ role })),
  'part-left-over': [{ sku: SKU }],
}

const NOTES: { readonly [C in RatingNoteCode]: RatingNoteValues } = {
  'power-factor-assumed': { powerFactor: 0.65 },
  'power-factor-assumed-one': { apparentVA: LARGE },
  'volts-differ-from-mains': { volts: 120, mainsV: 230 },
  'cooking-power-converted': { cookingW: 700, inputW: LARGE },
  'shaft-power-converted': { shaftW: 746, inputW: LARGE },
  'cooling-capacity-converted': { btuPerHour: LARGE, inputW: 889, eer: SMALL },
  'efficiency-assumed': { eer: SMALL },
  'range-high-used': {},
  'largest-of-several': { count: 3, largestW: LARGE },
  'separator-read-as-thousands': { read: LARGE },
  'letters-read-as-digits': { read: LARGE },
  'count-multiplied': { count: 3, each: SMALL },
  'wide-range-current': { highVA: LARGE },
  'mains-voltage-assumed': { apparentVA: LARGE },
  'volt-amperes-not-used': { watts: LARGE, voltAmperes: LARGE },
  'watts-not-used': { watts: LARGE },
  'cooking-power-assumed': { cookingW: LARGE },
  'input-below-output': { inputW: SMALL, outputW: LARGE },
  'shaft-power-assumed': { shaftW: LARGE },
}

const SIZES = { size: '35 mm²', otherSize: '50 mm²' }

const KIT_NOTE_VALUES: { readonly [C in KitNoteCode]: KitNoteValues[C] } = {
  'hotter-insulation': { ...SIZES, insulationC: 105, otherInsulationC: 75 },
  'cooler-insulation': { ...SIZES, insulationC: 60, otherInsulationC: 75 },
  'next-size-we-have': SIZES,
  'does-too': SIZES,
  'smaller-fuse': { ...SIZES, ratingA: 160, otherRatingA: 175 },
  'for-this-kit': SIZES,
}

const REASONS: { readonly [C in KitReasonCode]: readonly KitReasonValues[C][] } = {
  'smallest-that-fits': [{ requiredContinuousW: LARGE, continuousW: LARGE }],
  'unit-asked-for': [{ requiredContinuousW: LARGE, continuousW: LARGE }],
  'carries-full-power': [{ worstCaseA: SMALL, ampacityA: LARGE, dropFraction: FRACTION, lengthM: SMALL }],
  'protects-cable': [{ minA: SMALL, maxA: LARGE }],
  'joins-unit': [{ connectorA: SMALL }],
  'lasts-plan': [1, 3].map((days) => ({ neededCapacityAh: LARGE, capacityAh: SMALL, days })),
  'in-the-box': [{}],
  'yours-does': [{}],
  'yours-unchecked': [{}],
  'box-unsuitable': [{}],
  'yours-unsuitable': [{}],
  'none-in-range': [{}],
  'your-battery-too-small': [{ neededCapacityAh: LARGE, capacityAh: SMALL }],
  'vehicle-battery-too-small': [{}],
}

type Specifications = {
  readonly [R in KitSpecification['role']]: readonly Extract<KitSpecification, { readonly role: R }>[]
}

const SPECIFICATIONS: Specifications = {
  inverter: (['pure-sine', 'modified-sine'] as const).map((waveform) => ({
    role: 'inverter',
    continuousW: LARGE,
    inputNominalV: 12,
    waveform,
  })),
  cable: [1, 2].flatMap((pairs) =>
    [undefined, 'AWG X'].map((standard) => ({
      role: 'cable',
      carriesA: LARGE,
      lengthM: SMALL,
      dropLimitFraction: FRACTION,
      pairs,
      standard,
    })),
  ),
  fuse: [{ role: 'fuse', minA: SMALL, maxA: 40, voltageV: 32, breakingCapacityA: LARGE }],
  connector: CONNECTION_KINDS.map((kind) => ({ role: 'connector', kind, limitA: SMALL })),
  battery: BATTERY_CHEMISTRIES.flatMap((chemistry) =>
    [
      { inSeries: undefined, inParallel: undefined },
      { inSeries: 2, inParallel: 1 },
      { inSeries: 1, inParallel: 2 },
      { inSeries: 2, inParallel: 3 },
    ].map((joined) => ({ role: 'battery', chemistry, nominalV: 24, capacityAh: LARGE, ...joined })),
  ),
}

const WHAT_IFS: { readonly [K in WhatIfKind]: readonly WhatIfValues[K][] } = {
  'take-turns': [{}],
  'lower-rating': [{ limitW: LARGE, ratedW: LARGE }],
  'leave-out': [{}],
  'other-connection': CONNECTION_KINDS.map((connection) => ({ connection })),
  'shorter-cable': [{ oneWayLengthM: SMALL }],
  'larger-wire': [undefined, 'AWG X'].map((cable) => ({ cable })),
  'higher-voltage': [{ nominalV: 24 }],
  'pure-sine': [{}],
  'larger-battery': [{ capacityAh: LARGE }],
  'other-chemistry': BATTERY_CHEMISTRIES.map((chemistry) => ({ chemistry })),
  'two-units': [{}],
  'soft-start': [{ limitW: LARGE, startingW: LARGE }],
  combined: [
    {
      steps: [
        { kind: 'take-turns', loadIds: ['a', 'b'], values: {} },
        { kind: 'higher-voltage', loadIds: [], values: { nominalV: 48 } },
      ],
    },
    {
      steps: [
        { kind: 'leave-out', loadIds: ['a'], values: {} },
        { kind: 'larger-battery', loadIds: [], values: { capacityAh: LARGE } },
      ],
    },
  ],
}

const GAINS = [
  { price: '99.00', priceDifference: undefined, runtimeHours: SMALL, care: true },
  { price: '99.00', priceDifference: '1234.50', runtimeHours: undefined, care: false },
  { price: '99.00', priceDifference: '-1234.50', runtimeHours: undefined, care: false },
  { price: '99.00', priceDifference: '0.00', runtimeHours: undefined, care: false },
]

const FAULT_CODES = [
  'duplicate-load-id',
  'unknown-appliance',
  'nothing-stated',
  'rating-refused',
  'unknown-load-in-group',
  'load-in-two-groups',
] as const satisfies readonly PlanFault['code'][]

/**
 * Every sentence of a catalogue, written for sample values; one that reads a value which it is not given throws.
 *
 * @param catalogue - The language
 * @param locale - Whose numbers it is written with
 * @returns Sentences by a label that is the same in every language
 */
export function sentencesOf(catalogue: Catalogue, locale: string): ReadonlyMap<string, string> {
  const formats = formatsFor(locale)
  return new Map([
    ...FINDING_CODES.flatMap((code) => findingsOf(catalogue, code, formats)),
    ...CAUTION_CODES.map((code) => [`caution ${code}`, catalogue.cautions[code]] as const),
    ...RATING_NOTES.map(
      (code) => [`rating note ${code}`, catalogue.ratingNotes[code](strict(NOTES[code]), formats)] as const,
    ),
    ...RATING_REFUSALS.map((code) => [`refusal ${code}`, catalogue.refusals[code]] as const),
    ...STEP_CODES.map((code) => [`step ${code}`, catalogue.steps[code]] as const),
    ...workingOf(catalogue),
    ...KIT_REASONS.flatMap((code) => reasonsOf(catalogue, code, formats)),
    ...KIT_NOTES.flatMap((code) => notesOf(catalogue, code, formats)),
    ...KIT_ROLES.flatMap((role) => specificationsOf(catalogue, role, formats)),
    ...WHAT_IF_KINDS.flatMap((kind) => whatIfsOf(catalogue, kind, formats)),
    ...GAINS.map(
      (gain, index) =>
        [
          `what-if gain ${index}`,
          catalogue.whatIfGain(SKU, strict({ ...gain, currency: 'EUR' }), formats),
        ] as const,
    ),
    ...[undefined, SMALL].flatMap((cookingW) =>
      [true, false].map(
        (own) =>
          [
            `label limit ${cookingW} ${own}`,
            catalogue.labelLimit({ load: { name: SKU, own }, limitW: LARGE, cookingW }, formats),
          ] as const,
      ),
    ),
    ...FAULT_CODES.map(
      (code) => [`fault ${code}`, catalogue.faults[code]({ code, path: [], loadId: SKU })] as const,
    ),
    ['seen', catalogue.seen(SKU)],
    ['use instead', catalogue.useInstead(SKU)],
    ['inverter needed', catalogue.inverterNeeded],
    ['inverter too small', catalogue.inverterTooSmall(LARGE, SMALL, formats)],
    ['unknown unit', catalogue.unknownUnit(SKU)],
  ])
}

type Labelled = readonly (readonly [string, string])[]

function findingsOf<C extends FindingCode>(catalogue: Catalogue, code: C, formats: Formats): Labelled {
  const samples: readonly FindingValues[C][] = FINDINGS[code]
  return samples.map((values, index) => [
    `finding ${code} ${index}`,
    catalogue.findings[code](strict(values), formats, 'care'),
  ])
}

function reasonsOf<C extends KitReasonCode>(catalogue: Catalogue, code: C, formats: Formats): Labelled {
  const samples: readonly KitReasonValues[C][] = REASONS[code]
  return samples.map((values, index) => [
    `kit reason ${code} ${index}`,
    catalogue.kitReasons[code](strict(values), formats),
  ])
}

function workingOf({ working }: Catalogue): Labelled {
  const { names, words, sources, yes, no } = working
  return [
    ...WORKING_NAMES.map((name) => [`working name ${name}`, names[name]] as const),
    ...WORKING_WORDS.map((word) => [`working word ${word}`, words[word]] as const),
    ['working word yes', yes],
    ['working word no', no],
    ...Object.entries(sources)
      .map(([id, document]) => [`working source ${id}`, document] as const)
      .sort(),
  ]
}

const WORKING_NAMES = [...WORKING_FIGURES, ...WORKING_CHOICES, ...WORKING_FLAGS, ...WORKING_TEXTS]

function notesOf<C extends KitNoteCode>(catalogue: Catalogue, code: C, formats: Formats): Labelled {
  return [[`kit note ${code}`, catalogue.kitNotes[code](strict(KIT_NOTE_VALUES[code]), formats)]]
}

function specificationsOf<R extends KitSpecification['role']>(
  catalogue: Catalogue,
  role: R,
  formats: Formats,
): Labelled {
  return SPECIFICATIONS[role].map((specification, index) => [
    `kit specification ${role} ${index}`,
    catalogue.kitSpecifications[role](strict(specification), formats),
  ])
}

function whatIfsOf<K extends WhatIfKind>(catalogue: Catalogue, kind: K, formats: Formats): Labelled {
  const samples: readonly WhatIfValues[K][] = WHAT_IFS[kind]
  const units = kind === 'two-units' ? [SKU, OTHER] : [SKU]
  return samples.map((values, index) => {
    const told: WhatIfTold<K> = {
      loads: [
        { name: OTHER, own: true },
        { name: 'PART-C', own: false },
      ],
      units,
      values: strict(values),
    }
    return [`what-if ${kind} ${index}`, catalogue.whatIfs[kind](told, formats)]
  })
}

/** Values that may only be read by the names that they have. */
function strict<T extends object>(values: T): T {
  return new Proxy(values, {
    get(target, name) {
      if (!(name in target)) throw new Error(`There is no value "${String(name)}" here.`)
      return Reflect.get(target, name)
    },
  })
}
