import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { build } from 'esbuild'
import { clientBuild } from '../../shared/client/build.ts'
import { widgetBuild } from '../../widget/build.ts'
import { INTEGRITY_FILE, type IntegrityList, integrityOf } from '../../widget/integrity.ts'
import { writeDeclarations } from './declarations.ts'
import { type ElementManifest, elementDeclarations } from './element-types.ts'

/** Texts that go along as they are. */
const TEXTS = ['CHANGELOG.md', 'LICENSE']

/**
 * Puts the published package together: the widget, the client, their types and the custom-elements manifest. The
 * service is not in it; that is run from the project or as an image.
 *
 * @param root - Folder of the project
 * @param to - Folder for the package; what is in it goes
 */
export async function buildPackage(root: string, to: string): Promise<void> {
  rmSync(to, { recursive: true, force: true })
  mkdirSync(join(to, 'types/widget'), { recursive: true })
  await build({ ...widgetBuild(root), outdir: join(to, 'widget') })
  writeJson(join(to, 'widget', INTEGRITY_FILE), integrityList(root, join(to, 'widget')))
  const packages = await buildClient(root, to)
  writeDeclarations({
    root,
    to: join(to, 'types'),
    entries: ['shared/client/index.ts', 'widget/events.ts'],
    packages,
  })
  const elements = readElements(root)
  writeFileSync(join(to, 'types/widget/elements.d.ts'), elementDeclarations(elements, './events.js'))
  writeJson(join(to, 'custom-elements.json'), elements)
  writeJson(join(to, 'package.json'), manifestOf(root, packages))
  // The project's own README speaks to those who run the service.
  cpSync(join(root, 'server/release/README.md'), join(to, 'README.md'))
  for (const text of TEXTS) cpSync(join(root, text), join(to, text))
}

function integrityList(root: string, folder: string): IntegrityList {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }
  return integrityOf(
    version,
    new Map(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name))])),
  )
}

/** Bundles the client and returns the packages that it needs beside it. */
async function buildClient(root: string, outdir: string): Promise<readonly string[]> {
  const options = { ...clientBuild(root), outdir, sourcemap: false, metafile: true } as const
  const { metafile } = await build(options)
  const imports = Object.values(metafile.outputs).flatMap((output) => output.imports)
  const outside = imports.filter(({ external, path }) => external === true && !path.startsWith('node:'))
  return [
    ...new Set(
      outside.map(({ path }) =>
        path
          .split('/')
          .slice(0, path.startsWith('@') ? 2 : 1)
          .join('/'),
      ),
    ),
  ]
}

/** The manifest with the paths that its modules have in the package. */
function readElements(root: string): ElementManifest {
  const text = readFileSync(join(root, 'widget/custom-elements.json'), 'utf8')
  const manifest = JSON.parse(text, (_name, value) =>
    value === 'tallywatt.js' ? 'widget/tallywatt.js' : value,
  ) as ElementManifest
  return manifest
}

function manifestOf(root: string, packages: readonly string[]): object {
  const project = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
  return {
    name: project.name,
    version: project.version,
    description: 'The Tallywatt elements for a shop page, and a typed client for the Tallywatt API.',
    license: project.license,
    type: 'module',
    engines: project.engines,
    files: ['widget', 'client', 'types', 'custom-elements.json', 'CHANGELOG.md'],
    sideEffects: ['./widget/*.js'],
    customElements: 'custom-elements.json',
    exports: {
      './widget': { types: './types/widget/elements.d.ts', default: './widget/tallywatt.js' },
      './client': { types: './types/shared/client/index.d.ts', default: './client/index.js' },
      './custom-elements.json': './custom-elements.json',
      './package.json': './package.json',
    },
    dependencies: Object.fromEntries(packages.map((name) => [name, project.dependencies[name]])),
  }
}

function writeJson(file: string, value: unknown): void {
  writeFileSync(file, `${JSON.stringify(value, null, 2)}\n`)
}
