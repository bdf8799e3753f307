import { buildApp } from './app.ts'
import { type Config, readConfig } from './config.ts'
import { logStream } from './log-stream.ts'
import { LOG_SERIALIZERS } from './plugins/request-log.ts'
import { stopGracefully } from './shutdown.ts'
import { rangeFetcher } from './store/fetch-range.ts'
import { openLive } from './store/live.ts'
import { NewerStoreError } from './store/migrations/index.ts'
import { openStore } from './store/open.ts'
import { startPulling } from './store/pull.ts'
import { FaultyRangeError } from './store/ranges.ts'
import { seedDemoShops } from './store/seed.ts'
import { StoreUnavailableError } from './store/store.ts'

const result = readConfig(process.env)
if (!result.ok) fail(`Faulty settings:\n${result.faults.join('\n')}`)
const { config } = result

const STDOUT = 1
const log = logStream(STDOUT)
process.on('exit', log.flush)
// A full disk where the console goes must not stop the service either.
process.stdout.on('error', () => {})
process.stderr.on('error', () => {})

/** Until the service has a logger, faults go to the console. */
let report = (level: 'info' | 'error', message: string): void => console[level](message)

const { store, live } = await openServices(config).catch((error: unknown) => {
  for (const known of [FaultyRangeError, StoreUnavailableError, NewerStoreError]) {
    if (error instanceof known) fail(error.message)
  }
  throw error
})
const app = await buildApp({
  ranges: live.ranges,
  services: { store, live },
  logger: { level: config.logLevel, serializers: LOG_SERIALIZERS, stream: log },
  settings: config.settings,
})
report = (level, message) => app.log[level](message)
const pulling = startPulling({
  sources: config.rangeSources,
  everyS: config.rangePullS,
  fetcher: rangeFetcher({ allowPrivate: config.rangePullPrivate }),
  store,
  live,
  log: report,
})
stopGracefully({ app, drainMs: config.drainS * 1000, close })
const address = await app.listen({ port: config.port, host: config.host })
console.log(`Tallywatt runs at ${address}`)
void pulling.pullAll()

async function openServices({ storeUrl, storeWaitS, demoShops }: Config) {
  const opened = await openStore(storeUrl, storeWaitS)
  if (demoShops) await seedDemoShops(opened)
  return {
    store: opened,
    live: await openLive({ store: opened, log: (level, message) => report(level, message) }),
  }
}

async function close(): Promise<void> {
  await pulling.stop()
  await live.close()
  await store.close()
}

function fail(message: string): never {
  console.error(message)
  process.exit(1)
}
