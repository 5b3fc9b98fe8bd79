/**
 * Who asked, by the addresses that proxies of ours wrote down: each appends the one it was asked from. Of the chain
 * "header, socket" the last `trusted` were written by us or are us; the one before them asked. What stands further left was said by
 * the asker and means nothing.
 *
 * @example clientAddress("203.0.113.9, 198.51.100.7", "10.0.0.2", 1) // "198.51.100.7"
 */
export function clientAddress(header: string | undefined, socket: string, trusted: number): string {
  const chain = [...(header ?? "").split(",").map((one) => one.trim()), socket].filter((one) => one !== "");
  return plainAddress(chain.at(-1 - trusted) ?? chain[0] ?? "");
}

/** An IPv4 address that came over an IPv6 socket, as it is usually written. */
const plainAddress = (address: string): string => address.replace(/^::ffff:(?=\d+\.)/i, "");

/**
 * What counts as one place: an IPv4 address, or the network of an IPv6 one, since whoever has one address there has 2^64
 * (RFC 6177, RFC 4291 §2.5.1).
 *
 * @example placeOf("2001:db8:1:2:3:4:5:6") // "2001:db8:1:2::/64"
 */
export function placeOf(address: string): string {
  if (!address.includes(":")) return address;
  const [left = "", right] = address.toLowerCase().split("%")[0]!.split("::");
  const head = left.split(":").filter(Boolean);
  const tail = (right ?? "").split(":").filter(Boolean);
  const zeros = right === undefined ? 0 : Math.max(0, 8 - head.length - tail.length);
  const all = [...head, ...Array.from({ length: zeros }, () => "0"), ...tail];
  return `${all
    .slice(0, 4)
    .map((part) => part.replace(/^0+(?=.)/, ""))
    .join(":")}::/64`;
}

/** The machine itself: a proxy that was not declared, or somebody at the machine. */
export const isLoopback = (address: string): boolean => address === "::1" || address.startsWith("127.");
