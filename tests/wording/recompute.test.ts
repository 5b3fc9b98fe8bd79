import { describe, expect, it } from "vitest";
import { recomputeSnapshot } from "@/lib/publication/recompute.ts";
import {
  differenceText,
  figuresText,
  type RecomputeReport,
  recomputedTitle,
  remadeText,
  reportLines,
  severalObjects,
} from "@/lib/wording/recompute.ts";
import { sampleSnapshot } from "../support/sample-snapshot.ts";

const one = recomputeSnapshot(sampleSnapshot())[0]!;
const same = { ...one, differences: [], figures: 12, whole: true, inputsText: "{}" };
const report: RecomputeReport = {
  results: [same],
  changedInputs: [],
  readings: { rows: 32, differing: [] },
  log: null,
};
const verdicts = (change: Partial<RecomputeReport>, options = {}) =>
  reportLines({ ...report, ...change }, options).map(({ verdict, text }) => `${verdict}: ${text}`);

describe("a report of what was made again", () => {
  it("agrees in every line, or says what could not be looked at", () => {
    const said = verdicts({});
    expect(said[0]).toBe("agrees: All 12 published figures of 1 result come out the same.");
    expect(said).toContain("agrees: readings.csv holds the same 32 rows as the revision.");
    expect(said).toContain("agrees: The inputs of the result have the published SHA-256.");
    expect(said.at(-1)).toMatch(/^not-checked: Hashes were not checked/);
    expect(verdicts({}, { readings: false, noLog: "No log." }).filter((line) => /readings\.csv/.test(line))).toEqual(
      [],
    );
    expect(verdicts({ results: [], changedInputs: null })[0]).toMatch(/^not-checked: This revision states no result/);
    expect(verdicts({ results: [same, same] })).toContain(
      "agrees: The inputs of all 2 results have the published SHA-256.",
    );
    expect(verdicts({ results: [{ ...same, inputsText: null }] }).filter((line) => /inputs of/.test(line))).toEqual([]);
  });
  it("says what differs, and where", () => {
    const differing = {
      ...same,
      differences: [{ where: "stated.value", published: "412", recomputed: 413 }],
      whole: false,
    };
    const said = verdicts({
      results: [differing, same],
      changedInputs: [differing],
      readings: { rows: 32, differing: [{ row: 3, column: "value" }] },
    });
    expect(said[0]).toBe("differs: 1 result of 2 do not come out as published.");
    expect(said[1]).toMatch(/^not-checked: 1 result of this revision came out before inputs were kept/);
    expect(said).toContain("differs: readings.csv differs from the revision in 1 cell, first in row 3, column value.");
    expect(said).toContain("differs: The inputs of 1 result have another SHA-256 than the published one.");
    expect(differenceText(differing.differences[0]!)).toMatch(/: published “412”, made again 413$/);
    expect(differenceText({ where: "", published: null, recomputed: undefined })).toBe(
      "The method refused the inputs: published nothing, made again nothing",
    );
  });
  it("takes as published what does not follow from the readings", () => {
    const fit = { ...same, published: { ...same.published, fitness: "fit" as const } };
    expect(verdicts({ results: [fit] }).some((line) => /^not-checked: Whether the instrument was fit/.test(line))).toBe(
      true,
    );
  });
  it("tells what the log says", () => {
    const log = (change: object) =>
      verdicts({
        log: { entry: { seq: 4 }, entries: 7, faults: [], signature: "agrees", head: { seq: 7 }, ...change } as never,
      });
    expect(log({}).slice(-2)).toEqual([
      expect.stringMatching(/^agrees: .* entry 4 of the log holds, and all 7 entries are sealed/),
      expect.stringMatching(/^agrees: The signature of entry 7/),
    ]);
    expect(log({ entries: 1, signature: "none" }).slice(-2)).toEqual([
      expect.stringMatching(/that entry is sealed\.$/),
      "not-checked: The log’s head is not signed.",
    ]);
    expect(log({ signature: "unable" }).at(-1)).toMatch(/does not know Ed25519/);
    expect(log({ signature: "wrong" }).at(-1)).toMatch(/^agrees: This revision’s bytes/);
    expect(log({ entry: null }).at(-1)).toBe("differs: The publication log does not list this revision.");
  });
});

describe("a result made again in words", () => {
  it("counts its figures and names its object where there are several", () => {
    expect(figuresText({ figures: 1, differences: [] })).toBe("1 figure agrees");
    expect(figuresText({ figures: 412, differences: [] })).toBe("412 figures agree");
    const two = [1, 2].map((n) => ({ where: `a${n}`, published: 1, recomputed: 2 }));
    expect(figuresText({ figures: 412, differences: two })).toBe("2 of 412 figures differ");
    expect(figuresText({ figures: 412, differences: two.slice(1) })).toBe("1 of 412 figures differs");
    expect(recomputedTitle(one, true)).toBe(`${one.specimen}, ${recomputedTitle(one, false)}`);
    expect(severalObjects([one, one])).toBe(false);
    expect(severalObjects([one, { ...one, specimen: "another" }])).toBe(true);
    expect(remadeText({ ...one, recomputed: null })).toBe("not made");
    if (one.recomputed) expect(remadeText(one)).not.toBe("not made");
  });
});
