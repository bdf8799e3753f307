/** The tables as kysely sees them; column names as in the migrations. Times are ISO 8601 text in UTC. */
export interface Tables {
  readonly shops: ShopsTable
  readonly range_versions: RangeVersionsTable
  readonly keys: KeysTable
  readonly revisions: RevisionsTable
  readonly demand_days: DemandTable
  readonly demand_months: DemandTable
  readonly demand_batches: DemandBatchesTable
}

interface ShopsTable {
  id: string
  /** The version in force. */
  version: number
  created_at: string
}

interface RangeVersionsTable {
  shop_id: string
  version: number
  /** The document as JSON text, byte for byte as it is served. */
  document: string
  digest: string
  author: string
  created_at: string
  origin: string
  restored_from: number | null
}

interface KeysTable {
  id: string
  shop_id: string
  name: string
  secret_hash: string
  /** Scopes joined by spaces. */
  scopes: string
  created_at: string
  expires_at: string | null
  revoked_at: string | null
  last_used_at: string | null
}

interface DemandTable {
  shop_id: string
  kind: string
  /** A day as `YYYY-MM-DD`, or a month as `YYYY-MM`, in UTC. */
  period: string
  key: string
  count: number
}

interface DemandBatchesTable {
  /** Of a batch that has been added. */
  id: string
  day: string
}

interface RevisionsTable {
  name: 'ranges' | 'keys'
  value: number
}
