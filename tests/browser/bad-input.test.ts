import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { served } from "../support/served.ts";

/** What people, programs and pranksters type. Nothing of it is ever syntax. */
const odd: [name: string, q: string][] = [
  ["ten thousand characters", "red mug ".repeat(1250)],
  ["one word of ten thousand letters", "m".repeat(10_000)],
  ["full-text syntax", '"mug" AND NEAR(poppy, 2) OR name:* NOT ^x -y + ('],
  ["an open quote", '"poppy'],
  ["a column filter", "{name marks} : mug"],
  ["SQL", `'; DROP TABLE "Publication"; -- %_ \\`],
  ["a union", "mug' UNION SELECT password FROM account --"],
  ["emoji", "🍵👩‍👩‍👧 mug 🏴󠁧󠁢󠁥󠁮󠁧󠁿"],
  ["marks for writing from right to left", "\u202emug\u202c \u2066كوب\u2069 \u200fספל"],
  ["signs nobody sees", "\u0000\u0001\u00ad\u200b\ufeff\ufffe"],
  ["half of a pair", "\ud83d mug"],
  ["letters under a hundred accents", `m${"\u0301".repeat(500)}ug`],
  ["markup", "<script>alert(1)</script><img src=x onerror=alert(1)>"],
  ["nothing but spaces", " \t\n\u3000 "],
  ["only signs", "!!!???***((("],
  ["a path", "../../etc/passwd"],
  ["a percent alone", "100% %"],
];

const urlOf = (path: string, params: Record<string, string>) =>
  `${served().base}${path}?${new URLSearchParams(params)}`;

async function timed(url: string): Promise<{ status: number; text: string; ms: number }> {
  const start = performance.now();
  const answer = await fetch(url);
  return { status: answer.status, text: await answer.text(), ms: performance.now() - start };
}

describe("questions nobody planned for", () => {
  it.each(odd)("%s: search, suggestions and the API answer, and nothing of it comes back as markup", async (_, q) => {
    for (const path of ["/items", "/items/suggestions", "/api/v1/items"]) {
      const { status, text } = await timed(urlOf(path, { q }));
      // Too long for the API is told, not cut.
      expect(status === 200 || (path.startsWith("/api") && status === 400), `${path} ${status}`).toBe(true);
      expect(text).not.toContain("<script>alert");
      expect(text).not.toContain("<img src=x");
      if (status === 200 && path !== "/items") JSON.parse(text);
    }
  });

  it("an address too long for any server is refused, and the next reader is answered", async () => {
    const { status } = await timed(urlOf("/items", { q: "m".repeat(40_000) }));
    expect(status).toBe(431);
    expect((await timed(urlOf("/items", { q: "mug" }))).status).toBe(200);
  });

  it.each([
    "0",
    "-1",
    "999999999999999999999999",
    "1e9",
    "5x",
    "x5",
    "5x99999999999",
    "999999x1",
    "20x'; DROP",
    "NaN",
    "😀",
    "a".repeat(5000),
  ])("a cursor edited by hand, %s, leads to a page", async (cursor) => {
    for (const params of [{ q: "mug", cursor }, { cursor }, { q: "mug", sort: "name", cursor }]) {
      const { status, text } = await timed(urlOf("/items", params));
      expect(status).toBe(200);
      expect(text).toContain("</html>");
    }
  });

  it("filters that no list offers leave nothing or everything, and never fail", async () => {
    for (const value of ["toy' OR 1=1", "__proto__", "constructor", "*", '"', "toy".repeat(500)])
      for (const name of ["category", "element", "verdict", "material", "age", "year", "sort"])
        expect((await timed(urlOf("/items", { [name]: value }))).status, `${name}=${value}`).toBe(200);
  });
});

/** Sends a request as the form without scripts does, and tells where it leads. */
async function send(description: string, photo?: Blob): Promise<{ status: number; to: string }> {
  const data = new FormData();
  data.set("description", description);
  data.set("photo", photo ?? new Blob([]), photo ? "photo.jpg" : "");
  const answer = await fetch(`${served().base}/requests/send`, { method: "POST", body: data, redirect: "manual" });
  return { status: answer.status, to: answer.headers.get("location") ?? "" };
}

