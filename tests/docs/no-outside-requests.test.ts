import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";

const root = join(import.meta.dirname, "..", "..");

/** Whatever lets a program ask another machine for something, and whatever loads a program that does. */
const asks =
  /\bfetch\(|\bWebSocket\(|\bEventSource\(|\bXMLHttpRequest\b|\bsendBeacon\(|from "(?:node:)?(?:http|https|http2|net|tls|dgram|undici)"|import\("(?:node:)?(?:http|https|http2|net|tls|dgram|undici)"\)|from "(?:pg|@aws-sdk\/[^"]+)"/;

/** Where it stands all the same, each with why no stranger chooses the address. */
const known: Record<string, string> = {
  "app/(catalogue)/_item/recompute-run.ts": "runs in the browser; asks for a path of our own",
  "app/_components/search-suggestions.js": "runs in the browser; asks for a path of our own",
  "app/_components/send-file.ts": "runs in the browser; sends to a path of our own",
  "app/bench/_offline/outbox.ts": "runs in the browser; sends to paths of our own",
  "app/bench/imports/[id]/load-form.tsx": "runs in the browser; sends to a path of our own",
  "lib/files/bucket-store.ts": "the bucket that the environment names",
  "lib/platform/metrics.ts": "listens on loopback, asks nobody",
  "lib/platform/watch-requests.ts": "types of requests that come in",
  "not-here.mjs": "two fixed paths of the very server it is part of",
  "only-read.mjs": "answers to requests that come in",
  "page-cache.mjs": "the database that the environment names",
  "server.mjs": "listens, asks nobody",
  "lib/store/stored-postgres-log.ts": "the database that the environment or a command names",
  "lib/store/text-client.ts": "the database that the environment names",
};

const files = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .map((file) => `${folder}/${file.replaceAll("\\", "/")}`)
    .filter((file) => /\.(?:tsx?|m?js)$/.test(file) && !file.includes("/generated/"));

it("the product asks no machine for anything but its own database and bucket: no address that a stranger names is ever fetched", () => {
  const beside = readdirSync(root).filter((file) => /^(?!vitest|next-env).*\.(?:ts|mjs)$/.test(file));
  const asking = [...files("app"), ...files("lib"), ...beside].filter((file) =>
    asks.test(readFileSync(join(root, file), "utf8")),
  );
  expect(asking.filter((file) => !(file in known))).toEqual([]);
  expect(Object.keys(known).filter((file) => !asking.includes(file))).toEqual([]);
  // Nor does the framework for us: its picture service, which fetches what an address names, takes none from elsewhere.
  expect(readFileSync(join(root, "next.config.ts"), "utf8")).not.toMatch(/remotePatterns|domains\s*:|rewrites/);
  for (const file of files("app")) expect(readFileSync(join(root, file), "utf8"), file).not.toContain('"next/image"');
});
