import type { LightMyRequestResponse } from 'fastify'
import type { FuzzRequest } from './requests.ts'
import type { FuzzKeys, FuzzService } from './service.ts'

/**
 * Sends a request past the socket.
 *
 * @param service - The service, with the keys that requests name
 * @param request - The request
 * @returns The reply
 */
export function send(
  { app, keys }: Pick<FuzzService, 'app' | 'keys'>,
  { method, url, key, headers, payload }: FuzzRequest,
): Promise<LightMyRequestResponse> {
  const authorization = authorizationOf(keys, key)
  return app.inject({
    // Any word may be a method; the types know only those of the standards.
    method: method as 'GET',
    url,
    headers: { ...(authorization === undefined ? {} : { authorization }), ...headers },
    ...(payload === undefined ? {} : { payload }),
  })
}

function authorizationOf(keys: FuzzKeys, key: FuzzRequest['key']): string | undefined {
  if (key === 'none') return undefined
  if (key === 'basic') return 'Basic dGFsbHk6d2F0dA=='
  return `Bearer ${key === 'made-up' ? 'tallywatt_secret_0123456789' : keys[key]}`
}
