interface Field {
  readonly name: string
  readonly type?: { readonly text: string }
  readonly description?: string
  readonly readonly?: boolean
}

interface Declaration {
  readonly name: string
  readonly tagName?: string
  readonly description?: string
  readonly members?: readonly (Field & { readonly kind: string })[]
}

/** The part of a custom-elements manifest that is read here. */
export interface ElementManifest {
  readonly modules: readonly { readonly path: string; readonly declarations: readonly Declaration[] }[]
}

/**
 * The elements as declarations: what a page may set and read, none of what is inside.
 *
 * @param manifest - The custom-elements manifest
 * @param eventsModule - Module that declares `TallywattEvents`, as it is imported from here
 * @returns Text of a declaration file
 */
export function elementDeclarations(manifest: ElementManifest, eventsModule: string): string {
  const elements = manifest.modules.flatMap(({ declarations }) =>
    declarations.filter(({ tagName }) => tagName !== undefined),
  )
  const interfaces = elements.map(({ name, description, members = [] }) => {
    const fields = members
      .filter(({ kind }) => kind === 'field')
      .map(
        (field) =>
          `${comment(field.description, '  ')}  ${field.readonly ? 'readonly ' : ''}${field.name}: ${field.type?.text ?? 'unknown'}\n`,
      )
    return `${comment(description, '')}export interface ${name} extends HTMLElement {\n${fields.join('')}}\n`
  })
  const tags = elements.map(({ name, tagName }) => `    '${tagName}': ${name}\n`)
  return `import type { TallywattEvents } from '${eventsModule}'

export type { TallywattEvents }

${interfaces.join('\n')}
declare global {
  interface HTMLElementTagNameMap {
${tags.join('')}  }
}
`
}

function comment(text: string | undefined, indent: string): string {
  return text === undefined ? '' : `${indent}/** ${text.replaceAll('*/', '* /')} */\n`
}
