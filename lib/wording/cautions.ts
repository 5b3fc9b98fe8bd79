import type { Snapshot } from "../publication/snapshot.ts";
import { elementName } from "./elements.ts";
import { cautionSentences as spanish } from "./es/cautions.ts";
import { listed } from "./formats.ts";
import type { ByLanguage, Language } from "./language.ts";

export type Caution = { code: string; title: string; text: string };

/** What every reader must know beside a number. Each stands on its own, so that a page can show one or all. */
export const cautions = {
  "total-content": {
    code: "total-content",
    title: "What is in it is not what comes out of it",
    text: "The analyser shows how much is in the material. It does not show how much comes out, or how much gets into a body. Only a laboratory leach test can show what comes out.",
  },
  "no-known-level": {
    code: "no-known-level",
    title: "Lead and children",
    text: "There is no known safe level of lead for a child. A number below a limit does not change that.",
  },
  "blood-test": {
    code: "blood-test",
    title: "Worried about a child?",
    text: "Ask a doctor about a blood lead test. Only a blood test can show whether lead has got into a body. This page cannot.",
  },
  "other-substances": {
    code: "other-substances",
    title: "What we did not look for",
    text: "We report only what is listed here. Other substances may be in it too.",
  },
  "this-one-only": {
    code: "this-one-only",
    title: "This one, and no other",
    text: "We tested the very object described here. Another one can differ, even if it looks the same.",
  },
  "licensed-assessor": {
    code: "licensed-assessor",
    title: "Paint in a home",
    text: "This page is about a loose object. For paint, dust or soil in a home, ask a licensed lead assessor.",
  },
  "local-law": {
    code: "local-law",
    title: "Rules differ from place to place",
    text: "A limit shown here may not bind where you live, or may not bind an object of this age. We say how a number compares. We do not say what the law asks of you.",
  },
} as const satisfies Record<string, Caution>;

/** For testers, beside everything that asks for more shots. */
export const radiationCaution: Caution = {
  code: "radiation",
  title: "X‑rays",
  text: "The analyser sends out X‑rays. Never point it at a person or an animal, and never hold the object in your hand during a shot. Use it only with the training, the shielding and the licence that your place asks for.",
};

export type CautionSentences = {
  always: Record<keyof typeof cautions, Caution>;
  radiation: Caution;
  lookedFor: (names: string) => string;
};
export const cautionsIn: ByLanguage<CautionSentences> = {
  en: { always: cautions, radiation: radiationCaution, lookedFor: (names) => `We looked for ${names} here. ` },
  es: spanish,
};

/** The cautions of an item's page, in reading order. Those about lead stand where lead was looked for. */
export function cautionsFor(snapshot: Snapshot, language: Language = "en"): Caution[] {
  const { always, lookedFor } = cautionsIn[language];
  const elements = new Set(snapshot.specimens.flatMap((s) => s.parts.flatMap((p) => p.results.map((r) => r.element))));
  const names = listed(
    [...elements].map((element) => elementName(element, language)),
    language,
  );
  const about: Caution[] = elements.has("Pb") ? [always["no-known-level"], always["blood-test"]] : [];
  const others: Caution = {
    ...always["other-substances"],
    text: `${names ? lookedFor(names) : ""}${always["other-substances"].text}`,
  };
  return [
    always["total-content"],
    ...about,
    others,
    always["this-one-only"],
    always["licensed-assessor"],
    always["local-law"],
  ];
}
