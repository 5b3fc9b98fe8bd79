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
  madeOn: string | null; // ISO date or year, where known
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
};

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
};
