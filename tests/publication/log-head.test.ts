import { execFileSync } from "node:child_process";
import { generateKeyPairSync, sign } from "node:crypto";
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { signingKey, verifySignature } from "@/lib/platform/signing-key.ts";
import { canonicalJson } from "@/lib/publication/canonical-json.ts";
import { type LogHead, logHeadSchema, signedText } from "@/lib/publication/log-head.ts";
import { type LogToVerify, verifyLog } from "@/lib/publication/verify-log.ts";
import { checkByHand } from "@/lib/wording/log-page.ts";
import { sampleHistory, sha256 } from "../support/sample-revisions.ts";

const folder = mkdtempSync(join(tmpdir(), "assay-head-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const history = sampleHistory();
const entries = history.map((one) => one.entry);
const key = signingKey(folder);
const headOf = (seq: number, by = key): LogHead => {
  const head = { seq, hash: entries[seq - 1]!.hash, signedAt: "2026-11-29T08:15:01.250Z" };
  return { ...head, publicKey: by.publicKey, signature: by.sign(signedText(head)) };
};
const verify = (heads: readonly unknown[], more: Partial<LogToVerify> = {}, wanted?: string) =>
  verifyLog(
    {
      entries,
      snapshot: (seq) => history[seq - 1]?.text,
      signed: { heads, verify: verifySignature, key: wanted },
      ...more,
    },
    sha256,
  );

describe("the registry's key", () => {
  it("is made at first need, readable by its owner only, and stays the same", () => {
    const file = join(folder, "keys", "log-signing-key.pem");
    expect(existsSync(file)).toBe(true);
    expect(statSync(file).mode & 0o777).toBe(0o600);
    expect(readFileSync(file, "utf8")).toContain("BEGIN PRIVATE KEY");
    expect(signingKey(folder).publicKey).toBe(key.publicKey);
  });
  // RFC 8032 §7.1, test 3: message af82 (from memory of the RFC's table; the signature is deterministic).
  it("checks signatures as RFC 8032 has them", () => {
    const spki = Buffer.concat([
      Buffer.from("302a300506032b6570032100", "hex"),
      Buffer.from("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "hex"),
    ]).toString("base64");
    const signature = Buffer.from(
      "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
      "hex",
    ).toString("base64");
    expect(verifySignature(spki, "", signature)).toBe(true); // test 1: the empty message
    expect(verifySignature(spki, " ", signature)).toBe(false);
  });
  it("of another kind is refused", () => {
    const { privateKey, publicKey } = generateKeyPairSync("rsa", { modulusLength: 2048 });
    const spki = publicKey.export({ type: "spki", format: "der" }).toString("base64");
    const signature = sign("sha256", Buffer.from("x"), privateKey).toString("base64");
    expect(verifySignature(spki, "x", signature)).toBe(false);
    expect(verifySignature("no key", "x", signature)).toBe(false);
  });
});

describe("a signed head", () => {
  it("holds for the entry it speaks of, and keeps to its schema", () => {
    expect(logHeadSchema.parse(headOf(5))).toEqual(headOf(5));
    expect(verify([headOf(1), headOf(3), headOf(5)])).toEqual([]);
    expect(verify([headOf(5)], {}, key.publicKey)).toEqual([]);
  });
  it("shows that entries were cut from the end, or made anew", () => {
    const cut = {
      entries: entries.slice(0, 4),
      snapshot: (seq: number) => (seq < 5 ? history[seq - 1]?.text : undefined),
    };
    expect(verify([headOf(5)], cut)).toMatchObject([{ code: "head-differs", seq: 5 }]);
  });
  it("signed with another key than the one expected is named", () => {
    const other = signingKey(join(folder, "other"));
    expect(verify([headOf(5, other)], {}, key.publicKey)).toMatchObject([{ code: "head-key-differs", seq: 5 }]);
  });
  it("whose hash was changed is told from one whose signature was", () => {
    const head = headOf(2);
    expect(verify([{ ...head, hash: entries[3]!.hash }])).toMatchObject([
      { code: "head-signature-wrong", seq: 2, field: "hash", expected: head.hash },
    ]);
    expect(verify([{ ...head, signature: headOf(3).signature }])).toMatchObject([
      { code: "head-signature-wrong", seq: 2, field: "signature" },
    ]);
    expect(verify([{ ...head, note: "x" }, null])).toMatchObject([
      { code: "head-malformed" },
      { code: "head-malformed" },
    ]);
  });
  it("with any single bit turned over is found, every bit of it", () => {
    const bytes = new TextEncoder().encode(canonicalJson(headOf(4)));
    const unseen: number[] = [];
    for (let bit = 0; bit < bytes.length * 8; bit += 1) {
      const flipped = Uint8Array.from(bytes);
      flipped[bit >> 3]! ^= 1 << (bit & 7);
      let head: unknown;
      try {
        head = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(flipped));
      } catch {
        head = undefined; // no JSON any more
      }
      if (verify([head], { looksAt: () => false }).length === 0) unseen.push(bit);
    }
    expect(unseen).toEqual([]);
    expect(bytes.length).toBeGreaterThan(290);
  });
  it("whose key is written otherwise is not taken, though a lenient reader would take it for the same", () => {
    // The bit string's count of unused bits (RFC 8410, X.690 §8.6) turned from 0 to 4.
    const head = headOf(4);
    const key = Buffer.from(head.publicKey, "base64");
    key[11]! ^= 4;
    const publicKey = key.toString("base64");
    expect(verifySignature(publicKey, signedText(head), head.signature)).toBe(false);
    expect(verify([{ ...head, publicKey }])).toMatchObject([{ code: "head-malformed", seq: 4, field: "publicKey" }]);
  });
  it("is checked by hand with the very lines that /log prints", () => {
    const openssl = (() => {
      try {
        return execFileSync("openssl", ["version"], { encoding: "utf8" });
      } catch {
        return "";
      }
    })();
    if (!openssl.startsWith("OpenSSL 3")) return console.log("openssl 3 is not here: the lines were not run");
    const run = (head: LogHead) =>
      execFileSync("sh", ["-c", `${checkByHand(head)} || true`], { cwd: folder, encoding: "utf8", stdio: "pipe" });
    expect(run(headOf(5))).toContain("Signature Verified Successfully");
    expect(run({ ...headOf(5), seq: 4 })).not.toContain("Successfully");
  });
});
