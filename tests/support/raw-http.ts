import { connect } from 'node:net'

/** A reply as it came over the wire. */
export interface RawReply {
  readonly status: number
  readonly head: string
  readonly headers: Readonly<Record<string, string>>
  readonly body: string
  /** Until the other side closed the connection. [ms] */
  readonly closedAfterMs: number
}

/**
 * Sends bytes over a connection of its own and reads until the other side closes it.
 *
 * @param port - Port of the service on this machine
 * @param chunks - What is sent, with a pause between one and the next
 * @param pauseMs - That pause. [ms]
 * @returns The reply
 */
export function sendRaw(port: number, chunks: readonly string[], pauseMs = 0): Promise<RawReply> {
  return new Promise((resolve, reject) => {
    const started = performance.now()
    let text = ''
    let next = 0
    let timer: NodeJS.Timeout | undefined
    const socket = connect(port, '127.0.0.1', function sendNext() {
      if (next >= chunks.length || socket.destroyed) return
      socket.write(chunks[next] ?? '')
      next += 1
      timer = setTimeout(sendNext, pauseMs)
    })
    socket.on('data', (data) => {
      text += data.toString('utf8')
    })
    socket.on('error', (error) => (text === '' ? reject(error) : undefined))
    socket.on('close', () => {
      clearTimeout(timer)
      resolve({ ...parse(text), closedAfterMs: performance.now() - started })
    })
  })
}

function parse(text: string): Omit<RawReply, 'closedAfterMs'> {
  const [head = '', ...rest] = text.split('\r\n\r\n')
  const [line = '', ...fields] = head.split('\r\n')
  const headers = fields.map((field) => {
    const colon = field.indexOf(':')
    return [field.slice(0, colon).toLowerCase(), field.slice(colon + 1).trim()] as const
  })
  return {
    status: Number(line.split(' ')[1]),
    head,
    headers: Object.fromEntries(headers),
    body: rest.join('\r\n\r\n'),
  }
}
