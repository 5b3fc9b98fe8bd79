import { randomInt, randomUUID } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import type { Browser, BrowserContext } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, expect, it } from "vitest";
import { sha256 } from "@/lib/platform/sha256.ts";
import { assay } from "../assay/run-assay.ts";
import { openBrowser } from "../support/browser.ts";
import { served } from "../support/served.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

async function signedIn(): Promise<BrowserContext> {
  const context = await browser.newContext({ baseURL: served().base });
  const page = await context.newPage();
  const [email = "", password = ""] = (served().passwords["tester"] ?? "").split(" ");
  await page.goto("/account/sign-in");
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("main").getByRole("button", { name: "Sign in" }).click();
  await page.waitForURL((url) => !url.pathname.endsWith("/sign-in"));
  await page.close();
  return context;
}

type Answer = Record<string, string>;
/** The answer, or null where the server died before it came. */
const post = async (context: BrowserContext, path: string, options: object): Promise<Answer | null> => {
  const headers = { accept: "application/json" };
  const answer = await context.request.post(path, { headers, timeout: 20_000, ...options }).catch(() => null);
  return answer?.ok() ? await answer.json().catch(() => null) : null;
};

/** Photos like no other, large enough to keep the server busy for a moment. */
async function noisyPhotos(count: number): Promise<Buffer[]> {
  const noise = { type: "gaussian" as const, mean: 128, sigma: 40 };
  const base = await sharp({ create: { width: 1200, height: 900, channels: 3, background: "#888", noise } })
    .jpeg()
    .toBuffer();
  const edge = (n: number) => ({ left: n, top: n, width: 1100, height: 800 });
  return Promise.all(Array.from({ length: count }, (_, n) => sharp(base).extract(edge(n)).jpeg().toBuffer()));
}

const readingsOf = (partId: string, round: string) => ({
  step: "readings",
  partId,
  instrumentId: null,
  settings: {
    date: "2026-11-20",
    timeZone: "UTC",
    unit: "ppm",
    quantity: "bulk-mass-fraction",
    k: 2,
    decimal: "point",
  },
  elements: ["Pb"],
  show: { error: true, limit: false },
  rows: [1, 2, 3, 4, 5].map((n) => ({
    sample: "killed",
    number: `${round}-${n}`,
    spot: "1",
    "Pb value": String(100 + n),
    "Pb error": "9",
  })),
});

it("killed at ten random moments between upload and save, nothing saved is lost and every orphan is listed", async () => {
  const context = await signedIn();
  const start = await post(context, "/bench/table/send", {
    data: {
      step: "item",
      sendId: randomUUID(),
      item: {
        name: "Jug under a bad cable",
        category: "mug-or-cup",
        ageGroup: "unknown",
        foodContact: true,
        mouthable: false,
        marks: "",
      },
      object: { label: "jug 1", howGot: "given", whoPaid: "nobody" },
      part: { name: "glaze", material: "glaze", form: "coating" },
    },
  });
  const { itemId = "", partId = "" } = start ?? {};
  expect(partId).not.toBe("");
  const photos = await noisyPhotos(100);
  const upload = () =>
    post(context, `/bench/items/${itemId}/photos/upload`, {
      multipart: { photo: { name: "noisy.jpg", mimeType: "image/jpeg", buffer: photos.pop() ?? Buffer.alloc(0) } },
    });
  // How long a sending takes on a server that has just begun, so that the moments fall into it.
  await served().kill();
  await served().start();
  const before = performance.now();
  const saved = { photos: [(await upload())?.["id"] ?? ""], batches: [] as string[] };
  const whole = Math.ceil(performance.now() - before);
  const moments: number[] = [];
  for (let round = 1; round <= 10; round += 1) {
    // Sent one after the other until the server dies under them.
    const untilItDies = async (send: () => Promise<Answer | null>, done: (answer: Answer) => void) => {
      for (let answer = await send(); answer !== null; answer = await send()) done(answer);
    };
    let sheet = 0;
    const sending = [
      untilItDies(upload, ({ id = "" }) => saved.photos.push(id)),
      untilItDies(
        () => post(context, "/bench/table/send", { data: readingsOf(partId, `${round}.${sheet++}`) }),
        ({ batchId = "" }) => saved.batches.push(batchId),
      ),
    ];
    const moment = randomInt(0, Math.ceil(whole * 1.5));
    moments.push(moment);
    await new Promise((resolve) => setTimeout(resolve, moment));
    await served().kill();
    await Promise.all(sending);
    await served().start();
  }
  console.log(
    `killed after ${moments.join(", ")} ms (a sending takes ${whole} ms); saved: ${saved.photos.length} photos, ${saved.batches.length} files of readings`,
  );

  const db = new Database(join(served().dataDir, "registry.db"), { readonly: true });
  const rows = <T>(sql: string, ...values: unknown[]) => db.prepare(sql).all(...values) as T[];
  expect(rows("PRAGMA integrity_check")).toEqual([{ integrity_check: "ok" }]);
  // What was answered as saved is there.
  for (const id of saved.photos) {
    const files = rows<{ key: string; sha256: string }>(`SELECT key, sha256 FROM "PhotoFile" WHERE photoId = ?`, id);
    expect(files.length, `files of photo ${id}`).toBeGreaterThan(0);
    for (const file of files)
      expect(sha256(readFileSync(join(served().dataDir, "photos", file.key)))).toBe(file.sha256);
  }
  for (const id of saved.batches)
    expect(rows(`SELECT id FROM "Reading" WHERE batchId = ? AND componentId = ?`, id, partId)).toHaveLength(5);
  // No import is half written, whether its answer came or not.
  for (const batch of rows<{ state: string; n: number }>(
    `SELECT b.state, count(r.id) AS n FROM "ImportBatch" b LEFT JOIN "Reading" r ON r.batchId = b.id
     WHERE b.source = 'hand' AND b.fileName LIKE 'by hand%' AND b.rowsTotal IN (0, 6) GROUP BY b.id`,
  ))
    expect([batch.state, batch.n]).toEqual(batch.state === "imported" ? ["imported", 5] : ["uploaded", 0]);

  // Every file on the disk that no record names, found apart from the command, stands in its list.
  const named = new Set(
    rows<{ path: string }>(
      `SELECT 'photos/' || key AS path FROM "PhotoFile" UNION SELECT 'photos/' || fileKey FROM "Photo"
       UNION SELECT 'originals/' || originalKey FROM "Photo" WHERE originalKey IS NOT NULL`,
    ).map((row) => row.path),
  );
  db.close();
  const strays = ["photos", "originals"]
    .flatMap((folder) => readdirSync(join(served().dataDir, folder)).map((name) => `${folder}/${name}`))
    .filter((path) => !named.has(path))
    .sort();
  const { code, stdout } = await assay("verify-files", served().dataDir);
  const listed = stdout.split("\n").flatMap((line) => /^(?:orphan|unfinished): ([^,]+),/.exec(line)?.[1] ?? []);
  expect(listed.sort()).toEqual(strays);
  expect(stdout).not.toMatch(/^(?:missing|changed)/m);
  expect(code).toBe(strays.length > 0 ? 1 : 0);
  console.log(`${strays.length} orphans, all listed`);
  await context.close();
}, 300_000);
