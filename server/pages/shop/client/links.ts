/** Addresses of products as the demo ranges have them: of domains that are nobody's (RFC 2606). */
const PRODUCT = /^https:\/\/[a-z]+\.example\/p\/([a-z0-9-]+)$/

/**
 * Leads the invented addresses of the demo ranges to pages that are here, inside the elements too.
 *
 * @param page - The page
 */
export function keepLinksHere(page: Document): void {
  const { shop, contact } = page.body.dataset
  page.addEventListener(
    'click',
    (event) => {
      const link = event.composedPath().find((node) => node instanceof HTMLAnchorElement)
      if (link === undefined) return
      const sku = PRODUCT.exec(link.href)?.[1]
      if (sku !== undefined) link.href = `/shops/${shop}/products/${sku.toUpperCase()}`
      else if (link.href === contact) link.href = '#contact'
    },
    { capture: true },
  )
}
