import { demoService } from '../support/service.ts'

/** Serves a route that takes the processor for 4 ms, guarded as a release is. */
const app = await demoService({ settings: { shedAfterMs: Number(process.argv[2]) } })
app.get('/busy', () => {
  const until = performance.now() + 4
  while (performance.now() < until);
  return { done: true }
})
process.send?.(await app.listen({ port: 0 }))
