import type { FindingCode } from '../../../../core/advice/findings.ts'

const count = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`
const list = (parts: readonly string[]) => new Intl.ListFormat('en', { type: 'conjunction' }).format(parts)
const number = (value: number) => new Intl.NumberFormat('en', { maximumFractionDigits: 1 }).format(value)
const watts = (value: number) => `${number(value)}\u00a0W`

/** Why a unit does not do, in a few words, for what a range's own figures can decide. */
const REASONS: Readonly<Partial<Record<FindingCode, string>>> = {
  'continuous-power-short': 'continuous power too small',
  'apparent-power-short': 'too few volt-amperes',
  'starting-power-short': 'surge too small',
  'surge-time-short': 'surge too short',
  'wave-form-unsuitable': 'needs a pure sine wave',
  'output-voltage-mismatch': 'other mains voltage',
  'output-frequency-mismatch': 'other mains frequency',
  'input-voltage-mismatch': 'other supply voltage',
  'connection-limit': 'connection carries too little',
  'outlets-short': 'too few outlets',
  'feature-missing': 'lacks a feature',
  'out-of-stock': 'out of stock',
  'over-price': 'over the price',
  'not-advised': 'not advised by the shop’s policy',
  'no-safe-fuse': 'no fuse is safe',
  'no-standard-fuse': 'no fuse is large enough',
  'no-standard-conductor': 'no cable is thick enough',
  'discharge-limit-running': 'battery gives too little current',
  'discharge-limit-starting': 'battery gives too little for the start',
  'cut-off-while-running': 'cuts off under load',
  'cut-off-while-starting': 'cuts off at the start',
}

const reasons = (codes: readonly FindingCode[]) =>
  codes.map((code) => REASONS[code] ?? code.replaceAll('-', ' ')).join(', ')

const few = (value: number | null) => (value === null ? 'one to four' : number(value))

const size = (of: { continuousW: number; surgeW: number; waveform: string; nominalV: number }) =>
  `${of.nominalV}\u00a0V, ${watts(of.continuousW)} continuous, ${watts(of.surgeW)} surge, ${en.values[of.waveform] ?? of.waveform}`

/** English: everything that the page itself says. Sentences of the service come in its own languages. */
export const en = {
  // The shell
  title: 'Tallywatt staff',
  signIn: 'Sign in',
  signInHeading: 'Staff of the shop',
  signInLead: 'The key stays in this page’s memory. Closing, reloading or signing out forgets it.',
  shopId: 'Shop id',
  key: 'Secret key',
  signOut: 'Sign out',
  signInFailed: 'No shop of that id lets this key in. Check both for slips.',
  keyEnded: 'The key is no longer valid. Your edits are kept: sign in with another key of this shop.',
  sections: {
    range: 'Range',
    history: 'History',
    coverage: 'Coverage',
    demand: 'Demand',
    desk: 'Phone desk',
  },
  menu: 'Sections',
  waiting: 'One moment …',
  leave: 'There are edits that are not in force.',
  offline: 'The service can’t be reached just now. Nothing is lost; try again.',
  problem: (title: string | undefined, detail: string | undefined) =>
    [title ?? 'The service gave no answer', detail].filter((part) => part !== undefined).join('. '),
  scopeMissing: (title: string, scope: string) => `${title}: it lacks the scope “${scope}”.`,
  // The range
  rangeHeading: 'Range',
  inForce: (version: number) => `Version ${version} is in force.`,
  edited: 'Your edits are not in force yet.',
  notEdited: 'The tables show it as it is.',
  listsLabel: 'Part lists',
  lists: {
    inverters: 'Inverters',
    batteries: 'Batteries',
    cables: 'Cables',
    fuses: 'Fuses',
    connectors: 'Connectors',
  },
  list: {
    inverters: 'Inverter',
    batteries: 'Battery',
    cables: 'Cable',
    fuses: 'Fuse',
    connectors: 'Connector',
  },
  tableOf: (name: string) => `Table of ${name.toLowerCase()}`,
  upload: (name: string) => `Replace ${name.toLowerCase()} from a CSV or JSON file`,
  download: 'Download as CSV',
  addPart: 'Add a part',
  show: 'Show',
  showOnly: { all: 'all rows', changes: 'edited rows', faults: 'rows with faults' },
  noRows: 'No row to show.',
  rowActions: 'Actions',
  remove: 'Remove',
  removeOf: (name: string) => `Remove ${name}`,
  removed: (name: string) => `${name} taken out.`,
  newRow: 'new',
  was: (text: string) => (text === '' ? 'was empty' : `was ${text}`),
  yes: 'yes',
  no: 'no',
  emptyCell: (about: string) => `This cell needs a value. ${about}`.trim(),
  rowsBefore: 'Rows before',
  rowsAfter: 'Rows after',
  pageOf: (page: number, pages: number) => `Page ${page} of ${pages}`,
  undo: 'Undo',
  undone: 'Last edit taken back.',
  discard: 'Drop all edits',
  discarded: 'The table shows the range in force.',
  check: 'Check and preview',
  publish: 'Publish',
  checkFirst: 'Check first: publishing opens when a check finds no fault and something has changed.',
  publishReady: 'No fault. Publishing puts this in force for shoppers at once.',
  checkedWell: 'No fault found. What changes is below the table.',
  published: (version: number) => `Published: version ${version} is in force.`,
  nothingToPublish: (version: number) => `Nothing differs from version ${version}; nothing was published.`,
  notAFile: 'This file is neither CSV nor a range or list of parts in JSON. The table is unchanged.',
  faultCount: (number: number) => count(number, 'fault', 'faults'),
  noneLeft: 'Every fault has been edited: check again',
  editedCell: 'edited, not checked yet',
  faultsLead: 'Nothing is in force yet. Each fault stands at its cell; mend them and check again.',
  faultPlace: (place: {
    readonly line: number | undefined
    readonly sku: string | undefined
    readonly column: string | undefined
    readonly list: string | undefined
  }) =>
    `${[
      place.line === undefined ? undefined : `line ${place.line}`,
      place.list,
      place.sku === '' ? 'no SKU' : place.sku,
      place.column,
    ]
      .filter((part) => part !== undefined)
      .join(', ')
      .replace(/^./, (letter) => letter.toUpperCase())}:`,
  conflictHeading: 'Somebody else has published in the meantime',
  theyChanged: 'What they changed',
  conflictChoice: 'Your edits are still here.',
  keepMine: 'Put my edits on top of theirs',
  dropMine: 'Drop my edits',
  editsKept: (collisions: number) =>
    collisions === 0
      ? 'Your edits stand on top of theirs. Check again.'
      : `Your edits stand on top of theirs; ${count(collisions, 'place', 'places')} you both changed. Check again.`,
  collisionsHeading: 'Both of you changed these; your text stands',
  collision: (sku: string, column: string | undefined) =>
    column === undefined ? `${sku}, the whole part` : `${sku}, ${column}`,
  changesHeading: 'What changes',
  noChanges: 'Nothing: the range says the same.',
  addedPart: (kind: string, sku: string, name: string) => `New ${kind.toLowerCase()}: ${sku}, ${name}.`,
  removedPart: (kind: string, sku: string, name: string) => `${kind} taken out: ${sku}, ${name}.`,
  changedPart: (sku: string, name: string) => `${sku}, ${name}:`,
  changedField: (field: string, from: string | null, to: string | null) =>
    `${field}: ${from ?? 'empty'} → ${to ?? 'empty'}`,
  reordered: (name: string) => `${name} stand in another order.`,
  shopChanged: (names: readonly string[]) => `The shop’s own part: ${list(names)}.`,
  effectHeading: 'What shoppers will notice',
  effectPlans: (changed: number, plans: number) =>
    `${changed} of ${plans} everyday plans change their answer.`,
  effectAppliances: (changed: number, plans: number) =>
    `${changed} of ${plans} appliances by themselves change theirs.`,
  nowNever: (skus: readonly string[]) => `No longer recommended for anything: ${list(skus)}.`,
  nowChosen: (skus: readonly string[]) => `Recommended from now on: ${list(skus)}.`,
  effectTable: 'Plans that change their answer',
  plan: 'Plan',
  supply: 'Supply',
  answerNow: 'Now',
  answerThen: 'Then',
  notServed: 'not served',
  outcomes: {
    fits: 'Fits',
    'fits-with-care': 'Fits with care',
    'none-fits': 'None fits',
    'not-advised': 'Not advised',
  },
  reasons,
  wattsOf: watts,
  volts: (value: number) => `${value}\u00a0V`,
  columns: {
    sku: 'SKU',
    name: 'Name',
    price: 'Price',
    inStock: 'In stock',
    url: 'Page',
    imageUrl: 'Picture',
    continuousW: 'Continuous, W',
    continuousVA: 'Continuous, VA',
    surgeW: 'Surge, W',
    surgeS: 'Surge, s',
    waveform: 'Wave form',
    inputNominalV: 'Battery, V',
    outputV: 'Output, V',
    outputHz: 'Output, Hz',
    efficiencyFullFraction: 'Efficiency at full load',
    efficiencyPeakFraction: 'Best efficiency',
    idleW: 'Idle, W',
    cutOffV: 'Cut-off, V',
    restartV: 'Restart, V',
    outlets: 'Outlets',
    features: 'Features',
    connectionKind: 'Connection',
    connection: 'Connection',
    connectionLimitA: 'Connection limit, A',
    includes: 'In the box',
    chemistry: 'Chemistry',
    nominalV: 'Nominal, V',
    capacityAh: 'Capacity, Ah',
    hourRateH: 'Hour rate, h',
    otherRates: 'Other rates',
    maxDischargeA: 'Most discharge, A',
    internalResistanceOhm: 'Internal resistance, ohm',
    areaMm2: 'Area, mm²',
    awg: 'AWG',
    lengthM: 'Length, m',
    insulationC: 'Insulation, °C',
    ratingA: 'Rating, A',
    style: 'Style',
    breakingCapacityA: 'Breaking capacity, A',
    voltageV: 'Voltage, V',
    kind: 'Kind',
    limitA: 'Limit, A',
  } as Readonly<Record<string, string>>,
  values: {
    'pure-sine': 'pure sine',
    'modified-sine': 'modified sine',
    'vehicle-socket': 'vehicle socket',
    'quick-connector': 'quick connector',
    'battery-terminals': 'battery terminals',
    flooded: 'flooded lead-acid',
    agm: 'AGM lead-acid',
    gel: 'gel lead-acid',
    lifepo4: 'LiFePO4 lithium',
    nmc: 'NMC lithium',
    blade: 'blade',
    'bolted-strip': 'bolted strip',
    'terminal-post': 'terminal post',
    'class-t': 'class T',
  } as Readonly<Record<string, string>>,
  // History
  historyHeading: 'History',
  version: 'Version',
  madeAt: 'Made',
  madeBy: 'By',
  madeHow: 'How',
  origins: {
    seed: 'came with the service',
    written: 'published',
    restored: 'restored',
    imported: 'imported',
    pulled: 'fetched',
  },
  fromVersion: (version: number) => `from version ${version}`,
  nowInForce: 'in force',
  look: (version: number) => `Look at ${version}`,
  lookHeading: (version: number) => `What going back to version ${version} changes`,
  restore: (version: number) => `Restore version ${version}`,
  restored: (old: number, version: number) => `Version ${old} is in force again, as version ${version}.`,
  restoreStale: (detail: string) => `Nothing was restored. ${detail} Look again before you restore.`,
  close: 'Close',
  older: 'Older versions',
  // Coverage
  coverageHeading: 'Coverage',
  coverageLead: 'What the range in force answers to everyday plans, at each supply voltage that it serves.',
  stock: 'Counting',
  stocks: { 'in-stock': 'parts in stock', all: 'all parts' },
  coverageOnly: { all: 'all plans', gaps: 'plans with a gap' },
  legend: 'Marks in the map',
  cellStates: {
    fits: 'Fits',
    'fits-with-care': 'With care',
    'over-twice': 'Over twice the need',
    'none-fits': 'None fits',
    'not-advised': 'Not advised',
  },
  planKinds: { combination: 'Everyday plans', appliance: 'Each appliance by itself' },
  served: (nominalV: number, served: number, of: number) =>
    `At ${nominalV}\u00a0V the range serves ${served} of ${of}.`,
  noGaps: 'No gap here.',
  unitFor: (sku: string, continuousW: number, needW: number) =>
    `${sku}, ${watts(continuousW)} for ${watts(Math.ceil(needW))}`,
  needsBut: (needW: number, codes: readonly FindingCode[]) =>
    [`needs ${watts(Math.ceil(needW))}`, ...(codes.length === 0 ? [] : [reasons(codes)])].join('; '),
  neverHeading: 'Never recommended',
  neverNone: 'Every unit is recommended for something.',
  fitsNothing: (codes: readonly FindingCode[]) =>
    codes.length === 0 ? 'fits no plan.' : `fits no plan: ${reasons(codes)}.`,
  shadowed: (fits: number, by: readonly { readonly sku: string; readonly plans: number }[]) =>
    `fits ${count(fits, 'plan', 'plans')}, and each time another does better: ${list(
      by.map(({ sku, plans }) => `${sku} (${plans})`),
    )}.`,
  overHeading: 'Over twice the need',
  overNone: 'No plan is given a unit over twice its need.',
  gap: (gap: {
    readonly nominalV: number
    readonly sku: string
    readonly continuousW: number
    readonly lowestNeedW: number
    readonly highestNeedW: number
    readonly codes: readonly FindingCode[]
  }) =>
    `At ${gap.nominalV}\u00a0V, ${gap.sku} with ${watts(gap.continuousW)} is the answer to needs of ${watts(Math.ceil(gap.lowestNeedW))}${
      gap.highestNeedW > gap.lowestNeedW ? ` to ${watts(Math.ceil(gap.highestNeedW))}` : ''
    }.${gap.codes.length === 0 ? ' There is no unit in between.' : ` Units in between do not do: ${reasons(gap.codes)}.`}`,
  kitsHeading: 'Kits with a part missing',
  kitsNone: 'Every unit has a fitting cable and fuse in the range.',
  kitMissing: (roles: readonly string[], batteries: number) =>
    `finds no fitting ${list(roles)}${batteries === 0 ? '.' : ` on ${count(batteries, 'battery', 'batteries')}.`}`,
  batteriesHeading: 'Batteries that empty early',
  batteriesNone: 'Every battery carries every plan that it was tried with for its time in a day.',
  batteryShort: (of: {
    readonly sku: string
    readonly nominalV: number
    readonly inSeries: number
    readonly plans: number
    readonly short: number
  }) =>
    `${of.sku}${of.inSeries === 1 ? '' : `, ${of.inSeries} in series,`} at ${of.nominalV}\u00a0V empties early in ${of.short} of ${count(of.plans, 'plan', 'plans')}.`,
  whichPlans: (number: number) => (number === 1 ? 'Which plan' : `Which ${number} plans`),
  whichBatteries: (number: number) => (number === 1 ? 'Which battery' : `Which ${number} batteries`),
  // Demand
  demandHeading: 'Demand',
  demandLead:
    'What shoppers asked for, counted by day in UTC. Nothing personal is kept; what was asked fewer than five times is told only together.',
  from: 'From',
  to: 'To',
  showPeriod: 'Show',
  notCounting: 'Counting is switched off in the shop’s own part of the range.',
  requestsInAll: (requests: number | null) =>
    requests === 0
      ? 'Nothing was asked in this time.'
      : `${few(requests)} ${requests === 1 ? 'request' : 'requests'} in this time.`.replace(/^./, (letter) =>
          letter.toUpperCase(),
        ),
  overTime: 'Over time',
  noRequests: 'Nothing to draw.',
  chartKeys: {
    fits: 'fits',
    'fits-with-care': 'fits with care',
    'none-fits': 'none fits',
    'not-advised': 'not advised',
    rest: 'fewer than five of a kind',
  },
  chartText: (days: number, bars: number, most: number) =>
    `Bars of requests by outcome, one for each ${days === 1 ? 'day' : `${days} days`}: ${bars} bars, the highest ${number(most)}. The table below has the numbers.`,
  asTable: 'As a table',
  day: 'Day',
  weekFrom: 'Days from',
  requests: 'Requests',
  atLeast: (requests: number, fewDays: number) =>
    fewDays === 0
      ? number(requests)
      : requests === 0 && fewDays === 1
        ? '1 to 4'
        : `${number(requests)}, and ${count(fewDays, 'day', 'days')} of 1 to 4`,
  underFive: 'under 5',
  what: 'What',
  counted: {
    outcomes: 'Outcomes',
    unmet: 'What nothing fits',
    codes: 'Why a unit does not do',
    appliances: 'Appliances',
    combinations: 'Asked together',
    units: 'Recommended units',
    voltages: 'Supply voltages',
  },
  calls: { sizing: 'The guide', fit: 'A unit’s own page' },
  unlisted: 'something not in the list',
  notStated: 'not stated',
  nothingTold: 'Nothing was asked five times.',
  moreRows: (number: number) => `${number} more`,
  others: (number: number) => `Beside these, ${number} in smaller counts.`,
  unmet: (of: {
    readonly nominalV: number
    readonly continuousW: number
    readonly surgeW: number
    readonly waveform: string
    readonly cause: string
  }) =>
    `${of.nominalV}\u00a0V, up to ${watts(of.continuousW)}, starting ${watts(of.surgeW)}${of.waveform === 'either' ? '' : ', pure sine'}: ${en.causes[of.cause] ?? of.cause}`,
  causes: {
    size: 'no unit is large enough',
    stock: 'out of stock',
    wishes: 'price or features',
    connection: 'the connection carries too little',
  } as Readonly<Record<string, string>>,
  adviceHeading: 'Advice to the buyer',
  adviceStock: 'What to take in',
  adviceDrop: 'What could go',
  nothingUnmet: 'No request failed for want of a size.',
  unmetBySize: (requests: number | null) =>
    `${few(requests)} requests failed for want of a size.`.replace(/^./, (letter) => letter.toUpperCase()),
  newSizes: (
    sizes: readonly {
      readonly nominalV: number
      readonly continuousW: number
      readonly surgeW: number
      readonly waveform: string
      readonly served: number
    }[],
    served: number,
    unmet: number | null,
  ) =>
    `${count(sizes.length, 'new size', 'new sizes')} would serve ${number(served)}${unmet === null ? '' : ` of them`}: ${sizes
      .map((each) => `${size(each)} (${number(each.served)})`)
      .join('; ')}.`,
  surgeTaken: (multiple: number) =>
    `A new unit is taken to surge to ${number(multiple)} times its continuous power, the most that the range’s own do.`,
  drop: (skus: readonly string[], lost: number | null, moved: number | null) =>
    `Without ${list(skus)}, ${lost === 0 ? 'no request' : `${few(lost)} of the requests`} would go unserved and ${
      moved === 0 ? 'none' : few(moved)
    } would be answered with another unit.`,
  dropCare:
    'Only units in stock are looked at. One that came during this time has had less time to be asked for.',
  methodHeading: 'How this is worked out',
  method: (name: 'exact' | 'greedy', guarantee: number | null, source: string) =>
    name === 'exact'
      ? `The best choice there is, found exactly. Source: ${source}.`
      : `Chosen one after the other, the best first${
          guarantee === null ? '' : `; certain to reach ${Math.round(guarantee * 100)}% of the best choice`
        }. Source: ${source}.`,
  // Phone desk
  deskHeading: 'Phone desk',
  deskLead:
    'Type a thing, Enter adds it; go on typing. Ctrl and Enter goes to the answer. A call counts as demand like any shopper’s.',
  whatHeading: 'What will run, and when',
  thingLabel: 'Add a thing',
  thingHint: 'A count may stand before it and watts behind it: “2 led lamp”, “microwave 800 w”.',
  hitsLabel: 'Found',
  noHits: 'Nothing by that name. With watts behind it, Enter adds it as it is.',
  needsWatts: 'Nothing by that name: put its watts behind it.',
  addedThing: (name: string) => `${name} added.`,
  nothingYet: 'Nothing on the list yet.',
  upTo: (value: number) => `up to ${watts(value)}`,
  howMany: 'How many',
  watts: 'Watts',
  cookingWatts: 'Cooking watts',
  ask: 'ask',
  minutesPerDay: 'Minutes a day',
  turns: 'Runs',
  withTheRest: 'with the rest',
  turnGroup: (group: number) => `in turns, group ${group}`,
  supplyHeading: 'What feeds it',
  notSure: 'not sure',
  voltage: 'Voltage',
  battery: 'Battery',
  hasBattery: 'has one',
  needsBattery: 'needs one',
  chemistry: 'Kind',
  capacity: 'Capacity, Ah',
  connection: 'Connects at',
  cableLength: 'Cable one way, m',
  answerHeading: 'Read this out',
  noAnswerYet: 'The answer stands here as soon as there is a thing on the list.',
  asking: 'Working it out …',
  answerReady: (outcome: string) => `Answer ready: ${outcome.toLowerCase()}.`,
  copyLink: 'Copy the caller’s link',
  copyWords: 'Copy the words',
  nextCaller: 'Next caller',
  linkLabel: 'Link for the caller',
  linkCopied: 'The link is in the clipboard.',
  wordsCopied: 'The words are in the clipboard.',
  copyByHand: 'The browser keeps the clipboard to itself; the link is marked, copy it by hand.',
  whatIfs: 'Other ways',
  sayAlso: 'Say this too',
  severities: { danger: 'Danger.', warning: 'Warning.', caution: 'Caution.' },
  // What is read out
  spokenWatts: (value: number) => `${number(Math.round(value))} watts`,
  thing: (name: string, quantity: number, isListed: boolean) =>
    `${isListed ? 'the ' : ''}${name}${quantity === 1 ? '' : ` times ${quantity}`}`,
  sayUnit: (things: string, unit: string, price: string) =>
    `To run ${things}, you need our ${unit}, at ${price}.`,
  sayWhy: (of: {
    readonly running: string
    readonly free: string
    readonly required: string
    readonly unit: string
  }) =>
    `At most ${of.running} run at the same time; with ${of.free} kept free that takes ${of.required}, and this one gives ${of.unit}.`,
  sayStart: (starting: string, surge: string) =>
    `When things start, it takes ${starting} for a moment; this one gives ${surge}.`,
  sayCable: (of: {
    readonly pairs: number
    readonly label: string
    readonly insulation: string
    readonly length: string
    readonly fuse: string | undefined
  }) =>
    `Between battery and inverter it takes ${of.pairs === 1 ? '' : `${of.pairs} pairs of `}${of.label} copper cable with ${of.insulation} °C insulation for ${of.length} one way${
      of.fuse === undefined ? '' : `, and a ${of.fuse} amp fuse close to the battery’s plus terminal`
    }.`,
  sayTotal: (total: string) => `With what belongs to it from our range, that comes to ${total}.`,
  sayRuntime: (of: { readonly about: string; readonly low: string; readonly high: string }) =>
    `With everything on, the battery lasts about ${of.about}, somewhere between ${of.low} and ${of.high}.`,
  underAMinute: 'under a minute',
  sayBank: (capacity: string, nominalV: number) =>
    `For a day’s use, the battery should have about ${capacity} amp-hours at ${nominalV} volts.`,
  sayNone: (things: string, required: string) =>
    `None of our inverters runs ${things}: that takes ${required} or more.`,
  sayNotAdvised: (things: string) => `We do not advise running ${things} from an inverter.`,
  sayEstimated: (names: string) =>
    `The power of ${names} is our estimate; what stands on its rating plate counts.`,
  linkOffer: 'I can send you a link with all of this.',
}

/** The shape that every language keeps. */
export type Words = typeof en

/** Languages of the page. */
const LANGUAGES: Readonly<Record<string, Words>> = { en }

/**
 * The page's words.
 *
 * @param language - BCP 47 tag of the reader
 * @returns The nearest language that there is, and its tag
 */
export function wordsFor(language: string): { readonly tag: string; readonly words: Words } {
  const tag = language.toLowerCase().split('-')[0] ?? 'en'
  const words = LANGUAGES[tag]
  return words === undefined ? { tag: 'en', words: en } : { tag, words }
}
