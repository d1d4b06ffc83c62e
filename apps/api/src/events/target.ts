import { lookup } from 'node:dns';
import { BlockList, isIP, isIPv6, type LookupFunction } from 'node:net';

/**
 * Addresses that are not of the public internet, or lead back into it from behind.
 * Source: IANA IPv4 and IPv6 Special-Purpose Address Registries (RFC 6890), multicast included; from memory.
 */
const privateNets: readonly (readonly [net: string, bits: number])[] = [
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
  ['::', 127],
  ['64:ff9b::', 96],
  ['64:ff9b:1::', 48],
  ['100::', 64],
  ['2001::', 23],
  ['2001:db8::', 32],
  ['2002::', 16],
  ['fc00::', 7],
  ['fe80::', 10],
  ['ff00::', 8],
];

const blocked = new BlockList();
for (const [net, bits] of privateNets) blocked.addSubnet(net, bits, isIPv6(net) ? 'ipv6' : 'ipv4');

/** An IPv4 address written as IPv6 is judged as what it is. */
export const isPrivateAddress = (address: string): boolean =>
  blocked.check(address, isIPv6(address) ? 'ipv6' : 'ipv4');

/** Why nothing may be sent to an address; undefined when it may. A name is judged again each time it is looked up. */
export function targetFault(text: string, areLocalAllowed: boolean): string | undefined {
  if (!URL.canParse(text)) return 'it is no address such as https://shop.example/events';
  const { protocol, hostname, port, username, password, hash } = new URL(text);
  if (username !== '' || password !== '') return 'it holds a user name or a password';
  if (hash !== '') return 'it ends in a part after #, which is never sent';
  if (areLocalAllowed && (protocol === 'http:' || protocol === 'https:')) return undefined;
  if (protocol !== 'https:') return 'it does not begin with https://';
  if (port !== '') return 'it names a port; only the usual one, 443, is called';
  // After parsing, numbers in any other form are the plain form of an address.
  const literal = hostname.replace(/^\[|\]$/g, '');
  if (isIP(literal) !== 0) return isPrivateAddress(literal) ? `${literal} is no public address` : undefined;
  return /(?:^|\.)(?:localhost|local|internal|home\.arpa)$/.test(hostname.replace(/\.$/, ''))
    ? `${hostname} is no public name`
    : undefined;
}

/**
 * Looks a name up for a connection, and refuses it when any of its addresses is private: what is checked is what is
 * connected to, so that a name cannot be public when it is checked and private when it is called.
 */
export const publicLookup: LookupFunction = (hostname, options, callback) => {
  lookup(hostname, { ...options, all: true }, (failure, found) => {
    if (failure !== null) {
      callback(failure, []);
      return;
    }
    const strange = found.find(({ address }) => isPrivateAddress(address));
    if (strange === undefined && found.length > 0)
      callback(null, options.all === true ? found : found[0].address, found[0].family);
    else
      callback(
        new Error(`${hostname} leads to ${strange?.address ?? 'no address'}, which is no public address`),
        [],
      );
  });
};
