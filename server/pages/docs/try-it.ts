/** Script of the reference: brings the forms and copy buttons to life. Runs in the browser. */

for (const button of document.querySelectorAll<HTMLButtonElement>('button[data-copy]')) {
  button.hidden = false
  button.addEventListener('click', () => copy(button))
}
for (const form of document.querySelectorAll<HTMLFormElement>('form[data-try]')) {
  const frame = form.closest('details')
  if (frame !== null) frame.hidden = false
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    void send(form)
  })
}
openTarget()
window.addEventListener('hashchange', openTarget)
closeContentsOnPhones()

async function copy(button: HTMLButtonElement): Promise<void> {
  const text = button.parentElement?.querySelector('pre')?.textContent ?? ''
  try {
    await navigator.clipboard.writeText(text)
    button.textContent = 'Copied'
  } catch {
    button.textContent = 'Press Ctrl+C'
    const pre = button.parentElement?.querySelector('pre')
    if (pre) getSelection()?.selectAllChildren(pre)
  }
  setTimeout(() => {
    button.textContent = 'Copy'
  }, 2000)
}

async function send(form: HTMLFormElement): Promise<void> {
  const outcome = form.querySelector('.outcome')
  const shown = form.querySelector<HTMLElement>('.reply')
  if (outcome === null || shown === null) return
  outcome.textContent = 'Asking…'
  const body = form.querySelector<HTMLTextAreaElement>('textarea')?.value
  const started = performance.now()
  try {
    const response = await fetch(addressOf(form), {
      method: form.dataset.method ?? 'GET',
      headers: body === undefined ? {} : { 'content-type': 'application/json' },
      ...(body === undefined ? {} : { body }),
    })
    const text = await response.text()
    const took = Math.round(performance.now() - started)
    outcome.textContent = `${response.status} after ${took} ms, request ${response.headers.get('x-request-id') ?? ''}`
    shown.textContent = pretty(text)
  } catch (error) {
    outcome.textContent = `No reply: ${String(error)}`
    shown.textContent = ''
  }
  shown.hidden = shown.textContent === ''
}

function addressOf(form: HTMLFormElement): string {
  const query = new URLSearchParams()
  let path = form.dataset.path ?? '/'
  for (const input of form.querySelectorAll<HTMLInputElement>('input[data-place]')) {
    if (input.dataset.place === 'path') {
      path = path.replace(`{${input.name}}`, encodeURIComponent(input.value))
    } else if (input.value !== '') {
      query.set(input.name, input.value)
    }
  }
  const text = query.toString()
  return text === '' ? path : `${path}?${text}`
}

function pretty(text: string): string {
  try {
    return JSON.stringify(JSON.parse(text), null, 2)
  } catch {
    return text
  }
}

/** Unfolds what a link leads to. */
function openTarget(): void {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)))
  if (target instanceof HTMLDetailsElement) target.open = true
}

/** On a narrow screen the contents would push the page away. */
function closeContentsOnPhones(): void {
  const contents = document.querySelector<HTMLDetailsElement>('nav > details')
  if (contents !== null && matchMedia('(max-width: 62rem)').matches) contents.open = false
}
