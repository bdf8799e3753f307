import { demoService } from '../support/service.ts'

/** What one call of the route costs. [µs of processor] */
const COST_US = 4000

const spentUs = (): number => {
  const { user, system } = process.cpuUsage()
  return user + system
}

/** Serves a route that costs 4 ms of processor, guarded as a release is, and tells what the process has cost. */
const app = await demoService({ settings: { shedAfterMs: Number(process.argv[2]) } })
app.get('/busy', () => {
  const until = spentUs() + COST_US
  while (spentUs() < until);
  return { done: true }
})
process.on('message', () => process.send?.(spentUs()))
process.send?.(await app.listen({ port: 0 }))
