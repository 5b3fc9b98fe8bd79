/** Who may do what: yes, or no with a reason. Pure; every workflow asks here first, and a test prints the whole table. */
export const roles = ["owner", "tester", "reviewer"] as const;
export type Role = (typeof roles)[number];
export type Person = { id: string; name: string; email: string; role: Role };

export const actions = [
  "see-bench",
  "import-readings",
  "undo-import",
  "assign-readings",
  "set-aside-reading",
  "edit-item",
  "manage-instruments",
  "submit-item",
  "publish-item",
  "start-revision",
  "hand-in-retest",
  "see-review",
  "comment-item",
  "review-item",
  "ask-retest",
  "add-maker-answer",
  "set-terms",
  "manage-people",
] as const;
export type Action = (typeof actions)[number];

const bench: Action[] = [
  "see-bench",
  "import-readings",
  "undo-import",
  "assign-readings",
  "set-aside-reading",
  "edit-item",
  "manage-instruments",
  "submit-item",
  "publish-item",
  "start-revision",
  "hand-in-retest",
];
const everybody: Action[] = ["see-review", "comment-item"];
const review: Action[] = ["review-item", "ask-retest"];

const granted: Record<Role, ReadonlySet<Action>> = {
  owner: new Set([...bench, ...everybody, ...review, "add-maker-answer", "set-terms", "manage-people"]),
  tester: new Set([...bench, ...everybody]),
  reviewer: new Set([...everybody, ...review]),
};

/** The states of an item, as `lib/store/items.ts` stores them. */
export const standings = ["draft", "submitted", "approved", "published", "withdrawn"] as const;
export type Standing = (typeof standings)[number];

/** Actions on an item that not every state allows, and what is said in the others. */
const onlyIn: Partial<Record<Action, { states: readonly Standing[]; otherwise: RefusalCode }>> = {
  "submit-item": { states: ["draft", "approved", "published", "withdrawn"], otherwise: "already-submitted" },
  "review-item": { states: ["submitted"], otherwise: "not-submitted" },
  "start-revision": { states: ["draft", "approved", "published", "withdrawn"], otherwise: "in-review" },
  "ask-retest": { states: ["draft", "submitted", "approved", "published"], otherwise: "already-withdrawn" },
};

/** What somebody who re-tests an item without having seen the first value may not look at or decide until they hand theirs in. */
const notWhileBlind: ReadonlySet<Action> = new Set([
  "see-review",
  "comment-item",
  "review-item",
  "ask-retest",
  "submit-item",
  "publish-item",
  "start-revision",
]);

export type RefusalCode =
  | "not-signed-in"
  | "not-allowed"
  | "own-readings"
  | "blind-retest"
  | "not-submitted"
  | "already-submitted"
  | "in-review"
  | "already-withdrawn";
export type Answer = { yes: true } | { yes: false; code: RefusalCode };

/** What is known of the record in question; what is left out is not asked about. */
export type About = {
  /** Ids of the people who took, loaded or typed the readings, or made the item; nobody reviews their own. */
  authors?: readonly string[];
  state?: Standing;
  /** The person has been asked to re-test this item and has not handed in yet. */
  blind?: boolean;
};

/**
 * Whether `person` may do `action`. Asked in this order: signed in, role, blind, own readings, state of the item.
 *
 * @example may(null, "see-bench") // { yes: false, code: "not-signed-in" }
 */
export function may(person: Person | null, action: Action, about: About = {}): Answer {
  const no = (code: RefusalCode): Answer => ({ yes: false, code });
  if (!person) return no("not-signed-in");
  if (!granted[person.role].has(action)) return no("not-allowed");
  if (about.blind && notWhileBlind.has(action)) return no("blind-retest");
  if (action === "review-item" && about.authors?.includes(person.id)) return no("own-readings");
  const rule = onlyIn[action];
  if (rule && about.state !== undefined && !rule.states.includes(about.state)) return no(rule.otherwise);
  return { yes: true };
}
