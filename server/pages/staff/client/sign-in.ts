import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { Page } from './state.ts'

/**
 * Asks for the shop and its key.
 *
 * @param page - The page
 * @param failure - Why the last try failed
 * @param signIn - Called with what was typed
 * @returns The form
 */
export function signInView(
  { words, state }: Page,
  failure: string | undefined,
  signIn: (shopId: string, key: string) => Promise<void>,
): TemplateResult {
  const submit = (event: Event) => {
    event.preventDefault()
    const form = event.currentTarget as HTMLFormElement
    const text = (name: string) => String(new FormData(form).get(name) ?? '').trim()
    void signIn(text('shop'), text('key'))
    // The field forgets it too: only the calls of this page hold the key.
    const key = form.elements.namedItem('key')
    if (key instanceof HTMLInputElement) key.value = ''
  }
  return html`<main class="sign-in" aria-busy=${state.busy}>
    <h1>${words.signInHeading}</h1>
    <p>${words.signInLead}</p>
    ${failure === undefined ? nothing : html`<p class="notice failure" id="notice">${failure}</p>`}
    <form @submit=${submit} autocomplete="off">
      <label>${words.shopId} <input id="shop" name="shop" type="text" required autocomplete="off" autocapitalize="none" spellcheck="false"
        pattern="[a-z0-9][a-z0-9\\-]*" value=${state.shopId} /></label>
      <label>${words.key} <input id="key" name="key" type="password" required autocomplete="off" spellcheck="false" /></label>
      <button class="go">${words.signIn}</button>
    </form></main>`
}
