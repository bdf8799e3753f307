import { writeFileSync } from 'node:fs'
import { openApiText } from './text.ts'

writeFileSync(new URL('../../openapi/openapi.json', import.meta.url), openApiText())
