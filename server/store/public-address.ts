import { lookup as dnsLookup, type LookupAddress } from 'node:dns'
import { BlockList, isIP, type LookupFunction } from 'node:net'

/**
 * Addresses that aren't out on the internet. IANA IPv4 Special-Purpose Address Registry (RFC 6890) and the
 * multicast and reserved blocks (RFC 5771, RFC 1112).
 */
const SPECIAL_IPV4: readonly (readonly [string, number])[] = [
  ['0.0.0.0', 8],
  ['10.0.0.0', 8],
  ['100.64.0.0', 10],
  ['127.0.0.0', 8],
  ['169.254.0.0', 16],
  ['172.16.0.0', 12],
  ['192.0.0.0', 24],
  ['192.0.2.0', 24],
  ['192.88.99.0', 24],
  ['192.168.0.0', 16],
  ['198.18.0.0', 15],
  ['198.51.100.0', 24],
  ['203.0.113.0', 24],
  ['224.0.0.0', 4],
  ['240.0.0.0', 4],
]

/** Parts of 2000::/3 that aren't plain unicast: IANA IPv6 Special-Purpose Address Registry; 6to4 (RFC 3056). */
const SPECIAL_IPV6: readonly (readonly [string, number])[] = [
  ['2001::', 23],
  ['2001:db8::', 32],
  ['2002::', 16],
  ['3fff::', 20],
]

const special = new BlockList()
for (const [net, prefix] of SPECIAL_IPV4) special.addSubnet(net, prefix, 'ipv4')
for (const [net, prefix] of SPECIAL_IPV6) special.addSubnet(net, prefix, 'ipv6')
const globalUnicast = new BlockList()
globalUnicast.addSubnet('2000::', 3, 'ipv6')

/**
 * Whether an IP address is out on the internet. Of IPv6 only global unicast is: so mapped, translated, link-local
 * and unique local addresses are not, whatever they carry inside.
 *
 * @param address - An IPv4 or IPv6 address, without brackets
 * @returns False for private, local and special addresses, and for what is no address
 */
export function isPublicAddress(address: string): boolean {
  const family = isIP(address)
  if (family === 4) return !special.check(address, 'ipv4')
  if (family === 6) return globalUnicast.check(address, 'ipv6') && !special.check(address, 'ipv6')
  return false
}

/** Resolves a host name to all its addresses. */
export type Resolve = (
  hostname: string,
  callback: (error: Error | null, addresses: readonly LookupAddress[]) => void,
) => void

/**
 * A look-up for connections that refuses host names of which any address isn't public. It runs at the moment of
 * connecting, and the connection uses the very address that was looked at.
 *
 * @param resolve - Resolves names; the system's way where left out
 * @returns What `net.connect` takes as `lookup`
 */
export function publicLookup(
  resolve: Resolve = (hostname, callback) => dnsLookup(hostname, { all: true }, callback),
): LookupFunction {
  return (hostname, options, callback) => {
    resolve(hostname, (error, addresses) => {
      const first = addresses?.[0]
      if (error !== null || first === undefined) {
        callback(error ?? new Error(`"${hostname}" has no address`), '', 0)
      } else if (!addresses.every(({ address }) => isPublicAddress(address))) {
        callback(new Error(`"${hostname}" has an address that isn't public`), '', 0)
      } else if (options.all) {
        callback(null, [...addresses])
      } else {
        callback(null, first.address, first.family)
      }
    })
  }
}
