import { describe, expect, it } from "vitest";
import { z } from "zod";
import { parseAmounts } from "../../lib/amounts/amounts-form.ts";
import * as comparators from "../../lib/amounts/comparators.ts";
import { massComparators } from "../../lib/amounts/comparators.ts";
import { computeAmounts } from "../../lib/amounts/compute-amounts.ts";
import { readQuantity } from "../../lib/amounts/read-quantity.ts";
import { listLimits } from "../../lib/limits/list-limits.ts";
import { allLimits } from "../../lib/limits/tables/all-limits.ts";
import { snapshotSchema } from "../../lib/publication/snapshot.ts";
import { materialDensities } from "../../lib/quantity/material-densities.ts";
import { amountExamples } from "../../lib/wording/amount-figures.ts";
import { stateIn } from "../../lib/wording/amounts-state.ts";
import { elementName } from "../../lib/wording/elements.ts";
import { amountRecords } from "../../lib/wording/es/amount-records.ts";
import { changeSentences } from "../../lib/wording/es/changes.ts";
import { limitChecks } from "../../lib/wording/es/limit-checks.ts";
import { limitNotes } from "../../lib/wording/es/limit-notes.ts";
import { limitScopes } from "../../lib/wording/es/limit-scopes.ts";
import { limitTitles, placeNames } from "../../lib/wording/es/limit-titles.ts";
import {
  alsoAs,
  chancesText,
  groupDigits,
  listed,
  numberText,
  plainDate,
  resultText,
  withUnit,
} from "../../lib/wording/formats.ts";
import { limitTold } from "../../lib/wording/limit-told.ts";
import { leavesLanguage, otherLanguage, pathsIn } from "../../lib/wording/localized-paths.ts";
import { limitName } from "../../lib/wording/verdicts.ts";
import { catalogues, sentencesOf } from "../support/english-left.ts";
import { sampleSnapshotOf } from "../support/sample-snapshot.ts";

describe("numbers, units and dates in Spanish", () => {
  it("a decimal comma, thousands by a narrow space from five digits on", () => {
    expect(groupDigits("1234.5", "es")).toBe("1234,5");
    expect(groupDigits("12345.6", "es")).toBe("12\u202F345,6");
    expect(withUnit("0.05", "%", "es")).toBe("0,05 %");
    expect(withUnit("2.2", "µg/day", "es")).toBe("2,2 µg/día");
    expect(numberText(0.041286, 3, "es")).toBe("0,0413");
  });
  it("reads back to the number it was", () => {
    for (const value of [0.000123, 0.5, 9.99, 1234.5, 98765.4321, 1e7]) {
      const text = numberText(value, 6, "es");
      expect(Number(text.replaceAll("\u202F", "").replace(",", "."))).toBe(Number(value.toPrecision(6)));
      expect(text).not.toContain(".");
    }
  });
  it("dates, lists, chances and other units in words", () => {
    expect(plainDate("2026-11-28", "es")).toBe("28 de noviembre de 2026");
    expect(listed(["plomo", "cadmio", "indio"], "es")).toBe("plomo, cadmio e indio");
    expect(listed(["cobre", "hierro"], "es")).toBe("cobre y hierro");
    expect(elementName("Pb+Cd", "es")).toBe("plomo y cadmio");
    expect(chancesText(0.7214, "es")).toBe("unas 72 posibilidades de 100");
    expect(alsoAs("12400", 12400, "mg/kg", "es")).toBe("12\u202F400 ppm, o 1,24 %");
  });
  it("a result and a limit in one line", () => {
    const { parts } = sampleSnapshotOf("not-detected").specimens[0]!;
    expect(resultText(parts[0]!.results[0]!, "es")).toMatch(/^no detectado \(menos de [\d,]+ mg\/kg\)$/);
    expect(
      limitName(
        {
          title: "Total lead in children's products, 100",
          jurisdiction: "United States",
          value: 100,
          unit: "mg/kg",
        },
        "es",
      ),
    ).toBe("Estados Unidos, Plomo total en productos infantiles, 100 mg/kg");
  });
});

/** What an English sentence about a limit holds, and a Spanish one does not. */
const english = /\b(the|of|and|with|is|was|were|in|for|from|read|not|only)\b/i;
const findTold = (id: string) => listLimits().find((limit) => limit.id === id)!;

