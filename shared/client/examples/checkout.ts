/**
 * A checkout that asks whether what is in the cart goes together before it takes the money. Run it against a
 * service on this machine:
 *
 *   npx tsx shared/client/examples/checkout.ts http://127.0.0.1:8787 kingcup KC-ST12-1480 KC-CAB-16-2
 *
 * In a project of your own, import from 'tallywatt/client'.
 */
import { pathToFileURL } from 'node:url'
import { type CartAnswer, type Client, ConnectionError, createClient, ProblemError } from '../index.ts'

/** What the checkout does with the answer. */
export type Decision =
  | { readonly proceed: true; readonly notes: readonly string[] }
  | { readonly proceed: false; readonly reasons: readonly string[] }

/**
 * Whether a cart may go on to payment. A checkout must not fail because its adviser does: where there is no
 * answer, it goes on and says so.
 *
 * @param client - The service
 * @param shopId - The shop
 * @param skus - What lies in the cart
 * @returns What to do, with sentences to show
 */
export async function decide(client: Client, shopId: string, skus: readonly string[]): Promise<Decision> {
  try {
    const { data } = await client.checkCart(
      { shopId, body: { lines: skus.map((sku) => ({ sku, quantity: 1 })) } },
      { timeoutMs: 1500, retry: { retries: 1 } },
    )
    return decisionFor(data)
  } catch (error) {
    if (error instanceof ProblemError && error.status < 429) throw error
    if (error instanceof ProblemError || error instanceof ConnectionError) {
      return { proceed: true, notes: ['This cart was not checked.'] }
    }
    throw error
  }
}

function decisionFor({ ok, findings }: CartAnswer): Decision {
  const messages = (severity: string) =>
    findings.filter((finding) => finding.severity === severity).map(({ message }) => message)
  return ok
    ? { proceed: true, notes: messages('care') }
    : { proceed: false, reasons: [...messages('fail'), ...messages('care')] }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const [baseUrl = 'http://127.0.0.1:8787', shopId = 'kingcup', ...skus] = process.argv.slice(2)
  const decision = await decide(createClient({ baseUrl }), shopId, skus)
  console.log(decision.proceed ? 'Go on to payment.' : 'Stop and show:')
  for (const line of decision.proceed ? decision.notes : decision.reasons) console.log(`- ${line}`)
}
