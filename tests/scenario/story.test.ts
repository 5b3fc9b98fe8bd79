import { describe, expect, it } from "vitest";
import { decide, heldOf } from "@/lib/limits/decide.ts";
import { scenario } from "@/sample-data/scenario.ts";
import { germanSitting } from "@/sample-data/shots-b.ts";
import { fitnessOf, resultOf, resultsOf } from "./read-scenario.ts";

/** What the README of sample-data says happens in the invented files does happen when they are reconciled. */
const above = (limit: number) => ({ value: limit, failsAt: ">" as const });

describe("the invented shelf", () => {
  it("has red paint too close to 90 mg/kg of lead to call, after ten shots", () => {
    const red = resultOf("wooden-stacking-rings", "red", "Pb");
    expect(red.counts.used).toBe(10);
    expect(decide(heldOf(red), above(90)).verdict).toBe("too-close");
    expect(red.flags).toContain("screening-only");
  });

  it("has a vinyl panel too close to 100 mg/kg, and three shots of a torn window film left out for the failed check", () => {
    const panel = resultOf("wipe-clean-bib-with-pears", "panel", "Pb");
    expect(decide(heldOf(panel), above(100)).verdict).toBe("too-close");
    expect(panel.counts.setAside).toBe(3);
    expect(panel.flags).toContain("check-failed");
    expect(panel.withSetAside!.value!).toBeLessThan(panel.value!);
    const content = germanSitting.groups.find((g) => g.sample === "R12 Lätzchen, Folie")!.content["Pb"];
    const [low, high] = panel.interval!;
    const chosen = (content as { mean: number }).mean;
    expect(low < chosen && chosen < high).toBe(true);
  });

  it("has an uneven transfer on the plate, its missed shot set aside, its eating surface free of lead", () => {
    const rim = resultOf("cornflower-transfer-plate", "rim", "Pb");
    expect(rim.flags).toEqual(expect.arrayContaining(["uneven", "excluded-readings"]));
    expect(rim.counts.setAside).toBe(1);
    expect(resultOf("cornflower-transfer-plate", "centre", "Pb").state).toBe("not-detected");
  });

  it("has uneven yellow paint", () => {
    expect(resultOf("wooden-stacking-rings", "yellow", "Pb").flags).toContain("uneven");
  });

  it("has a print where lead was seen at two places of five: no content is stated, a bound is", () => {
    const print = resultOf("floppy-printed-rabbit", "print", "Pb");
    expect([print.state, print.counts.spotsDetected, print.counts.spots]).toEqual(["not-quantified", 2, 5]);
    expect(print.upperBound).toBeLessThan(90);
  });

  it("says that arsenic beside much lead is not to be trusted", () => {
    expect(resultOf("red-band-poppy-mug", "band", "As").flags).toContain("lead-arsenic-overlap");
    expect(resultOf("cut-crystal-tumbler", "wall", "As").flags).toContain("lead-arsenic-overlap");
  });

  it("has short counts on the zinc star, and a tin coat that is screening only", () => {
    expect(resultOf("zinc-star-key-ring", "charm", "Pb").flags).toContain("short-count");
    expect(resultOf("tinned-copper-jelly-mould", "tin", "Pb").flags).toContain("screening-only");
  });

  it("agrees on the poppy mug between two sittings a week apart", () => {
    const band = resultOf("red-band-poppy-mug", "band", "Pb");
    const [low, high] = band.interval!;
    expect(low < 38_500 && 38_500 < high).toBe(true);
  });

  it("keeps content and film readings of one paint apart", () => {
    const kinds = resultsOf("pull-along-blue-train", 0, "blue").flatMap((r) =>
      r.element === "Pb" ? [r.quantity] : [],
    );
    expect(kinds.sort()).toEqual(["bulk-mass-fraction", "coating-areal"]);
  });

  it("has sittings that were fit, fit with a correction, and not fit in the middle", () => {
    const state = (key: string, element: string, mode: string) =>
      fitnessOf(scenario.sessions.find((s) => s.key === key)!).elements.find(
        (e) => e.element === element && e.mode === mode,
      )!;
    expect(state("a-september-12", "Pb", "glass and glaze").state).toBe("fit");
    expect(state("c-october-24", "Pb", "film").state).toBe("fit-with-correction");
    const torn = state("b-october-3", "Pb", "Kunststoff");
    expect([torn.state, torn.inDoubt.length]).toEqual(["not-fit", 1]);
    // The film's content was chosen as 27.5 µg/cm²; the analyser was made to read 12 % high that morning.
    const film = resultOf("pull-along-blue-train", "blue", "Pb", "coating-areal");
    const [low, high] = film.interval!;
    expect(low < 0.0275 && 0.0275 < high).toBe(true);
  });

  it("gives every part with readings at least one result, and every stated interval a sane width", () => {
    for (const item of scenario.items) {
      item.specimens.forEach((specimen, n) => {
        for (const part of specimen.components.filter((c) => c.readings.length > 0)) {
          const results = resultsOf(item.slug, n, part.key);
          expect(results.length, `${item.slug} ${part.key}`).toBeGreaterThan(0);
          for (const r of results) {
            if (!r.interval || r.interval[0] <= 0) continue;
            expect(r.interval[1] / r.interval[0], `${item.slug} ${part.key} ${r.element}`).toBeLessThan(12);
          }
        }
      });
    }
  });
});
