import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { Worker, type WorkerOptions } from 'node:worker_threads'

/** Code of threads where the server runs from its sources, by file: each is put together once. */
const madeNow = new Map<string, Promise<string>>()

/**
 * Starts a thread as a release has it, or, where the server runs from its sources, as it is made now.
 *
 * @param file.name - Name of the built file, beside this one
 * @param file.source - Path of its source, seen from here
 * @param options - What the thread is given
 * @returns The thread; rejects where it can't be made
 */
export async function startThread(
  file: { readonly name: string; readonly source: string },
  options: WorkerOptions,
): Promise<Worker> {
  const built = new URL(`./${file.name}.js`, import.meta.url)
  if (existsSync(built)) return new Worker(built, options)
  const made = madeNow.get(file.source) ?? codeOf(file.source)
  madeNow.set(file.source, made)
  return new Worker(await made, { ...options, eval: true })
}

async function codeOf(source: string): Promise<string> {
  const { build } = await import('esbuild')
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL(source, import.meta.url))],
    bundle: true,
    write: false,
    platform: 'node',
    format: 'cjs',
    external: ['better-sqlite3'],
  })
  return outputFiles[0]?.text ?? ''
}
