/** What every page's policy has in common: nothing from elsewhere, nothing framed, no plug-ins, forms only to us. */
const common = [
  "default-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
  // Sizes of drawings stand in style attributes; no style sheet from elsewhere.
  "style-src 'self' 'unsafe-inline'",
];

/**
 * For public pages, which are the same for everybody and can be kept: our own scripts, and the ones within our page. WebAssembly
 * of ours may run: it reads bar codes where the browser cannot. It opens no way to run text as a script.
 */
export const fixedPolicy = [...common, "script-src 'self' 'unsafe-inline' 'wasm-unsafe-eval'"].join("; ");

/** For signed-in pages: only scripts that carry this page's number, and what those load. */
export const policyWithNonce = (nonce: string, development: boolean): string =>
  [...common, `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${development ? " 'unsafe-eval'" : ""}`].join("; ");
