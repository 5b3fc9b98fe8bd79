import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { isOnlyRead, onlyRead } from "../../only-read.mjs";
import { importsOf } from "../support/imports.ts";
import { pageFiles } from "../support/routes.ts";

const root = join(import.meta.dirname, "..", "..");
const desk = /^\/(bench|review|account|style)(\/|$)/;
const given: Record<string, string> = { "[slug]": "poppy-mug", "[n]": "2", "[id]": "CPSIA-100" };
const pathOf = (route: string): string => route.replace(/\[\w+\]/g, (name) => given[name] ?? name);
const readers = pageFiles().filter(({ route }) => !desk.test(route) && !route.includes("[..."));

it("sends a page without the framework's scripts, its data for machines and its styles kept", () => {
  const read = onlyRead(
    `<html><head><link rel="preload" as="script" href="/a.js"/><link rel="stylesheet" href="/a.css"/></head><body><article>1 &lt; 2</article><script type="application/ld+json">{"a":1}</script><script src="/a.js" async=""></script><script>self.__next_f.push([1,"</article>\n"])</script></body></html>`,
  );
  expect(read).toContain('<article>1 &lt; 2</article><script type="application/ld+json">{"a":1}</script>');
  expect(read).toContain('<link rel="stylesheet" href="/a.css"/>');
  expect(read).not.toMatch(/a\.js|__next_f/);
  expect(read).toMatch(/<script type="module">.*offerSuggestions\(frame\)<\/script><\/body><\/html>$/s);
});

describe("pages that are only read", () => {
  it("are every reader's page but the two that are worked with, in each language", () => {
    expect(readers.length).toBeGreaterThan(25);
    const worked = readers.filter(({ route }) => !isOnlyRead(pathOf(route))).map(({ route }) => route);
    expect(worked.sort()).toEqual(
      ["", "/es"]
        .flatMap((language) => [`${language}/items/[slug]/revisions/[n]/recompute`, `${language}/scan`])
        .sort(),
    );
  });

  it("are nothing else: no data, no form's address, no workplace", () => {
    const others = [
      ...["/items/suggestions", "/items/poppy-mug/label.svg", "/es/items/poppy-mug/card.svg", "/requests/send"],
      ...[
        "/requests/abc/feed.xml",
        "/amounts/drawing.svg",
        "/feed.xml",
        "/data/results.csv",
        "/api/v1/items",
        "/es/",
        "",
      ],
      ...[
        "/bench",
        "/bench/items/poppy-mug",
        "/account/sign-in",
        "/healthz",
        "/photos/a",
        "/_next/static/a.js",
        "/limits/",
      ],
    ];
    expect(others.filter(isOnlyRead)).toEqual([]);
  });

  it("hold nothing that needs the framework in the browser, but for what stands without it", () => {
    const woken = new Set<string>();
    for (const { file } of readers.filter(({ route }) => isOnlyRead(pathOf(route)))) {
      const seen = new Set<string>();
      const visit = (at: string): void => {
        if (seen.has(at)) return;
        seen.add(at);
        if (/^"use client";/.test(readFileSync(join(root, at), "utf8"))) woken.add(at);
        else
          for (const { target, typeOnly } of importsOf(at))
            if (/^(app|lib)\/.*\.tsx?$/.test(target) && !typeOnly) visit(target);
      };
      visit(file);
      visit("app/_site/document.tsx");
    }
    expect([...woken].sort()).toEqual(["app/_components/language-link.tsx", "app/_components/search-field.tsx"]);
  });
});
