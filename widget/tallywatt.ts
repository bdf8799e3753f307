/**
 * The script that a shop's page loads. The elements come in modules of their own, so that a page whose security
 * policy stops them gets one line on its console instead of an error. The one for a unit's own page waits until the
 * page has it or has time: most pages hold one of the two.
 */
Promise.all([import('./elements.ts'), fitElement()]).catch((error: unknown) => {
  console.warn(
    "tallywatt: the elements could not start. A page with 'require-trusted-types-for' needs " +
      '"trusted-types lit-html \'allow-duplicates\'" in its Content-Security-Policy.',
    error,
  )
})

async function fitElement(): Promise<unknown> {
  if (document.querySelector('tallywatt-fit') === null) await idle()
  return import('./fit/register.ts')
}

/** Resolves once the page has nothing better to do; soon in browsers that can't tell. */
function idle(): Promise<unknown> {
  return new Promise((resolve) => {
    if ('requestIdleCallback' in window) requestIdleCallback(resolve, { timeout: 4000 })
    else setTimeout(resolve, 1000)
  })
}

export type { TallywattFit } from './fit/fit.ts'
export type { TallywattGuide } from './guide/guide.ts'
