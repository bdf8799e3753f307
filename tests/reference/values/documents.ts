/** A document that published values are taken from. */
export interface ReferenceDocument {
  /** Author, title, number and edition. */
  readonly name: string
  /** Whether the document or a copy was read, is known from memory, or was worked out from a published law. */
  readonly standing: 'read' | 'memory' | 'derived'
  /** Which copy was read, where it was not the document itself. */
  readonly copy?: string
  /**
   * How much of a table the page shows: all of it where the document is law, a work of a government or openly
   * licensed; else some rows, as a quotation.
   */
  readonly shown: 'all' | 'some'
}

/** Every document of the values, by id. */
export const DOCUMENTS = {
  'iec-60228': {
    name: 'IEC 60228:2004 (edition 3), Conductors of insulated cables',
    standing: 'read',
    copy: 'three secondary copies that agree row by row',
    shown: 'some',
  },
  hyperphysics: {
    name: 'HyperPhysics, Georgia State University, American wire gages; credited to Floyd, Electric Circuit Fundamentals, 2nd edition',
    standing: 'read',
    shown: 'some',
  },
  'nec-chapter-9-table-8': {
    name: 'NFPA 70 National Electrical Code, Chapter 9 (unchanged 1996 to 2023)',
    standing: 'memory',
    copy: '16, 12 and 10 AWG were read in training pages',
    shown: 'some',
  },
  'army-en1136': {
    name: 'US Army Engineer School, correspondence course EN1136',
    standing: 'read',
    shown: 'all',
  },
  'ecm-voltage-drop': {
    name: 'EC&M magazine, The basics of calculating voltage drop',
    standing: 'read',
    shown: 'some',
  },
  'astm-b258': {
    name: 'ASTM B258, Standard nominal diameters and cross-sectional areas of AWG sizes',
    standing: 'memory',
    shown: 'some',
  },
  'bs-7671': {
    name: 'BS 7671 Requirements for Electrical Installations (17th and 18th edition)',
    standing: 'read',
    copy: 'two copies that agree',
    shown: 'some',
  },
  'bs-7671-article': {
    name: 'UK electrical contractor’s article on voltage drop by the method of BS 7671',
    standing: 'read',
    shown: 'some',
  },
  'iec-60364-5-52': {
    name: 'IEC 60364-5-52:2009, Wiring systems, Annex G, with BS 7671 Table 4D1B',
    standing: 'memory',
    copy: 'the formula was read in a copy of the annex; the tabulated figure is from memory',
    shown: 'some',
  },
  '33-cfr-183-425': {
    name: 'US Code of Federal Regulations, 33 CFR 183.425, Conductors: general',
    standing: 'read',
    shown: 'all',
  },
  'marine-technical-note': {
    name: 'Marine supplier’s technical note after 33 CFR 183.425, undated',
    standing: 'read',
    shown: 'some',
  },
  'iso-10133': {
    name: 'ISO 10133:2012 (as ISO 13297:2020), Small craft, extra-low-voltage d.c. installations',
    standing: 'memory',
    shown: 'some',
  },
  'nec-ambient': {
    name: 'NFPA 70 National Electrical Code (2020, 2023), Table 310.15(B)(1)',
    standing: 'memory',
    shown: 'some',
  },
  'bs-iec-ambient': {
    name: 'BS 7671 Tables 4B1 and 4C1; IEC 60364-5-52 Table B.52.14',
    standing: 'read',
    copy: 'appendix of a code of practice',
    shown: 'some',
  },
  'faa-ac-43-13': {
    name: 'US FAA AC 43.13-1B CHG 1 (27 September 2001), chapter 11',
    standing: 'read',
    copy: 'page copies',
    shown: 'all',
  },
  'training-low-voltage': {
    name: 'Electrical worker training lesson, low-voltage circuits',
    standing: 'read',
    shown: 'some',
  },
  'trades-mathematics': {
    name: 'Trades mathematics study guide, wire sizing and voltage drop',
    standing: 'read',
    shown: 'some',
  },
  'openstax-college-physics': {
    name: 'OpenStax, College Physics 2e (CC BY)',
    standing: 'read',
    copy: 'the publisher’s source',
    shown: 'all',
  },
  'openstax-university-physics': {
    name: 'OpenStax, University Physics, volume 2 (CC BY)',
    standing: 'read',
    copy: 'the publisher’s source',
    shown: 'all',
  },
  sand96: {
    name: 'SAND96-2797, Photovoltaic Power Systems and the National Electrical Code, Sandia National Laboratories, 1996',
    standing: 'read',
    copy: 'a course text in its line, and a reproduction of Appendix E',
    shown: 'all',
  },
  'abyc-e11': {
    name: 'ABYC E-11, AC and DC electrical systems on boats',
    standing: 'read',
    copy: 'a maker’s reproduction',
    shown: 'some',
  },
  'nec-240-6': {
    name: 'NFPA 70 National Electrical Code, 240.6(A)',
    standing: 'read',
    copy: 'trade journal and code pages',
    shown: 'some',
  },
  'iso-8820': {
    name: 'ISO 8820-3:2015 (blade), 8820-5:2015 (strip), 8820-6:2019 (single bolt), Fuse-links for road vehicles',
    standing: 'read',
    copy: 'scopes, in catalogue entries',
    shown: 'some',
  },
  'nec-430-248': {
    name: 'NFPA 70 National Electrical Code, Table 430.248 (Table 430-148 of the 1999 edition)',
    standing: 'read',
    copy: 'a reproduction',
    shown: 'some',
  },
  'nec-430-251a': {
    name: 'NFPA 70 National Electrical Code, 2008 edition, Table 430.251(A)',
    standing: 'read',
    copy: 'a reproduction',
    shown: 'some',
  },
  'nec-430-7b': {
    name: 'NFPA 70 National Electrical Code, Table 430.7(B); NEMA MG 1',
    standing: 'read',
    copy: 'a reproduction',
    shown: 'some',
  },
  'motor-textbook': {
    name: 'Textbooks of electrical machines: small single-phase motors, 746 W for each horsepower',
    standing: 'memory',
    shown: 'some',
  },
  'nist-sp-811': {
    name: 'NIST Special Publication 811 (2008), Guide for the Use of the International System of Units',
    standing: 'memory',
    shown: 'all',
  },
  'lsu-generators': {
    name: 'Louisiana State University AgCenter, Be cautious with generators after a storm, 29 August 2008',
    standing: 'read',
    shown: 'some',
  },
  'tacoma-power': {
    name: 'Tacoma Power (US municipal utility), Estimating generator size',
    standing: 'read',
    shown: 'some',
  },
  'nec-annex-d': {
    name: 'NFPA 70 National Electrical Code, Informative Annex D',
    standing: 'read',
    copy: 'a reproduction',
    shown: 'some',
  },
  'nec-210': {
    name: 'NFPA 70 National Electrical Code, 210.19(A) and 210.20(A)',
    standing: 'read',
    copy: 'a quotation',
    shown: 'some',
  },
  'electrical-safety-first': {
    name: 'Electrical Safety First (UK charity), Ratings of electrical appliances',
    standing: 'read',
    shown: 'some',
  },
  'e-bike-study': {
    name: 'E-bike study project, Charging: measured and surveyed chargers, 120 V',
    standing: 'read',
    shown: 'some',
  },
  mackay: {
    name: 'D. J. C. MacKay, Sustainable Energy - without the hot air, UIT Cambridge 2009',
    standing: 'read',
    shown: 'some',
  },
  'microwave-encyclopaedia': {
    name: 'Encyclopaedia text on the efficiency of microwave ovens, as quoted in a physics forum, 2012',
    standing: 'read',
    shown: 'some',
  },
  'microwave-plug-meter': {
    name: 'Newspaper column of 8 January 2007, plug-meter readings of one microwave oven',
    standing: 'read',
    shown: 'some',
  },
  giancoli: {
    name: 'D. Giancoli, Physics for Scientists and Engineers, 5th edition',
    standing: 'read',
    shown: 'some',
  },
  'usc-42-6295': {
    name: '42 USC 6295(c)(1), energy efficiency ratio of room air conditioners, 1990',
    standing: 'read',
    shown: 'all',
  },
  '10-cfr-430-32': {
    name: '10 CFR 430.32, US energy conservation standards, 2024 text',
    standing: 'read',
    shown: 'all',
  },
  'cooperative-generators': {
    name: 'US rural electric cooperative, portable generator page',
    standing: 'read',
    shown: 'some',
  },
  'cooperative-usage': {
    name: 'French Broad Electric Membership Corporation (US rural electric cooperative), appliance usage, 11 March 2021',
    standing: 'read',
    shown: 'some',
  },
  'rural-clinic': {
    name: 'R. Blanchard on KnowledgePoint (humanitarian engineering advice), load of a rural clinic',
    standing: 'read',
    shown: 'some',
  },
  tracebase: {
    name: 'tracebase data set, plug-level power of household appliances (Reinhardt et al., SustainIT 2012; Open Database License)',
    standing: 'read',
    copy: 'statistics of the raw traces, worked out apart from our code',
    shown: 'all',
  },
  'crest-demand-model': {
    name: 'CREST Demand Model v2, Loughborough University (McKenna and Thomson, Applied Energy 165, 2016)',
    standing: 'read',
    shown: 'some',
  },
  'eu-666-2013': {
    name: 'Commission Regulation (EU) 666/2013, vacuum cleaners',
    standing: 'read',
    shown: 'all',
  },
  'australian-register': {
    name: 'Australian Government energy-rating register, televisions on sale',
    standing: 'read',
    shown: 'all',
  },
  'path-oxygen': {
    name: 'PATH, Supply intelligence, oxygen concentrators, after WHO-UNICEF technical specifications (2019)',
    standing: 'read',
    shown: 'some',
  },
  'cpap-batteries': {
    name: 'Halberstadt et al., Battery operation of CPAP devices for sleep apnea treatment, part 3',
    standing: 'read',
    shown: 'some',
  },
  'laboratory-recordings': {
    name: 'Laboratory recordings of a kettle, a canister vacuum cleaner and a water heater, 240-250 V, 2022 (MIT licence)',
    standing: 'read',
    shown: 'all',
  },
  'bode-1977': {
    name: 'H. Bode, Lead-Acid Batteries, Wiley 1977',
    standing: 'derived',
    copy: 'half-cell potentials by molality, evaluated apart from our code; acid density from memory',
    shown: 'some',
  },
  'terminal-voltage-2009': {
    name: 'What does terminal voltage tell, November 2009',
    standing: 'read',
    shown: 'some',
  },
  'sunil-2025': {
    name: 'Sunil et al., piecewise battery OCV modelling, IEEE Trans. Instrum. Meas. 2025, data files',
    standing: 'read',
    shown: 'some',
  },
  'king-knight-2003': {
    name: 'A. King, W. Knight, Uninterruptible Power Supplies and Standby Power Systems, McGraw-Hill 2003',
    standing: 'read',
    shown: 'some',
  },
  'army-tm-10-6140': {
    name: 'US Army TM 10-6140-200-14, Lead-Acid Storage Batteries',
    standing: 'read',
    shown: 'all',
  },
  'jeon-baek-nmc': {
    name: 'Jeon and Baek 2011 / Muenzel et al. 2015, digitised discharge map of an NMC 18650 cell',
    standing: 'read',
    shown: 'some',
  },
  'lin-lfp-simulation': {
    name: 'Discharge map of a 2.6 Ah LiFePO4 cell from the model of Lin et al., University of Michigan: a simulation',
    standing: 'read',
    shown: 'some',
  },
  'agm-sheets': {
    name: 'Battery maker’s data sheets, 12 V AGM blocks of 40 to 150 Ah, undated',
    standing: 'read',
    shown: 'some',
  },
  'flooded-sheet': {
    name: 'Battery maker’s data sheet, 6 V 330 Ah flooded deep-cycle block, 2014 form',
    standing: 'read',
    shown: 'some',
  },
  'lfp-sheet': {
    name: 'Battery maker’s data sheet, 12.8 V 45 Ah LiFePO4 block, undated',
    standing: 'read',
    copy: 'read off charts, within 2 to 5 %',
    shown: 'some',
  },
  'sulzer-2019': {
    name: 'Sulzer et al., Faster Lead-Acid Battery Simulations, J. Electrochem. Soc. 166 (2019) A2363, data (BSD-3-Clause)',
    standing: 'read',
    shown: 'all',
  },
  'peukert-article': {
    name: 'electrotechnik.net, Peukert’s law, January 2010',
    standing: 'read',
    shown: 'some',
  },
  'peukert-encyclopaedia': {
    name: 'Open encyclopaedia, Peukert’s law',
    standing: 'memory',
    shown: 'some',
  },
  kuphaldt: {
    name: 'T. R. Kuphaldt, Lessons in Electric Circuits, volume I, chapter 11 (Design Science License)',
    standing: 'read',
    shown: 'all',
  },
  'navy-od-010': {
    name: 'US Navy ordnance training text OS/OD 010, Battery Ratings',
    standing: 'read',
    shown: 'all',
  },
  'nmc-cell-sheet': {
    name: 'Specification sheet of a 3.7 V 32 Ah NMC cell',
    standing: 'read',
    copy: 'copied into an open project',
    shown: 'some',
  },
  'navy-od-16338': {
    name: 'US Navy ordnance publication OD 16338',
    standing: 'read',
    shown: 'all',
  },
  'open-hardware-power': {
    name: 'Open hardware project, power system design',
    standing: 'read',
    shown: 'some',
  },
  'solar-article': {
    name: 'Solar battery article, simplified IEEE-style method',
    standing: 'read',
    shown: 'some',
  },
  'ieee-485': {
    name: 'IEEE Std 485-1997, Sizing Lead-Acid Batteries for Stationary Applications',
    standing: 'memory',
    copy: '40 to 70 F were read in a solar article',
    shown: 'some',
  },
  'vrla-guidance': {
    name: 'User guidance sheet for valve-regulated lead-acid batteries',
    standing: 'read',
    shown: 'some',
  },
  'cec-inverters': {
    name: 'California Energy Commission inverter test results in Sandia model form, library of 2019-03-05',
    standing: 'derived',
    copy: 'efficiencies worked out of the published coefficients by SAND2007-5036, apart from core',
    shown: 'all',
  },
  'quasi-square-fourier': {
    name: 'Fourier series of a three-level pulse wave; M. H. Rashid, Power Electronics Handbook',
    standing: 'derived',
    copy: 'evaluated apart from our code; the book is from memory',
    shown: 'all',
  },
} as const satisfies Readonly<Record<string, ReferenceDocument>>

/** The id of a document in {@link DOCUMENTS}. */
export type DocumentId = keyof typeof DOCUMENTS
