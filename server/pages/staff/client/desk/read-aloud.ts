import type { SizingAnswer } from '../../../../../shared/contract/answers.ts'
import type { Formats } from '../from-widget.ts'
import type { Words } from '../words.ts'

/** What is read out is made from. */
export interface Spoken {
  readonly answer: SizingAnswer
  readonly words: Words
  readonly formats: Formats
  /** Share of the unit's power that the shop keeps free. */
  readonly headroomFraction: number
}

/**
 * The answer as one paragraph to read to a caller: the unit, why, what goes with it, how long it runs, what was
 * assumed, and what can hurt.
 *
 * @param spoken - The answer and the language
 * @returns Whole sentences, without line breaks
 */
export function readAloud(spoken: Spoken): string {
  const { answer, words } = spoken
  const main =
    answer.outcome === 'not-advised'
      ? notAdvised(spoken)
      : answer.recommended === null
        ? noneFits(spoken)
        : recommended(spoken)
  const dangers = answer.cautions.filter(
    ({ severity, code }) => severity === 'danger' || code === 'local-rules',
  )
  return [...main, ...assumed(spoken), ...dangers.map(({ message }) => message), words.linkOffer]
    .map(asSentence)
    .filter((sentence) => sentence !== '')
    .join(' ')
}

function asSentence(text: string): string {
  const bare = text.replace(/\s+/g, ' ').trim()
  return bare === '' || /[.!?…]$/.test(bare) ? bare : `${bare}.`
}

/** The things of a plan, as one says them. */
function things({ answer, words, formats }: Spoken): string {
  return formats.list(
    answer.demand.loads.map(({ name, appliance, quantity }) =>
      words.thing(lowered(name ?? words.unlisted), quantity, appliance !== undefined),
    ),
  )
}

/** A name inside a sentence: "Microwave oven" without its capital, "LED lamp" with it. */
function lowered(name: string): string {
  return /^\p{Lu}\p{Ll}/u.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name
}

function recommended(spoken: Spoken): readonly string[] {
  const { answer, words, formats, headroomFraction } = spoken
  const { recommended: unit, demand, circuit, runtime, bank, kitTotal } = answer
  if (unit === null) return []
  const starts = demand.startingW > demand.runningW
  return [
    words.sayUnit(things(spoken), unit.name, formats.money(unit.price, unit.currency)),
    words.sayWhy({
      running: words.spokenWatts(demand.runningW),
      free: formats.percent(headroomFraction),
      required: words.spokenWatts(demand.requiredContinuousW),
      unit: words.spokenWatts(unit.continuousW),
    }),
    starts ? words.sayStart(words.spokenWatts(demand.startingW), words.spokenWatts(unit.surgeW)) : '',
    ...unit.findings.filter(({ severity }) => severity === 'care').map(({ message }) => message),
    circuit === null || circuit.connection.kind === 'vehicle-socket'
      ? ''
      : words.sayCable({
          pairs: circuit.conductor.parallelPairs,
          label: circuit.conductor.label,
          insulation: formats.number(circuit.conductor.insulationC),
          length: formats.length(circuit.oneWayLengthM),
          fuse: circuit.fuse === null ? undefined : formats.number(circuit.fuse.ratingA, 0),
        }),
    kitTotal === null || kitTotal.amount === unit.price
      ? ''
      : words.sayTotal(formats.money(kitTotal.amount, kitTotal.currency)),
    runtime !== null
      ? words.sayRuntime({
          about: formats.duration(runtime.hours * 60),
          low: runtime.hoursLow * 60 < 1 ? words.underAMinute : formats.duration(runtime.hoursLow * 60),
          high: formats.duration(runtime.hoursHigh * 60),
        })
      : bank === null
        ? ''
        : words.sayBank(formats.number(bank.neededCapacityAh, 0), bank.nominalV),
    ...(runtime?.findings ?? [])
      .filter(({ severity }) => severity !== 'note')
      .slice(0, 2)
      .map(({ message }) => message),
  ]
}

function noneFits(spoken: Spoken): readonly string[] {
  const { answer, words } = spoken
  return [
    words.sayNone(things(spoken), words.spokenWatts(answer.demand.requiredContinuousW)),
    ...nearestReasons(answer),
    ...answer.whatIfs.slice(0, 2).map(({ message }) => message),
  ]
}

/** Why the unit that comes nearest doesn't do: the one with the fewest faults, the largest of those. */
function nearestReasons({ considered }: SizingAnswer): readonly string[] {
  const failing = considered.map(({ continuousW, findings }) => ({
    continuousW,
    messages: findings.filter(({ severity }) => severity === 'fail').map(({ message }) => message),
  }))
  const [nearest] = failing.sort(
    (a, b) => a.messages.length - b.messages.length || b.continuousW - a.continuousW,
  )
  return nearest?.messages.slice(0, 2) ?? []
}

function notAdvised(spoken: Spoken): readonly string[] {
  const { answer, words } = spoken
  const reason = answer.considered
    .flatMap(({ findings }) => findings)
    .find(({ code }) => code === 'not-advised')?.message
  return [words.sayNotAdvised(things(spoken)), reason ?? '']
}

function assumed({ answer, words, formats }: Spoken): readonly string[] {
  const estimated = answer.demand.loads
    .filter((load) => load.estimated)
    .map(({ name, appliance }) => words.thing(lowered(name ?? words.unlisted), 1, appliance !== undefined))
  const supply = answer.assumptions.filter(
    ({ code }) => code === 'supply-voltage-assumed' || code === 'cable-length-assumed',
  )
  return [
    estimated.length === 0 ? '' : words.sayEstimated(formats.list(estimated)),
    ...supply.map(({ message }) => message),
  ]
}
