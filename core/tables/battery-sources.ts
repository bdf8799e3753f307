import type { Source } from './source.ts'

/** Sources of the battery and inverter-loss figures. Makers' sheets are named by construction only. */
export const BATTERY_SOURCES = {
  'agm-block-sheets': {
    document: "battery makers' data sheets, eleven 12 V AGM blocks of 40 to 200 Ah, undated",
    table: 'constant-current and constant-power discharge tables; internal resistance; charging',
    standing: 'read',
  },
  'flooded-block-sheet': {
    document: "battery maker's data sheet, 6 V 330 Ah flooded deep-cycle block, 2014 form",
    table: 'capacity by hour rate, minutes at 25 A and 75 A, charging temperatures',
    standing: 'read',
  },
  'lfp-block-sheets': {
    document:
      "battery maker's data sheets, 12.8 V LiFePO4 blocks of 7.5 to 45 Ah with protection board, undated",
    table: 'specification, run-time chart, capacity by temperature (read off charts, 1 to 5 % error)',
    standing: 'read',
  },
  'lfp-cell-sheets': {
    document: 'specification of a 302 Ah prismatic LiFePO4 cell, entered in an open cell register',
    table: 'capacity at 0 and -20 C, continuous current, AC resistance',
    standing: 'read',
  },
  'nmc-cell-sheet': {
    document: 'specification sheet of a 3.7 V 32 Ah NMC cell, copied into an open project',
    table: 'charging temperature, end voltage, continuous current',
    standing: 'read',
  },
  'bode-1977': {
    document: 'H. Bode, Lead-Acid Batteries, Wiley 1977',
    table: 'electrode potentials by molality, evaluated at a specific gravity linear in state of charge',
    standing: 'derived',
    note: 'polynomials read as coded in an open simulation package; acid density table from memory',
  },
  'ocv-specific-gravity-2009': {
    document: 'What does terminal voltage tell, November 2009',
    table: 'open-circuit voltage and specific gravity of a 12 V battery at five states of charge',
    standing: 'read',
  },
  'lithium-ocv-2025': {
    document: 'Sunil et al., piecewise battery OCV modelling, IEEE Trans. Instrum. Meas. 2025, data files',
    table: 'mean of C/32 charge and discharge: 1.1 Ah LiFePO4 cell, 5 Ah NMC cell',
    standing: 'read',
  },
  'lin-lfp-simulation': {
    document: 'discharge map of a 2.6 Ah LiFePO4 26650 cell from the model of Lin et al., Univ. of Michigan',
    table: 'capacity and mean voltage by temperature and rate; a simulation, not a measurement',
    standing: 'read',
  },
  'jeon-baek-nmc': {
    document: 'Jeon and Baek 2011 / Muenzel et al. 2015, digitised discharge map of an NMC 18650 cell',
    table: 'capacity and mean voltage by temperature and current',
    standing: 'read',
  },
  'battery-model-fit': {
    document: "derived in this project from the published discharge tables of the makers' sheets",
    table: 'generalised Peukert shape, working voltage line, error bands: tests/bench/runtime-accuracy.ts',
    standing: 'derived',
  },
  'galushkin-2021': {
    document:
      'Yazvinskaya, Lipkin, Galushkin, Galushkin, Energies 2021 14(16) 5009; Energies 2022 15(8) 2825',
    table: 'generalised Peukert equation',
    standing: 'read',
  },
  'king-knight-2003': {
    document:
      'A. King, W. Knight, Uninterruptible Power Supplies and Standby Power Systems, McGraw-Hill 2003',
    table: 'p. 199, lead-acid correction factor by temperature and discharge time',
    standing: 'read',
  },
  'tm-10-6140-200-14': {
    document: 'US Army TM 10-6140-200-14, Lead-Acid Storage Batteries',
    table: 'capacity in the cold: 75 % at 32 F, 40 % at 0 F',
    standing: 'read',
  },
  'low-voltage-disconnect-guidance': {
    document: "battery maker's guidance on low-voltage disconnect of deep-cycle lead-acid batteries",
    table: '1.85 to 1.95 V per cell; depth of discharge up to 50 %',
    standing: 'read',
  },
  'navy-od-010': {
    document: 'US Navy ordnance training text OS/OD 010, Battery Ratings',
    table: 'p. 27: rated over 20 h to 1.75 V per cell at 80 F',
    standing: 'read',
  },
  'vrla-guidance': {
    document: 'user guidance sheet for valve-regulated lead-acid batteries',
    table: 'recharge about 110 % of the discharge; 3C largest continuous current',
    standing: 'read',
  },
  'battery-handbooks': {
    document:
      'D. Linden, T. Reddy, Handbook of Batteries, 4th ed. 2011; H. Kiehne, Battery Technology Handbook, 2003',
    table: 'general-practice figures',
    standing: 'memory',
  },
  'ieee-1013': {
    document: 'IEEE Std 1013-2019, Sizing Lead-Acid Batteries for Stand-Alone Photovoltaic Systems',
    table: 'worksheet logic: days of autonomy, depth, temperature, margin, end of life, largest current',
    standing: 'memory',
  },
  'cec-inverter-tests': {
    document:
      'California Energy Commission inverter test results in Sandia model form, library of 2019-03-05',
    table: 'nine units with a battery-voltage input, 2.5 to 7.7 kW',
    standing: 'read',
    note: 'tested grid-connected: stand-alone running adds some loss',
  },
  'quasi-square-fourier': {
    document:
      'Fourier series of a three-level pulse wave; treated in M. H. Rashid, Power Electronics Handbook',
    standing: 'memory',
  },
  'elementary-circuits': {
    document:
      "Ohm's law and Kirchhoff's voltage law; OpenStax College Physics 2e, chapter 21, terminal voltage",
    standing: 'read',
  },
} as const satisfies Readonly<Record<string, Source>>
