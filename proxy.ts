import { getSessionCookie } from "better-auth/cookies";
import { type NextRequest, NextResponse } from "next/server";
import { policyWithNonce } from "@/lib/platform/content-security.ts";
import { paths } from "@/lib/platform/paths.ts";

const workplace = /^\/(?:bench|review)(?:\/|$)/;

/**
 * Signed-in pages get a content-security policy with a number used once, so that no script runs that we did not send.
 * Uploads pass by (a proxy caps a body at 10 MB), and so do public pages: they are the same for everybody and have the
 * fixed policy of next.config.ts.
 *
 * Whoever opens a workplace without being signed in is sent to sign in, and from there to the very page; nothing of the page
 * is made for them. That the sign-in they bring is a true one is seen to by each workplace itself.
 */
export function proxy(request: NextRequest): NextResponse {
  const { pathname, search } = request.nextUrl;
  const navigates = request.method === "GET" && request.headers.get("accept")?.includes("text/html");
  if (workplace.test(pathname) && navigates && getSessionCookie(request) === null) {
    const to = new URL(`${paths.signIn()}?next=${encodeURIComponent(pathname + search)}`, request.nextUrl);
    return NextResponse.redirect(to);
  }
  const nonce = Buffer.from(crypto.randomUUID()).toString("base64");
  const policy = policyWithNonce(nonce, process.env.NODE_ENV === "development");
  const headers = new Headers(request.headers);
  headers.set("content-security-policy", policy);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set("content-security-policy", policy);
  return response;
}

export const config = {
  matcher: [
    {
      source: "/(bench|review|account)/:path*",
      // Only pages: forms and uploads are answered by themselves.
      missing: [
        { type: "header", key: "content-type", value: "(multipart/form-data|application/octet-stream).*" },
        { type: "header", key: "next-action" },
      ],
    },
    "/(bench|review|account)",
  ],
};
