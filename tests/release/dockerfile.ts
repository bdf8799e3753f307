/** One instruction of a Dockerfile. */
export interface Instruction {
  readonly name: string
  readonly words: string
}

/** A stage of a Dockerfile, without its FROM. */
export interface Stage {
  readonly image: string
  readonly name: string | undefined
  readonly instructions: readonly Instruction[]
}

/**
 * Reads the part of the Dockerfile language that ours uses: instructions with continued lines, comments, stages.
 *
 * @param text - The file
 * @returns Its stages in order
 */
export function readDockerfile(text: string): readonly Stage[] {
  const stages: { image: string; name: string | undefined; instructions: Instruction[] }[] = []
  const lines = text
    .replace(/^#.*\n/gm, '')
    .replace(/\\\n\s*/g, '')
    .split('\n')
  for (const line of lines) {
    const [, name = '', words = ''] = /^([A-Z]+) (.+)$/.exec(line) ?? []
    if (name === '') {
      if (line.trim() !== '') throw new Error(`not an instruction: ${line}`)
      continue
    }
    if (name === 'FROM') {
      const [image = '', , stage] = words.split(' ')
      stages.push({ image, name: stage, instructions: [] })
    } else {
      const stage = stages.at(-1)
      if (stage === undefined) throw new Error(`${name} before FROM`)
      stage.instructions.push({ name, words })
    }
  }
  return stages
}

/**
 * What the instructions of one kind say.
 *
 * @param stage - The stage
 * @param name - Such as `RUN`
 * @returns Their words, in order
 */
export function wordsOf(stage: Stage, name: string): readonly string[] {
  return stage.instructions.filter((instruction) => instruction.name === name).map(({ words }) => words)
}

/**
 * The environment that a stage sets.
 *
 * @param stage - The stage
 * @returns Variables by name
 */
export function environmentOf(stage: Stage): Readonly<Record<string, string>> {
  return Object.fromEntries(
    wordsOf(stage, 'ENV').map((words) => {
      const at = words.indexOf('=')
      return [words.slice(0, at), words.slice(at + 1)]
    }),
  )
}
