import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, relative } from 'node:path'

/** What {@link writeDeclarations} needs. */
export interface DeclarationTask {
  readonly root: string
  /** Where the declarations go. */
  readonly to: string
  /** Modules whose types are public, paths from the root. */
  readonly entries: readonly string[]
  /** Packages that the declarations may name. */
  readonly packages: readonly string[]
}

/** A relative import or export in a declaration. */
const RELATIVE = /(from |import\()(['"])(\.{1,2}\/[^'"]+?)\.(?:ts|js)\2/g

/**
 * Writes the declarations of some modules and of all that they use.
 *
 * @param task - Where from and where to
 * @throws Error where a declaration would need another package
 */
export function writeDeclarations({ root, to, entries, packages }: DeclarationTask): void {
  const emitted = mkdtempSync(join(tmpdir(), 'tallywatt-types-'))
  try {
    emit(root, emitted, entries)
    const done = new Set<string>()
    const queue = entries.map((entry) => entry.replace(/\.ts$/, ''))
    for (let module = queue.pop(); module !== undefined; module = queue.pop()) {
      if (done.has(module)) continue
      done.add(module)
      const text = plainTypes(readFileSync(join(emitted, `${module}.d.ts`), 'utf8'))
      for (const [, name = ''] of text.matchAll(/(?:from |import\()['"]([^.'"][^'"]*)['"]/g)) {
        if (!packages.includes(name)) throw new Error(`the declaration of ${module} needs ${name}`)
      }
      for (const [, , , path = ''] of text.matchAll(RELATIVE)) {
        queue.push(relative(root, join(root, dirname(module), path)))
      }
      const file = join(to, `${module}.d.ts`)
      mkdirSync(dirname(file), { recursive: true })
      writeFileSync(file, text.replace(RELATIVE, '$1$2$3.js$2').replace(/^\/\/# sourceMappingURL.*$/m, ''))
    }
  } finally {
    rmSync(emitted, { recursive: true, force: true })
  }
}

function emit(root: string, outDir: string, entries: readonly string[]): void {
  const config = join(outDir, 'tsconfig.json')
  writeFileSync(
    config,
    JSON.stringify({
      extends: join(root, 'tsconfig.json'),
      compilerOptions: {
        noEmit: false,
        declaration: true,
        emitDeclarationOnly: true,
        outDir,
        rootDir: root,
        typeRoots: [join(root, 'node_modules/@types')],
      },
      include: [],
      files: entries.map((entry) => join(root, entry)),
    }),
  )
  execFileSync(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', config], { cwd: root })
  if (readdirSync(outDir).length < 2) throw new Error('no declarations were written')
}

/**
 * Types of the contract are inferred from schemas; those who use the package get them as they are written out for the
 * client, and so need no schema library.
 */
function plainTypes(declaration: string): string {
  return declaration.replace(/shared\/contract\/\w+/g, 'openapi/client-types')
}
