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
  "see-review",
  "review-item",
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
];

const granted: Record<Role, ReadonlySet<Action>> = {
  owner: new Set([...bench, "see-review", "review-item", "manage-people"]),
  tester: new Set([...bench, "see-review"]),
  reviewer: new Set<Action>(["see-review", "review-item"]),
};

export type Answer = { yes: true } | { yes: false; code: "not-signed-in" | "not-allowed" | "own-readings" };

/** `authors`: ids of the people who loaded or took the readings in question; nobody reviews their own. */
export function may(person: Person | null, action: Action, about: { authors?: readonly string[] } = {}): Answer {
  if (!person) return { yes: false, code: "not-signed-in" };
  if (!granted[person.role].has(action)) return { yes: false, code: "not-allowed" };
  if (action === "review-item" && about.authors?.includes(person.id)) return { yes: false, code: "own-readings" };
  return { yes: true };
}
