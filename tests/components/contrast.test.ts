import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

/**
 * Contrast ratio as WCAG 2.2 defines it ("contrast ratio", "relative luminance"): (L1 + 0.05) / (L2 + 0.05).
 * Required: 4.5 for text (1.4.3), 3 for lines of controls and drawings (1.4.11).
 */
const channel = (value: number): number => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => channel(Number.parseInt(hex.slice(at, at + 2), 16) / 255));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

const css = readFileSync(join(import.meta.dirname, "../../app/globals.css"), "utf8");
const tokensIn = (block: string): Record<string, string> =>
  Object.fromEntries([...block.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, hex]) => [name, hex]));
const block = (start: string): string => {
  const from = css.indexOf(start);
  if (from === -1) throw new Error(`no ${start} in the style sheet`);
  return css.slice(from, css.indexOf("}", from));
};
const schemes = {
  light: tokensIn(block(":root {")),
  dark: tokensIn(block("@media (prefers-color-scheme: dark) {")),
  print: tokensIn(block("@media print {\n    :root {")),
};

const text: [string, string][] = [
  ["ink", "paper"],
  ["ink", "paper-shade"],
  ["ink-soft", "paper"],
  ["ink-soft", "paper-shade"],
  ["accent", "paper"],
  ["accent", "paper-shade"],
  ["accent-strong", "paper"],
  ["accent-strong", "paper-shade"],
  ["on-accent", "accent"],
  ["on-accent", "accent-strong"],
  ["photo-mark", "photo-halo"],
];
const lines: [string, string][] = [
  ["rule", "paper"],
  ["rule", "paper-shade"],
  ["ink", "paper"],
  ["accent", "paper"],
];

/** Colours that tell nothing by themselves: a border under a border, a line between rows. No minimum holds for them (1.4.11). */
const decoration = ["rule-faint"];

test("every colour of every scheme is either in a pair below or decoration, and every scheme sets the same ones", () => {
  const paired = new Set([...text, ...lines].flat());
  for (const tokens of Object.values(schemes)) {
    expect(Object.keys(tokens).sort()).toEqual(Object.keys(schemes.light).sort());
    for (const name of Object.keys(tokens)) expect([...paired, ...decoration], name).toContain(name);
  }
});

test("components speak of colours by their tokens only", () => {
  const styles = readdirSync(join(import.meta.dirname, "../../app"), { recursive: true, encoding: "utf8" }).filter(
    (f) => f.endsWith(".module.css"),
  );
  expect(styles.length).toBeGreaterThan(20);
  const own = styles.flatMap((file) =>
    [
      ...readFileSync(join(import.meta.dirname, "../../app", file), "utf8").matchAll(
        /#[0-9a-f]{3,8}\b|rgba?\(|hsla?\(/gi,
      ),
    ].map((m) => `${file}: ${m[0]}`),
  );
  // The veil behind a dialog darkens whatever lies under it, in both schemes.
  expect(own).toEqual([expect.stringMatching(/confirm-dialog\.module\.css: rgb\(/)]);
});

test("the measure itself: black on white is 21, a known grey is 4.54 (WebAIM's worked example #767676)", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
  expect(contrast("#767676", "#ffffff")).toBeCloseTo(4.54, 2);
});

describe.each(Object.entries(schemes))("%s", (_scheme, tokens) => {
  const of = (name: string): string => {
    const hex = tokens[name];
    if (hex === undefined) throw new Error(`no token --${name}`);
    return hex;
  };
  test.each(text)("text %s on %s has 4.5:1", (ink, paper) => {
    expect(contrast(of(ink), of(paper))).toBeGreaterThanOrEqual(4.5);
  });
  test.each(lines)("lines %s on %s have 3:1", (ink, paper) => {
    expect(contrast(of(ink), of(paper))).toBeGreaterThanOrEqual(3);
  });
});
