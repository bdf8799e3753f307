import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { parse, parseAllDocuments } from 'yaml'
import openApi from '../../openapi/openapi.json' with { type: 'json' }
import manifest from '../../package.json' with { type: 'json' }
import { readConfig } from '../../server/config.ts'
import { environmentOf, readDockerfile, wordsOf } from './dockerfile.ts'

const read = (path: string) => readFileSync(fileURLToPath(new URL(`../../${path}`, import.meta.url)), 'utf8')

interface ComposeService {
  readonly image: string
  readonly user?: string
  readonly read_only?: boolean
  readonly cap_drop?: readonly string[]
  readonly security_opt?: readonly string[]
  readonly tmpfs?: readonly string[]
  readonly healthcheck?: { readonly test: readonly string[] }
  readonly environment?: Readonly<Record<string, string>>
  readonly ports?: readonly string[]
  readonly stop_grace_period?: string
  readonly networks?: { readonly inside: { readonly ipv4_address: string } }
  readonly depends_on?: Readonly<Record<string, { readonly condition: string }>>
}

const compose = parse(read('docker/compose.yaml'), { merge: true }) as {
  readonly services: Readonly<Record<string, ComposeService>>
  readonly networks: {
    readonly inside: { readonly ipam: { readonly config: readonly { ip_range: string }[] } }
  }
}
const nginx = read('docker/nginx.conf')
const stages = readDockerfile(read('docker/Dockerfile'))
const image = stages.at(-1)
if (image === undefined) throw new Error('the Dockerfile has no stages')
const settingNames = [...read('server/config.ts').matchAll(/^ {2}([A-Z][A-Z_]+):/gm)].map(([, name]) => name)
const instances = Object.entries(compose.services).filter(([, { image }]) => image.startsWith('tallywatt'))

/** Variables of the compose file that the operator fills in, filled in. */
const filledIn = (environment: Readonly<Record<string, string>>) =>
  Object.fromEntries(
    Object.entries(environment).map(([name, value]) => [
      name,
      value.replace(/\$\{\w+:-([^}]*)\}/g, '$1').replace(/\$\{\w+:\?[^}]*\}/g, 'secret'),
    ]),
  )

describe('docker/Dockerfile', () => {
  it('builds in one stage and runs in a smaller one, as a numbered user who is not root', () => {
    expect(stages.map(({ name }) => name)).toEqual(['build', undefined])
    expect(image.image).toMatch(/^node:20-.*slim$/)
    expect(wordsOf(image, 'USER')).toEqual(['1000:1000'])
    expect(wordsOf(image, 'VOLUME')).toEqual(['/data'])
    expect(wordsOf(image, 'RUN')).toEqual([])
  })

  it('installs what the lock file says and nothing else', () => {
    const commands = wordsOf(stages[0] ?? image, 'RUN')
    expect(commands[0]).toMatch(/^npm ci /)
    expect(commands.filter((command) => /npm (i|install)\b|curl|wget/.test(command))).toEqual([])
  })

  it('sets only settings that the service knows, to values that it takes', () => {
    const { NODE_ENV, ...settings } = environmentOf(image)
    expect(NODE_ENV).toBe('production')
    expect(settingNames).toEqual(expect.arrayContaining(Object.keys(settings)))
    expect(readConfig(settings)).toMatchObject({ ok: true, config: { host: '0.0.0.0', port: 8787 } })
    expect(wordsOf(image, 'EXPOSE')).toEqual(['8787'])
  })

  it('sends the builder the sources it copies and no others', () => {
    const sent = read('docker/Dockerfile.dockerignore').match(/^!.+$/gm) ?? []
    const copied = wordsOf(stages[0] ?? image, 'COPY').flatMap((words) => words.split(' ').slice(0, -1))
    expect(sent.map((line) => line.slice(1)).sort()).toEqual([...copied].sort())
    expect(read('docker/Dockerfile.dockerignore')).toMatch(/^\*$/m)
  })
})