describe("requests nobody planned for", () => {
  it("a photo of 40 MB is refused in plain words, and one of 12 MB is taken", async () => {
    const large = await send("a very large tin bear", new Blob([new Uint8Array(40_000_000).fill(7)]));
    expect(large.status).toBe(303);
    expect(large.to).toMatch(/problem=too-large/);
    const { text } = await timed(served().base + large.to);
    expect(text).toMatch(/this is too large \(over 15 MB\)/);
    const noise = Buffer.alloc(
      2100 * 2100 * 3,
      Buffer.from(Array.from({ length: 4099 }, (_, i) => (i * i * 31) % 251)),
    );
    const png = sharp(noise, { raw: { width: 2100, height: 2100, channels: 3 } }).png({ compressionLevel: 0 });
    const photo = await png.toBuffer();
    expect(photo.length).toBeGreaterThan(12_000_000);
    const taken = await send("a large tin bear", new Blob([new Uint8Array(photo)]));
    expect(taken.to).toMatch(/^\/requests\/[\w-]{6,}$/);
  });

  it("a thousand in a minute from one place are all answered; ten are kept", async () => {
    const start = performance.now();
    const answers: { status: number; to: string }[] = [];
    for (let from = 0; from < 1000; from += 25)
      answers.push(
        ...(await Promise.all(Array.from({ length: 25 }, (_, i) => send(`flood number ${from + i} of tin drums`)))),
      );
    expect(performance.now() - start).toBeLessThan(60_000);
    expect(answers.every(({ status }) => status === 303)).toBe(true);
    const kept = answers.filter(({ to }) => /^\/requests\/(?!new)/.test(to));
    const refused = answers.filter(({ to }) => to.includes("problem=rate-limited"));
    expect(kept.length).toBeLessThanOrEqual(10);
    expect(kept.length + refused.length).toBe(1000);
    const { status, text } = await timed(served().base + (refused[0]?.to ?? ""));
    expect([status, text.includes("Too many tries in a short time")]).toEqual([200, true]);
    expect((await timed(`${served().base}/healthz`)).status).toBe(200);
  });
});

describe("what is written down of it", () => {
  type Line = Record<string, unknown>;

  /** The lines that the server's log gets while something is asked, as soon as one of them is the one waited for. */
  async function linesUntil(wanted: (line: Line) => boolean, asked: () => Promise<unknown>): Promise<Line[]> {
    const before = served().printed().length;
    await asked();
    for (let tries = 0; ; tries += 1) {
      const written = served().printed().slice(before).split("\n");
      const lines = written.filter((line) => /^\{.*\}$/.test(line)).map((line) => JSON.parse(line) as Line);
      if (lines.some(wanted)) return lines;
      if (tries > 40) throw new Error(`Not among ${JSON.stringify(lines)}`);
      await new Promise((later) => setTimeout(later, 50));
    }
  }

  /** All lines of the request that was made to a path. */
  async function linesOf(path: string, asked: () => Promise<unknown>): Promise<Line[]> {
    const isIt = (line: Line) => line["msg"] === "request" && line["path"] === path;
    const lines = await linesUntil(isIt, asked);
    return lines.filter((line) => line["requestId"] === lines.find(isIt)?.["requestId"]);
  }

  it("every odd question has its line: where, how it ended, how long it took, and nothing of what was asked", async () => {
    for (const [path, params, status] of [
      ["/items", { q: "'; DROP TABLE marzipan" }, 200],
      ["/items", { q: "mug", cursor: "marzipan" }, 200],
      ["/api/v1/items", { q: "marzipan ".repeat(1000) }, 400],
    ] as const) {
      const lines = await linesOf(path, () => timed(urlOf(path, params)));
      expect(lines).toMatchObject([{ level: "info", method: "GET", path, status, ms: expect.any(Number) }]);
    }
    expect(served().printed()).not.toContain("marzipan");
  });

  it("a request that was refused has a line that says why, under the same id", async () => {
    const large = await linesOf("/requests/send", () =>
      send("a marzipan bear", new Blob([new Uint8Array(16_000_000).fill(7)])),
    );
    expect(large).toMatchObject([{ refused: ["too-large"] }, { method: "POST", status: 303 }]);
    for (let n = 0; n < 11; n += 1) await linesOf("/requests/send", () => send(`marzipan bear number ${n}`));
    const often = await linesOf("/requests/send", () => send("one more marzipan bear"));
    expect(often).toMatchObject([{ refused: ["rate-limited"] }, { method: "POST", status: 303 }]);
    expect(served().printed()).not.toContain("marzipan");
  });

  it("an address that is refused before it is read has a line of its own", async () => {
    const unread = (line: Line) => line["msg"] === "request not read";
    const lines = await linesUntil(unread, () => timed(urlOf("/items", { q: "marzipan".repeat(5000) })));
    expect(lines.filter(unread)).toMatchObject([{ refused: ["HPE_HEADER_OVERFLOW"], status: 431 }]);
    expect(served().printed()).not.toContain("marzipan");
  });
});
