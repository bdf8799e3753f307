import { demandOf, requiredContinuousW } from '../../../core/loads/demand.ts'
import { resolveLoads } from '../../../core/loads/resolve.ts'
import { makeLoad } from '../../support/make.ts'
import type { DocumentId } from './documents.ts'
import type { PublishedTable, Topic } from './published.ts'

/**
 * Loads of a published example.
 *
 * @param printed - Name, running and, where printed, starting watts
 * @returns The loads, as core takes them
 */
export function loadsOf(printed: readonly (readonly [string, number, number?])[]) {
  return printed.map(([id, runningW, startingW = runningW]) =>
    makeLoad({ id, runningW, startingW, startingS: startingW > runningW ? 1 : 0 }),
  )
}

/** Rows of the cooperative's table that tell the rules for adding starts apart. */
export const THREE_MOTORS = [
  ['small refrigerator', 500, 2000],
  ['frost-free freezer', 720, 1890],
  ['sump pump, 1/3 hp', 800, 1250],
] as const

const KITCHEN = [
  ['lamp', 100],
  ['slow cooker', 200],
  ['refrigerator', 1200, 2900],
  ['television', 750],
] as const

const CLINIC_WH = [400, 180, 390, 8000, 1000]

const clinicWh = () =>
  demandOf(CLINIC_WH.map((energyWhPerDay, index) => makeLoad({ id: `${index}`, energyWhPerDay })))
    .energyWhPerDay

const restartTogetherW = () => {
  const loads = loadsOf(THREE_MOTORS).map((load) => ({ ...load, startKind: 'compressor' as const }))
  const note = demandOf(loads).notes.find(({ code }) => code === 'restart-together')
  return note?.code === 'restart-together' ? note.values.startingW : Number.NaN
}

interface EnergyRow {
  readonly what: string
  readonly watts: number
  readonly hours: number
  readonly kWh: number
}

/** Watts, hours in 30 days, kWh. */
const COOPERATIVE_ROWS: readonly EnergyRow[] = [
  { what: 'window air conditioner', watts: 1500, hours: 240, kWh: 360 },
  { what: 'dehumidifier', watts: 480, hours: 360, kWh: 172.8 },
  { what: 'air purifier', watts: 50, hours: 360, kWh: 18 },
  { what: 'attic fan', watts: 370, hours: 360, kWh: 133.2 },
  { what: 'electric blanket', watts: 150, hours: 240, kWh: 36 },
  { what: 'computer', watts: 75, hours: 150, kWh: 11.25 },
  { what: 'portable heater', watts: 1500, hours: 240, kWh: 360 },
  { what: 'old freezer', watts: 160, hours: 720, kWh: 115.2 },
  { what: 'iron', watts: 1100, hours: 5, kWh: 5.5 },
  { what: '60 W lamp', watts: 60, hours: 240, kWh: 14.4 },
  { what: 'phone charger', watts: 10, hours: 120, kWh: 1.2 },
]

const MACKAY_ROWS: readonly (EnergyRow & { readonly absolute: number; readonly chapter: string })[] = [
  {
    what: 'microwave, 20 minutes',
    watts: 1400,
    hours: 1 / 3,
    kWh: 0.5,
    absolute: 0.05,
    chapter: 'chapter 7',
  },
  { what: 'hob rings', watts: 3300, hours: 0.5, kWh: 1.6, absolute: 0.051, chapter: 'chapter 7' },
  { what: 'oven', watts: 3000, hours: 0.5, kWh: 1.5, absolute: 0, chapter: 'chapter 7' },
  { what: 'standby, 3 W', watts: 3, hours: 24, kWh: 0.07, absolute: 0.005, chapter: 'chapter 11' },
  { what: 'standby, 40 W', watts: 40, hours: 24, kWh: 1, absolute: 0.05, chapter: 'chapter 11' },
]

/** Energy of a load by core. A plan holds minutes a day: more than 24 h is spread over 30 days. */
function energyKWh({ watts, hours }: EnergyRow): number {
  const days = hours > 24 ? 30 : 1
  const rating = { basis: 'measured-watts', watts } as const
  const resolution = resolveLoads([{ id: 'load', quantity: 1, minutesPerDay: (hours * 60) / days, rating }], {
    appliances: new Map(),
    mains: { nominalV: 230 },
  })
  if (!resolution.ok) throw new Error('the rating was refused')
  return (demandOf(resolution.loads).energyWhPerDay * days) / 1000
}

const energyRow = (row: EnergyRow) => [`${row.what}: ${row.watts} W`, row.kWh, () => energyKWh(row)] as const

const WHOLE = {
  unit: 'W',
  how: 'computed',
  tolerance: { absolute: 0 },
  because: 'printed whole',
} as const satisfies Partial<PublishedTable>

const single = (
  document: DocumentId,
  table: string,
  quantity: string,
  row: PublishedTable['rows'][number],
): PublishedTable => ({ document, table, quantity, ...WHOLE, rows: [row] })

export const DEMAND: Topic = {
  id: 'demand',
  title: 'Demand and energy',
  about: 'How loads add up: running together, the worst start, headroom, and energy over a day.',
  tables: [
    single('cooperative-generators', 'printed example', 'starting power that must be carried', [
      'lamp, slow cooker, refrigerator and television',
      3950,
      () => demandOf(loadsOf(KITCHEN)).startingW,
    ]),
    {
      document: 'cooperative-generators',
      table: 'rows of three motors',
      quantity: 'starting power by rule',
      ...WHOLE,
      standing: 'derived',
      because: 'arithmetic on the printed rows',
      rows: [
        ['one starts while the others run', 3520, () => demandOf(loadsOf(THREE_MOTORS)).startingW],
        ['all restart together', 5140, restartTogetherW],
      ],
    },
    single('e-bike-study', 'ten chargers', 'running power', [
      'ten of 185 W',
      1850,
      () => demandOf([makeLoad({ id: 'charger', quantity: 10, runningW: 185 })]).runningW,
    ]),
    {
      ...single('nec-210', '125 % of a continuous load', 'least rating for 16 A over three hours', [
        'a fifth of headroom',
        20,
        () => requiredContinuousW(16, 0.2),
      ]),
      unit: 'A',
      standing: 'derived',
      because: 'arithmetic on the printed rule',
    },
    {
      ...single('rural-clinic', 'load of a day', 'energy', [
        '400 + 180 + 390 + 8000 + 1000 Wh',
        9970,
        clinicWh,
      ]),
      unit: 'Wh',
    },
    {
      document: 'cooperative-usage',
      table: 'usage in 30 days',
      quantity: 'energy',
      unit: 'kWh',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed whole',
      rows: COOPERATIVE_ROWS.map((row) => {
        const [what, kWh, compute] = energyRow(row)
        return [`${what}, ${row.hours} h`, kWh, compute] as const
      }),
    },
    ...MACKAY_ROWS.map(
      (row): PublishedTable => ({
        document: 'mackay',
        table: row.chapter,
        quantity: 'energy of a day',
        unit: 'kWh',
        how: 'computed',
        tolerance: { absolute: row.absolute },
        because: row.absolute === 0 ? 'printed whole' : 'rounding of the print',
        rows: [energyRow(row)],
      }),
    ),
  ],
  traps: [],
}
