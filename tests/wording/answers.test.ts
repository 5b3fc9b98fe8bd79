import { describe, expect, it } from "vitest";
import { listLimits } from "@/lib/limits/list-limits.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { cautionsFor } from "@/lib/wording/cautions.ts";
import { gradeLevel } from "../support/flesch-kincaid.ts";
import { sampleSnapshot, sampleSnapshotOf, sampleStates, sampleWithdrawal } from "../support/sample-snapshot.ts";

/** Every kind of answer a page can open with. Built from the invented sample. */
const withResult = (state: (typeof sampleStates)[number], change: object): Snapshot => {
  const snapshot = structuredClone(sampleSnapshotOf(state));
  Object.assign(snapshot.specimens[0]!.parts[0]!.results[0]!, change);
  return snapshot;
};
const reference = (state: (typeof sampleStates)[number]): Snapshot => {
  const snapshot = structuredClone(sampleSnapshotOf(state));
  for (const d of snapshot.specimens[0]!.parts[0]!.results[0]!.decisions) d.applies = "for-reference";
  return snapshot;
};
const pages: [name: string, snapshot: Snapshot][] = [
  ["the whole mug", sampleSnapshot()],
  ...sampleStates.map((s): [string, Snapshot] => [s, sampleSnapshotOf(s)]),
  [
    "range only",
    withResult("uneven", {
      state: "range-only",
      value: null,
      interval: null,
      stated: { value: "", U: null, interval: null, below: null },
    }),
  ],
  ["no readings", withResult("above", { state: "no-readings", value: null, decisions: [] })],
  ["no limit", withResult("above", { decisions: [] })],
  [
    "limits of another quantity only",
    withResult("above", {
      decisions: sampleSnapshotOf("above").specimens[0]!.parts[0]!.results[0]!.decisions.slice(1),
    }),
  ],
  ["one spot", withResult("below", { counts: { readings: 1, used: 1, setAside: 0, spots: 1, spotsDetected: 1 } })],
  ["only for reference", reference("above")],
  ["withdrawn", sampleWithdrawal()],
  ["nothing in it", sampleSnapshot({ specimens: [] })],
];
const said = (snapshot: Snapshot): string => {
  const answer = itemAnswer(snapshot);
  return [answer.headline, ...answer.sentences].join(" ");
};

describe("the first screen", () => {
  it("leads with the answer, and says number, limit, sureness and day", () => {
    const answer = itemAnswer(sampleSnapshotOf("above"));
    expect(answer.headline).toBe("Above the limit: lead in the part “glaze, outside”.");
    expect(answer.verdict).toBe("above");
    const text = answer.sentences.join(" ");
    expect(text).toContain("412 ± 35 mg/kg of lead");
    expect(text).toContain("377 to 447 mg/kg");
    expect(text).toContain("about 19 times out of 20");
    expect(text).toContain("US children's products, 100 mg/kg");
    expect(text).toContain("at least 99 chances in 100");
    expect(text).toContain("14 November 2026");
  });
  it("has the third answer", () => {
    expect(itemAnswer(sampleSnapshotOf("too-close")).headline).toBe(
      "Too close to call: lead in the part “painted rim band”.",
    );
    expect(said(sampleSnapshotOf("too-close"))).toContain("about 72 chances in 100 that it is above");
  });
  it("never says zero or none for what was not detected", () => {
    const text = said(sampleSnapshotOf("not-detected"));
    expect(text).toContain("Not detected: cadmium");
    expect(text).toContain("less than 5 mg/kg");
  });
  it("leads with the range where a part is uneven", () => {
    expect(itemAnswer(sampleSnapshotOf("uneven")).sentences[0]).toContain(
      "61 mg/kg at the lowest spot and 148 mg/kg at the highest",
    );
  });
  it("does not lead with a limit that does not apply", () => {
    const answer = itemAnswer(reference("above"));
    expect(answer.headline).toBe("Lead found in the part “glaze, outside”.");
    expect(answer.sentences.join(" ")).toContain("No limit that we list is made for this kind of thing.");
  });
  it("counts what else was found", () => {
    expect(said(sampleSnapshot())).toContain(
      "We have 5 more results for this item: 2 too close to call, 2 below the limit, 1 not detected.",
    );
  });
  it("keeps title and reason of a withdrawn item, and no figure", () => {
    expect(said(sampleWithdrawal())).toContain("turned out to be another one");
    expect(said(sampleWithdrawal())).not.toMatch(/mg\/kg/);
  });

  it.each(pages)("US grade 8 or lower (Flesch–Kincaid): %s", (_name, snapshot) => {
    expect(gradeLevel(said(snapshot))).toBeLessThanOrEqual(8);
  });
  it.each(pages)("calls nothing legal, illegal or safe: %s", (_name, snapshot) => {
    expect(said(snapshot)).not.toMatch(/\b(?:il)?legal|\bsafe|\bdanger|undefined|null|NaN/i);
  });
});

