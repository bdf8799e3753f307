import { fileURLToPath } from 'node:url'
import { buildPackage } from './package.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
await buildPackage(root, `${root}dist/package`)
console.log('The package stands in dist/package; npm pack ./dist/package makes a file of it.')
