/** How a service guards itself; what {@link DEFAULT_SETTINGS} says where nothing is set. */
export interface Settings {
  /** Address that callers reach the service at, without a closing slash; links in problems begin with it. */
  readonly publicUrl: string
  /** Addresses and networks of proxies whose X-Forwarded headers are believed; none where empty. */
  readonly trustedProxies: readonly string[]
  /** Calls a minute for each address and shop; 0 for no limit. */
  readonly addressQuota: number
  /** Calls a minute for each secret key; 0 for no limit. */
  readonly keyQuota: number
  /** Calls a minute of one address whose key is refused; 0 for no limit. */
  readonly refusedKeyQuota: number
  /** Requests that may be worked on at once. */
  readonly maxInFlight: number
  /** How long requests may wait for the processor before new ones are turned away. [ms] */
  readonly shedAfterMs: number
  /** How long a route that asks the store may take. [ms] */
  readonly handlerTimeoutMs: number
  /** How long a body may take to arrive; a range file has {@link requestTimeoutMs}. [ms] */
  readonly bodyTimeoutMs: number
  /** How long the headers of a request may take to arrive. [ms] */
  readonly headersTimeoutMs: number
  /** How long any whole request may take to arrive. [ms] */
  readonly requestTimeoutMs: number
  /** How often arriving requests are looked at for those time-outs. [ms] */
  readonly timeoutCheckMs: number
  /** Password of /metrics by HTTP Basic; without one it answers only callers on the same machine. */
  readonly metricsPassword: string | undefined
}

/** Settings of a service that nobody has configured: no quotas, nobody turned away, everything else guarded. */
export const DEFAULT_SETTINGS: Settings = {
  publicUrl: '',
  trustedProxies: [],
  addressQuota: 0,
  keyQuota: 0,
  refusedKeyQuota: 0,
  maxInFlight: 500,
  shedAfterMs: Number.POSITIVE_INFINITY,
  handlerTimeoutMs: 10_000,
  bodyTimeoutMs: 5000,
  headersTimeoutMs: 3000,
  requestTimeoutMs: 30_000,
  timeoutCheckMs: 500,
  metricsPassword: undefined,
}
