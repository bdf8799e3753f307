/**
 * The script that a shop's page loads. The elements come in modules of their own, so that a page whose security
 * policy stops them gets one line on its console instead of an error. The one for a unit's own page waits a moment
 * where the page doesn't have it yet: most pages hold one of the two.
 */
Promise.all([import('./elements.ts'), fitElement()]).catch((error: unknown) => {
  console.warn(
    "tallywatt could not start: Trusted Types must allow trusted-types lit-html 'allow-duplicates'",
    error,
  )
})

async function fitElement(): Promise<unknown> {
  if (!document.querySelector('tallywatt-fit')) await new Promise((resolve) => setTimeout(resolve, 999))
  return import('./fit/register.ts')
}

export type { TallywattFit } from './fit/fit.ts'
export type { TallywattGuide } from './guide/guide.ts'
