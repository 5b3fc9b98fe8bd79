import { paths } from "../platform/paths.ts";
import type { ByLanguage, Language } from "./language.ts";

/** The pages that readers can have in another language than English, by their names in `paths`. */
const translated = [
  "home",
  "items",
  "compare",
  "scan",
  "item",
  "revision",
  "difference",
  "recompute",
  "limits",
  "limit",
  "amounts",
  "methods",
  "log",
  "report",
  "labels",
  "labelSvg",
  "cardSvg",
  "requestTest",
  "request",
  "requestFeed",
  "corrections",
  "correctionsFeed",
  "feedXml",
  "feedJson",
] as const satisfies readonly (keyof typeof paths)[];

/** The address of an English page in another language: "/es" for "/", "/es/items?q=x" for "/items?q=x". */
export const pathIn = (path: string, language: Language): string =>
  language === "en" ? path : `/${language}${path.replace(/^\/(?=$|[?#])/, "")}`;

const inLanguage = (language: Language): typeof paths => ({
  ...paths,
  ...Object.fromEntries(
    translated.map((name) => {
      const english = paths[name] as (...given: unknown[]) => string;
      return [name, (...given: unknown[]) => pathIn(english(...given), language)];
    }),
  ),
});

/**
 * Every URL in the language of the page that leads there. A page that is not told in that language keeps its English address, and
 * the link says so (`leavesLanguage`).
 *
 * @example pathsIn.es.item("blue-mug") // "/es/items/blue-mug"
 * @example pathsIn.es.bench() // "/bench"
 */
export const pathsIn: ByLanguage<typeof paths> = { en: paths, es: inLanguage("es") };

/** Whether a link on a page of a language leads to a page of ours that is not told in it. */
export const leavesLanguage = (href: string, language: Language): boolean =>
  href.startsWith("/") && language !== "en" && !/^\/es(?=$|[/?#])/.test(href);

/** What is told in English only: workplaces, and what programs read. */
const onlyEnglish = /^\/(?:bench|review|account|style|api)(?=$|[/?#])/;

/**
 * The same page in the other language; null where it has none. `path` is the address of the page one is on.
 *
 * @example otherLanguage("/items/blue-mug") // { language: "es", path: "/es/items/blue-mug" }
 * @example otherLanguage("/es") // { language: "en", path: "/" }
 */
export function otherLanguage(path: string): { language: Language; path: string } | null {
  const [, rest] = /^\/es(?=$|[/?#])(.*)$/.exec(path) ?? [];
  if (rest !== undefined) return { language: "en", path: rest.startsWith("/") ? rest : `/${rest}` };
  return onlyEnglish.test(path) ? null : { language: "es", path: pathIn(path, "es") };
}
