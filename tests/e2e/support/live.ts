import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { FastifyInstance } from 'fastify'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { buildApp } from '../../../server/app.ts'
import bentcreek from '../../../server/demo/bentcreek.json' with { type: 'json' }
import kingcup from '../../../server/demo/kingcup.json' with { type: 'json' }
import type { Settings } from '../../../server/settings.ts'
import { fixedRanges } from '../../../server/store/ranges.ts'
import { launchChromium } from '../../support/chromium.ts'

/** Body of a page, and how it is served. */
export interface ForeignPage {
  readonly body: string
  readonly head?: string
  readonly lang?: string
  readonly csp?: string
}

/** A page in the browser and what went wrong on it. */
export interface Visit {
  readonly page: Page
  /** Errors of scripts and messages of the content policy; none are expected anywhere. */
  readonly faults: string[]
  close(): Promise<void>
}

/** The service, a page of another origin that loads the widget from it, and a browser. Nothing is mocked. */
export interface Live {
  readonly browser: Browser
  /** Origin of the service. */
  readonly service: string
  readonly app: FastifyInstance
  /** Origin of the shop's own pages. */
  readonly shop: string
  /** Serves a page of the shop's and tells its address. */
  serve(page: ForeignPage): string
  /** Opens an address. */
  visit(address: string, context?: BrowserContextOptions): Promise<Visit>
  close(): Promise<void>
}

/** The tag that loads the widget from a service, as its documents have it. */
export const scriptOf = (service: string) =>
  `<script type="module" src="${service}/w/0/tallywatt.js"></script>`

/**
 * Starts everything that a test of the whole stands on.
 *
 * @param settings - Settings of the service that differ from its usual ones
 * @returns The service, the shop and the browser
 */
export async function startLive(settings: Partial<Settings> = {}): Promise<Live> {
  const pages = new Map<string, ForeignPage>()
  const shopServer = await listening(shopServing(pages))
  // Another host name than the service's, so that pages are of another site as well as of another origin.
  const shop = `http://localhost:${(shopServer.address() as AddressInfo).port}`
  const app = await serviceFor(shop, settings)
  const service = await app.listen({ port: 0, host: '127.0.0.1' })
  const browser = await launchChromium()
  return {
    browser,
    service,
    app,
    shop,
    serve: (page) => {
      const path = `/page-${pages.size + 1}`
      pages.set(path, { ...page, head: `${scriptOf(service)}${page.head ?? ''}` })
      return `${shop}${path}`
    },
    visit: (address, context) => visit(browser, address, context),
    close: async () => {
      await browser.close()
      await app.close()
      shopServer.closeAllConnections()
      shopServer.close()
    },
  }
}

/**
 * The service with both demo shops, whose answers a foreign origin may read.
 *
 * @param origin - That origin
 * @param settings - What differs from the usual settings
 * @returns The service, not listening
 */
export function serviceFor(origin: string, settings: Partial<Settings> = {}): Promise<FastifyInstance> {
  const [first, second] = [kingcup, bentcreek].map((range) => ({
    ...range,
    shop: { ...range.shop, allowedOrigins: [origin] },
  }))
  // A machine that runs other tests beside this one is slow; how a slow service sheds load is tested elsewhere.
  return buildApp({
    ranges: fixedRanges({ kingcup: first, bentcreek: second }),
    settings: { shedAfterMs: 60_000, ...settings },
  })
}

async function visit(browser: Browser, address: string, options: BrowserContextOptions = {}): Promise<Visit> {
  const context = await browser.newContext({ reducedMotion: 'reduce', ...options })
  const page = await context.newPage()
  const faults: string[] = []
  page.on('pageerror', (error) => faults.push(error.message))
  page.on('console', (message) => {
    if (/Content Security Policy|Trusted(HTML|Script)/i.test(message.text())) faults.push(message.text())
  })
  await page.goto(address)
  return { page, faults, close: () => context.close() }
}

function shopServing(pages: ReadonlyMap<string, ForeignPage>): Server {
  return createServer((request, response) => {
    const page = pages.get(new URL(request.url ?? '/', 'http://shop').pathname)
    if (page === undefined) {
      response.statusCode = 404
      response.end()
      return
    }
    response.setHeader('content-type', 'text/html; charset=utf-8')
    if (page.csp !== undefined) response.setHeader('content-security-policy', page.csp)
    response.end(`<!doctype html><html lang="${page.lang ?? 'en'}"><head><meta charset="utf-8"><title>A shop's page</title>
<meta name="viewport" content="width=device-width, initial-scale=1">${page.head ?? ''}</head><body>${page.body}</body></html>`)
  })
}

async function listening(server: Server): Promise<Server> {
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return server
}
