import { benchCartCheck } from './cart-check.ts'
import { benchCore } from './core.ts'
import { benchDemand } from './demand-query.ts'
import { benchEndpoint } from './endpoint.ts'
import { benchGrowth } from './growth.ts'
import { benchGuards } from './guards.ts'
import { benchImport } from './import.ts'
import { batterySideCost, runtimeCost } from './runtime-cost.ts'
import { benchShedding } from './shedding.ts'
import { timingLine } from './timing.ts'
import { benchWhatIfs } from './what-ifs.ts'
import { benchWidget } from './widget.ts'

/** Every bench by its name; `npm run bench -- core endpoint` runs those named, else all. */
const BENCHES: Readonly<Record<string, () => unknown>> = {
  core: benchCore,
  'run-time': benchRuntime,
  'cart-check': benchCartCheck,
  'what-ifs': benchWhatIfs,
  endpoint: benchEndpoint,
  widget: benchWidget,
  guards: benchGuards,
  shedding: benchShedding,
  import: benchImport,
  growth: benchGrowth,
  demand: benchDemand,
}

const wanted = process.argv.slice(2)
const unknown = wanted.filter((name) => !Object.hasOwn(BENCHES, name))
if (unknown.length > 0) {
  console.error(`No bench ${unknown.join(', ')}. There are: ${Object.keys(BENCHES).join(', ')}.`)
  process.exit(1)
}
console.log(`Node ${process.version}, ${process.platform} ${process.arch}`)
for (const [name, bench] of Object.entries(BENCHES)) {
  if (wanted.length === 0 || wanted.includes(name)) await bench()
}

function benchRuntime(): void {
  const { perCurveUs, perHoursUs } = runtimeCost(500, () => performance.now())
  console.log(
    `run time, model and curve of 60 points: mean ${perCurveUs.toFixed(1)} µs; hours alone ${perHoursUs.toFixed(1)} µs`,
  )
  console.log(timingLine('battery side of the example plan', batterySideCost()))
}
