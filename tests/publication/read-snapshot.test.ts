import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { canonicalJson } from "@/lib/publication/canonical-json.ts";
import { readableFormats, readSnapshot } from "@/lib/publication/read-snapshot.ts";
import { sampleSnapshot } from "../support/sample-snapshot.ts";

const fixture = (format: number): string =>
  readFileSync(new URL(`fixtures/snapshot-format-${format}.txt`, import.meta.url), "utf8").trimEnd();

describe("texts that were published stay readable", () => {
  it.each(readableFormats)("format %i, kept as it was on its first day", (format) => {
    const text = fixture(format);
    const read = readSnapshot(text);
    expect(read).toMatchObject({ ok: true, value: { slug: "bluebell-mug", revision: 1 } });
    // Whoever changes the schema so that the old text reads otherwise hears of it here.
    if (read.ok) expect(canonicalJson(read.value)).toBe(text);
  });
  it("round-trips the sample", () => {
    expect(readSnapshot(canonicalJson(sampleSnapshot()))).toEqual({ ok: true, value: sampleSnapshot() });
  });
});

it.each([
  ["{", "snapshot-not-json"],
  ["null", "snapshot-format-unknown"],
  ['{"format":2}', "snapshot-format-unknown"],
  ['{"format":"1"}', "snapshot-format-unknown"],
  ['{"format":1}', "snapshot-shape"],
])("%s is refused: %s", (text, code) => {
  const read = readSnapshot(text);
  expect(read.ok).toBe(false);
  if (!read.ok) expect(read.problems[0]?.code).toBe(code);
});
