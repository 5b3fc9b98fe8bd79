import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { exampleGroups } from "@/app/_components/examples/all-examples.ts";
import { stripStates } from "@/app/_components/examples/interval-strip.tsx";

const examples = exampleGroups.flatMap((group) => group.examples);
const html = (id: string): string => {
  const example = examples.find((each) => each.id === id);
  if (!example) throw new Error(`no example ${id}`);
  return renderToStaticMarkup(example.show);
};
const count = (text: string, part: string): number => text.split(part).length - 1;

describe("every example", () => {
  test("has an id of its own", () => {
    expect(new Set(examples.map((example) => example.id)).size).toBe(examples.length);
  });

  test.each(examples.map((example) => [example.id, example] as const))("%s renders", (_id, example) => {
    const markup = renderToStaticMarkup(example.show);
    expect(markup).not.toBe("");
    expect(markup).not.toMatch(/undefined|NaN|\[object/);
    // Every field has its label, and all that describes it is there.
    for (const [, id] of markup.matchAll(/<(?:input|select|textarea)[^>]*\sid="([^"]+)"/g))
      expect(markup, `label for ${id}`).toContain(`for="${id}"`);
    for (const [, ids] of markup.matchAll(/aria-describedby="([^"]+)"/g))
      for (const id of ids?.split(" ") ?? []) expect(markup, `element ${id}`).toContain(`id="${id}"`);
  });
});

describe("interval strip", () => {
  test.each(stripStates.map((state) => [state.id, state] as const))(
    "%s says its result and names its limits",
    (id, state) => {
      const markup = html(`strip-${id}`);
      expect(markup).toContain("<figcaption");
      // Once in the narrow drawing, once in the wide one; the words for screen readers stand outside the drawings.
      expect(count(markup, 'aria-hidden="true"')).toBeGreaterThanOrEqual(2);
      for (const limit of state.input.limits) expect(markup).toContain(limit.label.slice(0, 12));
    },
  );

  test("an open bar is not a filled one", () => {
    expect(html("strip-not-detected")).not.toContain("<rect");
    expect(html("strip-above")).toContain("<rect");
  });
});

describe("table", () => {
  const markup = html("table");
  test("has a caption, column headers and row headers", () => {
    expect(markup).toMatch(/<caption[^>]*><span[^>]*>Readings<\/span><\/caption>/);
    expect(count(markup, 'scope="col"')).toBe(5);
    expect(count(markup, 'scope="row"')).toBe(4);
  });
  test("scrolls in a named group that takes focus, and is no landmark", () => {
    expect(markup).toMatch(/<div role="group"[^>]*aria-labelledby="[^"]+"[^>]*tabindex="0"/);
    expect(markup).not.toContain("<section");
  });
  test("tells why a reading was set aside", () => {
    expect(markup).toContain("Set aside: The nose slipped off the mug during the shot.");
  });
  test("keeps decimal points under each other with blank places", () => {
    expect(markup).toMatch(/398<span[^>]*data-blank="\.00"><\/span>/);
    expect(markup).toMatch(/404\.5<span[^>]*data-blank="0"><\/span>/);
  });
});

describe("forms", () => {
  test("the error summary links to its fields and is read out", () => {
    const markup = html("error-summary");
    expect(markup).toContain('role="alert"');
    expect(markup).toContain('href="#wrong-thickness"');
  });
  test("a wrong field says so to assistive software and in words", () => {
    const markup = html("number-wrong");
    expect(markup).toContain('aria-invalid="true"');
    expect(markup).toContain("Error: ");
  });
  test("a number field takes any spelling of a number", () => {
    expect(html("number")).toContain('inputMode="decimal"');
    expect(html("number")).toContain('type="text"');
  });
  test("the first radio takes the group's name as id, for the error summary", () => {
    expect(html("radio")).toContain('id="coverage"');
  });
});

test("a warning has its word for whoever does not see the sign", () => {
  expect(html("warning")).toContain("Warning: ");
});
