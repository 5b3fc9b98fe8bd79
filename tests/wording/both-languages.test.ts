import { describe, expect, it } from "vitest";
import { type LogFault, logFaultCodes } from "@/lib/publication/verify-log.ts";
import type { Problem } from "@/lib/quantity/problem.ts";
import { amountRecord, amountsIn } from "@/lib/wording/amounts.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { madeText } from "@/lib/wording/catalogue.ts";
import { problemWords as spanishProblems } from "@/lib/wording/es/problems.ts";
import { logFaultSentence } from "@/lib/wording/log-faults.ts";
import { headWordsIn } from "@/lib/wording/log-page.ts";
import { methodPageIn } from "@/lib/wording/method-page.ts";
import { marksNote } from "@/lib/wording/photos.ts";
import { problemSentence, problemSentenceIn } from "@/lib/wording/problems.ts";
import { requestPageIn } from "@/lib/wording/test-requests.ts";
import { limitTitle, placeName } from "@/lib/wording/verdicts.ts";
import { catalogues } from "../support/english-left.ts";
import { sampleSnapshot, sampleSnapshotOf, sampleStates, sampleWithdrawal } from "../support/sample-snapshot.ts";

type Sentence = (...given: unknown[]) => unknown;
type Pair = { way: string; en: Sentence; es: Sentence };

/** Every sentence of two catalogues that is made of what it is given. */
function pairsOf(en: unknown, es: unknown, way: string): Pair[] {
  if (typeof en === "function") return [{ way, en: en as Sentence, es: es as Sentence }];
  if (typeof en !== "object" || en === null) return [];
  return Object.entries(en).flatMap(([name, one]) =>
    pairsOf(one, (es as Record<string, unknown>)[name], `${way}.${name}`),
  );
}
const pairs = Object.entries({ ...catalogues, headWordsIn, methodPageIn, requestPageIn }).flatMap(([name, words]) =>
  pairsOf(words.en, words.es, name),
);

/** What may stand at a place: a text of its own, an empty one, one that ends, one and several, yes and no, nothing. */
const choicesAt = (place: number): unknown[] => [`‹${place}›`, "", "A.", 1, 7, true, false, null];
const combinations = (places: number): unknown[][] =>
  Array.from({ length: places }).reduce<unknown[][]>(
    (all, _, place) => all.flatMap((given) => choicesAt(place).map((choice) => [...given, choice])),
    [[]],
  );
const saidBy = (sentence: Sentence, given: unknown[]): string | null => {
  try {
    const text = sentence(...given);
    return typeof text === "string" ? text : null;
  } catch {
    return null; // not made for such a thing
  }
};
/** The texts and numbers of those given that a sentence repeats. "1" is often a word. */
const repeated = (text: string, given: unknown[]): string[] =>
  given
    .flatMap((one) => (typeof one === "number" || typeof one === "string" ? [String(one)] : []))
    .filter((one) => one.length > 0 && one !== "1" && one !== "A." && text.includes(one));

