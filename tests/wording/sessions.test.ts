import { describe, expect, it } from "vitest";
import { failedCheckReason } from "@/lib/reconcile/part-inputs.ts";
import { checkFigure } from "@/lib/wording/check-charts.ts";
import {
  aboutElement,
  asideReason,
  correctionOnPage,
  correctionText,
  dayStates,
  doubtLines,
  doubtStretch,
  doubtWords,
  instrumentDay,
  recoveriesText,
  recoveryOnPage,
  recoveryText,
  shiftSentence,
  shiftText,
  sittingTime,
  standardStanding,
  uncountedSentence,
  withinWords,
} from "@/lib/wording/sessions.ts";

const at = (clock: string, day = 12) => `2026-09-${day}T${clock}:00+02:00`;

describe("times of a session", () => {
  it("name the second day only where it is another", () => {
    expect(sittingTime({ startedAt: at("09:40"), endedAt: at("11:20") })).toBe("12 September 2026, 09:40 to 11:20");
    expect(sittingTime({ startedAt: at("23:40"), endedAt: at("00:10", 13) })).toBe(
      "12 September 2026, 23:40 to 13 September 2026, 00:10",
    );
    expect(sittingTime({ startedAt: at("09:40"), endedAt: null })).toBe("12 September 2026, 09:40, not ended yet");
  });
  it.each([
    [0, "none"],
    [180, "+3 h"],
    [-90, "−1 h 30 min"],
    [25, "+25 min"],
  ])("a shift of %d minutes is %s", (minutes, text) => expect(shiftText(minutes)).toBe(text));
  it("a clock that ran ahead is put earlier", () => {
    expect(shiftSentence(-90)).toContain("is taken 1 h 30 min earlier");
    expect(shiftSentence(25)).toContain("is taken 25 min later");
  });
  it("a stretch in doubt reaches to the good checks, or to the ends", () => {
    expect(doubtStretch({ after: at("09:51"), before: at("10:19") })).toBe(
      "after the good check at 09:51, until the good check at 10:19",
    );
    expect(doubtStretch({ after: null, before: null })).toBe(
      "from the beginning, since no good check came before, to the end, since no good check came after",
    );
  });
});

describe("what checks showed", () => {
  it("recoveries as their range, and how many were not detected", () => {
    expect(recoveriesText([0.98, 1.02, null])).toBe("0.98 to 1.02 of the certified value; 1 time not detected");
    expect(recoveriesText([0.98, 0.98])).toBe("0.98 of the certified value");
    expect(recoveriesText([null, null])).toBe("2 times not detected");
    expect(recoveryText(null)).toBe("–");
    expect(recoveryText({ recovery: 0.9612, U: 0.034 })).toBe("0.961 ± 0.034");
    expect(recoveryText({ recovery: 0.9612, U: null })).toBe("0.961");
    expect([true, false, null].map((within) => withinWords(within))).toEqual(["good", "failed", "says nothing"]);
  });
  it("a reading of a standard that counts for nothing says why", () => {
    const about = { standard: "Tile", mode: "metal", modes: ["glaze"], expiresOn: "2026-06-30" };
    expect(uncountedSentence("wrong-mode", about)).toContain("in the mode “metal”, and is meant for “glaze”");
    expect(uncountedSentence("wrong-mode", { ...about, mode: null })).toContain("in no named mode");
    expect(uncountedSentence("expired", about)).toContain("ran out on 30 June 2026");
    expect(uncountedSentence("expired", { ...about, expiresOn: null })).toContain("an unknown day");
    expect(uncountedSentence("no-time", about)).toContain("carries no time");
    expect(uncountedSentence("nothing-certified", about)).toContain("has no certified value");
  });
  it("a correction is made, offered or refused with the reason", () => {
    const verdict = { uCertified: 2, factor: null, asked: false, differs: null, material: "Glaze" };
    expect(correctionText({ ...verdict, uCertified: null })).toMatch(/^none can be made/);
    expect(correctionText({ ...verdict, factor: 0.8912 })).toBe("× 0.8912, for parts of glaze");
    expect(correctionText({ ...verdict, differs: true })).toMatch(/^can be asked for/);
    expect(correctionText({ ...verdict, differs: true, asked: true })).toBe("not made: a check failed");
    expect(correctionText(verdict)).toMatch(/^none: how sure/);
    expect(correctionText({ ...verdict, differs: false })).toBe("not called for");
    expect(correctionText({ ...verdict, differs: false, asked: true })).toMatch(/^not made: the difference/);
  });
  it("the same on the page of a published session", () => {
    const standard = { recovery: 0.9612, uRecovery: 0.017, factor: 1.04, material: "glass" } as never;
    expect(recoveryOnPage(standard)).toBe("0.961, u 0.017");
    expect(recoveryOnPage({ recovery: 0.9612, uRecovery: null } as never)).toBe("0.961");
    expect(recoveryOnPage({ recovery: null, uRecovery: null } as never)).toBe("–");
    expect(correctionOnPage(standard)).toMatch(/^× 1\.04, parts of glass$/);
    expect(correctionOnPage({ factor: null } as never)).toBe("no");
  });
  it("a standard is in use, ran out, or is out of use", () => {
    const standard = { expiresOn: "2026-06-30", retiredAt: null };
    expect(standardStanding(standard, "2026-06-30")).toBe("in use");
    expect(standardStanding(standard, "2026-07-01")).toBe("its certificate ran out on 30 June 2026");
    expect(standardStanding({ expiresOn: null, retiredAt: null }, "2026-07-01")).toBe("in use");
    expect(standardStanding({ ...standard, retiredAt: new Date(0) }, "2026-06-01")).toBe("out of use");
  });
});

