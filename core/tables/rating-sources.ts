import type { Source } from './source.ts'

/** Sources of the figures by which ratings are converted, beside those of the load figures. */
export const RATING_SOURCES = {
  'microwave-encyclopaedia': {
    document: 'Encyclopaedia text on the efficiency of microwave ovens, as quoted in a physics forum, 2012',
    table: '700 W of microwaves from 1100 W of mains, printed as 64 %',
    standing: 'read',
    note: 'Tertiary; agrees with the other pairs.',
  },
  'giancoli-microwave-problem': {
    document: 'Giancoli, Physics for Scientists and Engineers, 5th edition, chapter 25',
    table: 'problem of a microwave oven of 72 % efficiency that delivers 950 W',
    standing: 'read',
    note: 'The problem gives the efficiency; the input is arithmetic.',
  },
  'gb-24849-2017': {
    document: 'GB 24849-2017, energy efficiency grades of microwave ovens (China)',
    table: 'table 1: grade 1 at least 60 %, grade 2 56 %, grade 3 52 %',
    standing: 'memory',
  },
  'rating-judgement': {
    document: 'Engineering judgement from usual rating plates',
    standing: 'memory',
    note: 'No published document stands behind the figure.',
  },
} as const satisfies Readonly<Record<string, Source>>
