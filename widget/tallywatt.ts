/**
 * The script that a shop's page loads. The elements come in a module of their own, so that a page whose security
 * policy stops them gets one line on its console instead of an error.
 */
import('./elements.ts').catch((error: unknown) => {
  console.warn(
    "tallywatt: the elements could not start. A page with 'require-trusted-types-for' needs " +
      '"trusted-types lit-html \'allow-duplicates\'" in its Content-Security-Policy.',
    error,
  )
})

export type { TallywattFit } from './fit/fit.ts'
export type { TallywattGuide } from './guide/guide.ts'
