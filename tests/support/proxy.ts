import {
  createServer,
  Agent as HttpAgent,
  type IncomingMessage,
  request,
  type ServerResponse,
} from 'node:http'
import type { AddressInfo } from 'node:net'

/** A proxy before several instances, with the rules of docker/nginx.conf. */
export interface TestProxy {
  readonly url: string
  close(): Promise<void>
}

/** `fail_timeout` of the upstream. [ms] */
const LEFT_ALONE_MS = 2000
/** `keepalive` of the upstream. */
const KEPT_CONNECTIONS = 32

/**
 * Starts a proxy that keeps connections to its instances, asks the other one where a connection is refused or breaks,
 * and leaves one that did so alone for two seconds.
 *
 * @param upstreams - Addresses of the instances
 * @returns The proxy, listening
 */
export async function startProxy(upstreams: readonly string[]): Promise<TestProxy> {
  const agent = new HttpAgent({ keepAlive: true, maxFreeSockets: KEPT_CONNECTIONS })
  const leftAloneUntil = new Map<string, number>()
  let turn = 0

  function order(): readonly string[] {
    turn += 1
    const turned = upstreams.map((_, index) => upstreams[(index + turn) % upstreams.length] ?? '')
    const now = performance.now()
    const rank = (url: string) => Number((leftAloneUntil.get(url) ?? 0) > now)
    return [...turned].sort((a, b) => rank(a) - rank(b))
  }

  function pass(call: IncomingMessage, body: Buffer, reply: ServerResponse): void {
    const tries = [...order()]
    const next = (): void => {
      const upstream = tries.shift()
      if (upstream === undefined) {
        reply.writeHead(502).end()
        return
      }
      const { connection: _, ...headers } = call.headers
      const asked = request(`${upstream}${call.url}`, { agent, method: call.method, headers }, (answer) => {
        const { connection: __, ...fields } = answer.headers
        reply.writeHead(answer.statusCode ?? 502, fields)
        answer.pipe(reply)
        answer.on('error', () => reply.destroy())
      })
      asked.on('error', () => {
        if (reply.headersSent) return void reply.destroy()
        leftAloneUntil.set(upstream, performance.now() + LEFT_ALONE_MS)
        next()
      })
      asked.end(body)
    }
    next()
  }

  const server = createServer((call, reply) => {
    const parts: Buffer[] = []
    call.on('data', (part: Buffer) => parts.push(part))
    call.on('end', () => pass(call, Buffer.concat(parts), reply))
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: async () => {
      agent.destroy()
      server.closeAllConnections()
      await new Promise((resolve) => server.close(resolve))
    },
  }
}
