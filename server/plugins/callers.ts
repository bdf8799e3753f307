import { isIPv6 } from 'node:net'

/**
 * Who an address stands for: itself, or for IPv6 its /64 network, which one household or server has to itself.
 *
 * @param address - An IP address as the socket or a trusted proxy has it
 * @returns The address, or the first half of it
 */
export function callerOf(address: string): string {
  if (!address.includes(':')) return address
  if (address.startsWith('::ffff:') && address.includes('.')) return address.slice(7)
  if (!isIPv6(address)) return address
  const [head = '', tail] = (address.split('%', 1)[0] ?? '').split('::')
  const groups = head === '' ? [] : head.split(':')
  const rest = tail === undefined || tail === '' ? [] : tail.split(':')
  if (tail !== undefined) {
    while (groups.length + rest.length < 8) groups.push('0')
  }
  const network = [...groups, ...rest].slice(0, 4).map((group) => Number.parseInt(group, 16).toString(16))
  return `${network.join(':')}::/64`
}
