import { writeFileSync } from 'node:fs'
import { clientTypesText } from './client-types.ts'
import { replyExamples } from './reply-examples.ts'
import { openApiText, textOf } from './text.ts'

const examples = await replyExamples()
writeFileSync(new URL('../../shared/examples/replies.json', import.meta.url), textOf(examples))
writeFileSync(new URL('../../openapi/openapi.json', import.meta.url), openApiText(examples))
writeFileSync(new URL('../../openapi/client-types.ts', import.meta.url), clientTypesText())
