/**
 * A script that puts one list of a shop's range in force, as a nightly job would. It sends what it has read back
 * with the change in it, so that nobody's work is overwritten, and starts again if somebody was quicker.
 *
 *   TALLYWATT_KEY=... npx tsx shared/client/examples/push-range.ts http://127.0.0.1:8787 kingcup cables cables.csv
 *
 * In a project of your own, import from 'tallywatt/client'.
 */
import { readFile } from 'node:fs/promises'
import { pathToFileURL } from 'node:url'
import { type Client, createClient, ProblemError, type RangeWriteAnswer } from '../index.ts'

/** What is pushed. */
export interface Push {
  readonly shopId: string
  readonly part: 'inverters' | 'batteries' | 'cables' | 'fuses' | 'connectors'
  /** Text of a CSV file. */
  readonly csv: string
}

/** Tries where others write at the same time. */
const TRIES = 3

/**
 * Puts a list in force.
 *
 * @param client - The service, with a key of the scopes read and range
 * @param push - The list
 * @returns What changed
 * @throws ProblemError with every fault of the file, by line and column
 */
export async function pushList(client: Client, { shopId, part, csv }: Push): Promise<RangeWriteAnswer> {
  for (let tried = 1; ; tried += 1) {
    const { etag = '*' } = await client.readRange({ shopId })
    try {
      const { data } = await client.writeRange({ shopId, query: { part }, ifMatch: etag, body: { csv } })
      return data
    } catch (error) {
      const wasOvertaken = error instanceof ProblemError && error.code === 'precondition-failed'
      if (!wasOvertaken || tried === TRIES) throw error
    }
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const [baseUrl = '', shopId = '', part = '', file = ''] = process.argv.slice(2)
  const { TALLYWATT_KEY: secretKey = '' } = process.env
  try {
    const csv = await readFile(file, 'utf8')
    const answer = await pushList(createClient({ baseUrl, secretKey }), {
      shopId,
      part: part as Push['part'],
      csv,
    })
    const { added, changed, removed } = answer.changes
    console.log(
      `Version ${answer.version}: ${added.length} added, ${changed.length} changed, ${removed.length} removed.`,
    )
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error
    console.error(`${error.message} (request ${error.requestId})`)
    for (const { line, column, message } of error.problem.errors ?? []) {
      console.error(`line ${line ?? '?'}, column ${column ?? '?'}: ${message}`)
    }
    process.exitCode = 1
  }
}
