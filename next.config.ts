import { fileURLToPath } from "node:url";
import type { NextConfig } from "next";
import { fixedPolicy } from "./lib/platform/content-security.ts";

const root = fileURLToPath(new URL(".", import.meta.url));

/** Headers for every answer. Signed-in pages get their content-security policy from proxy.ts instead. */
const securityHeaders = [
  { key: "X-Content-Type-Options", value: "nosniff" },
  { key: "Referrer-Policy", value: "strict-origin-when-cross-origin" },
  { key: "X-Frame-Options", value: "DENY" },
  { key: "Cross-Origin-Opener-Policy", value: "same-origin" },
  { key: "Permissions-Policy", value: "camera=(self), geolocation=(), microphone=(), payment=()" },
];

// Development compiles in the page.
const publicPolicy = process.env.NODE_ENV === "development" ? `${fixedPolicy} 'unsafe-eval'` : fixedPolicy;

const config: NextConfig = {
  // They load code at run time, or count for the whole process: not to be bundled.
  serverExternalPackages: ["better-sqlite3", "@prisma/schema-engine-wasm", "pino", "prom-client"],
  turbopack: { root },
  outputFileTracingRoot: root,
  poweredByHeader: false,
  // Titles and links for machines stand in the head for everybody: a page kept for all has one form.
  htmlLimitedBots: /./,
  // `npm test` checks types over everything, tests included; a build does not do it a second time.
  typescript: { ignoreBuildErrors: true },
  async headers() {
    return [
      { source: "/:path*", headers: securityHeaders },
      // We keep rendered item pages ourselves (page-cache.mjs); who else keeps one has to ask whether it still stands.
      ...["/items/:path*", "/es/items/:path*"].map((source) => ({
        source,
        headers: [{ key: "Cache-Control", value: "public, max-age=0, must-revalidate" }],
      })),
      {
        source: "/((?!bench|review|account).*)",
        headers: [{ key: "Content-Security-Policy", value: publicPolicy }],
      },
    ];
  },
};

export default config;