describe("a Spanish sentence is made of what the English one is made of", () => {
  it("there are many", () => expect(pairs.length).toBeGreaterThan(100));
  it.each(pairs.map((pair) => [pair.way, pair] as const))("%s", (_, { en, es }) => {
    for (const given of combinations(Math.min(Math.max(en.length, es.length), 4))) {
      const [english, spanish] = [saidBy(en, given), saidBy(es, given)];
      if (english === null || /undefined|\[object/.test(english)) continue;
      expect(spanish, JSON.stringify(given)).not.toBeNull();
      expect(spanish!, JSON.stringify(given)).not.toMatch(/undefined|NaN|\[object/);
      expect(repeated(spanish!, given), `${JSON.stringify(given)}: ${english} / ${spanish}`).toEqual(
        repeated(english, given),
      );
    }
  });
});

describe("faults of the log", () => {
  const faults = logFaultCodes.flatMap((code) =>
    ["hash", "kind", undefined].flatMap((field) =>
      [3, null].flatMap((seq) =>
        ["mug", null].map((slug): LogFault => {
          const at = { code, seq, slug, revision: slug === null ? null : 7, found: "FOUND", expected: "EXPECTED" };
          return field === undefined ? at : { ...at, field };
        }),
      ),
    ),
  );
  it.each(logFaultCodes)("%s names the same things in both languages", (code) => {
    for (const fault of faults.filter((one) => one.code === code)) {
      const named = (text: string) =>
        ["FOUND", "EXPECTED", "mug", "7", "kind"].filter((word) => new RegExp(`\\b${word}\\b`).test(text));
      expect(named(logFaultSentence(fault, "es")), JSON.stringify(fault)).toEqual(named(logFaultSentence(fault)));
      expect(logFaultSentence(fault, "es")).not.toBe(logFaultSentence(fault));
    }
  });
});

describe("problems of a reader's forms", () => {
  const shapes: Omit<Problem, "code">[] = [
    {},
    { found: "FOUND" },
    { found: "FOUND", allowed: "ALLOWED" },
    { found: "2010-05-03", allowed: "2011-01-01" },
    { where: { field: "coatThickness" }, found: "FOUND" },
    { where: { field: "content" } },
  ];
  it.each(Object.keys(spanishProblems))("%s", (code) => {
    for (const shape of shapes) {
      const [english, spanish] = [problemSentence({ code, ...shape }), problemSentenceIn({ code, ...shape }, "es")];
      expect(spanish).not.toMatch(/undefined|null|NaN|\[object/);
      expect(spanish).not.toBe(english);
      expect(problemSentenceIn({ code, ...shape }, "en")).toBe(english);
      // What was found may be an English word; it is quoted only where the English sentence does so too.
      if (spanish.includes("FOUND")) expect(english).toContain("FOUND");
    }
  });
  it("one that no reader meets stays English", () => {
    const problem = { code: "slug-taken", found: "blue-mug" };
    expect(problemSentenceIn(problem, "es")).toBe(problemSentence(problem));
  });
});

describe("an item's answer", () => {
  it.each(sampleStates)("%s has as many sentences in both languages, and the same numbers", (state) => {
    const snapshot = sampleSnapshotOf(state);
    const digits = (text: string) => text.replaceAll(",", ".").match(/\d+(?:\.\d+)?/g) ?? [];
    const [english, spanish] = [itemAnswer(snapshot), itemAnswer(snapshot, "es")];
    expect(spanish.verdict).toBe(english.verdict);
    expect(spanish.sentences).toHaveLength(english.sentences.length);
    expect(digits(spanish.headline)).toEqual(digits(english.headline));
  });
  it("nothing seen at one spot or at several, an uneven part with its range and without", () => {
    const told = (state: "not-detected" | "uneven", change: object) => {
      const snapshot = structuredClone(sampleSnapshotOf(state));
      Object.assign(snapshot.specimens[0]!.parts[0]!.results[0]!, change);
      return itemAnswer(snapshot, "es").sentences.join(" ");
    };
    const { counts } = sampleSnapshotOf("not-detected").specimens[0]!.parts[0]!.results[0]!;
    expect(told("not-detected", { counts: { ...counts, spots: 1 } })).toContain("en el único punto que ensayamos");
    expect(told("not-detected", { counts: { ...counts, spots: 4 } })).toContain("en ninguno de los 4 puntos");
    expect(told("uneven", { state: "range-only", range: [40, 90] })).toMatch(
      /no es igual en toda la parte\. Hallamos .*40.*90/,
    );
    expect(told("uneven", { state: "range-only", range: null })).toMatch(/no es igual en toda la parte\.(?! Hallamos)/);
  });
  it("several parts in which nothing was seen are told in the plural", () => {
    const snapshot = structuredClone(sampleSnapshot());
    const none = sampleSnapshotOf("not-detected").specimens[0]!.parts[0]!;
    snapshot.specimens[0]!.parts = [snapshot.specimens[0]!.parts[0]!, none, { ...none, id: "another" }];
    expect(itemAnswer(snapshot, "es").sentences.join(" ")).toContain("2 no detectados");
  });
  it("a result taken back, and the whole mug", () => {
    expect(itemAnswer(sampleWithdrawal(), "es").sentences).toHaveLength(
      itemAnswer(sampleWithdrawal()).sentences.length,
    );
    expect(itemAnswer(sampleSnapshot(), "es").verdict).toBe(itemAnswer(sampleSnapshot()).verdict);
  });
});

it("an article runs together with de and a; a name with its own full stop ends the sentence", () => {
  const { areaOf, weightOf, about } = amountsIn.es;
  expect(weightOf("el sello")).toBe("el peso del sello");
  expect(areaOf("la alfombra junto a el sillón")).toBe("la superficie de la alfombra junto al sillón");
  expect(about(true, "1 cm.")).toBe("Como máximo, alrededor de 1 cm.");
});

describe("words that are looked up", () => {
  it("a day, a month or a year of making", () => {
    expect(madeText("2011", "es")).toBe("en 2011");
    expect(madeText("2011-08", "es")).toMatch(/^en agosto de 2011$/);
    expect(madeText("2011-08-14", "es")).toBe("el 14 de agosto de 2011");
    expect(madeText(null, "es")).not.toBe(madeText(null));
  });
  it("a text of a newer table stands as it is, and a rule for an alloy by its metals", () => {
    expect(amountRecord("ideal-volume rule for Pb and Sn", "es")).toBe("regla del volumen ideal para Pb y Sn");
    expect([amountRecord("a new text", "es"), amountRecord("a new text")]).toEqual(["a new text", "a new text"]);
    expect([limitTitle("A new limit", "es"), placeName("Atlantis", "es")]).toEqual(["A new limit", "Atlantis"]);
  });
  it("circles on a photo", () => {
    const mark = (share: number | null) => ({ share });
    expect(marksNote([], [], "es")).toBeNull();
    expect(marksNote([mark(null)], [null], "es")).not.toBe(marksNote([mark(null)], [null]));
    expect(marksNote([mark(0.1)], [8], "es")).toMatch(/8 mm/);
    expect(marksNote([mark(0.1), mark(null)], [8, null], "es")).toMatch(/donde se conoce/);
  });
});
