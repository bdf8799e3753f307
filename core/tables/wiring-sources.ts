import type { Source } from './source.ts'

/** Sources of the wiring figures. */
export const WIRING_SOURCES = {
  iec60028: {
    document: 'IEC 60028, International standard of resistance for copper',
    table: 'annealed copper at 20 C: 1/58 ohm mm2/m, temperature coefficient 0.00393 1/K',
    standing: 'read',
    note: 'The two constants were read in secondary copies; the standard itself is from memory.',
  },
  iec60228: {
    document: 'IEC 60228:2004 (edition 3), Conductors of insulated cables',
    table: 'Table 3, class 5 (flexible) metal-coated copper, maximum resistance at 20 C',
    standing: 'read',
    note: 'Read in three secondary copies that agree row by row.',
  },
  'astm-b258': {
    document: 'ASTM B258, Standard nominal diameters and cross-sectional areas of AWG sizes',
    table: 'd(n) = 0.005 in x 92^((36 - n)/39)',
    standing: 'memory',
  },
  'nec-chapter-9-table-8': {
    document: 'NFPA 70 National Electrical Code, Chapter 9 Table 8 (unchanged 1996 to 2023)',
    table: 'direct-current resistance at 75 C, uncoated stranded copper',
    standing: 'memory',
    note: 'The stranded values of 16, 12 and 10 AWG were read in training pages.',
  },
  'faa-ac43-13': {
    document: 'US FAA AC 43.13-1B CHG 1 (27 September 2001), chapter 11',
    table: 'paragraph 11-66: R(T) = R(20) x (234.5 + T)/254.5; Tables 11-7, 11-8, 11-9',
    standing: 'read',
  },
  '33-cfr-183-425': {
    document: 'US Code of Federal Regulations, 33 CFR 183.425',
    table: 'Table 5, allowable amperage of conductors, 30 C ambient, outside engine spaces',
    standing: 'read',
  },
  '33-cfr-183-425-note-1': {
    document: 'US Code of Federal Regulations, 33 CFR 183.425',
    table: 'Table 5 note 1, factors for conductors in engine spaces (50 C)',
    standing: 'memory',
    note: 'The factor of 105 C insulation, 0.85, was read.',
  },
  '33-cfr-183-425-note-2': {
    document: 'US Code of Federal Regulations, 33 CFR 183.425',
    table: 'Table 5 note 2, factors for three or more current-carrying conductors together',
    standing: 'read',
    note: 'The rule asks for it from 50 V up (183.435(b)); used here at every voltage, on the safe side.',
  },
  iso10133: {
    document: 'ISO 10133:2012, Small craft, extra-low-voltage d.c. installations (as ISO 13297:2020)',
    table: 'Annex A, Table A.1, single conductors, 30 C ambient, with its engine-space factors',
    standing: 'memory',
    note: 'Medium confidence; low to medium for the 60 C column.',
  },
  'nec-ambient-correction': {
    document: 'NFPA 70 National Electrical Code (2020, 2023), Table 310.15(B)(1)',
    table: 'ambient correction: square root of (Tc - Ta)/(Tc - 30)',
    standing: 'memory',
    note: 'BS 7671 Table 4B1 and IEC 60364-5-52 Table B.52.14 follow the same law; those were read.',
  },
  'nec-110-14-c': {
    document: 'NFPA 70 National Electrical Code, 110.14(C)',
    table: 'temperature ratings of terminals, commonly 75 C',
    standing: 'memory',
  },
  'bs7671-appendix-4': {
    document: 'BS 7671 Requirements for Electrical Installations (17th and 18th edition)',
    table: 'Appendix 4 clause 6.1, conductor temperature from design current over tabulated current',
    standing: 'memory',
  },
  'nec-parallel': {
    document: 'NFPA 70 National Electrical Code, 310.10(G) (2020; 310.10(H) before)',
    table: 'conductors in parallel from 1/0 AWG up',
    standing: 'memory',
  },
  'abyc-e11-drop': {
    document: 'ABYC E-11 AC and DC electrical systems on boats, 11.14.2.6',
    table: 'voltage drop at most 3 % for main feeders; ISO 10133:2012 names the same 3 %',
    standing: 'read',
  },
  'nec-125-percent': {
    document: 'NFPA 70 National Electrical Code, 125 % of a continuous load (210.20(A), 215.3)',
    table: 'as applied in SAND96-2797, Suggested Practices, Sandia National Laboratories, 1996',
    standing: 'read',
  },
  'conductor-protection': {
    document: '46 CFR 183.380(d) (2004): overcurrent device not above what the conductor may carry',
    table: 'the allowance for the next larger size, at most 150 %, is not used here',
    standing: 'read',
  },
  'nec-240-6': {
    document: 'NFPA 70 National Electrical Code, 240.6(A)',
    table: 'standard ampere ratings',
    standing: 'read',
  },
  'iso8820-scopes': {
    document: 'ISO 8820-3:2015 (blade), ISO 8820-5:2015 (strip), ISO 8820-6:2019 (single bolt)',
    table: 'scopes: rated voltage, largest rating, breaking capacity',
    standing: 'read',
  },
  'iso8820-ratings': {
    document: 'ISO 8820-3 types C, E, F; ISO 8820-5 types SF 30 and SF 51; ISO 8820-6',
    table: 'rated currents',
    standing: 'memory',
  },
  'battery-fuse-dc-rating': {
    document: 'SAND96-2797, Photovoltaic Power Systems and the National Electrical Code, 1996',
    table: 'current-limiting fuses of classes R, J and T: 20 000 A d.c., offered for 125 V d.c. and up',
    standing: 'read',
  },
  'ul248-15': {
    document: 'UL 248-15, Class T fuses',
    table: 'ratings up to 1200 A; d.c. interrupting rating 20 000 A',
    standing: 'memory',
  },
  'abyc-e11-interrupting': {
    document: 'ABYC E-11, Table V-A (E-11.16), circuit breaker interrupting capacity, 12 V to 24 V d.c.',
    table: 'by total connected cold cranking amperes: main 1500, 3000, 5000 A; branch half of it',
    standing: 'read',
  },
  '33-cfr-183-455': {
    document: 'US Code of Federal Regulations, 33 CFR 183.455',
    table: '(d) voltage rating of the device not below that of the circuit',
    standing: 'memory',
    note: 'The beginning of the paragraph was read.',
  },
  'lead-acid-end-voltage': {
    document: 'US Navy ordnance training text OS/OD 010, battery ratings, p. 27',
    table: '20 hour rate to 1.75 V per cell, which is 10.5 V for six cells',
    standing: 'read',
  },
} as const satisfies Readonly<Record<string, Source>>
