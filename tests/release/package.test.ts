import { execFile } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import manifest from '../../package.json' with { type: 'json' }
import { buildPackage } from '../../server/release/package.ts'
import { demoService } from '../support/service.ts'

const run = promisify(execFile)
const root = fileURLToPath(new URL('../..', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'tallywatt-package-'))
const project = join(folder, 'shop')
const installed = join(project, 'node_modules/tallywatt')

let packed: readonly string[] = []

beforeAll(async () => {
  const built = join(folder, 'package')
  await buildPackage(root, built)
  const { stdout } = await run('npm', ['pack', built, '--json', '--pack-destination', folder])
  const [tarball] = JSON.parse(stdout) as { filename: string; files: { path: string }[] }[]
  packed = tarball?.files.map(({ path }) => path) ?? []
  mkdirSync(project)
  writeFileSync(
    join(project, 'package.json'),
    JSON.stringify({ name: 'shop', private: true, type: 'module' }),
  )
  await run(
    'npm',
    [
      'install',
      '--ignore-scripts',
      '--prefer-offline',
      '--no-audit',
      '--no-fund',
      join(folder, tarball?.filename ?? ''),
    ],
    { cwd: project },
  )
}, 240_000)

afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Runs the compiler, as a project does that has it from elsewhere, over one file. */
async function compile(name: string, text: string, options: object): Promise<string> {
  writeFileSync(join(project, name), text)
  const config = join(project, 'tsconfig.json')
  const compilerOptions = {
    strict: true,
    noEmit: true,
    target: 'ES2022',
    lib: ['ES2022', 'DOM'],
    types: [],
    ...options,
  }
  writeFileSync(config, JSON.stringify({ compilerOptions, files: [name] }))
  const compiler = join(root, 'node_modules/typescript/bin/tsc')
  return run(process.execPath, [compiler, '-p', config], { cwd: project }).then(
    ({ stdout }) => stdout,
    ({ stdout }: { stdout: string }) => stdout,
  )
}

/** A program for Node has its types. */
const NODE_TYPES = { types: ['node'], typeRoots: [join(root, 'node_modules/@types')] }

const COMPILERS = [
  ['as Node resolves', { module: 'NodeNext', exactOptionalPropertyTypes: true }],
  ['as a bundler resolves', { module: 'ESNext', moduleResolution: 'Bundler' }],
] as const

