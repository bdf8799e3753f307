/** What holds for every operation. */
export const RULES: readonly { readonly name: string; readonly text: string }[] = [
  {
    name: 'Units',
    text: 'Every quantity has its unit at the end of its name: `continuousW`, `nominalV`, `lengthM`, `capacityAh`. Fractions run from 0 to 1. Money is a decimal string with a currency code beside it.',
  },
  {
    name: 'Keys',
    text: 'Asking for a shop needs no key: the shop id is public, and pages may ask from the origins that the shop lists. Reading and writing a range needs a secret key, as `Authorization: Bearer ...`, from a server; in an address, or from any page but the staff page of this service, it is refused.',
  },
  {
    name: 'Quotas',
    text: 'Calls are counted for each address and shop, and for each key. `RateLimit-Policy` names the quota and `RateLimit` what is left of it; when it is used up the answer is 429 with `Retry-After`.',
  },
  {
    name: 'Unknown fields',
    text: 'A field that the contract does not know is refused, so that a misspelt one is never dropped in silence.',
  },
  {
    name: 'What stays',
    text: 'Within v1 no field, code or operation is taken away and no bound is narrowed. New fields in replies, new operations, new codes of findings, cautions and problems may come at any time: take those you do not know as text.',
  },
  {
    name: 'Request ids',
    text: 'Each reply has `X-Request-Id`. Send your own, 8 to 64 letters, digits, dots, dashes and underscores, to find a call again in the logs.',
  },
]

/**
 * The client in a few lines.
 *
 * @param origin - Where the service is reached
 * @returns TypeScript
 */
export function clientSample(origin: string): string {
  return `import { createClient, ProblemError } from 'tallywatt/client'

const client = createClient({ baseUrl: '${origin}' })
try {
  const { data } = await client.sizeShop({
    shopId: 'kingcup',
    body: { loads: [{ id: 'kettle', rating: { basis: 'input-watts', watts: 900 } }] },
  })
  console.log(data.outcome, data.recommended?.name)
} catch (error) {
  if (error instanceof ProblemError) console.error(error.code, error.problem.errors)
  else throw error
}`
}
