import { closeSync, mkdtempSync, openSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { logStream } from '../../server/log-stream.ts'

const folder = mkdtempSync(join(tmpdir(), 'tallywatt-log-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('a stream of log lines', () => {
  it('writes every line once and in order, also those that are left at the exit', async () => {
    const file = join(folder, 'lines')
    const fd = openSync(file, 'w')
    const stream = logStream(fd)
    const lines = Array.from({ length: 2000 }, (_, index) => `{"line":${index},"text":"größer"}\n`)
    for (const line of lines.slice(0, 1900)) stream.write(line)
    await expect.poll(() => readFileSync(file, 'utf8')).toBe(lines.slice(0, 1900).join(''))
    for (const line of lines.slice(1900)) stream.write(line)
    stream.flush()
    await expect
      .poll(() => readFileSync(file, 'utf8').split('\n').sort())
      .toEqual(lines.join('').split('\n').sort())
    closeSync(fd)
  })

  it.runIf(process.platform === 'linux')('gives up at the exit where there is no room', () => {
    const fd = openSync('/dev/full', 'w')
    const stream = logStream(fd)
    stream.write('a line\n')
    stream.write('another\n')
    expect(() => stream.flush()).not.toThrow()
    closeSync(fd)
  })
})
