import { spawn } from "node:child_process";
import { copyFileSync, cpSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { type AddressInfo, createServer as createPort } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import Database from "better-sqlite3";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { GET as readItem } from "@/app/api/v1/items/[slug]/route.ts";
import { GET as readLog } from "@/app/api/v1/log/route.ts";
import { keepPhoto } from "@/lib/files/photo-store.ts";
import { signingKey } from "@/lib/platform/signing-key.ts";
import { openDatabase } from "@/lib/store/database.ts";
import { signLogHead } from "@/lib/workflows/sign-log-head.ts";
import { asked, publishAll, publishedRegistry } from "../support/published-database.ts";
import { chained, sampleHistory, sha256 } from "../support/sample-revisions.ts";
import { sampleSnapshot } from "../support/sample-snapshot.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "assay-log-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let names = 0;
const fresh = (): string => {
  names += 1;
  return join(folder, `place-${names}`);
};

type Ran = { code: number | null; stdout: string; stderr: string };
/** The command in its own process, while this one can still answer it. */
const assay = (args: string[], dataDir: string, more: Record<string, string> = {}): Promise<Ran> =>
  new Promise((resolve) => {
    const { DATABASE_URL: _, ...env } = process.env;
    const child = spawn(process.execPath, ["commands/assay.mjs", ...args], {
      cwd: root,
      env: { ...env, DATA_DIR: dataDir, ...more },
    });
    let stdout = "";
    let stderr = "";
    child.stdout.on("data", (data) => {
      stdout += data;
    });
    child.stderr.on("data", (data) => {
      stderr += data;
    });
    child.on("close", (code) => resolve({ code, stdout, stderr }));
  });
const oneSentence = ({ stderr }: Ran): boolean => stderr.trim().split("\n").length === 1 && stderr.trim().endsWith(".");

/** A registry in one folder: the sample revisions with a real (invented) photo, and a key. */
const dataDir = fresh();
let head = "";
let signer = "";
beforeAll(async () => {
  const pixels = await sharp({ create: { width: 40, height: 30, channels: 3, background: "#caa" } })
    .png()
    .toBuffer();
  const kept = await keepPhoto(dataDir, pixels);
  if (!kept.ok) throw new Error("the photo was not kept");
  const { fileKey: key, width, height, sha256: digest } = kept.value;
  const photos = [{ key, alt: "A plain square", width, height, sha256: digest }];
  const history = chained(
    [
      sampleSnapshot(),
      ...sampleHistory()
        .slice(1)
        .map((one) => one.snapshot),
    ].map((s) => ({ ...s, photos })),
  );
  const { url, db } = await publishedRegistry(history);
  head = history.at(-1)!.entry.hash;
  const signed = await signLogHead(db, { dataDir, clock: () => new Date("2026-11-29T09:00:00Z") });
  signer = signed!.publicKey;
  await db.$disconnect();
  copyFileSync(url.slice("file:".length), join(dataDir, "registry.db"));
  writeFileSync(join(dataDir, "keys", "auth-secret"), "an invented secret");
});

/** A copy of the registry in which one thing was changed behind the triggers' back. */
function tampered(change: (db: InstanceType<typeof Database>) => void): string {
  const copy = fresh();
  cpSync(dataDir, copy, { recursive: true });
  const db = new Database(join(copy, "registry.db"));
  db.exec('DROP TRIGGER "Publication_no_update"; DROP TRIGGER "Publication_no_delete"');
  change(db);
  db.close();
  return copy;
}
/** Turns over one bit of a stored member; `at` counts bytes. */
const flip = (seq: number, member: string, at: number, bit: number) =>
  tampered((db) => {
    const row = db.prepare(`SELECT CAST(${member} AS BLOB) AS bytes FROM "Publication" WHERE seq = ?`).get(seq) as {
      bytes: Buffer;
    };
    row.bytes[at]! ^= 1 << bit;
    db.prepare(`UPDATE "Publication" SET ${member} = CAST(? AS TEXT) WHERE seq = ?`).run(row.bytes, seq);
  });

describe("verify-log", () => {
  it("of a registry that nobody touched: every hash agrees, and the newest is named", async () => {
    const ran = await assay(["verify-log"], dataDir);
    expect(ran).toEqual({
      code: 0,
      stdout: `5 entries, all hashes agree; 1 signature agrees, key ${signer}; newest: 5:${head}\n`,
      stderr: "",
    });
  });
  it("holds the signature against the key that is expected", async () => {
    expect((await assay(["verify-log", "--key", signer], dataDir)).code).toBe(0);
    const other = signingKey(fresh()).publicKey;
    const ran = await assay(["verify-log", "--key", other], dataDir);
    expect([ran.code, ran.stdout.split(":")[0]]).toEqual([1, "head-key-differs"]);
  });
  it.each(["seq", "hash", "signedAt", "publicKey", "signature"])(
    "finds one bit turned over in a head's %s",
    async (member) => {
      const changed = tampered((db) => {
        db.exec('DROP TRIGGER "LogHead_no_update"');
        if (member === "seq") return db.exec(`UPDATE "LogHead" SET seq = seq ^ 1`.replace("seq ^ 1", "seq - 1"));
        const row = db.prepare(`SELECT CAST(${member} AS BLOB) AS bytes FROM "LogHead"`).get() as { bytes: Buffer };
        row.bytes[7]! ^= 1;
        return db.prepare(`UPDATE "LogHead" SET ${member} = CAST(? AS TEXT)`).run(row.bytes);
      });
      const ran = await assay(["verify-log"], changed);
      expect([ran.code, /^head-/.test(ran.stdout)], ran.stdout).toEqual([1, true]);
    },
  );
  it.each([
    ["a published text", 2, "snapshot", 600, 0, /^snapshot-changed: Entry 2 \(rattle, revision 1\)/m],
    ["a published text, into no UTF-8", 3, "snapshot", 1000, 7, /^snapshot-changed: Entry 3 \(bluebell-mug/m],
    ["an entry's time", 4, "publishedAt", 3, 1, /^entry-fields-changed: Entry 4 .*member “publishedAt”/m],
    ["an entry's own hash", 1, "hash", 10, 1, /^entry-hash-changed: Entry 1/m],
    ["the hash of the entry before", 5, "previousHash", 63, 2, /^previous-hash-differs: Entry 5/m],
  ])("finds one bit turned over in %s, and names the entry", async (_, seq, member, at, bit, names) => {
    const ran = await assay(["verify-log"], flip(seq, member, at, bit));
    expect(ran.code).toBe(1);
    expect(ran.stdout).toMatch(names);
    expect(oneSentence(ran), ran.stderr).toBe(true);
  });
  it("finds an entry taken out of the middle, and one cut from the end when the head is known", async () => {
    const cut = (seq: number) =>
      tampered((db) => {
        db.prepare(`DELETE FROM "Publication" WHERE seq = ?`).run(seq);
      });
    expect((await assay(["verify-log"], cut(3))).stdout).toContain("previous-hash-differs");
    // The head that was signed still speaks of the entry that is gone; who takes it out too is found by a head noted elsewhere.
    expect((await assay(["verify-log"], cut(5))).stdout).toMatch(/^head-differs/);
    const short = tampered((db) => {
      db.exec('DROP TRIGGER "LogHead_no_delete"; DELETE FROM "LogHead"; DELETE FROM "Publication" WHERE seq = 5');
    });
    expect((await assay(["verify-log"], short)).stdout).toContain("no signed head came with it");
    expect((await assay(["verify-log", "--head", `5:${head}`], short)).stdout).toMatch(/^head-differs/);
    expect((await assay(["verify-log", "--head", `5:${head}`], dataDir)).code).toBe(0);
  });
  it("refuses what it cannot look at with one sentence", async () => {
    const notes = join(folder, "notes.json");
    writeFileSync(notes, '{"a":1}');
    for (const args of [["none.json"], [notes], [folder], ["a", "b"], ["--head", "5"], ["--loud"]]) {
      const ran = await assay(["verify-log", ...args], dataDir);
      expect(ran.code, args.join(" ")).toBe(2);
      expect(ran.stdout).toBe("");
      expect(oneSentence(ran), ran.stderr).toBe(true);
    }
    expect((await assay(["verify-log"], join(folder, "nowhere"))).stderr).toContain("There is no registry at");
  });
});

describe("verify-log of a registry on the network", () => {
  let server: Server;
  let address = "";
  let lying = false;
  beforeAll(async () => {
    server = createServer(async (request, response) => {
      const path = request.url ?? "/";
      const slug = /^\/api\/v1\/items\/([^/?]+)/.exec(path)?.[1];
      const answer = slug
        ? await readItem(asked(path), { params: Promise.resolve({ slug }) })
        : path === "/api/v1/log"
          ? await readLog(asked(path))
          : new Response("", { status: 404 });
      const body = Buffer.from(await answer.arrayBuffer());
      if (lying && slug === "rattle") body[body.length - 9]! ^= 1;
      response.writeHead(answer.status, Object.fromEntries(answer.headers)).end(body);
    });
    await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
    address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
    // The handlers of this process read the database that publishedRegistry made.
  });
  afterAll(() => server.close());
  it("fetches the log and every revision, by the registry's address or the log's", async () => {
    for (const at of [address, `${address}/`, `${address}/api/v1/log`])
      expect((await assay(["verify-log", at], dataDir)).stdout).toContain(
        "5 entries, all hashes agree; 1 signature agrees",
      );
  });
  it("finds a text that is not the one the log holds", async () => {
    lying = true;
    const ran = await assay(["verify-log", address], dataDir);
    lying = false;
    expect(ran.code).toBe(1);
    expect(ran.stdout.match(/^snapshot-changed: .*$/gm)).toHaveLength(2);
  });
  it("says so in one sentence where nobody answers", async () => {
    const port = await new Promise<number>((resolve) => {
      const probe = createPort().listen(0, "127.0.0.1", () => {
        const { port: free } = probe.address() as AddressInfo;
        probe.close(() => resolve(free));
      });
    });
    const ran = await assay(["verify-log", `http://127.0.0.1:${port}`], dataDir);
    expect(ran.code).toBe(2);
    expect(ran.stderr).toContain("did not answer");
    expect(oneSentence(ran)).toBe(true);
  });
});

describe("export", () => {
  it("writes what is published, and the log of it holds", async () => {
    const to = fresh();
    expect((await assay(["export", to], dataDir)).code).toBe(0);
    const made = JSON.parse(readFileSync(join(to, "datapackage.json"), "utf8")) as {
      resources: { path: string; bytes: number; hash: string }[];
    };
    for (const { path, bytes, hash } of made.resources) {
      const content = readFileSync(join(to, path));
      expect([content.length, `sha256:${sha256(content)}`]).toEqual([bytes, hash]);
    }
    for (const name of ["photos", "snapshots/rattle/2.json", "results.csv"])
      expect(existsSync(join(to, name)), name).toBe(true);
    expect((await assay(["verify-log", to, "--key", signer], dataDir)).code).toBe(0);
    expect((await assay(["verify-log", join(to, "log.json")], dataDir)).code).toBe(0);
    rmSync(join(to, "snapshots", "rattle", "1.json"));
    const ran = await assay(["verify-log", to], dataDir);
    expect([ran.code, ran.stdout.split(":")[0]]).toEqual([1, "snapshot-missing"]);
  });
  it("reads a single file that carries its texts", async () => {
    const file = join(folder, "all.json");
    const history = sampleHistory();
    const all = { entries: history.map((one) => one.entry), snapshots: history.map((one) => one.text) };
    writeFileSync(file, JSON.stringify(all));
    expect((await assay(["verify-log", file], dataDir)).code).toBe(0);
  });
  it("refuses a folder in use and a text that was changed", async () => {
    const used = await assay(["export", dataDir], dataDir);
    expect([used.code, oneSentence(used)]).toEqual([2, true]);
    const changed = await assay(["export", fresh()], flip(2, "snapshot", 600, 0));
    expect(changed.stderr).toContain("entry 2");
    expect([changed.code, oneSentence(changed)]).toEqual([2, true]);
  });
});

describe("backup and restore", () => {
  it("says that files in a bucket are not in the backup", async () => {
    const bucket = {
      S3_ENDPOINT: "https://s3.example.org",
      S3_BUCKET: "shelf",
      S3_ACCESS_KEY_ID: "id",
      S3_SECRET_ACCESS_KEY: "secret",
    };
    const { code, stdout } = await assay(["backup", fresh()], dataDir, bucket);
    expect(code).toBe(0);
    expect(stdout).toContain('lie in the bucket "shelf" and are not in it');
  });
  it("bring back the same registry: log, photos and keys", { timeout: 120_000 }, async () => {
    const kept = fresh();
    const back = fresh();
    expect((await assay(["backup", kept], dataDir)).code).toBe(0);
    expect((await assay(["verify-log", kept], dataDir)).code).toBe(0);
    expect((await assay(["restore", kept], back)).code).toBe(0);
    expect((await assay(["verify-log", "--head", `5:${head}`], back)).code).toBe(0);
    expect(readFileSync(join(back, "keys", "auth-secret"), "utf8")).toBe("an invented secret");
    expect(statSync(join(back, "keys", "auth-secret")).mode & 0o077).toBe(0);
    // The restored registry can be published to: its triggers and its index came along.
    const db = openDatabase(join(back, "registry.db"));
    const more = chained([
      ...sampleHistory().map((one) => one.snapshot),
      sampleSnapshot({ slug: "jug", publishedAt: "2026-12-01T10:00:00Z" }),
    ]);
    await publishAll(db, more.slice(5));
    await expect(db.publication.delete({ where: { seq: 1 } })).rejects.toThrow();
    await db.$disconnect();
    // Nothing is written over.
    const again = await assay(["restore", kept], back);
    expect([again.code, oneSentence(again)]).toEqual([2, true]);
  });
  it("take the key that signs the log along only where it was asked for", { timeout: 120_000 }, async () => {
    const plain = fresh();
    expect((await assay(["backup", plain], dataDir)).code).toBe(0);
    expect(existsSync(join(plain, "keys", "log-signing-key.pem"))).toBe(false);
    const whole = fresh();
    expect((await assay(["backup", whole, "--with-signing-key"], dataDir)).code).toBe(0);
    const taken = fresh();
    expect((await assay(["restore", whole], taken)).code).toBe(0);
    expect(statSync(join(taken, "keys", "log-signing-key.pem")).mode & 0o777).toBe(0o600);
    expect(signingKey(taken).publicKey).toBe(signer);
  });
  it("holds what was written a moment before, while the registry is open", async () => {
    const busy = fresh();
    cpSync(dataDir, busy, { recursive: true });
    const open = new Database(join(busy, "registry.db"));
    open.pragma("journal_mode = WAL");
    open.prepare(`INSERT INTO "TestRequest" (id, description, lastAt) VALUES ('a', 'a blue jug', '2026-01-01')`).run();
    const kept = fresh();
    expect((await assay(["backup", kept], busy)).code).toBe(0);
    open.close();
    const copy = new Database(join(kept, "registry.db"), { readonly: true });
    expect(copy.prepare(`SELECT description FROM "TestRequest"`).all()).toEqual([{ description: "a blue jug" }]);
    copy.close();
  });
  it.each<[string, (kept: string) => void, RegExp]>([
    [
      "changed file",
      (kept) => writeFileSync(join(kept, "keys", "auth-secret"), "another"),
      /keys\/auth-secret was changed/,
    ],
    ["missing file", (kept) => rmSync(join(kept, "registry.db")), /registry\.db could not be read/],
    ["list never written", (kept) => rmSync(join(kept, "backup.json")), /not a finished backup/],
    [
      "list that leads out of the folder",
      (kept) => {
        const list = readFileSync(join(kept, "backup.json"), "utf8");
        writeFileSync(join(kept, "backup.json"), list.replace("keys/auth-secret", "keys/../../secret"));
      },
      /cannot be read as the list/,
    ],
  ])("refuses a backup with a %s, and writes nothing", async (_, spoil, says) => {
    const kept = fresh();
    const back = fresh();
    await assay(["backup", kept], dataDir);
    spoil(kept);
    const ran = await assay(["restore", kept], back);
    expect(ran.stderr).toMatch(says);
    expect([ran.code, oneSentence(ran), existsSync(back)]).toEqual([2, true, false]);
  });
  it("refuses a backup whose log does not hold, though its files are as they were", async () => {
    const kept = fresh();
    const back = fresh();
    await assay(["backup", kept], flip(2, "snapshot", 600, 0));
    const ran = await assay(["restore", kept], back);
    expect(ran.stderr).toContain("Entry 2 (rattle, revision 1): its published text was changed");
    expect([ran.code, oneSentence(ran), existsSync(back)]).toEqual([2, true, false]);
  });
});
