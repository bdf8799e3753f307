import { isIP } from 'node:net'
import { z } from 'zod/v3'
import { DEFAULT_SETTINGS, type Settings } from './settings.ts'

const switchSchema = z.enum(['true', 'false']).transform((text) => text === 'true')

/** `shop=address`, with spaces between several. */
const sourcesSchema = z.string().transform((text, context) =>
  text.split(/\s+/).flatMap((entry) => {
    if (entry === '') return []
    const [, shopId, url] = /^([a-z0-9][a-z0-9-]*)=(https?:\/\/\S+)$/.exec(entry) ?? []
    if (shopId !== undefined && url !== undefined) return [{ shopId, url }]
    context.addIssue({ code: 'custom', message: `"${entry}" must look like shop=https://host/range.json` })
    return []
  }),
)

/** Addresses or networks with spaces between. */
const proxiesSchema = z.string().transform((text, context) =>
  text.split(/[\s,]+/).flatMap((entry) => {
    if (entry === '') return []
    const [address = '', bits] = entry.split('/')
    const family = isIP(address)
    const isNetwork =
      bits === undefined || (/^\d{1,3}$/.test(bits) && Number(bits) <= (family === 4 ? 32 : 128))
    // A network of everybody would let every caller name its own address.
    if (family !== 0 && isNetwork && bits !== '0') return [entry]
    context.addIssue({
      code: 'custom',
      message: `"${entry}" must be an address or network such as 10.0.0.0/8`,
    })
    return []
  }),
)

const quotaSchema = z.coerce.number().int().min(0).max(1_000_000)

const configSchema = z.object({
  PORT: z.coerce.number().int().min(0).max(65_535).default(8787),
  HOST: z.string().min(1).default('127.0.0.1'),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']).default('info'),
  STORE_URL: z
    .string()
    .regex(/^(postgres(ql)?:\/\/|sqlite:.)/, 'must begin with postgres:// or sqlite:')
    .default('sqlite:data/tallywatt.db'),
  STORE_WAIT_SECONDS: z.coerce.number().min(0).max(600).default(30),
  DEMO_SHOPS: switchSchema.default('true'),
  RANGE_SOURCES: sourcesSchema.default(''),
  RANGE_PULL_SECONDS: z.coerce.number().min(10).max(86_400).default(300),
  RANGE_PULL_PRIVATE: switchSchema.default('false'),
  PUBLIC_URL: z
    .string()
    .regex(/^(https?:\/\/[^\s/?#@]+)?$/, 'must look like https://sizing.shop.example, without a path')
    .default(''),
  TRUSTED_PROXIES: proxiesSchema.default(''),
  CALLS_PER_ADDRESS: quotaSchema.default(300),
  CALLS_PER_KEY: quotaSchema.default(3000),
  REFUSED_CALLS_PER_ADDRESS: quotaSchema.default(20),
  MAX_IN_FLIGHT: z.coerce.number().int().min(1).max(100_000).default(DEFAULT_SETTINGS.maxInFlight),
  SHED_AFTER_MILLISECONDS: z.coerce.number().min(10).max(10_000).default(75),
  METRICS_PASSWORD: z.string().min(12, 'must have 12 characters or more').optional(),
  DRAIN_SECONDS: z.coerce.number().min(0).max(60).default(2),
})

/** What the environment may set. */
export interface Config {
  readonly port: number
  readonly host: string
  readonly logLevel: string
  /** `postgres://...`, or `sqlite:` and the path of a file. */
  readonly storeUrl: string
  /** How long to wait for a store that doesn't answer at the start. [s] */
  readonly storeWaitS: number
  /** Whether an empty store is filled with the demo shops. */
  readonly demoShops: boolean
  /** Addresses that ranges are pulled from. */
  readonly rangeSources: readonly { readonly shopId: string; readonly url: string }[]
  /** Pause between two looks at them. [s] */
  readonly rangePullS: number
  /** Whether they may be `http:` or in the operator's own network. */
  readonly rangePullPrivate: boolean
  /** How long to answer on after being told to stop, so that those in front notice. [s] */
  readonly drainS: number
  /** How the service guards itself. */
  readonly settings: Settings
}

/** The settings, or every fault in them. */
export type ConfigResult =
  | { readonly ok: true; readonly config: Config }
  | { readonly ok: false; readonly faults: readonly string[] }

/**
 * Reads the settings from environment variables.
 *
 * @param environment - Variables by name, such as `process.env`
 * @returns The settings, or one sentence for each fault
 */
export function readConfig(environment: Readonly<Record<string, string | undefined>>): ConfigResult {
  const parsed = configSchema.safeParse(environment)
  if (!parsed.success) {
    return {
      ok: false,
      faults: parsed.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`),
    }
  }
  const { data } = parsed
  return {
    ok: true,
    config: {
      port: data.PORT,
      host: data.HOST,
      logLevel: data.LOG_LEVEL,
      storeUrl: data.STORE_URL,
      storeWaitS: data.STORE_WAIT_SECONDS,
      demoShops: data.DEMO_SHOPS,
      rangeSources: data.RANGE_SOURCES,
      rangePullS: data.RANGE_PULL_SECONDS,
      rangePullPrivate: data.RANGE_PULL_PRIVATE,
      drainS: data.DRAIN_SECONDS,
      settings: {
        ...DEFAULT_SETTINGS,
        publicUrl: data.PUBLIC_URL,
        trustedProxies: data.TRUSTED_PROXIES,
        addressQuota: data.CALLS_PER_ADDRESS,
        keyQuota: data.CALLS_PER_KEY,
        refusedKeyQuota: data.REFUSED_CALLS_PER_ADDRESS,
        maxInFlight: data.MAX_IN_FLIGHT,
        shedAfterMs: data.SHED_AFTER_MILLISECONDS,
        metricsPassword: data.METRICS_PASSWORD,
      },
    },
  }
}
