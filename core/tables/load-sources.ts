import type { Source } from './source.ts'

/** Sources of the load figures. */
export const LOAD_SOURCES = {
  tracebase: {
    document:
      'tracebase data set: plug-level power of individual household appliances, Darmstadt (230 V, 2011-2012) and Sydney (230 V, 2013); Reinhardt et al., SustainIT 2012',
    table: 'traces by appliance type, about one sample a second; statistics computed from the raw traces',
    standing: 'read',
    note: 'Contains information from the tracebase data set, which is made available at http://www.tracebase.org under the Open Database License (ODbL). One-second averages of active power: starts shorter than a second are under-read, so starts are 95th percentiles or maxima over all starts.',
  },
  'lab-appliance-recordings': {
    document:
      'Laboratory recordings of a kettle, a canister vacuum cleaner and a water heater, 240-250 V supply, 2022, open data set under the MIT licence',
    table: 'RMS current, W, VA and power factor at one sample a second',
    standing: 'read',
    note: 'Three appliances only; a teaching data set.',
  },
  'crest-demand-model': {
    document:
      'CREST Demand Model v2, Loughborough University; McKenna and Thomson, Applied Energy 165 (2016); Richardson et al. (2010)',
    table: 'appliance configuration: mean cycle power, cycle length, standby power, mean power factor',
    standing: 'read',
    note: 'Model inputs for the UK stock of about 2005-2010; cold appliances and televisions are older than what is sold now.',
  },
  'australian-television-register': {
    document: 'Australian Government energy-rating register, televisions on sale (587 models)',
    table: 'screen size and labelled kWh a year; watts = kWh x 1000 / (365 x 10 h)',
    standing: 'read',
    note: 'The 10 h a day of the label is from memory; standby is not taken off, so watts are up to about 1 W high.',
  },
  'doe-appliance-energy': {
    document: 'US Department of Energy, Energy Saver: Estimating Appliance and Home Electronic Energy Use',
    table: 'list of typical nameplate watts and worked examples, edition of about 2008-2012',
    standing: 'read',
    note: 'Nameplate watts, not measured ones; its microwave row reads like cooking power.',
  },
  'cooperative-usage-table-2021': {
    document:
      'French Broad Electric Membership Corporation (US rural electric cooperative), appliance electric usage',
    table: 'watts, hours of use and 30-day cost at 13.5 cents/kWh, 11 March 2021',
    standing: 'read',
  },
  'cooperative-monthly-worksheet': {
    document: 'Rural electric cooperative, Indiana (US), monthly appliance use worksheet',
    table: 'typical power column',
    standing: 'read',
    note: 'Undated; the figures look like lists of the 1970s and 1980s.',
  },
  'cooperative-generator-table': {
    document: 'US rural electric cooperative, portable generator page',
    table: 'running and starting watts, and one printed example',
    standing: 'read',
    note: 'Not used: its well pump running 150 W and microwave oven of 100 W, both plainly wrong, and its refrigerators, which run far below the watts it gives.',
  },
  'tacoma-power-generator': {
    document: 'Tacoma Power (US municipal utility), generator safety: estimating generator size',
    table: 'text: motor start 3 x running watts, range 2-6',
    standing: 'read',
  },
  'central-maine-power-generator': {
    document: 'Central Maine Power (US utility), generator size',
    table: 'text: sump pump 800 W running, over 1200 W starting; furnace fan over 2000 W starting',
    standing: 'read',
  },
  'ndsu-standby-generators': {
    document: 'North Dakota State University Extension (K. Hellevang), standby generators',
    table: 'text: for each horsepower 4000 W to start and 1000 W to run',
    standing: 'read',
  },
  'electrical-safety-first-ratings': {
    document: 'Electrical Safety First (UK charity), Ratings of electrical appliances',
    table: 'amps and watts, present table and an older edition of it',
    standing: 'read',
    note: 'Lists the highest ratings it found: upper values for 230 V.',
  },
  'cosy-kingdom-wattage': {
    document: 'Cosy Kingdom (home energy advice service, Fife, UK), Watt does it cost?, October 2024',
    table: 'wattage column',
    standing: 'read',
  },
  'mackay-chapter-7': {
    document: 'MacKay, Sustainable Energy - without the hot air, UIT Cambridge 2009, chapter 7',
    table: 'heating and cooling devices of a household',
    standing: 'read',
  },
  'mackay-chapter-11': {
    document: 'MacKay, Sustainable Energy - without the hot air, UIT Cambridge 2009, chapter 11',
    table: 'table 11.4, power of gadgets: on and active, on but inactive, standby, off',
    standing: 'read',
  },
  'fsec-off-mode': {
    document: 'Florida Solar Energy Center, FSEC-PF-344-98, metered off-mode and on-mode power',
    table: 'table 1',
    standing: 'read',
  },
  'ecos-field-research-2006': {
    document: 'Ecos Consulting, Final Field Research Report for the California Energy Commission, 2006',
    table: 'active, active standby and passive standby watts by product',
    standing: 'read',
  },
  'cfr-10-430-32': {
    document: '10 CFR 430.32, US energy conservation standards, 2024 text',
    table: '(a) refrigerators, (b) room air conditioners, (v) dehumidifiers, (aa) coolers, (ee) air cleaners',
    standing: 'read',
  },
  'usc-42-6295': {
    document: '42 USC 6295(c)(1), minimum energy efficiency ratio of room air conditioners from 1990',
    standing: 'read',
  },
  'eu-666-2013': {
    document: 'Commission Regulation (EU) 666/2013, vacuum cleaners',
    table: 'rated input below 1600 W from September 2014, below 900 W from September 2017',
    standing: 'read',
  },
  'electrical-installation-guide': {
    document: 'Electrical Installation Guide according to IEC standards, lighting circuits',
    table: 'figure A9 (LED lamps and fixtures) and figure N46 (compact fluorescent lamps, harmonic currents)',
    standing: 'read',
  },
  'openstax-physics-20-4': {
    document: 'OpenStax College Physics, section 20.4, Electric Power and Energy',
    table: 'worked examples and problems',
    standing: 'read',
  },
  'nec-430-248': {
    document: 'NFPA 70 National Electrical Code, table 430.248 (table 430-148 of the 1999 edition)',
    table: 'full-load currents of single-phase AC motors',
    standing: 'read',
    note: 'Read in a reproduction.',
  },
  'nec-430-251a': {
    document: 'NFPA 70 National Electrical Code, 2008 edition, table 430.251(A)',
    table: 'maximum single-phase locked-rotor currents',
    standing: 'read',
    note: 'Read in a reproduction. A table limit for selecting disconnects: real starts are usually lower.',
  },
  'nec-430-7b': {
    document: 'NFPA 70 National Electrical Code, table 430.7(B); NEMA MG 1',
    table: 'locked-rotor indicating code letters, kVA per horsepower',
    standing: 'read',
    note: 'Read in a reproduction; one copy misprints letter H as 7.1-7.99, it is 6.3-7.09.',
  },
  'six-times-rated-current': {
    document: 'Examination note on small motor-compressors without a marked locked-rotor current',
    table: 'text: assume six times rated current',
    standing: 'read',
  },
  'path-oxygen-concentrator': {
    document:
      'PATH, Supply intelligence: oxygen generation and storage, oxygen concentrator; cites WHO-UNICEF technical specifications for oxygen therapy devices, 2019',
    table: 'key specifications: less than 70 W for each litre a minute',
    standing: 'read',
  },
  'cpap-battery-operation': {
    document: 'Halberstadt et al., Battery operation of CPAP devices for sleep apnea treatment, part 3',
    table: 'technical notes: 2.5 A at 10 cm H2O, 4.5 A at 20 cm H2O, 12 V',
    standing: 'read',
    note: 'About 2000: older blowers, no heated humidifier.',
  },
  'mda-power-outages': {
    document: 'Muscular Dystrophy Association, Quest, 1 July 2007, power outages',
    standing: 'read',
  },
  'e-bike-charger-survey': {
    document: 'E-bike study project, Charging: measured and surveyed chargers, 120 V',
    table: 'text: 36 V, 4 A charger 185 W measured; rated chargers 150-600 W',
    standing: 'read',
  },
  'mills-gaming-computers': {
    document: 'Mills and Mills, Taming the energy use of gaming computers, Energy Efficiency (2015)',
    table: 'abstract: measured peak about half of the nameplate',
    standing: 'read',
  },
  'microwave-plug-meter-2007': {
    document: 'Sustainability column of 8 January 2007, plug-meter readings of one microwave oven',
    table: 'text: oven of 900 W cooking power, 1260-1314 W from the mains, mean 1287 W',
    standing: 'read',
  },
  'uk-dale': {
    document: 'UK-DALE data set (Kelly and Knottenbelt, Scientific Data 2015), metadata of house 1',
    table: 'nominal consumption and maximum power',
    standing: 'read',
  },
  'iec-62368-1': {
    document: 'IEC 62368-1:2018, audio/video, information and communication technology equipment',
    table: 'clause B.2.5 input test; annex E, audio amplifiers tested at one eighth of their output',
    standing: 'memory',
  },
  'iec-61000-3-2': {
    document: 'IEC 61000-3-2, limits for harmonic current emissions',
    table: 'clauses 5 to 7: supplies over 75 W are power-factor corrected in practice',
    standing: 'memory',
  },
  'iec-60974-1': {
    document: 'IEC 60974-1, arc welding power sources; Commission Regulation (EU) 2019/1784',
    table:
      'conventional load voltage: MIG 14 + 0.05 I, MMA 20 + 0.04 I, TIG 10 + 0.04 I; efficiency about 0.80',
    standing: 'memory',
  },
  'motor-textbook': {
    document: 'Textbook electrical machines and power electronics; NEMA MG 1 part 30',
    table:
      'efficiency and power factor of small single-phase motors; harmonic heating and loss of torque of induction motors',
    standing: 'memory',
  },
  'power-supply-practice': {
    document: 'General power-supply engineering',
    table:
      'capacitor-input supply without correction: power factor 0.5-0.65; cold inrush 20-60 A peak for 1-5 ms',
    standing: 'memory',
  },
  'cpap-humidifier-power': {
    document: 'Usual power of positive-airway-pressure machines with heated humidifier and heated tube',
    standing: 'memory',
  },
  'satellite-terminal-readings': {
    document: 'Low-orbit satellite internet terminal, readings posted by a university laboratory',
    table: 'average 50-75 W; readings 30-108 W, mostly 80-100 W',
    standing: 'memory',
  },
  'load-judgement': {
    document: 'Engineering judgement from usual rating plates and use; no published document',
    standing: 'memory',
  },
  'waveform-arithmetic': {
    document: 'Fourier analysis of square and stepped waves',
    table:
      'stepped wave of 90-134 degree pulses: fundamental 0.90-0.96 of the RMS value, total harmonic distortion 29-48 %',
    standing: 'derived',
    note: 'A heater follows the RMS value; a motor works on the fundamental and heats from the rest.',
  },
  'load-arithmetic': {
    document: 'Arithmetic on the other sources named beside the figure',
    standing: 'derived',
  },
} as const satisfies Readonly<Record<string, Source>>
