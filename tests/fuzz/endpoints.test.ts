import * as fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openApiDocument } from '../../server/openapi/document.ts'
import { operationsOf } from './operations.ts'
import { soundRanges } from './ranges.ts'
import { type Grade, requestsTo } from './requests.ts'
import { schemasOf } from './schema.ts'
import { send } from './send.ts'
import { BYSTANDERS, FUZZED_SHOP, type FuzzService, openFuzzService } from './service.ts'
import { verdictOn } from './verdict.ts'

/** Requests in all; FUZZ_RUNS asks for more of them than `npm test` has time for. */
const RUNS = Number(process.env.FUZZ_RUNS ?? 5000)
/** Requests to one service before it is opened anew on an empty store. */
const RUNS_PER_SERVICE = 1000
/** Requests before another range is put in force in the shop that they may write to. */
const RUNS_PER_RANGE = 25

const document = openApiDocument()
const schemas = schemasOf(document)
const operations = operationsOf(document)
/** Ranges that shops may have and hardly ever will. */
const ranges = fc.sample(soundRanges(schemas, FUZZED_SHOP), Math.min(200, Math.ceil(RUNS / RUNS_PER_RANGE)))

/** Shares of the runs: what takes most from its caller gets most, what takes nothing but a path least. */
const GRADES: readonly (readonly [Grade, number])[] = [
  ['valid', 0.3],
  ['near-valid', 0.45],
  ['broken', 0.25],
]
const WEIGHTS = operations.map((operation) =>
  weightOf(Object.keys(operation.bodies).length, operation.parameters.length),
)
const WEIGHT = WEIGHTS.reduce((sum, weight) => sum + weight, 0)

function weightOf(bodies: number, parameters: number): number {
  return bodies > 0 ? 10 : parameters > 0 ? 4 : 1
}

const counts = new Map<string, Map<string, number>>()
function count(operation: string, grade: Grade, status: number): void {
  const row = counts.get(operation) ?? new Map<string, number>()
  counts.set(operation, row)
  for (const name of [grade, String(status)]) row.set(name, (row.get(name) ?? 0) + 1)
}

let service: FuzzService
let sent = 0
let total = 0
async function renewed(): Promise<FuzzService> {
  if (sent >= RUNS_PER_SERVICE) {
    await expectBystandersUnharmed()
    await service.close()
    service = await openFuzzService()
    sent = 0
  }
  if (sent % RUNS_PER_RANGE === 0) {
    const range = ranges[Math.floor(total / RUNS_PER_RANGE) % ranges.length]
    if (range !== undefined) await service.putInForce(range)
  }
  sent += 1
  total += 1
  return service
}

const PLAN = { loads: [{ id: 'kettle', appliance: 'electric-kettle' }] }

let before: readonly string[] = []
async function answersOfBystanders(): Promise<readonly string[]> {
  const answers: string[] = []
  for (const shop of BYSTANDERS) {
    const url = `/v1/shops/${shop}/sizing`
    const reply = await service.app.inject({ method: 'POST', url, payload: PLAN })
    answers.push(`${reply.statusCode} ${reply.body}`)
  }
  return answers
}

async function expectBystandersUnharmed(): Promise<void> {
  expect(await answersOfBystanders()).toEqual(before)
  expect(service.loggedErrors.splice(0).map((line) => line.slice(0, 500))).toEqual([])
}

beforeAll(async () => {
  service = await openFuzzService()
  before = await answersOfBystanders()
  for (const answer of before) expect(answer).toMatch(/^200 /)
})
afterAll(() => service.close())

/** Writes down what came back for an operation, where more was asked for than `npm test` does. */
function report(operation: string): void {
  if (process.env.FUZZ_RUNS === undefined) return
  const row = [...(counts.get(operation) ?? [])].sort(([a], [b]) => (a < b ? -1 : 1))
  console.log(`${operation.padEnd(20)} ${row.map(([name, number]) => `${name}: ${number}`).join(', ')}`)
}

describe('the document that requests are made from', () => {
  it('is the one that the service serves', async () => {
    expect((await service.app.inject('/openapi.json')).json()).toEqual(JSON.parse(JSON.stringify(document)))
  })
})

describe.each(operations.map((operation, at) => ({ operation, weight: WEIGHTS[at] ?? 1 })))(
  'requests to $operation.id',
  ({ operation, weight }) => {
    afterAll(() => report(operation.id))

    it.each(GRADES)(
      'that are %s get a reply on contract',
      async (grade, share) => {
        const numRuns = Math.ceil((RUNS * share * weight) / WEIGHT)
        await fc.assert(
          fc.asyncProperty(requestsTo(schemas, operation, grade), async (request) => {
            const reply = await send(await renewed(), request)
            count(operation.id, grade, reply.statusCode)
            const fault = verdictOn({ schemas, operation }, request, reply)
            if (fault !== undefined) throw new Error(fault)
          }),
          { numRuns, interruptAfterTimeLimit: undefined },
        )
        await expectBystandersUnharmed()
      },
      60_000 + RUNS * 50,
    )
  },
)
