/**
 * Where to go on after signing in: an address of ours or `otherwise`. Read as a browser reads it, since browsers pass over tabs and line
 * ends and take `\` for `/`: "/\t/elsewhere.example" would lead away.
 *
 * @example safeTarget("//elsewhere.example", "/bench") // "/bench"
 */
export function safeTarget(next: string, otherwise: string): string {
  const here = "https://own.invalid";
  if (!next.startsWith("/") || !URL.canParse(next, here)) return otherwise;
  const url = new URL(next, here);
  return url.origin === here ? `${url.pathname}${url.search}${url.hash}`.replace(/^\/{2,}/, "/") : otherwise;
}