describe('docker/compose.yaml', () => {
  it('has two instances of this release, a database and one proxy that alone is reached from outside', () => {
    expect(instances.map(([name]) => name)).toEqual(['tallywatt-1', 'tallywatt-2'])
    for (const [, instance] of instances) expect(instance.image).toBe(`tallywatt:${manifest.version}`)
    expect(Object.keys(compose.services).sort()).toEqual(['db', 'proxy', 'tallywatt-1', 'tallywatt-2'])
    const open = Object.entries(compose.services).filter(([, { ports }]) => ports !== undefined)
    expect(open.map(([name]) => name)).toEqual(['proxy'])
    expect(open[0]?.[1].ports).toEqual(['127.0.0.1:8080:8080'])
  })

  it.each(Object.entries(compose.services))('%s is locked down and watched', (_name, service) => {
    expect(service.read_only).toBe(true)
    expect(service.user).toMatch(/^[1-9]\d*:[1-9]\d*$/)
    expect(service.cap_drop).toEqual(['ALL'])
    expect(service.security_opt).toContain('no-new-privileges:true')
    expect(service.healthcheck?.test[0]).toBe('CMD')
  })

  it.each(instances)('%s has settings that the service takes, and no password of ours', (_name, instance) => {
    const environment = instance.environment ?? {}
    expect(settingNames).toEqual(expect.arrayContaining(Object.keys(environment)))
    expect(environment.STORE_URL).toMatch(/^postgres:\/\/tallywatt:\$\{POSTGRES_PASSWORD:\?/)
    const config = readConfig(filledIn(environment))
    expect(config).toMatchObject({ ok: true, config: { storeUrl: expect.stringContaining('@db:5432/') } })
  })

  it('gives a stopping instance time to drain and to finish', () => {
    const closeWithinS = Number(/CLOSE_WITHIN_MS = (\d+)/.exec(read('server/shutdown.ts'))?.[1]) / 1000
    expect(closeWithinS).toBeGreaterThan(0)
    for (const [, { stop_grace_period: grace, environment }] of instances) {
      expect(Number.parseInt(grace ?? '', 10)).toBeGreaterThan(
        Number(environment?.DRAIN_SECONDS) + closeWithinS,
      )
    }
  })

  it('trusts the address of the proxy and no other', () => {
    const proxy = compose.services.proxy?.networks?.inside.ipv4_address
    for (const [, { environment }] of instances) expect(environment?.TRUSTED_PROXIES).toBe(proxy)
    // The range for other containers is the upper half of the network, so fixed addresses stay below it.
    expect(compose.networks.inside.ipam.config[0]?.ip_range).toBe('172.30.87.128/25')
    expect(Number(proxy?.split('.').at(-1))).toBeLessThan(128)
  })
})

describe('docker/nginx.conf', () => {
  it('sends calls to the instances of the compose file', () => {
    const upstreams = [...nginx.matchAll(/^ +server ([\d.]+):8787 /gm)].map(([, address]) => address)
    expect(upstreams).toEqual(instances.map(([, { networks }]) => networks?.inside.ipv4_address))
  })

  it('tells the instances who calls, whatever the caller says', () => {
    expect(nginx).toContain('proxy_set_header X-Forwarded-For $remote_addr;')
    expect(nginx).not.toContain('proxy_add_x_forwarded_for')
  })

  it('keeps the metrics inside and takes bodies as large as a range file', () => {
    expect(nginx).toMatch(/location = \/metrics \{\s+return 404;/)
    const limitMiB = Number(/client_max_body_size (\d+)m/.exec(nginx)?.[1])
    const range = /RANGE_BODY_LIMIT_BYTES = (\d+) \* 1024 \* 1024/.exec(
      read('shared/contract/range-admin.ts'),
    )
    expect(limitMiB).toBeGreaterThan(Number(range?.[1] ?? Number.NaN))
  })

  it('repeats only calls that change nothing', () => {
    const pattern = /location ~ (\S+) \{[^}]*non_idempotent/.exec(nginx)?.[1] ?? '^$'
    const repeated = Object.entries(openApi.paths).flatMap(([path, operations]) =>
      new RegExp(pattern).test(path.replace('{shopId}', 'shop')) ? [[path, Object.keys(operations)]] : [],
    )
    expect(repeated.length).toBeGreaterThan(2)
    for (const [, methods] of repeated) {
      expect((methods as string[]).filter((method) => method !== 'parameters')).toEqual(['post'])
    }
    expect(nginx.match(/non_idempotent/g)).toHaveLength(1)
  })
})

describe('docker/kubernetes.yaml', () => {
  const documents = parseAllDocuments(read('docker/kubernetes.yaml')).map((document) => {
    expect(document.errors).toEqual([])
    return document.toJS()
  })
  const ofKind = (kind: string) => documents.find((document) => document.kind === kind)
  const deployment = ofKind('Deployment').spec
  const pod = deployment.template.spec
  const container = pod.containers[0]

  it('runs two instances and never fewer', () => {
    expect(deployment.replicas).toBe(2)
    expect(deployment.strategy.rollingUpdate.maxUnavailable).toBe(0)
    expect(ofKind('PodDisruptionBudget').spec.minAvailable).toBe(1)
  })

  it('runs them locked down', () => {
    expect(pod.securityContext).toMatchObject({ runAsNonRoot: true, runAsUser: 1000 })
    expect(pod.automountServiceAccountToken).toBe(false)
    expect(container.securityContext).toEqual({
      allowPrivilegeEscalation: false,
      readOnlyRootFilesystem: true,
      capabilities: { drop: ['ALL'] },
    })
  })

  it('sets only settings that the service knows, secrets from a secret', () => {
    const names = container.env.map(({ name }: { name: string }) => name)
    expect(settingNames).toEqual(expect.arrayContaining(names))
    const plain = container.env.flatMap((entry: { name: string; value?: string }) =>
      entry.value === undefined ? [] : [[entry.name, entry.value]],
    )
    expect(readConfig(Object.fromEntries(plain))).toMatchObject({ ok: true })
    expect(plain.map(([name]: [string]) => name)).not.toContain('STORE_URL')
    expect(plain.map(([name]: [string]) => name)).not.toContain('METRICS_PASSWORD')
  })

  it('probes paths of the service, and takes none out for a store that is away', () => {
    const paths = ['startupProbe', 'livenessProbe', 'readinessProbe'].map(
      (probe) => container[probe].httpGet.path,
    )
    expect(paths).toEqual(['/healthz', '/healthz', '/readyz'])
    expect(Object.keys(openApi.paths)).toEqual(expect.arrayContaining(paths))
  })

  it('leads calls to the pods', () => {
    expect(ofKind('Service').spec.selector).toEqual(deployment.selector.matchLabels)
    expect(deployment.template.metadata.labels).toEqual(deployment.selector.matchLabels)
    const rule = ofKind('Ingress').spec.rules[0].http.paths[0]
    expect(rule.backend.service.name).toBe(ofKind('Service').metadata.name)
  })
})
