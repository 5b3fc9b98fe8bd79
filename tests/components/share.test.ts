import { XMLParser, XMLValidator } from "fast-xml-parser";
import encodeQR from "qr";
import decodeQR from "qr/decode.js";
import { describe, expect, it } from "vitest";
import { textWidth } from "@/app/_components/text-width.ts";
import { cardSvg } from "@/app/_share/card-svg.ts";
import { labelSize, labelSvg } from "@/app/_share/label-svg.ts";
import { qrPath } from "@/app/_share/qr-path.ts";
import { wrappedLines } from "@/app/_share/wrapped-lines.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { briefDate } from "@/lib/wording/formats.ts";
import { languages } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { reportRows, shareIn, shortCautions } from "@/lib/wording/share.ts";
import { englishLeft } from "../support/english-left.ts";
import { sampleCorrection, sampleSnapshot, sampleWithdrawal } from "../support/sample-snapshot.ts";

const baseUrl = "https://shelf.example";
const longest = (): Snapshot => {
  const one = sampleSnapshot();
  return {
    ...one,
    slug: "a".repeat(80),
    item: { ...one.item, name: `Wwwww & <Mmmmm> "${"long name ".repeat(30)}"` },
    registry: { ...one.registry, name: "A registry with a very long name ".repeat(6) },
  };
};

/** Paints the dark modules of a path at four pixels each, as a camera would see them, and reads the code. */
function readCode({ size, path }: { size: number; path: string }): string {
  const pixel = 4;
  const width = size * pixel;
  const data = new Uint8Array(width * width * 4).fill(255);
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let py = Number(y) * pixel; py < (Number(y) + 1) * pixel; py += 1)
      for (let px = Number(x) * pixel; px < (Number(x) + Number(length)) * pixel; px += 1)
        data.fill(0, (py * width + px) * 4, (py * width + px) * 4 + 3);
  return decodeQR({ width, height: width, data });
}

describe("the QR code", () => {
  it.each(["https://shelf.example/items/bluebell-mug", `https://shelf.example/items/${"a".repeat(120)}`, "é€😀"])(
    "is read back as the text it was made of: %s",
    (text) => {
      expect(readCode(qrPath(text))).toBe(text);
    },
  );
  it("keeps a quiet zone of four modules and every dark module once", () => {
    const { size, path } = qrPath(baseUrl);
    const dark = [...path.matchAll(/M(\d+) (\d+)h(\d+)/g)].map(
      (m) => m.slice(1).map(Number) as [number, number, number],
    );
    for (const [x, y, length] of dark) {
      expect(Math.min(x, y)).toBeGreaterThanOrEqual(4);
      expect(Math.max(x + length, y + 1)).toBeLessThanOrEqual(size - 4);
    }
    const all = encodeQR(baseUrl, "raw", { ecc: "medium", border: 4 }).flat().filter(Boolean).length;
    expect(dark.reduce((n, [, , length]) => n + length, 0)).toBe(all);
  });
});

const shared: [string, Snapshot][] = [
  ["the sample", sampleSnapshot()],
  ["a correction", sampleCorrection()],
  ["a withdrawal", sampleWithdrawal()],
  ["the longest words", longest()],
];
const inEach = languages.flatMap((language) => shared.map(([name, snapshot]) => [name, language, snapshot] as const));

describe.each(inEach)("the card and the label of %s, in %s", (name, language, snapshot) => {
  const card = cardSvg(snapshot, { baseUrl, newest: snapshot.revision, language });
  const label = labelSvg(snapshot, { baseUrl, language });
  it("are whole XML that runs nothing and fetches nothing", () => {
    for (const svg of [card, label]) {
      expect(XMLValidator.validate(svg)).toBe(true);
      expect(svg).not.toMatch(/<script|\son\w+=|<image|xlink:|url\(|@import/);
    }
  });
  it("carry the cautions", () => {
    const said = (svg: string) => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((m) => m[1]).join(" ");
    for (const caution of shortCautions(snapshot, language)) expect(said(card)).toContain(caution);
    for (const caution of shortCautions(snapshot, language).slice(0, 2)) expect(said(label)).toContain(caution);
    expect(said(card)).toContain(shareIn[language].invented);
    expect(said(label)).toContain(shareIn[language].inventedShort);
    expect(said(label)).toContain(shareIn[language].scan);
    expect(said(label)).toContain(shareIn[language].tested(briefDate(snapshot.testedOn, language)));
  });
  it("are told in their language and lead to its pages", () => {
    for (const svg of [card, label]) expect(svg).toContain(`xml:lang="${language}"`);
    const page = `${baseUrl}${pathsIn[language].item(snapshot.slug)}`;
    expect(card).toContain(`href="${page}/revisions/${snapshot.revision}"`);
    expect(label).toContain(`, ${page}</title>`);
    if (language === "es" && name !== "the longest words")
      for (const svg of [card, label]) expect(englishLeft(svg, ["glaze,", "outside"])).toEqual([]);
  });
  it("keep their words inside their edges", () => {
    for (const [svg, width, height] of [
      [card, 480, Number(/height="([\d.]+)"/.exec(card)?.[1])],
      [label, labelSize.width, labelSize.height],
    ] as const) {
      const texts = [...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)" font-size="([\d.]+)"[^>]*>([^<]*)</g)];
      expect(texts.length).toBeGreaterThan(5);
      for (const [, x, y, size, text] of texts) {
        const plain = text!
          .replaceAll("&amp;", "&")
          .replaceAll("&lt;", "<")
          .replaceAll("&gt;", ">")
          .replaceAll("&quot;", '"');
        expect(Number(x) + textWidth(plain, Number(size)), plain).toBeLessThanOrEqual(width + 0.01);
        expect(Number(y) + Number(size) * 0.3, `${name}: ${plain}`).toBeLessThanOrEqual(height + 0.01);
      }
    }
  });
});

it("a card of an older revision says that there is a newer one; the permanent address is on it", () => {
  const old = cardSvg(sampleSnapshot(), { baseUrl, newest: 3, language: "en" });
  expect(old).toContain("There is a newer revision: 3.");
  expect(cardSvg(sampleCorrection(), { baseUrl, newest: 2, language: "en" })).not.toContain("newer revision");
  const parsed = new XMLParser({ ignoreAttributes: false }).parse(old) as {
    svg: { a: { "@_href": string }; title: unknown };
  };
  expect(parsed.svg.a["@_href"]).toBe("https://shelf.example/items/bluebell-mug/revisions/1");
  expect(cardSvg(sampleWithdrawal(), { baseUrl, newest: 3, language: "en" })).toContain("Please do not use it.");
});

it("lines are broken where they fit, and cut with an ellipsis where they do not", () => {
  expect(wrappedLines("Above the limit: lead", 10, 70, 2)).toEqual(["Above the", "limit: lead"]);
  expect(wrappedLines("Above the limit: lead", 10, 70, 1)[0]).toMatch(/…$/);
  for (const line of wrappedLines(`${"m".repeat(90)} end`, 10, 70, 3))
    expect(textWidth(line, 10)).toBeLessThanOrEqual(70);
});

it("the report leaves no result out unsaid", () => {
  const placed = resultsByWeight(sampleSnapshot());
  expect(reportRows(placed)).toMatchObject({ more: 0, rows: { length: 6 } });
  const many = Array.from({ length: 40 }, () => placed).flat();
  const { rows, more } = reportRows(many);
  expect(rows.length + more).toBe(many.length);
  expect(rows.length).toBeGreaterThan(3);
});
