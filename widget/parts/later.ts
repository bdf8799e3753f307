import { laterStyles } from './later-styles.ts'
import { listStyles } from './list-styles.ts'

export { editor } from './editor.ts'
export { schedule } from './schedule.ts'
export { supplyForm } from './supply-form.ts'

/** Sheets that come with these screens. */
export const styles = [listStyles, laterStyles]
