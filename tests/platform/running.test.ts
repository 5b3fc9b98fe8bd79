import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { secretFaults } from "@/lib/platform/check-secrets.ts";
import { clientAddress, placeOf } from "@/lib/platform/forwarded.ts";
import { errorFacts, makeLog } from "@/lib/platform/log.ts";
import { serveMetrics, sideOf } from "@/lib/platform/metrics.ts";
import { takeReadTurn } from "@/lib/platform/read-turns.ts";
import { readRunning } from "@/lib/platform/running.ts";
import { secretFile } from "@/lib/platform/secret-file.ts";
import { pathToLog } from "@/lib/platform/watch-requests.ts";

describe("how the process runs", () => {
  it("has settings for everything, and names the one that is wrong", () => {
    expect(readRunning({ METRICS_PORT: "" })).toMatchObject({
      LOG_LEVEL: "warn",
      TRUSTED_PROXIES: 0,
      SLOW_QUERY_MS: 500,
    });
    expect(() => readRunning({ TRUSTED_PROXIES: "many" })).toThrow(/TRUSTED_PROXIES.*found "many"/s);
    expect(() => readRunning({ LOG_LEVEL: "loud" })).toThrow(/LOG_LEVEL/);
  });
});

describe("who asked", () => {
  it("is the socket where no proxy is ours, whatever a header says", () => {
    expect(clientAddress("198.51.100.7", "203.0.113.9", 0)).toBe("203.0.113.9");
    expect(clientAddress(undefined, "::ffff:203.0.113.9", 0)).toBe("203.0.113.9");
  });
  it("is who the outermost proxy of ours was asked from; what the asker wrote further left means nothing", () => {
    expect(clientAddress("1.1.1.1, 2.2.2.2, 198.51.100.7", "10.0.0.2", 1)).toBe("198.51.100.7");
    expect(clientAddress("1.1.1.1, 198.51.100.7, 10.0.0.1", "10.0.0.2", 2)).toBe("198.51.100.7");
    // Fewer proxies than declared: the nearest to an answer there is.
    expect(clientAddress(undefined, "203.0.113.9", 2)).toBe("203.0.113.9");
  });
  it("is one place for a whole IPv6 network", () => {
    expect(placeOf("198.51.100.7")).toBe("198.51.100.7");
    expect(placeOf("2001:db8::5")).toBe("2001:db8:0:0::/64");
    expect(placeOf("2001:0DB8:0001:0002:ffff::1%eth0")).toBe("2001:db8:1:2::/64");
  });
});

describe("reads from one place", () => {
  it("are let through up to the most, then told how long to wait, and again in the next minute", () => {
    for (let n = 0; n < 5; n += 1) expect(takeReadTurn("198.51.100.1", 5, 1_000)).toBe(0);
    expect(takeReadTurn("198.51.100.1", 5, 31_000)).toBe(30);
    expect(takeReadTurn("198.51.100.2", 5, 31_000)).toBe(0);
    expect(takeReadTurn("198.51.100.1", 5, 61_000)).toBe(0);
  });
  it("count a network of IPv6 once, and the machine itself never", () => {
    for (let n = 0; n < 3; n += 1) takeReadTurn(`2001:db8:9:9::${n}`, 3, 0);
    expect(takeReadTurn("2001:db8:9:9::abc", 3, 0)).toBeGreaterThan(0);
    for (let n = 0; n < 9; n += 1) expect(takeReadTurn("127.0.0.1", 3, 0)).toBe(0);
  });
});

describe("the log", () => {
  const lines: string[] = [];
  const log = makeLog("info", { write: (line) => lines.push(line) });
  it("keeps back what lets somebody in and who somebody is, at any depth", () => {
    log.info({
      password: "p1",
      headers: { cookie: "c1", authorization: "a1" },
      user: { email: "e1@example.org", name: "n1" },
      a: { b: { token: "t1" } },
    });
    const line = lines.at(-1) ?? "";
    for (const told of ["p1", "c1", "a1", "e1@example.org", "n1", "t1"]) expect(line).not.toContain(told);
    expect(JSON.parse(line)).toMatchObject({ level: "info", password: "(kept back)" });
  });
  it("has of an address neither what was looked for nor a one-time link", () => {
    expect(pathToLog("/items?q=my%20name")).toBe("/items");
    expect(pathToLog("/account/join/0123abcd?x=1")).toBe("/account/join/…");
  });
  it("has of an error its kind, its place and its first line, without addresses", () => {
    const facts = errorFacts(new TypeError("no user ann@example.org\nargs: { password: 'x' }"));
    expect(facts).toMatchObject({ kind: "TypeError", says: "no user (kept back)" });
    expect(facts.at[0]).toContain("running.test.ts");
  });
});

describe("metrics", () => {
  it("are served to the machine itself, with few series", async () => {
    expect(sideOf("/items/red-mug")).toBe("items");
    expect(sideOf("/red-mug/x")).toBe("pages");
    const server = await serveMetrics(0);
    const address = server.address();
    if (typeof address !== "object" || !address) throw new Error("no address");
    expect(address.address).toBe("127.0.0.1");
    const answer = await fetch(`http://127.0.0.1:${address.port}/metrics`);
    expect(answer.headers.get("content-type")).toContain("text/plain");
    expect(await answer.text()).toMatch(/^# TYPE assay_http_requests_total counter$/m);
    expect((await fetch(`http://127.0.0.1:${address.port}/`)).status).toBe(404);
    server.close();
  });
});

describe("secrets on the disk", () => {
  it("are nobody else's; one that is open or short is named at the start", () => {
    const dataDir = mkdtempSync(join(tmpdir(), "assay-keys-"));
    expect(secretFaults(dataDir)).toEqual([]);
    secretFile(dataDir, "auth-secret");
    expect(secretFaults(dataDir)).toEqual([]);
    writeFileSync(join(dataDir, "keys", "short"), "abc", { mode: 0o600 });
    writeFileSync(join(dataDir, "keys", "open"), "x".repeat(64), { mode: 0o644 });
    mkdirSync(join(dataDir, "keys", "folder"));
    expect(secretFaults(dataDir).map((f) => f.replace(dataDir, ""))).toEqual([
      expect.stringMatching(/open can be read by others/),
      expect.stringMatching(/short is too short/),
    ]);
  });
});
