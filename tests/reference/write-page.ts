import { writeFileSync } from 'node:fs'
import { pageData, pageText } from './page-data.ts'

const file = new URL('../../server/pages/docs/figures/figures.json', import.meta.url)
writeFileSync(file, pageText(pageData()))