describe("with every limit of the registry's own list in place of the sample's", () => {
  it.each(["above", "too-close", "below", "not-detected", "not-quantified", "uneven"] as const)(
    "%s stays at US grade 8 or lower",
    (state) => {
      for (const { title, jurisdiction, value, unit } of listLimits()) {
        const snapshot = structuredClone(sampleSnapshotOf(state));
        const [decision] = snapshot.specimens[0]!.parts[0]!.results[0]!.decisions;
        Object.assign(decision!, { title, jurisdiction, value, unit });
        expect(gradeLevel(said(snapshot)), title).toBeLessThanOrEqual(8);
      }
    },
  );
});

describe("the cautions", () => {
  it("stand on every page, those about lead where lead was looked for", () => {
    expect(cautionsFor(sampleSnapshot()).map((c) => c.code)).toEqual([
      "total-content",
      "no-known-level",
      "blood-test",
      "other-substances",
      "this-one-only",
      "licensed-assessor",
      "local-law",
    ]);
    expect(cautionsFor(sampleSnapshotOf("not-detected")).map((c) => c.code)).not.toContain("blood-test");
    expect(cautionsFor(sampleSnapshot()).find((c) => c.code === "other-substances")?.text).toContain(
      "lead and cadmium",
    );
  });
  it("read at US grade 9 or lower", () => {
    expect(
      gradeLevel(
        cautionsFor(sampleSnapshot())
          .map((c) => c.text)
          .join(" "),
      ),
    ).toBeLessThanOrEqual(9);
  });
});

describe("which day's rules the first answer goes by", () => {
  const judged = (changes: object[]): string => {
    const snapshot = structuredClone(sampleSnapshotOf("above"));
    const result = snapshot.specimens[0]!.parts[0]!.results[0]!;
    const [decision] = result.decisions;
    result.decisions = changes.map((change) => ({ ...decision!, ...change }));
    return itemAnswer(snapshot).sentences.join(" ");
  };
  it("says nothing of days where both agree", () => {
    expect(judged([{ which: "both" }])).not.toContain("rules of");
  });
  it("says the other day's verdict too where they differ", () => {
    const words = judged([
      { which: "test-day", day: "2010-06-01", verdict: "below", probabilityAbove: 0.001, value: 300 },
      { which: "today", day: "2026-11-24", verdict: "above", probabilityAbove: 0.999, value: 100 },
    ]);
    expect(words).toContain("That goes by the rules of 24 November 2026.");
    expect(words).toContain(
      "By the rules of the day of the test it is below the limit (US children's products, 300 mg/kg).",
    );
  });
  it("says that there was no such limit on the day of the test, or that the rules have changed since", () => {
    expect(judged([{ which: "today", day: "2026-11-24" }])).toContain("there was no such limit to hold it against.");
    expect(judged([{ which: "test-day", day: "2010-06-01" }])).toContain("The rules have changed since.");
  });
});