describe("a day in one line", () => {
  it("names the worst first, with the mode only where there are several", () => {
    expect(dayStates([])).toBe("not shown: no check standard was read");
    expect(
      dayStates([
        { element: "Pb", mode: null, state: "fit" },
        { element: "Sn", mode: null, state: "fit" },
      ]),
    ).toBe("fit: lead and tin");
    expect(
      dayStates([
        { element: "Pb", mode: "metal", state: "fit" },
        { element: "Cd", mode: null, state: "not-fit" },
      ]),
    ).toBe("not fit: cadmium (no mode named); fit: lead (metal)");
  });
  it("doubt of several elements in one stretch is one sentence", () => {
    const span = { after: at("09:51"), before: null };
    const lines = doubtLines([
      { element: "Pb", mode: "glaze", inDoubt: [span] },
      { element: "Cd", mode: "glaze", inDoubt: [span] },
      { element: "Pb", mode: null, inDoubt: [span] },
    ]);
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/^A check failed for lead and cadmium, in the mode “glaze”: readings are in doubt after/);
    expect(lines[1]).toMatch(/^A check failed for lead: readings/);
  });
  it("counts the readings left out", () => {
    expect(doubtWords.leftOut(0)).toBe("No reading of an item lies in it.");
    expect(doubtWords.leftOut(1)).toMatch(/^1 reading of items lies in it, and feeds no number\. It is listed/);
    expect(doubtWords.leftOut(3)).toMatch(/^3 readings of items lie in it, and feed no number\. They are listed/);
    expect(asideReason(failedCheckReason)).toMatch(/^Left out by the method/);
    expect(asideReason("missed the glaze")).toBe("missed the glaze");
    expect(aboutElement("Pb", null)).toBe("lead");
  });
  it("an instrument without a session of its own keeps the word it was published with", () => {
    const sitting = (day: number, state: "fit" | "not-fit") =>
      ({
        instrument: { serial: "A1" },
        startedAt: at("09:00", day),
        fitness: [{ element: "Pb", mode: null, state }],
      }) as never;
    const sessions = [sitting(12, "fit")];
    expect(instrumentDay(sessions, "A1", "published word")).toBe("fit: lead");
    expect(instrumentDay(sessions, "B2", "published word")).toBe("published word");
    // Two sittings are not poured into one list: an element would stand in it twice, or fit and not fit at once.
    expect(instrumentDay([sitting(12, "fit"), sitting(19, "fit")], "A1", "published word")).toBe("fit: lead");
    expect(instrumentDay([sitting(12, "fit"), sitting(19, "not-fit")], "A1", "published word")).toBe(
      "12 September 2026: fit: lead. 19 September 2026: not fit: lead",
    );
    expect(instrumentDay(undefined, "A1", "published word")).toBe("published word");
  });
});

describe("a standard's readings over time", () => {
  const about = { standard: "Tile", element: "Pb", mode: "glaze" };
  const point = (minute: number, recovery: number | null) => ({
    takenAt: at(`09:${String(minute).padStart(2, "0")}`),
    recovery,
    within: recovery === null ? null : Math.abs(recovery - 1) <= 0.2,
  });
  it("of which there are too few have a table only, in the order of time", () => {
    const { title, input, rows } = checkFigure(about, [point(30, null), point(10, 1.01)]);
    expect(input).toBeNull();
    expect(title).toBe("Tile: lead, in the mode “glaze”. All within 20 %; too few or too like for a chart.");
    expect(rows.map((row) => [row.recovery, row.average, row.judged, row.says])).toEqual([
      ["1.01", "–", "good", "–"],
      ["not detected", "–", "says nothing", "–"],
    ]);
  });
  it("that are steady say so; one far off is ringed, counted and told at its point", () => {
    const steady = [1.0, 1.01, 0.99, 1.0, 1.01, 0.99].map((r, i) => point(i, r));
    expect(checkFigure(about, steady).title).toMatch(/All within 20 %; the charts see no shift\.$/);
    const far = checkFigure(about, [...steady, point(40, 1.3)]);
    expect(far.title).toMatch(/1 check of 7 failed; the charts speak up at \d+ points?\.$/);
    const last = far.input?.points.at(-1);
    expect(last).toMatchObject({ signal: true, value: 1.3 });
    expect(last?.words).toMatch(/1\.3 of the certified value, outside 20 %; .*outside the limits/);
    expect(far.rows.at(-1)?.average).not.toBe("–");
  });
});