describe("what is looked up by its English text has its Spanish text", () => {
  it("places and titles of limits", () => {
    expect(allLimits.map(({ title }) => title).filter((title) => !Object.hasOwn(limitTitles, title))).toEqual([]);
    expect(allLimits.map((limit) => limit.jurisdiction).filter((place) => !Object.hasOwn(placeNames, place))).toEqual(
      [],
    );
  });
  it("what limits cover, how far they were checked, rules, statistics and notes", () => {
    const left = listLimits().flatMap((limit) => {
      const told = limitTold(limit, "es");
      return (["scope", "checkedNote", "rule", "statistic", "note"] as const)
        .map((name) => [limit[name], told[name]] as const)
        .filter(([written, text]) => written !== null && (written === text || english.test(text ?? "")))
        .map(([, text]) => `${limit.id}: ${text}`);
    });
    expect(left).toEqual([]);
    expect(limitTold(findTold("CPSIA-100"), "es").citation).toBe(findTold("CPSIA-100").citation);
  });
  it("no sentence about limits is kept that no limit says any more", () => {
    const said = listLimits().flatMap(({ scope, checkedNote, rule, statistic, note }) =>
      [scope, checkedNote, rule, statistic, note].filter((text) => text !== null),
    );
    const texts = Object.keys({ ...limitScopes, ...limitChecks, ...limitNotes });
    expect(texts.filter((text) => !said.some((whole) => whole.includes(text)))).toEqual([]);
  });
  it("things to compare amounts with, and materials", () => {
    expect(massComparators.length).toBeGreaterThan(5);
    const all = [...comparators.areaComparators, ...massComparators].flatMap((one) => [
      one.name,
      one.size,
      one.source,
      one.checked,
    ]);
    const materials = materialDensities.flatMap((one) => [one.name, one.source, one.checked]);
    expect([...all, ...materials].filter((text) => !Object.hasOwn(amountRecords, text))).toEqual([]);
  });
  it("every field of a snapshot that a difference can name", () => {
    const names = new Set<string>();
    const walk = (schema: unknown): void => {
      const { def } = schema as { def?: Record<string, unknown> };
      if (!def) return;
      if (schema instanceof z.ZodObject)
        for (const [name, member] of Object.entries(schema.shape)) {
          names.add(name);
          walk(member);
        }
      for (const inner of [def["innerType"], def["element"], def["in"], def["out"], def["valueType"]])
        if (inner) walk(inner);
      for (const inner of (def["options"] as unknown[]) ?? []) walk(inner);
    };
    walk(snapshotSchema);
    expect(names.size).toBeGreaterThan(100);
    // Said elsewhere on the page, never as a difference.
    for (const frame of ["format", "revision", "publishedAt"]) names.delete(frame);
    expect([...names].filter((name) => !Object.hasOwn(changeSentences.fields, name))).toEqual([]);
  });
});

describe("what the calculator is filled in with", () => {
  const texts = ["2.5 to 3.7", "412 (376 to 448.5)", "1.234", "12.345 ± 1.5", "< 0.5", "1.5e-7", "10 to 14 triangular"];
  it.each(texts)("%s is written as Spanish writes it, and means the same", (content) => {
    const spanish = stateIn(parseAmounts({ content }), "es").content;
    expect(spanish).not.toMatch(/\.| to /);
    const read = (text: string) => readQuantity(text, { field: "content" });
    expect(read(spanish)).toEqual(read(content));
    expect(read(spanish).ok).toBe(true);
  });
  it("the examples come to the same figures in both languages", () => {
    for (const { state } of amountExamples) {
      const [english, spanish] = (["en", "es"] as const).map((language) =>
        computeAmounts(stateIn(parseAmounts(state), language), 1, { references: [], benchmarks: [], draws: 1000 }),
      );
      expect(spanish!.problems).toEqual([]);
      expect(spanish!.amount).toEqual(english!.amount);
    }
  });
});

it("no Spanish catalogue holds an English sentence", () => {
  const stop = /\b(the|of|and|with|is|was|are|this|that|which|from|we|it)\b/i;
  const left = Object.values(catalogues).flatMap((words) =>
    sentencesOf(words.es).filter(({ way, text }) => !way.endsWith(".code") && stop.test(text)),
  );
  expect(left).toEqual([]);
});

describe("addresses", () => {
  it("Spanish pages lie under /es, pages that are told in English only keep their address", () => {
    expect(pathsIn.es.home()).toBe("/es");
    expect(pathsIn.es.items("taza azul")).toBe("/es/items?q=taza%20azul");
    expect(pathsIn.es.revision("mug", 2)).toBe("/es/items/mug/revisions/2");
    expect(pathsIn.es.limit("CPSIA-100")).toBe("/es/limits/CPSIA-100");
    expect(pathsIn.es.bench()).toBe("/bench");
    expect(leavesLanguage("/bench", "es")).toBe(true);
    expect(leavesLanguage("/es/items", "es")).toBe(false);
    expect(leavesLanguage("/bench", "en")).toBe(false);
  });
  it("the same page in the other language, there and back", () => {
    expect(otherLanguage("/")).toEqual({ language: "es", path: "/es" });
    expect(otherLanguage("/es")).toEqual({ language: "en", path: "/" });
    expect(otherLanguage("/es/items/mug")).toEqual({ language: "en", path: "/items/mug" });
    expect(otherLanguage("/bench/items/1")).toBeNull();
    expect(otherLanguage("/limits/x")).toEqual({ language: "es", path: "/es/limits/x" });
  });
});
