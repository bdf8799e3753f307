/** A style sheet that is made once and adopted by every element that needs it. */
export interface Sheet {
  readonly text: string
  /** The constructed sheet; a strict page allows those, and no style attribute. */
  constructed(): CSSStyleSheet
}

/**
 * A static style sheet.
 *
 * @param strings - Its text; a sheet takes no values, which keeps it the same for every element
 * @returns The sheet
 */
export function css([text = '']: TemplateStringsArray): Sheet {
  let made: CSSStyleSheet | undefined
  return {
    text,
    constructed: () => {
      if (made === undefined) {
        made = new CSSStyleSheet()
        made.replaceSync(text)
      }
      return made
    },
  }
}
