import type { AgeGroup, ItemCategory, Material } from "../quantity/item-words.ts";
import type { QuantityKind } from "../quantity/kinds.ts";

export type Checked = "verified" | "second-hand" | "from memory";
export type Nature = "binding" | "guidance" | "settlement" | "advisory";

/** What an object and its part are, as far as a limit's scope asks. */
export type Subject = {
  category: string; // one of itemCategories
  ageGroup: "child-under-3" | "child-3-to-12" | "teen" | "adult" | "unknown";
  foodContact: boolean;
  mouthable: boolean;
  material: string; // one of the materials list
  form: "bulk" | "coating";
  accessible: boolean;
  madeOn: string | null; // when it was made, as far as known: ISO year, month or day
  gotOn?: string | null; // ISO day on which the tester had it: it was made, and sold, no later
};

export type Limit = {
  id: string;
  jurisdiction: string;
  title: string;
  citation: string;
  substances: string[]; // chemical symbols; more than one with `sum` true is a sum over elements
  sum: boolean;
  quantity: QuantityKind;
  value: number | null; // canonical unit of `quantity`; null where the rule is not a number
  rule: string | null; // the rule in words where value is null
  unit: string;
  failsAt: ">" | ">=";
  scope: string; // in words, in and out
  from: string; // ISO date
  until: string | null; // last day in force, null while in force
  nature: Nature;
  checked: Checked;
  /** Limits that follow one another for the same thing share a family: "us-dust-floor". */
  family?: string;
  /** What was read where, and what was not: how far `checked` reaches. */
  checkedNote?: string;
  /** How sure the first day is; "unknown" goes with `unknownStart`. Absent: to the day. */
  fromKnown?: Precision;
  /** How sure the last day is. Absent: to the day. */
  untilKnown?: Precision;
  /** In effect since `from`, but compliance was or is asked for only from this day. */
  complianceFrom?: string;
  /** Enacted and replaced before its first day; `until` lies before `from`, so it is in force on no day. */
  neverTookEffect?: boolean;
  /** What the result must be: "the average of 6 vessels". */
  statistic?: string;
  /** History, phase-in, exemptions that end, and other things a reader of the limit should know. */
  note?: string;
  /** A rule without a number that a laboratory's report can still meet: any value not marked "<". */
  anyReportedValue?: boolean;
  target?: Target;
  criteria?: Criteria[];
};

export type Precision = "day" | "month" | "year" | "unknown";

/** The first day written where no text read says when a limit began. Pages say "start not known". */
export const unknownStart = "1900-01-01";

/** What a limit is laid upon. Only "object" can apply to an object on the shelf; the rest are for reference. */
export type Target =
  | "object"
  | "dust"
  | "housing-paint"
  | "soil"
  | "water"
  | "food"
  | "packaging"
  | "electrical"
  | "plumbing"
  | "candle"
  | "paint-as-sold"
  | "food-business"
  | "exposure"
  | "exemption";

/**
 * One way into a limit's scope, as data. Every key given must be met; a limit with several criteria applies where one
 * of them does. "Unsure" keys name what the registry's words cannot tell apart, with the reason.
 */
export type Criteria = {
  categories?: readonly ItemCategory[];
  categoriesUnsure?: { categories: readonly ItemCategory[]; why: string };
  ages?: readonly AgeGroup[];
  agesUnsure?: { ages: readonly AgeGroup[]; why: string };
  foodContact?: boolean;
  mouthable?: true;
  accessible?: true;
  materials?: readonly Material[];
  materialsUnsure?: { materials: readonly Material[]; why: string };
  materialsOut?: { materials: readonly Material[]; why: string };
  /** Paint and like coatings that can be scraped off, or everything that is not (glaze, plating, the body itself). */
  layer?: "paint" | "not-paint";
  formUnsure?: { form: "bulk" | "coating"; why: string };
  /** Binds by the date of making: first and last day of making covered. */
  made?: { from: string | null; until: string | null };
  /** Binds goods put on the market from this day. */
  market?: { from: string };
  /** Something the record does not hold that decides: the limit is then shown for reference only. */
  onlyIf?: string;
  /** Narrow exceptions the record cannot rule out; the limit still applies, and the reason names them. */
  unless?: string;
};

/** A limit as the data files hold it: nothing optional that applicability or the pages need. */
export type LimitRow = Limit & { family: string; checkedNote: string; target: Target; criteria: Criteria[] };

export type Verdict = "above" | "below" | "too-close" | "not-detected" | "cannot-say";

/** One limit held beside one value on one day. */
export type Decision = {
  limitId: string;
  title: string;
  jurisdiction: string;
  value: number | null;
  unit: string;
  failsAt: ">" | ">=";
  applies: "applies" | "for-reference" | "other-quantity";
  why: string; // why it applies, is only for reference, or cannot be compared and what test would be needed
  verdict: Verdict;
  probabilityAbove: number | null; // that the true value is on the failing side
  day: string; // ISO date on which the limit was in force: the test's day or today
  which: "test-day" | "today" | "both";
  checked: Checked;
  /** The element judged; for a limit on a sum, the substances joined by "+". */
  element?: string;
};
