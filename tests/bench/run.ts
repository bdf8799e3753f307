import { benchCartCheck } from './cart-check.ts'
import { benchCore } from './core.ts'
import { benchDemand } from './demand-query.ts'
import { benchEndpoint } from './endpoint.ts'
import { benchGuards } from './guards.ts'
import { benchShedding } from './shedding.ts'
import { benchWhatIfs } from './what-ifs.ts'

console.log(`Node ${process.version}, ${process.platform} ${process.arch}`)
benchCore()
benchCartCheck()
benchWhatIfs()
await benchEndpoint()
await benchDemand()
await benchGuards()
await benchShedding()
