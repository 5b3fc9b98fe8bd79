import { readFileSync } from "node:fs";
import { join } from "node:path";
import { renderToStaticMarkup } from "react-dom/server";
import { beforeAll, describe, expect, test, vi } from "vitest";
import { textWidth } from "@/app/_components/text-width.ts";
import { drawingFile, wrapped } from "@/app/(catalogue)/_amount/drawing-file.ts";
import { loadAmounts } from "@/app/(catalogue)/_amount/load-amounts.ts";
import { AmountPanel } from "@/app/(catalogue)/_item/amount-panel.tsx";
import { ChangedLimits } from "@/app/(catalogue)/_item/changed-limits.tsx";
import { AmountSheet, Entered } from "@/app/(catalogue)/amounts/amount-sheet.tsx";
import { AmountsForm, usedBy } from "@/app/(catalogue)/amounts/amounts-form.tsx";
import { GET as getPng } from "@/app/(catalogue)/amounts/drawing.png/route.ts";
import { GET as getSvg } from "@/app/(catalogue)/amounts/drawing.svg/route.ts";
import {
  amountSources,
  amountsSchema,
  densitySources,
  dimensionNames,
  parseAmounts,
  serialiseAmounts,
} from "@/lib/amounts/amounts-form.ts";
import { geometryShapes } from "@/lib/amounts/geometry.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { amountExamples } from "@/lib/wording/amount-figures.ts";
import { amountCautions } from "@/lib/wording/amounts.ts";
import { sampleSnapshot, sampleSnapshotOf } from "@/tests/support/sample-snapshot.ts";

const text = (markup: string): string =>
  markup
    .replace(/<[^>]+>/g, " ")
    .replaceAll("&#x27;", "'")
    .replaceAll("&lt;", "<")
    .replaceAll("&amp;", "&")
    .replaceAll("&quot;", '"')
    .replace(/\s+/g, " ");
const solder = parseAmounts(amountExamples[0]?.state ?? {});
const form = (state = parseAmounts({})) =>
  renderToStaticMarkup(<AmountsForm language="en" state={state} errors={new Map()} />);
const sheet = (state = solder) =>
  renderToStaticMarkup(<AmountSheet language="en" state={state} result={loadAmounts(state)} />);

describe("the form", () => {
  test("has every key of the state once, each with its label", () => {
    const markup = form();
    for (const key of Object.keys(amountsSchema.shape)) {
      const controls = [...markup.matchAll(new RegExp(`<(?:input|select)[^>]*\\sname="${key}"[^>]*>`, "g"))];
      const radios = controls.filter(([tag]) => tag.includes('type="radio"'));
      expect(controls.length, key).toBe(radios.length > 0 ? radios.length : 1);
      for (const [tag] of controls) expect(markup, key).toContain(`for="${/ id="([^"]+)"/.exec(tag)?.[1]}"`);
    }
  });
  test("the style sheet shows the fields of every choice, and no other choice exists", () => {
    const css = readFileSync(join(import.meta.dirname, "../../app/(catalogue)/amounts/amounts.module.css"), "utf8");
    for (const shape of geometryShapes)
      expect(css, shape).toContain(`:has(option[value="${shape}"]:checked) [data-for~="${shape}"]`);
    for (const source of amountSources.filter((each) => each !== "none"))
      expect(css, source).toContain(`[name="from"][value="${source}"]:checked) [data-for~="${source}"]`);
    for (const source of densitySources)
      expect(css, source).toContain(`[name="densityFrom"][value="${source}"]:checked) [data-for~="${source}"]`);
  });
  test("every size is shown for some choice", () => {
    for (const name of dimensionNames) expect(usedBy(name), name).not.toBe("");
    expect(usedBy("area").split(" ")).toEqual(expect.arrayContaining(["sheet", "coat"]));
  });
  test("keeps what was entered, sends by GET and needs no script", () => {
    const markup = form(solder);
    expect(markup).toContain('method="get"');
    expect(markup).toContain('value="2 to 3"');
    expect(markup).not.toContain("<script");
  });
});

