import { mkdtempSync, readFileSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import type { FastifyInstance } from 'fastify'
import type { Browser } from 'playwright-core'
import { buildApp } from '../../../server/app.ts'
import bentcreek from '../../../server/demo/bentcreek.json' with { type: 'json' }
import kingcup from '../../../server/demo/kingcup.json' with { type: 'json' }
import { fixedRanges } from '../../../server/store/ranges.ts'
import { widgetBuild } from '../../../widget/build.ts'
import { launchChromium } from '../../support/chromium.ts'

const root = fileURLToPath(new URL('../../..', import.meta.url))

/** A shop's page on one origin, the service on another, the built bundle and a browser. */
export interface Rig {
  readonly browser: Browser
  /** Origin of the service, which serves no script. */
  readonly api: string
  /** Origin of the shop's pages, which serves the bundle too. */
  readonly shop: string
  /** Address of a page with this body. */
  page(body: string, options?: PageOptions): string
  close(): Promise<void>
}

/** How a page is served. */
export interface PageOptions {
  readonly csp?: string
  readonly lang?: string
  readonly head?: string
}

/** Folder of a bundle built for tests, once a process. */
export async function builtWidget(): Promise<string> {
  const outdir = mkdtempSync(join(tmpdir(), 'tallywatt-widget-'))
  await build({ ...widgetBuild(root), outdir })
  return outdir
}

/** Starts everything that a widget test stands on; nothing is mocked. */
export async function startRig(): Promise<Rig> {
  const outdir = await builtWidget()
  const ownLit = await litOfThePage()
  const pages = new Map<string, { html: string; csp: string | undefined }>()
  const shopServer = await listening(
    createServer((request, response) => {
      const path = new URL(request.url ?? '/', 'http://shop').pathname
      const page = pages.get(path)
      if (page !== undefined) {
        response.setHeader('content-type', 'text/html; charset=utf-8')
        if (page.csp !== undefined) response.setHeader('content-security-policy', page.csp)
        response.end(page.html)
      } else if (/^\/(widget|other-version)\/[\w.-]+\.js$/.test(path)) {
        response.setHeader('content-type', 'text/javascript; charset=utf-8')
        response.end(readFileSync(join(outdir, path.slice(path.lastIndexOf('/')))))
      } else if (path === '/own-lit.js') {
        response.setHeader('content-type', 'text/javascript; charset=utf-8')
        response.end(ownLit)
      } else {
        response.statusCode = 404
        response.end()
      }
    }),
  )
  const shop = `http://localhost:${(shopServer.address() as AddressInfo).port}`
  const service = await serviceFor(shop)
  const api = await service.listen({ port: 0, host: '127.0.0.1' })
  const browser = await launchChromium()
  return {
    browser,
    api,
    shop,
    page: (body, { csp, lang = 'en', head = '' } = {}) => {
      const path = `/page-${pages.size + 1}`
      pages.set(path, { csp, html: html(body, lang, head) })
      return `${shop}${path}`
    },
    close: async () => {
      await browser.close()
      await service.close()
      shopServer.closeAllConnections()
      shopServer.close()
    },
  }
}

/** A script of a page that draws with a copy of Lit of its own. */
async function litOfThePage(): Promise<string> {
  const { outputFiles } = await build({
    stdin: {
      contents: `import { html, render } from 'lit/html.js'
        const place = document.body.appendChild(document.createElement('div'))
        render(html\`<p id="own">drawn by the page</p>\`, place)`,
      resolveDir: root,
    },
    bundle: true,
    format: 'esm',
    write: false,
  })
  return outputFiles[0]?.text ?? ''
}

/** The service with both demo shops, whose answers the shop's origin may read. */
export async function serviceFor(origin: string): Promise<FastifyInstance> {
  const opened = [kingcup, bentcreek].map((range) => ({
    ...range,
    shop: { ...range.shop, allowedOrigins: [origin] },
  }))
  return buildApp({ ranges: fixedRanges({ kingcup: opened[0], bentcreek: opened[1] }) })
}

function html(body: string, lang: string, head: string): string {
  return `<!doctype html><html lang="${lang}"><head><meta charset="utf-8"><title>A shop's page</title>
<meta name="viewport" content="width=device-width, initial-scale=1">${head}
<script type="module" src="/widget/tallywatt.js"></script></head><body>${body}</body></html>`
}

async function listening(server: Server): Promise<Server> {
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return server
}
