import { COLUMNS } from '../../../../range-files/columns.ts'
import { type Draft, type DraftRow, PART_LISTS, type PartList, sameCells } from './draft.ts'

/** A place where two people changed the same thing. */
export interface Collision {
  readonly list: PartList
  readonly sku: string
  /** Undefined: the whole part, which one has taken out or both have added. */
  readonly column: string | undefined
}

/** A draft on top of what somebody else has put in force. */
export interface Rebased {
  readonly draft: Draft
  /** Places where the draft's own text stands and the other's is gone. */
  readonly collisions: readonly Collision[]
}

/**
 * Puts one's own edits on top of a range that somebody else has changed: cell by cell, their changes stay where
 * one has made none. Where both changed the same cell, one's own stands and the place is told.
 *
 * @param mine - The draft
 * @param base - The range that it started from
 * @param theirs - The range in force by now
 * @returns The draft on top of theirs
 */
export function rebase(mine: Draft, base: Draft, theirs: Draft): Rebased {
  const collisions: Collision[] = []
  const lists = Object.fromEntries(
    PART_LISTS.map((list) => [
      list,
      mergeList(
        { list, mine: mine.lists[list], base: base.lists[list], theirs: theirs.lists[list] },
        collisions,
      ),
    ]),
  ) as unknown as Draft['lists']
  const shopIsMine = JSON.stringify(mine.shop) !== JSON.stringify(base.shop)
  return { draft: { shop: shopIsMine ? mine.shop : theirs.shop, lists, made: mine.made }, collisions }
}

interface Three {
  readonly list: PartList
  readonly mine: readonly DraftRow[]
  readonly base: readonly DraftRow[]
  readonly theirs: readonly DraftRow[]
}

function mergeList({ list, mine, base, theirs }: Three, collisions: Collision[]): readonly DraftRow[] {
  const mineBy = new Map(mine.map((row) => [row.key, row]))
  const baseBy = new Map(base.map((row) => [row.key, row]))
  const theirsBy = new Map(theirs.map((row) => [row.key, row]))
  const told = (row: DraftRow, column?: string) => collisions.push({ list, sku: row.cells.sku ?? '', column })
  const rows: DraftRow[] = []
  const addedSkus = new Map(mine.filter(({ key }) => !baseBy.has(key)).map((row) => [row.cells.sku, row]))
  for (const their of theirs) {
    const old = baseBy.get(their.key)
    const own = mineBy.get(their.key)
    if (old === undefined) {
      const twin = addedSkus.get(their.cells.sku)
      if (twin === undefined) rows.push(their)
      else if (!sameCells(list, twin, their)) told(twin)
    } else if (own !== undefined) {
      rows.push(mergeRow({ list, own, old, their }, (column) => told(own, column)))
    } else if (!sameCells(list, old, their)) {
      told(their)
    }
  }
  for (const own of mine) {
    if (theirsBy.has(own.key)) continue
    const old = baseBy.get(own.key)
    // A part that they took out stays out, unless it has been worked on here.
    if (old !== undefined && sameCells(list, own, old)) continue
    if (old !== undefined) told(own)
    rows.push(own)
  }
  return rows
}

function mergeRow(
  {
    list,
    own,
    old,
    their,
  }: {
    readonly list: PartList
    readonly own: DraftRow
    readonly old: DraftRow
    readonly their: DraftRow
  },
  told: (column: string) => void,
): DraftRow {
  const cells: Record<string, string> = {}
  for (const { name } of COLUMNS[list]) {
    const [mine = '', before = '', now = ''] = [own.cells[name], old.cells[name], their.cells[name]]
    cells[name] = mine === before ? now : mine
    if (mine !== before && now !== before && mine !== now) told(name)
  }
  return { key: own.key, cells }
}
