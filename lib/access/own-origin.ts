/**
 * Whether a request may act for the person whose cookie it carries: a page of another site may not, whatever the browser
 * lets it send. Browsers name the page's origin with every POST and every script's request to elsewhere (Fetch standard, “Origin header”); a
 * request that names none is a link that was followed, or a program. `null`, which hidden frames send, is nobody's origin.
 */
export function fromOwnOrigin(headers: Headers, baseUrl: string): boolean {
  const origin = headers.get("origin");
  if (origin === null) return true;
  if (!URL.canParse(origin)) return false;
  const { host } = new URL(origin);
  // No page can set these two for a request to another site: Host is the browser's own, the other needs our leave first.
  return [new URL(baseUrl).host, headers.get("host"), headers.get("x-forwarded-host")].includes(host);
}
