/**
 * What the staff page shares with the element for shoppers: search, drawings, formats and links. The page imports
 * nothing else of the widget, so that this file tells what a change there may touch here.
 */
export { type Formats, formatsFor, parseNumber } from '../../../../widget/formats.ts'
export { addDrawings, applianceDrawing, type Sign, sign } from '../../../../widget/parts/drawings.ts'
export { MORE_PATHS } from '../../../../widget/parts/more-drawings.ts'
export { encodePlan } from '../../../../widget/plan-link.ts'
export { requestFor } from '../../../../widget/plan-request.ts'
export {
  EMPTY_PLAN,
  type PlanLoad,
  type PlanState,
  planAfter,
  type SupplyAnswers,
} from '../../../../widget/plan-state.ts'
export { search } from '../../../../widget/search.ts'