describe('npm pack of the package', () => {
  it('holds only what embedders need', () => {
    const places = new Set(packed.map((path) => path.split('/')[0]))
    expect([...places].sort()).toEqual([
      'CHANGELOG.md',
      'LICENSE',
      'README.md',
      'client',
      'custom-elements.json',
      'package.json',
      'types',
      'widget',
    ])
    expect(packed.filter((path) => /\.map$|(?<!\.d)\.ts$|server|test/.test(path))).toEqual([])
  })

  it('brings no more packages along than the client imports', () => {
    const installedPackages = readdirSync(join(project, 'node_modules')).filter(
      (name) => !name.startsWith('.'),
    )
    const { dependencies } = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8'))
    expect(installedPackages.sort()).toEqual(['tallywatt', ...Object.keys(dependencies)].sort())
    expect(Object.keys(dependencies).filter((name) => name !== 'undici')).toEqual([])
  })

  it('has the version and licence of the project, and a file behind every export', () => {
    const { version, license, exports } = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8'))
    expect({ version, license }).toEqual({ version: manifest.version, license: manifest.license })
    const targets = Object.values<string | Record<string, string>>(exports).flatMap((target) =>
      typeof target === 'string' ? [target] : Object.values(target),
    )
    expect(targets.length).toBeGreaterThan(5)
    for (const target of targets) expect(existsSync(join(installed, target)), target).toBe(true)
  })

  it('has a widget whose modules find each other and need no package', () => {
    const scripts = packed.filter((path) => path.startsWith('widget/') && path.endsWith('.js'))
    expect(scripts).toContain('widget/tallywatt.js')
    for (const script of scripts) {
      const text = readFileSync(join(installed, script), 'utf8')
      // Minified: `from"./x.js"`, `import"./x.js"`, `import("./x.js")`.
      for (const [, path = ''] of text.matchAll(/\b(?:from|import)\(?"([^"\s]+)"/g)) {
        expect(path, script).toMatch(/^\.\//)
        expect(existsSync(join(installed, dirname(script), path)), `${script} -> ${path}`).toBe(true)
      }
    }
  })

  it('has a manifest of the elements whose modules are files of the package', () => {
    const { modules } = JSON.parse(readFileSync(join(installed, 'custom-elements.json'), 'utf8'))
    for (const { path } of modules) expect(packed).toContain(path)
    const tags = modules.flatMap(({ declarations }: { declarations: { tagName?: string }[] }) =>
      declarations.flatMap(({ tagName }) => tagName ?? []),
    )
    expect(tags).toEqual(['tallywatt-guide', 'tallywatt-fit'])
  })
})

describe('an empty project that has installed it', () => {
  it('imports the widget where there is no page, as a server that renders pages does, and goes on', async () => {
    const script = "await import('tallywatt/widget'); console.log('went on')"
    const { stdout } = await run(process.execPath, ['--input-type=module', '-e', script], { cwd: project })
    expect(stdout).toContain('went on')
  })

  it.each(COMPILERS)(
    'compiles a strict page script against the types of the elements, %s',
    async (_how, options) => {
      const snippet =
        /```ts\n([\s\S]*?)```/.exec(readFileSync(join(installed, 'README.md'), 'utf8'))?.[1] ?? ''
      expect(snippet).toContain('tallywatt/widget')
      const text = `${snippet}
const guide = document.createElement('tallywatt-guide')
guide.shop = 'kingcup'
guide.keep = true
const unit: string = document.createElement('tallywatt-fit').sku
type Answer = TallywattEvents['tallywatt-answer']['detail']
export function said({ request, answer }: Answer): string | null {
  const outcome: 'fits' | 'fits-with-care' | 'none-fits' | 'not-advised' | undefined =
    'outcome' in answer ? answer.outcome : undefined
  return \`\${unit} \${request.loads.length} \${outcome} \${answer.demand.runningW.toFixed(0)}\`
}
// @ts-expect-error there is no such field
guide.shopp = 'kingcup'
`
      expect(await compile('page.ts', text, options)).toBe('')
    },
  )

  it('asks a service through the client', async () => {
    const app = await demoService()
    const baseUrl = await app.listen({ port: 0, host: '127.0.0.1' })
    const script = `
      import { createClient, ProblemError } from 'tallywatt/client'
      const client = createClient({ baseUrl: ${JSON.stringify(baseUrl)} })
      const body = { loads: [{ id: 'laptop', appliance: 'laptop' }] }
      const { data } = await client.sizeShop({ shopId: 'kingcup', body })
      const refused = await client.sizeShop({ shopId: 'nobody', body }).catch((error) => error)
      console.log(JSON.stringify([data.outcome, refused instanceof ProblemError, refused.status]))`
    try {
      const { stdout } = await run(process.execPath, ['--input-type=module', '-e', script], { cwd: project })
      expect(JSON.parse(stdout)).toEqual(['fits', true, 404])
    } finally {
      await app.close()
    }
  })

  it.each(COMPILERS)(
    'compiles a strict program against the types of the client, %s',
    async (_how, options) => {
      const text = `
import { type Client, createClient, ProblemError, type SizingAnswer } from 'tallywatt/client'

const client: Client = createClient({ baseUrl: 'https://sizing.shop.example', timeoutMs: 2000 })

export async function unitFor(watts: number): Promise<string | undefined> {
  try {
    const { data } = await client.sizeShop({
      shopId: 'kingcup',
      body: { loads: [{ id: 'pump', rating: { basis: 'input-watts', watts } }] },
    })
    const answer: SizingAnswer = data
    return answer.recommended?.sku
  } catch (error) {
    if (error instanceof ProblemError && error.code === 'unknown-shop') return undefined
    throw error
  }
}

// @ts-expect-error there is no such basis
void client.sizeShop({ shopId: 'kingcup', body: { loads: [{ id: 'pump', rating: { basis: 'input-volts', watts: 5 } }] } })
`
      expect(await compile('program.ts', text, { ...options, ...NODE_TYPES })).toBe('')
    },
  )
})
