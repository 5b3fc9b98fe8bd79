import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { GET as readReadings } from "@/app/api/v1/items/[slug]/readings.csv/route.ts";
import { GET as readItem } from "@/app/api/v1/items/[slug]/route.ts";
import { GET as readLog } from "@/app/api/v1/log/route.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { asked, publishedRegistry } from "../support/published-database.ts";
import { chained } from "../support/sample-revisions.ts";
import { measuredParts, snapshotOfPart } from "../support/scenario-parts.ts";
import { assay } from "./run-assay.ts";

const folder = mkdtempSync(join(tmpdir(), "assay-reproduce-"));
const exported = join(folder, "exported");
let server: Server;
let address = "";
let lying = false;

beforeAll(async () => {
  const many = measuredParts.find(({ inputs }) => inputs.some((input) => input.shots.length > 4))!;
  const few = measuredParts.find((one) => one !== many)!;
  const photos: Snapshot["photos"] = [];
  await publishedRegistry(
    chained([
      snapshotOfPart(few.inputs, few.part, { photos }),
      snapshotOfPart(many.inputs, many.part, {
        photos,
        revision: 2,
        kind: "update",
        reason: "More was measured.",
        publishedAt: "2026-11-25T09:30:00+01:00",
      }),
    ]),
  );
  server = createServer(async (request, response) => {
    const path = request.url ?? "/";
    const slug = /^\/api\/v1\/items\/([^/?]+)/.exec(path)?.[1];
    const params = { params: Promise.resolve({ slug: slug ?? "" }) };
    const answer = path.includes("readings.csv")
      ? await readReadings(asked(path), params)
      : slug
        ? await readItem(asked(path), params)
        : path === "/api/v1/log"
          ? await readLog(asked(path))
          : new Response("", { status: 404 });
    let body = await answer.text();
    if (lying && path.includes("readings.csv")) body = body.replace(",ppm,", ",ppb,").replace(",mg/kg,", ",ppb,");
    if (lying && !path.includes("readings.csv") && slug) body = body.replace('"stated":{"U":"', '"stated":{"U":"1');
    response.writeHead(answer.status).end(body);
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});
afterAll(() => {
  server.close();
  rmSync(folder, { recursive: true, force: true });
});

describe("reproduce", () => {
  it("makes a published revision again from its address, in each of its forms", async () => {
    for (const path of [
      "/items/bluebell-mug",
      "/items/bluebell-mug/revisions/2",
      "/api/v1/items/bluebell-mug",
      "/api/v1/items/bluebell-mug?revision=1",
    ]) {
      const ran = await assay("reproduce", `${address}${path}`);
      expect(ran, path).toMatchObject({ code: 0, stderr: "" });
      expect(ran.stdout).toContain(`revision ${path.endsWith("=1") ? 1 : 2}\n`);
      expect(ran.stdout).toMatch(/Agrees: All \d+ published figures of \d+ results? come out the same\./);
      expect(ran.stdout).toMatch(/Agrees: readings\.csv holds the same \d+ rows? as the revision\./);
      expect(ran.stdout).toMatch(/Agrees: The signature of entry 2/);
    }
  });
  it("names what a registry that lies changed", async () => {
    lying = true;
    const ran = await assay("reproduce", `${address}/items/bluebell-mug`);
    lying = false;
    expect(ran.code).toBe(1);
    expect(ran.stdout).toMatch(/Stated U: published “1\d+[^”]*”, made again “\d+/);
    expect(ran.stdout).toContain("Differs: readings.csv differs from the revision in 1 cell");
    expect(ran.stdout).toContain("its published text was changed");
    expect(ran.stderr).toMatch(/^This revision does not hold: \d checks found a difference\.\n$/);
  });
  it("makes it again from an exported folder, and from a file alone", async () => {
    expect((await assay("export", exported)).stderr).toBe("");
    const file = join(exported, "snapshots", "bluebell-mug", "2.json");
    const whole = await assay("reproduce", file);
    expect(whole.code).toBe(0);
    expect(whole.stdout).toContain("The signature of entry 2");
    const alone = join(folder, "alone.json");
    writeFileSync(alone, readFileSync(file));
    const ran = await assay("reproduce", alone);
    expect(ran.code).toBe(0);
    expect(ran.stdout).toContain("Not checked: The revision was not held against a log");
    expect(ran.stdout).not.toContain("readings.csv");
  });
  it("refuses what it cannot make again with one sentence", async () => {
    const notes = join(folder, "notes.json");
    writeFileSync(notes, '{"format":7}');
    for (const args of [[], ["none.json"], [notes], ["a", "b"], [`${address}/limits`], [`${address}/items/no-such`]]) {
      const ran = await assay("reproduce", ...args);
      expect(ran.code, args.join(" ")).toBe(2);
      expect(ran.stdout).toBe("");
      expect(ran.stderr.trim().split("\n")).toHaveLength(1);
    }
  });
});
