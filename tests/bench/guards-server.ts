import { buildApp } from '../../server/app.ts'
import bentcreek from '../../server/demo/bentcreek.json' with { type: 'json' }
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { fixedRanges } from '../../server/store/ranges.ts'
import { VARIANTS, type VariantName } from './guards-variants.ts'

/** Serves the service in the variant that its parent names. */
const app = await buildApp({
  ranges: fixedRanges({ kingcup, bentcreek }),
  ...VARIANTS[process.argv[2] as VariantName],
})
process.on('message', () => {
  const { user, system } = process.cpuUsage()
  process.send?.(user + system)
})
process.send?.(await app.listen({ port: 0 }))
