import type { AppOptions } from '../../server/app.ts'

/** The service without and with its guards, which are too high to refuse anything here. */
export const VARIANTS = {
  plain: {},
  quotas: { settings: { addressQuota: 1_000_000_000 } },
  shedding: { settings: { shedAfterMs: 1_000_000 } },
  log: { logger: { level: 'info', stream: { write: () => {} } } },
  all: {
    settings: { addressQuota: 1_000_000_000, shedAfterMs: 1_000_000 },
    logger: { level: 'info', stream: { write: () => {} } },
  },
} as const satisfies Readonly<Record<string, Partial<AppOptions>>>
export type VariantName = keyof typeof VARIANTS
