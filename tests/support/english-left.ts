import { amountFiguresIn } from "../../lib/wording/amount-figures.ts";
import { amountLabelsIn } from "../../lib/wording/amount-labels.ts";
import { amountsIn } from "../../lib/wording/amounts.ts";
import { budgetIn } from "../../lib/wording/budget.ts";
import { catalogueIn } from "../../lib/wording/catalogue.ts";
import { cautionsIn } from "../../lib/wording/cautions.ts";
import { coverageWordsIn } from "../../lib/wording/coverage-table.ts";
import { feedWordsIn } from "../../lib/wording/feeds.ts";
import { flagWordsIn } from "../../lib/wording/flags.ts";
import { guardBandsIn } from "../../lib/wording/guard-bands.ts";
import { itemPageIn } from "../../lib/wording/item-page.ts";
import { labelsIn } from "../../lib/wording/labels.ts";
import { changesPanelIn } from "../../lib/wording/limit-changes.ts";
import { timelineIn } from "../../lib/wording/limit-timeline.ts";
import { limitWordsIn } from "../../lib/wording/limit-words.ts";
import { limitsPageIn } from "../../lib/wording/limits-page.ts";
import { modelsIn } from "../../lib/wording/models.ts";
import { otherTestsIn } from "../../lib/wording/other-tests.ts";
import { recomputeIn } from "../../lib/wording/recompute.ts";
import { figuresIn } from "../../lib/wording/result-figures.ts";
import { revisionsIn } from "../../lib/wording/revisions.ts";
import { scanWordsIn } from "../../lib/wording/scan.ts";
import { sessionsIn } from "../../lib/wording/sessions.ts";
import { shareIn } from "../../lib/wording/share.ts";
import { siteWordsIn } from "../../lib/wording/site-words.ts";
import { verdictsIn } from "../../lib/wording/verdicts.ts";

/** Every catalogue of readers' sentences, in each language. */
export const catalogues = {
  amountFiguresIn,
  amountLabelsIn,
  amountsIn,
  budgetIn,
  catalogueIn,
  cautionsIn,
  changesPanelIn,
  coverageWordsIn,
  feedWordsIn,
  figuresIn,
  flagWordsIn,
  guardBandsIn,
  itemPageIn,
  labelsIn,
  limitsPageIn,
  limitWordsIn,
  modelsIn,
  otherTestsIn,
  recomputeIn,
  revisionsIn,
  scanWordsIn,
  sessionsIn,
  shareIn,
  siteWordsIn,
  timelineIn,
  verdictsIn,
};

/** Every plain sentence of a catalogue, with the way to it. */
export function sentencesOf(words: unknown, way = ""): { way: string; text: string }[] {
  if (typeof words === "string") return [{ way, text: words }];
  if (typeof words !== "object" || words === null) return [];
  return Object.entries(words).flatMap(([name, one]) => sentencesOf(one, way === "" ? name : `${way}.${name}`));
}

const textsOf = (language: "en" | "es"): Set<string> =>
  new Set(Object.values(catalogues).flatMap((words) => sentencesOf(words[language]).map(({ text }) => text)));
const spanish = textsOf("es");
const english = new Set([...textsOf("en")].filter((text) => !spanish.has(text)));

/** Words that no Spanish sentence holds, or only as a part of a name. */
const stopWords =
  /(?<![\p{L}\p{N}-])(the|of|and|with|not|is|was|were|are|this|that|which|from|for|we|it|its|below|above|limit|limits|spot|spots|reading|readings|tested|found|lead|glaze|revision|page|part|parts|how|what|who|when|checked|by|or|than|most|least|about|yes|set|aside|to|on)(?![\p{L}\p{N}…-])/iu;

const voids = new Set([
  "area",
  "base",
  "br",
  "col",
  "embed",
  "hr",
  "img",
  "input",
  "link",
  "meta",
  "source",
  "track",
  "wbr",
]);
/** Code, addresses and the page's own machinery hold no sentences. */
const machine = new Set(["script", "style", "code", "pre", "title", "template"]);

const unescaped = (text: string): string =>
  text
    .replaceAll("&#x27;", "'")
    .replaceAll("&#39;", "'")
    .replaceAll("&quot;", '"')
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&amp;", "&");

/** The texts of a page in a language: text nodes and spoken attributes that are not marked as of another one. */
export function textsIn(markup: string, language: string): string[] {
  const texts: string[] = [];
  const open: { name: string; lang: string }[] = [{ name: "", lang: language }];
  for (const [, close, name = "", attributes = "", text = ""] of markup
    .replace(/<!--.*?-->/gs, "")
    .matchAll(/<(\/?)([a-zA-Z][\w-]*)((?:\s[^<>]*?)?)\/?>|([^<]+)/g)) {
    const here = open.at(-1)!;
    const skipped = open.some((one) => machine.has(one.name));
    if (name === "") {
      if (!skipped && here.lang === language && text.trim() !== "") texts.push(unescaped(text).trim());
    } else if (close) {
      const at = open.findLastIndex((one) => one.name === name);
      if (at > 0) open.length = at;
    } else {
      const lang = /\s(?:xml:)?lang="([^"]*)"/.exec(attributes)?.[1] ?? here.lang;
      if (lang === language && !skipped)
        for (const [, spoken = ""] of attributes.matchAll(/\s(?:aria-label|placeholder|title)="([^"]*)"/g))
          texts.push(unescaped(spoken));
      if (!voids.has(name) && !/\/>$/.test(attributes)) open.push({ name, lang });
    }
  }
  return texts;
}

/** English sentences left on a Spanish page. `names`: words of the record that stand in attributes, which cannot be marked. */
export function englishLeft(markup: string, names: readonly string[] = []): string[] {
  const without = (text: string): string =>
    names.reduce((rest, name) => rest.replaceAll(name, " "), text.replace(/https?:\S+/g, " "));
  return textsIn(markup, "es").filter((text) => english.has(text) || stopWords.test(without(text)));
}
