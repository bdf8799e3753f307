/**
 * Lets buttons with `data-copy` copy the text of the element that they name; where the browser refuses, the text is
 * selected instead.
 *
 * @param page - The page
 */
export function copyOnTap(page: Document): void {
  page.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('[data-copy]') : null
    const source = page.getElementById(button?.dataset.copy ?? '')
    if (button === null || source === null) return
    navigator.clipboard.writeText(source.textContent ?? '').then(
      () => {
        button.textContent = 'Copied'
      },
      () => page.getSelection()?.selectAllChildren(source),
    )
  })
}
