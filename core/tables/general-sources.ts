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
  'common-practice': {
    document: 'common practice of the trade, no published source',
    standing: 'common-practice',
  },
  'shop-stated': {
    document: 'stated by the shop in its range document',
    standing: 'shop',
  },
} as const satisfies Readonly<Record<string, Source>>
