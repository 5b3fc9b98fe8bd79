import { dayInWords, madeInWords, makingOf } from "./iso-day.ts";
import type { Criteria, Subject } from "./types.ts";

/**
 * How a subject stands to one way into a limit's scope. `reasons` say what keeps it out or leaves it open; `ifs` are dates
 * that are not known and that the answer "in" hangs on; `grounds` say what date put it in; `unless` are narrow exceptions.
 */
export type ScopeFit = {
  fit: "in" | "unsure" | "out";
  reasons: string[];
  ifs: string[];
  grounds: string[];
  unless: string[];
};

type Check = { state: "ground" | "if" | "unsure" | "out"; reason: string } | null;

/**
 * The best fit of a subject to a list of criteria, any one of which is enough. No criteria means no object is in scope.
 *
 * Three answers, since the record cannot say everything: "in" where every key is met, "out" where one is not, "unsure"
 * where none is missed but one hangs on what the record does not hold. Between equals, the one with fewer reasons.
 * A date of making that nobody knows does not by itself leave a part unsure: most objects have none. It is "in", with the
 * date as an `if` that must be said wherever the answer is.
 */
export const scopeFit = (criteria: readonly Criteria[], subject: Subject): ScopeFit => {
  const order = { in: 0, unsure: 1, out: 2 };
  const fits = criteria.map((one) => fitOne(one, subject));
  fits.sort((a, b) => order[a.fit] - order[b.fit] || a.reasons.length - b.reasons.length);
  return fits[0] ?? { fit: "out", reasons: [], ifs: [], grounds: [], unless: [] };
};

const fitOne = (criteria: Criteria, subject: Subject): ScopeFit => {
  const checks = [
    checkCategory(criteria, subject),
    checkAge(criteria, subject),
    checkUse(criteria, subject),
    checkMouth(criteria, subject),
    checkReach(criteria, subject),
    checkMaterial(criteria, subject),
    checkLayer(criteria, subject),
    checkForm(criteria, subject),
    checkMade(criteria, subject),
    checkMarket(criteria, subject),
    criteria.onlyIf
      ? { state: "unsure" as const, reason: `it applies only if ${criteria.onlyIf}, which the record does not say` }
      : null,
  ].filter((check) => check !== null);
  const of = (state: "ground" | "if" | "unsure" | "out") =>
    checks.filter((check) => check.state === state).map((check) => check.reason);
  const out = of("out");
  const unsure = of("unsure");
  const fit = out.length > 0 ? "out" : unsure.length > 0 ? "unsure" : "in";
  return {
    fit,
    reasons: fit === "out" ? out : unsure,
    ifs: of("if"),
    grounds: of("ground"),
    unless: criteria.unless ? [criteria.unless] : [],
  };
};

const has = (list: readonly string[], word: string): boolean => list.includes(word);

const checkCategory = (c: Criteria, s: Subject): Check => {
  if (!c.categories || has(c.categories, s.category)) return null;
  if (c.categoriesUnsure && has(c.categoriesUnsure.categories, s.category))
    return { state: "unsure", reason: c.categoriesUnsure.why };
  if (s.category === "other") return { state: "unsure", reason: "the record does not say what kind of object this is" };
  return { state: "out", reason: "it covers other kinds of object" };
};

const checkAge = (c: Criteria, s: Subject): Check => {
  if (!c.ages || has(c.ages, s.ageGroup)) return null;
  if (s.ageGroup === "unknown")
    return { state: "unsure", reason: "it covers things made for children, and the record does not say for what age" };
  if (c.agesUnsure && has(c.agesUnsure.ages, s.ageGroup)) return { state: "unsure", reason: c.agesUnsure.why };
  return {
    state: "out",
    reason:
      s.ageGroup === "adult"
        ? "it covers things made for children, and this was made for adults"
        : "it covers things made for younger children",
  };
};

const checkUse = (c: Criteria, s: Subject): Check => {
  if (c.foodContact === undefined || c.foodContact === s.foodContact) return null;
  return {
    state: "out",
    reason: c.foodContact
      ? "it covers things that touch food"
      : "it leaves out things that touch food, which have rules of their own",
  };
};

