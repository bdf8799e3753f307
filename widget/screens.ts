import { answerStyles } from './parts/answer-styles.ts'
import { barStyles } from './parts/bar-styles.ts'
import { addDrawings } from './parts/drawings.ts'
import { laterStyles } from './parts/later-styles.ts'
import { listStyles } from './parts/list-styles.ts'
import { MORE_PATHS } from './parts/more-drawings.ts'

export { fitVerdict } from './fit/verdict.ts'
export { formatsFor } from './formats.ts'
export { AnswerDesk, keep, restore } from './guide/answer-desk.ts'
export { list } from './parts/list.ts'
export { loadBar } from './parts/load-bar.ts'
export { noteOwnColours } from './parts/own-colours.ts'
export { question } from './parts/questions.ts'
export { requestFor } from './plan-request.ts'

/** Sheets that come with these screens. */
export const styles = [listStyles, barStyles, laterStyles, answerStyles]

addDrawings(MORE_PATHS)

// A browser reads its tables of locales at the first use of each: 12 to 17 ms in one go, which a slow phone feels.
// Here, and in the task after, most of that is done; the formats, made in a later one, need only the rest.
new Intl.Locale('en').maximize()
setTimeout(() => Intl.Collator.supportedLocalesOf('en'))
