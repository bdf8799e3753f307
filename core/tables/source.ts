/**
 * How well a source is known: `read` = the document, or a copy of it, was read; `memory` = known but not
 * read again; `derived` = arithmetic on other figures; `common-practice` = usual in the trade, no
 * published source; `shop` = stated by the shop.
 */
export type SourceStanding = 'read' | 'memory' | 'derived' | 'common-practice' | 'shop'

/** Where a figure comes from. */
export interface Source {
  readonly document: string
  readonly table?: string
  readonly standing: SourceStanding
  readonly note?: string
}
