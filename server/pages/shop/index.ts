import type { FastifyInstance } from 'fastify'
import { asPage } from '../../plugins/headers.ts'
import { sendProblem } from '../../plugins/problems.ts'
import type { Ranges } from '../../store/ranges.ts'
import { originOf } from '../origin.ts'
import { reserveRules, themeRule } from '../snippet.ts'
import { categoryPage } from './category.ts'
import type { Shop } from './frame.ts'
import { LOOKS } from './looks.ts'
import { productPage } from './product.ts'

const POLICY = "script-src 'self'; style-src 'self'; connect-src 'self'; img-src 'self'"

/**
 * Adds the pages of the demo shops: a category with the guide, a page for every product.
 *
 * @param app - The service
 * @param ranges - The ranges in force; a demo shop without one has no pages
 */
export function registerShopPages(app: FastifyInstance, ranges: Ranges): void {
  const shopOf = (shopId: string): Shop | undefined => {
    const look = Object.hasOwn(LOOKS, shopId) ? LOOKS[shopId] : undefined
    const range = ranges.current(shopId)
    return look === undefined || range === undefined ? undefined : { look, range }
  }
  app.get<{ Params: { shopId: string } }>('/shops/:shopId', (request, reply) => {
    const shop = shopOf(request.params.shopId)
    if (shop === undefined) return sendProblem(reply, 'unknown-shop')
    return asPage(reply, POLICY).send(categoryPage(shop, originOf(request)))
  })
  app.get<{ Params: { shopId: string; sku: string } }>('/shops/:shopId/products/:sku', (request, reply) => {
    const shop = shopOf(request.params.shopId)
    if (shop === undefined) return sendProblem(reply, 'unknown-shop')
    const page = productPage(shop, request.params.sku, originOf(request))
    return page === undefined ? sendProblem(reply, 'unknown-sku') : asPage(reply, POLICY).send(page)
  })
  app.get<{ Params: { shopId: string } }>('/shops/:shopId/theme.css', (request, reply) => {
    const shop = shopOf(request.params.shopId)
    if (shop === undefined) return sendProblem(reply, 'unknown-shop')
    const theme = themeRule(':is(tallywatt-guide, tallywatt-fit)', Object.entries(shop.look.theme))
    return reply
      .type('text/css; charset=utf-8')
      .header('cache-control', 'no-cache')
      .send(`${reserveRules(':is(tallywatt-guide, tallywatt-fit)')}\n${theme}\n`)
  })
}
