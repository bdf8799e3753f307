import type { Source } from './source.ts'

/** Sources that several topics share. */
export const GENERAL_SOURCES = {
  'nist-sp811': {
    document:
      'NIST Special Publication 811, Guide for the Use of the International System of Units, 2008 edition',
    table: 'Appendix B.8, factors for units listed alphabetically',
    standing: 'memory',
  },
  'nec-210-19': {
    document: 'NFPA 70, National Electrical Code, 2017 edition',
    table:
      '210.19(A) and 210.20(A): a load of three hours or more counts at 125 %, so 80 % of what carries it',
    standing: 'read',
  },
  iec60038: {
    document: 'IEC 60038 IEC standard voltages, edition 7 (2009)',
    table: 'Table 1, and supply within 10 % of nominal',
    standing: 'read',
    note: 'Read in a summary of the standard.',
  },
  'iso-3': {
    document: 'ISO 3 Preferred numbers, series of preferred numbers, first edition (1973)',
    table: 'Basic series R10',
    standing: 'memory',
  },
  'maximum-coverage-greedy': {
    document:
      'G. L. Nemhauser, L. A. Wolsey, M. L. Fisher, An analysis of approximations for maximizing submodular set functions I, Mathematical Programming 14 (1978), pages 265 to 294',
    table: 'The greedy choice covers at least 1 - 1/e of what the best choice covers',
    standing: 'memory',
  },
  'maximum-coverage-exact': {
    document:
      'A. H. Land, A. G. Doig, An automatic method of solving discrete programming problems, Econometrica 28 (1960), pages 497 to 520',
    table: 'Branch and bound; the bound is the sum of the largest single gains, which submodularity allows',
    standing: 'memory',
  },
  'exhaustive-search': {
    document: 'every choice tried, but for those that have lost more already than the best one found',
    standing: 'derived',
  },
  'common-practice': {
    document: 'common practice of the trade, no published source',
    standing: 'common-practice',
  },
  'shop-stated': {
    document: 'stated by the shop in its range document',
    standing: 'shop',
  },
} as const satisfies Readonly<Record<string, Source>>
