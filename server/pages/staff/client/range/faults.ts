import type { Problem } from '../../../../../shared/contract/problem.ts'
import { pointerOf } from '../../../../../shared/pointer.ts'
import { COLUMNS } from '../../../../range-files/columns.ts'
import { type CellFault, type Draft, PART_LISTS, type PartList } from './draft.ts'

/** A fault at its place in the table. */
export interface Fault {
  /** Undefined: the fault is of the file or of the shop's part, not of a list. */
  readonly list: PartList | undefined
  /** Key of the row; undefined: the fault is of the whole list. */
  readonly key: string | undefined
  /** Name of the column; undefined: the fault is of the whole row. */
  readonly column: string | undefined
  /** Undefined: the cell is empty and must not be. */
  readonly message: string | undefined
  /** Line of the uploaded file, from 1. */
  readonly line: number | undefined
  /** The cell has been edited since: whether it is right now, the next check tells. */
  readonly edited?: boolean
}

type Told = NonNullable<Problem['errors']>[number]

/**
 * Puts the service's faults at their rows and cells.
 *
 * @param errors - Faults by JSON Pointer
 * @param draft - What was sent: its rows stand in the order of the pointers
 * @param own - Cells that the page could not read and has left out
 * @returns The page's own faults and the service's, without those that an unread cell has caused
 */
export function placedFaults(
  errors: readonly Told[],
  draft: Draft,
  own: readonly CellFault[] = [],
): readonly Fault[] {
  const unread = new Set(own.map(({ path }) => pointerOf(path)))
  const placed = errors
    .filter(({ pointer }) => !isOf(pointer, unread))
    .map((error) => ({ ...placeOf(error.pointer, draft), message: error.message, line: error.line }))
  return [
    ...own.map(({ list, key, column, message }) => ({ list, key, column, message, line: undefined })),
    ...placed,
  ]
}

/** Whether a pointer is one of these or lies within one. */
function isOf(pointer: string, unread: ReadonlySet<string>): boolean {
  for (let at = pointer; at !== ''; at = at.slice(0, at.lastIndexOf('/'))) if (unread.has(at)) return true
  return false
}

function placeOf(pointer: string, draft: Draft): Pick<Fault, 'list' | 'key' | 'column'> {
  const [, first, index, ...path] = pointer.split('/')
  const list = PART_LISTS.find((name) => name === first)
  if (list === undefined) return { list: undefined, key: undefined, column: undefined }
  const key = index === undefined ? undefined : draft.lists[list][Number(index)]?.key
  const column = COLUMNS[list].find(
    (each) => path.length > 0 && each.path.every((step, at) => step === path[at]),
  )
  // A fault of one side of a part that two columns make up stands at the first of them.
  const nearest = column ?? COLUMNS[list].find((each) => path.length > 0 && each.path[0] === path[0])
  return { list, key, column: nearest?.name }
}