const checkMouth = (c: Criteria, s: Subject): Check =>
  c.mouthable && !s.mouthable ? { state: "out", reason: "it covers things a small child can put in the mouth" } : null;

const checkReach = (c: Criteria, s: Subject): Check =>
  c.accessible && !s.accessible ? { state: "out", reason: "it covers parts that can be reached" } : null;

const checkMaterial = (c: Criteria, s: Subject): Check => {
  if (c.materialsOut && has(c.materialsOut.materials, s.material)) return { state: "out", reason: c.materialsOut.why };
  if (c.materialsUnsure && has(c.materialsUnsure.materials, s.material))
    return { state: "unsure", reason: c.materialsUnsure.why };
  if (!c.materials || has(c.materials, s.material)) return null;
  if (s.material === "other")
    return { state: "unsure", reason: "it covers certain materials, and the record does not say which this is" };
  return { state: "out", reason: "it covers other materials" };
};

/** Fused or plated layers count as the body itself under the paint rules (16 CFR 1303.2, finer exemptions read second-hand). */
const fusedOrPlated = [
  "glaze",
  "enamel",
  "brass",
  "zinc-alloy",
  "solder",
  "steel",
  "aluminium",
  "copper",
  "glass",
  "crystal",
];

const layerOf = (s: Subject): "paint" | "not-paint" | "unsure" => {
  if (s.form === "bulk") return s.material === "paint" ? "paint" : "not-paint";
  if (s.material === "paint") return "paint";
  return fusedOrPlated.includes(s.material) || s.material === "ceramic-body" ? "not-paint" : "unsure";
};

const checkLayer = (c: Criteria, s: Subject): Check => {
  if (!c.layer) return null;
  const layer = layerOf(s);
  if (layer === c.layer) return null;
  if (layer === "unsure")
    return {
      state: "unsure",
      reason: "it hangs on whether this layer can be scraped off like paint, which the record does not say",
    };
  return {
    state: "out",
    reason:
      c.layer === "paint"
        ? "it covers paint and like coatings, not glaze, plating or the body itself"
        : "it covers the body itself, not the paint on it",
  };
};

const checkForm = (c: Criteria, s: Subject): Check =>
  c.formUnsure && c.formUnsure.form === s.form ? { state: "unsure", reason: c.formUnsure.why } : null;

const checkMade = (c: Criteria, s: Subject): Check => {
  if (!c.made) return null;
  const { from, until } = c.made;
  const { first, last } = makingOf(s);
  const window = [from && `from ${dayInWords(from)}`, until && `up to ${dayInWords(until)}`].filter(Boolean).join(" ");
  const binds = `it binds goods made ${window}`;
  if ((from !== null && last !== null && last < from) || (until !== null && first !== null && first > until))
    return { state: "out", reason: `${binds}, and this was made ${makingWords(s)}` };
  if ((from === null || (first !== null && first >= from)) && (until === null || (last !== null && last <= until)))
    return { state: "ground", reason: `It binds goods made ${window}; this was made ${makingWords(s)}.` };
  if (first === null) return { state: "if", reason: `it was made ${window}, and when it was made is not known` };
  return { state: "if", reason: `it was made ${window}, and it is known only that it was made ${makingWords(s)}` };
};

const checkMarket = (c: Criteria, s: Subject): Check => {
  if (!c.market) return null;
  const { from } = c.market;
  const { first } = makingOf(s);
  const since = `from ${dayInWords(from)}`;
  const binds = `binds goods put on the market ${since}`;
  if (s.gotOn && s.gotOn < from)
    return { state: "out", reason: `it ${binds}, and this was got on ${dayInWords(s.gotOn)}, before that` };
  if (first === null)
    return { state: "if", reason: `it was put on the market ${since}, and when that was is not known` };
  if (first >= from) return { state: "ground", reason: `It ${binds}; this was made ${makingWords(s)}.` };
  return {
    state: "unsure",
    reason: `it ${binds}; this was made ${makingWords(s)}, and when it was first sold is not known`,
  };
};

const makingWords = ({ madeOn, gotOn = null }: Subject): string =>
  madeOn === null ? `by ${dayInWords(gotOn ?? "")}, when it was got` : madeInWords(madeOn);
