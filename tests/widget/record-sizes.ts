import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { measureSizes } from './support/sizes.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const sizes = await measureSizes(root)
writeFileSync(new URL('sizes.json', import.meta.url), `${JSON.stringify(sizes, undefined, 2)}\n`)
console.log(sizes)