describe("the sheet", () => {
  test("every example works out, says its amount, its area and its cautions beside it", () => {
    for (const { text: name, state } of amountExamples) {
      const parsed = parseAmounts(state);
      const result = loadAmounts(parsed);
      expect(result.problems, name).toEqual([]);
      const words = text(sheet(parsed));
      expect(words).toContain("This part holds about");
      expect(words).toContain("not how much gets into a child");
      expect(words).toContain("Spread evenly");
      expect(words).not.toMatch(/undefined|NaN|\[object|\b(?:safe|legal|illegal)\b/);
    }
  });
  test("D2 and D3: 2.1888 g over 57,600 ft² is 38 µg/ft², and halves are 19, 9.5 and 4.75 (common practice, no source)", () => {
    const words = text(sheet(parseAmounts({ from: "amount", amount: "2188.8", over: "57600", loading: "5" })));
    for (const loading of ["38 µg/ft²", "19 µg/ft²", "9.5 µg/ft²", "4.75 µg/ft²"]) expect(words).toContain(loading);
  });
  test("each published loading leads to its limit and to the same state with that loading", () => {
    const markup = sheet(solder).replaceAll("&amp;", "&");
    expect(markup).toContain('href="/limits/EPA-DLAL-2024-FLOOR"');
    expect(markup).toContain(`href="/amounts?${serialiseAmounts({ ...solder, loading: "40" })}"`);
    expect(text(markup)).toContain("asked for from 12 January 2026");
  });
  test("figures have a title that states the message and a table behind", () => {
    const markup = sheet(solder);
    expect(text(markup)).toMatch(/As one ball of pure lead, \d+ mg would be [\d.]+ mm across\./);
    expect(markup.split("<figure").length - 1).toBe(2);
    expect(markup).toContain("The sizes drawn");
    expect(markup).toContain("The areas drawn");
    expect(text(markup)).toContain("pages on court sizes");
  });
  test("what cannot be is said by its field, and nothing is drawn from it", () => {
    const state = parseAmounts({ from: "weight", weight: "3", content: "140", contentUnit: "%", loading: "0" });
    const result = loadAmounts(state);
    expect(result.problems.map((p) => [p.code, p.where?.field])).toEqual(
      expect.arrayContaining([
        ["content-over-100", "content"],
        ["loading-zero", "loading"],
      ]),
    );
    expect(result.amount).toBeNull();
    expect(drawingFile(result, "https://shelf.example/amounts")).toBeNull();
  });
  test("a printed sheet says what was entered", () => {
    const words = text(renderToStaticMarkup(<Entered language="en" state={solder} />));
    for (const said of ["Lead (Pb)", "Shape: Ball", "Diameter: 2 to 3 mm", "Content: 40 to 60 %", "10 µg/ft²"])
      expect(words).toContain(said);
  });
  test("the same state gives the same figures", () => {
    expect(sheet(parseAmounts(new URLSearchParams(serialiseAmounts(solder))))).toBe(sheet(solder));
  });
});

describe("the files", () => {
  beforeAll(() => {
    vi.stubEnv("BASE_URL", "https://shelf.example");
  });
  const asked = (file: string, state = solder) =>
    new Request(`https://shelf.example/amounts/${file}?${serialiseAmounts(state)}`);
  test("SVG: one drawing with its words, cautions and address, well formed, with nothing from outside", async () => {
    const reply = await getSvg(asked("drawing.svg"));
    expect(reply.headers.get("content-type")).toContain("image/svg+xml");
    const svg = await reply.text();
    expect(svg.match(/<svg /g)).toHaveLength(1);
    expect(svg).toContain("1.8 mm across");
    for (const caution of amountCautions("Pb")) expect(svg).toContain(caution.title);
    expect(svg).not.toMatch(/<script|<image|<foreignObject|@import/i);
    // No bare ampersand: the address in it has some.
    expect(svg.replace(/&(?:amp|lt|gt|quot|apos|#\d+);/g, "")).not.toContain("&");
  });
  test("PNG: of the same drawing, twice as many dots, for a print at life size", async () => {
    const reply = await getPng(asked("drawing.png"));
    expect(reply.headers.get("content-type")).toBe("image/png");
    const bytes = Buffer.from(await reply.arrayBuffer());
    expect(bytes.subarray(1, 4).toString()).toBe("PNG");
    const svgWidth = Number(/ width="(\d+)"/.exec(await (await getSvg(asked("drawing.svg"))).text())?.[1]);
    expect(bytes.readUInt32BE(16)).toBe(2 * svgWidth);
    const at = bytes.indexOf("pHYs");
    // 192 dots to an inch are 7 559 to a metre.
    expect(bytes.readUInt32BE(at + 4)).toBeCloseTo(7559, -1);
  });
  test("nothing to draw is a plain 404", async () => {
    expect((await getSvg(asked("drawing.svg", parseAmounts({})))).status).toBe(404);
    expect((await getPng(asked("drawing.png", parseAmounts({})))).status).toBe(404);
  });
  test("lines are no wider than their room, and lose no letter", () => {
    const address = `https://shelf.example/amounts?${"diameter=2+to+3&".repeat(20)}`;
    for (const words of [address, `Some words before ${address} and after`, "short"]) {
      const lines = wrapped(words, 12, 300);
      for (const line of lines) expect(textWidth(line, 12)).toBeLessThanOrEqual(300);
      expect(lines.join("").replaceAll(" ", "")).toBe(words.replaceAll(" ", ""));
    }
  });
});

describe("on an item's page", () => {
  const weighed = (massG: number | null): Snapshot => {
    const snapshot = sampleSnapshotOf("above");
    return {
      ...snapshot,
      specimens: snapshot.specimens.map((one) => ({ ...one, parts: one.parts.map((part) => ({ ...part, massG })) })),
    };
  };
  const panel = (snapshot: Snapshot) =>
    renderToStaticMarkup(<AmountPanel placed={resultsByWeight(snapshot)} several={false} />);

  test("the amount is the published content times the published weight, and the link gives the same figure", () => {
    const snapshot = weighed(100);
    const lead = resultsByWeight(snapshot)[0]?.result;
    const markup = panel(snapshot).replaceAll("&amp;", "&");
    const query = /href="\/amounts\?([^"]+)"/.exec(markup)?.[1] ?? "";
    const { mass } = loadAmounts(parseAmounts(new URLSearchParams(query)));
    expect(mass?.mass.value).toBeCloseTo(((lead?.value ?? 0) * 100) / 1000, 3);
    expect(text(markup)).toContain("This part holds about");
    expect(text(markup)).toContain("no known safe level of lead for a child");
    expect(markup.split("<figure").length - 1).toBe(2);
  });
  const asPart = (over: Partial<Snapshot["specimens"][number]["parts"][number]>): Snapshot => {
    const snapshot = weighed(null);
    return {
      ...snapshot,
      specimens: snapshot.specimens.map((one) => ({
        ...one,
        parts: one.parts.map((part) => ({
          ...part,
          ...over,
          results: part.results.map((result) => ({ ...result, quantity: "coating-mass-fraction" })),
        })),
      })),
    };
  };
  test("nothing is said of a solid part where no weight is known", () => {
    expect(panel(asPart({ form: "bulk" }))).toBe("");
  });
  test("a coat is told by weight and on an area where its thickness and density are known, else what is lacking", () => {
    const coat = { form: "coating", material: "paint", thicknessMm: 0.05 } as const;
    expect(text(panel(asPart(coat)))).toMatch(
      /mg\/kg.* of lead, in a coat 50 µm thick of 1\.2 to 4 g\/cm³, is .* mg\/cm²/,
    );
    expect(text(panel(asPart({ ...coat, thicknessMm: null })))).toContain("The thickness of the coat is needed");
    expect(text(panel(asPart({ ...coat, material: "other" })))).toContain("A density is needed");
  });

  const since = (snapshot: Snapshot, today: string) =>
    text(renderToStaticMarkup(<ChangedLimits snapshot={snapshot} placed={resultsByWeight(snapshot)} today={today} />));
  test("says which limits changed since the test", () => {
    // The paint of the sample is a coating: 600 mg/kg until 13 August 2009, 90 from the day after (16 CFR 1303).
    const snapshot = { ...sampleSnapshot(), testedOn: "2009-01-01" };
    expect(since(snapshot, "2010-01-01")).toMatch(/On 14 August 2009: .*90 mg\/kg.* Before, it was 600 mg\/kg\./);
    expect(since(snapshot, "2009-01-02")).toContain("No limit that we know");
  });
});
