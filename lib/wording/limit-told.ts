import type { PublicLimit } from "../limits/list-limits.ts";
import { limitChecks } from "./es/limit-checks.ts";
import { limitNotes } from "./es/limit-notes.ts";
import { limitScopes } from "./es/limit-scopes.ts";
import type { Language } from "./language.ts";
import { limitTitle, placeName } from "./verdicts.ts";

/** What a text of the table is called in Spanish, whole or sentence by sentence; a sentence of a newer table stays as it stands. */
const spanishOf = (texts: Readonly<Record<string, string>>, text: string): string =>
  (
    texts[text] ??
    text
      .split(/(?<=\.) (?=[A-Z])/)
      .map((sentence) => texts[sentence] ?? sentence)
      .join(" ")
  ).replaceAll(" %", "\u00A0%");

/**
 * A limit with the words of the table in a language: title, place, what it covers, how far it was checked. The citation stays as it
 * is written in the rule's own country.
 *
 * @example limitTold(limit, "es").scope // "Incluye: partes accesibles de …"
 */
export function limitTold(limit: PublicLimit, language: Language): PublicLimit {
  if (language === "en") return limit;
  const note = (text: string | null): string | null => (text === null ? null : spanishOf(limitNotes, text));
  return {
    ...limit,
    title: limitTitle(limit.title, language),
    jurisdiction: placeName(limit.jurisdiction, language),
    scope: spanishOf(limitScopes, limit.scope),
    checkedNote: spanishOf(limitChecks, limit.checkedNote),
    rule: note(limit.rule),
    statistic: note(limit.statistic),
    note: note(limit.note),
  };
}
