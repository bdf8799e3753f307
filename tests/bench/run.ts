import { benchCore } from './core.ts'
import { benchEndpoint } from './endpoint.ts'

console.log(`Node ${process.version}, ${process.platform} ${process.arch}`)
benchCore()
await benchEndpoint()
