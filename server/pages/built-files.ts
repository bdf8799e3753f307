import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { brotliCompress, gzip } from 'node:zlib'
import type { BuildOptions } from 'esbuild'
import type { FastifyReply, FastifyRequest } from 'fastify'

const root = fileURLToPath(new URL('../..', import.meta.url))

const TYPES: Readonly<Record<string, string>> = {
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
  svg: 'image/svg+xml; charset=utf-8',
}

const squeeze = { br: promisify(brotliCompress), gzip: promisify(gzip) } as const
type Encoding = keyof typeof squeeze

/** A file as it is served: its bytes, their validator, and the bytes squeezed once somebody asks for that. */
export interface BuiltFile {
  readonly name: string
  readonly type: string
  readonly bytes: Uint8Array
  readonly etag: string
  readonly squeezed: Map<Encoding, Promise<Uint8Array>>
}

/** Files by name. */
export type BuiltFiles = () => Promise<ReadonlyMap<string, BuiltFile>>

/**
 * Files that esbuild makes: as a release has them, or, when the server runs from its sources, made at first use.
 *
 * @param folder - Where a release has them, from the folder of the server's own file
 * @param options - How they are made
 * @returns The files, read or made once
 */
export function builtFiles(folder: string, options: (root: string) => BuildOptions): BuiltFiles {
  let made: Promise<ReadonlyMap<string, BuiltFile>> | undefined
  return () => {
    made ??= makeFiles(new URL(folder, import.meta.url), options)
    return made
  }
}

async function makeFiles(folder: URL, options: (root: string) => BuildOptions) {
  const contents = existsSync(folder)
    ? readdirSync(folder).map((name) => [name, readFileSync(new URL(name, folder))] as const)
    : await makeNow(options)
  return new Map(contents.map(([name, bytes]) => [name, fileOf(name, bytes)]))
}

async function makeNow(options: (root: string) => BuildOptions) {
  const { build } = await import('esbuild')
  const { outputFiles = [] } = await build({ ...options(root), write: false })
  return outputFiles.map(({ path, contents }) => [basename(path), contents] as const)
}

function fileOf(name: string, bytes: Uint8Array): BuiltFile {
  const etag = `"${createHash('sha256').update(bytes).digest('base64url').slice(0, 22)}"`
  const type = TYPES[name.split('.').at(-1) ?? ''] ?? 'application/octet-stream'
  return { name, type, bytes, etag, squeezed: new Map() }
}

/**
 * Sends a file, squeezed where the caller reads that, and 304 where the caller holds it already.
 *
 * @param request - The request
 * @param reply - Receives the file
 * @param file - The file
 * @param keep - The Cache-Control of it
 * @returns The reply, sent
 */
export async function sendFile(
  request: FastifyRequest,
  reply: FastifyReply,
  { file, keep }: { readonly file: BuiltFile; readonly keep: string },
): Promise<FastifyReply> {
  const encoding = encodingFor(request.headers['accept-encoding'] ?? '')
  const etag = encoding === undefined ? file.etag : file.etag.replace(/"$/, `-${encoding}"`)
  reply.headers({ etag, 'cache-control': keep, vary: 'Origin, Accept-Encoding' })
  if (request.headers['if-none-match']?.includes(etag)) return reply.code(304).send()
  reply.type(file.type)
  if (encoding === undefined) return reply.send(file.bytes)
  const bytes = file.squeezed.get(encoding) ?? squeeze[encoding](file.bytes)
  file.squeezed.set(encoding, bytes)
  return reply.header('content-encoding', encoding).send(await bytes)
}

/** The smallest that the caller reads; `q=0` says that it doesn't (RFC 9110, 12.5.3). */
function encodingFor(accepted: string): Encoding | undefined {
  const names = accepted
    .split(',')
    .filter((entry) => !/;\s*q=0(\.0*)?\s*$/.test(entry))
    .map((entry) => entry.split(';', 1)[0]?.trim().toLowerCase())
  return (['br', 'gzip'] as const).find((encoding) => names.includes(encoding))
}
