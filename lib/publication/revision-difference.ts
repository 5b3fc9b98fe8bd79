import type { Snapshot } from "./snapshot.ts";

/** A value as it stands in a snapshot's leaf; a list of plain values counts as one. */
export type Leaf = string | number | boolean | null | readonly (string | number | boolean | null)[];

/**
 * One difference between two revisions. `place` walks from the snapshot to the field: names of members, and for a
 * member of a list the label a person knows it by ("glaze, outside", "Pb", "reading r5-Pb").
 *
 * "changed" holds a before and an after; "added" and "removed" mean a whole member of a list, or a whole part of the
 * snapshot that was null before or after, and hold neither figure below it.
 */
export type FieldChange =
  | { kind: "changed"; place: PlaceStep[]; before: Leaf; after: Leaf }
  | { kind: "added" | "removed"; place: PlaceStep[] };
export type PlaceStep = { field: string; label?: string };

/** What is different in every revision by its nature, and said elsewhere on the page. */
const frame = new Set(["format", "revision", "kind", "reason", "publishedAt"]);

type Plain = Record<string, unknown>;
const isPlain = (value: unknown): value is Plain =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** For a list of objects: what tells one member from another, and how a person names it. */
const identities: Record<string, { id: (m: Plain) => unknown; label: (m: Plain) => unknown }> = {
  specimens: { id: (m) => m["id"], label: (m) => m["label"] },
  parts: { id: (m) => m["id"], label: (m) => m["name"] },
  results: { id: (m) => `${m["element"]} ${m["quantity"]}`, label: (m) => m["element"] },
  otherTests: { id: (m) => m["id"], label: (m) => `${m["kind"]}, ${m["element"]}` },
  readings: { id: (m) => m["id"], label: (m) => m["number"] ?? m["row"] ?? m["id"] },
  decisions: { id: (m) => `${m["limitId"]} ${m["which"]} ${m["day"]}`, label: (m) => m["title"] },
  spots: { id: (m) => m["spot"] ?? JSON.stringify(m["shots"]), label: (m) => m["spot"] ?? "no spot named" },
  budget: { id: (m) => m["code"], label: (m) => m["code"] },
  contributions: { id: (m) => m["code"], label: (m) => m["code"] },
  photos: { id: (m) => m["key"], label: (m) => m["alt"] },
  sizes: { id: (m) => m["key"], label: (m) => `${m["width"]} pixels wide` },
  testers: { id: (m) => m["name"], label: (m) => m["name"] },
  instruments: { id: (m) => `${m["name"]} ${m["serial"]}`, label: (m) => m["name"] },
  files: { id: (m) => m["sha256"], label: (m) => m["name"] },
  sessions: { id: (m) => m["id"], label: (m) => m["label"] },
  fitness: { id: (m) => `${m["element"]} ${m["mode"]}`, label: (m) => m["element"] },
  standards: { id: (m) => m["name"], label: (m) => m["name"] },
  checks: { id: (m) => m["takenAt"], label: (m) => m["takenAt"] },
  history: { id: (m) => m["takenAt"], label: (m) => m["takenAt"] },
  inDoubt: { id: (m) => `${m["after"]} ${m["before"]}`, label: (m) => m["after"] ?? "the beginning" },
};

/**
 * Every field in which two snapshots of one item differ, in the order of the later one. The list is empty exactly when
 * the two say the same apart from revision, kind, reason and time of publication. The order of specimens, parts,
 * readings and so on is no difference; a repeated identity is told apart by its place among its like.
 *
 * @example
 * revisionDifference(first, corrected)
 * // [{ kind: "changed", place: [{ field: "item" }, { field: "name" }], before: "Blue mug", after: "Bluebell mug" }]
 */
export function revisionDifference(before: Snapshot, after: Snapshot): FieldChange[] {
  const strip = (snapshot: Snapshot) => Object.fromEntries(Object.entries(snapshot).filter(([key]) => !frame.has(key)));
  return objectChanges(strip(before), strip(after), []);
}

function objectChanges(before: Plain, after: Plain, place: PlaceStep[]): FieldChange[] {
  const fields = [...new Set([...Object.keys(after), ...Object.keys(before)])];
  return fields.flatMap((field) => valueChanges(before[field], after[field], field, [...place, { field }]));
}

function valueChanges(before: unknown, after: unknown, field: string, place: PlaceStep[]): FieldChange[] {
  const identity = identities[field];
  // A list that one of them does not know yet holds nothing there.
  const [had, has] = [before ?? [], after ?? []];
  if (identity && Array.isArray(had) && Array.isArray(has))
    return listChanges(had.filter(isPlain), has.filter(isPlain), identity, place);
  if (isPlain(before) && isPlain(after)) return objectChanges(before, after, place);
  if (isPlain(after)) return [{ kind: "added", place }];
  if (isPlain(before)) return [{ kind: "removed", place }];
  const [old, now] = [leaf(before), leaf(after)];
  return JSON.stringify(old) === JSON.stringify(now) ? [] : [{ kind: "changed", place, before: old, after: now }];
}

const leaf = (value: unknown): Leaf => (value === undefined ? null : (value as Leaf));

function listChanges(
  before: Plain[],
  after: Plain[],
  identity: { id: (m: Plain) => unknown; label: (m: Plain) => unknown },
  place: PlaceStep[],
): FieldChange[] {
  const old = keyed(before, identity.id);
  const now = keyed(after, identity.id);
  const parent = place.slice(0, -1);
  const field = place.at(-1)!.field;
  const at = (member: Plain) => [...parent, { field, label: String(identity.label(member)) }];
  return [
    ...[...now].flatMap(([key, member]): FieldChange[] => {
      const earlier = old.get(key);
      return earlier ? objectChanges(earlier, member, at(member)) : [{ kind: "added", place: at(member) }];
    }),
    ...[...old]
      .filter(([key]) => !now.has(key))
      .map(([, member]): FieldChange => ({ kind: "removed", place: at(member) })),
  ];
}

/** Members by identity; where an identity repeats, the second is "… 2", so that none hides another. */
function keyed(members: Plain[], id: (m: Plain) => unknown): Map<string, Plain> {
  const map = new Map<string, Plain>();
  for (const member of members) {
    const base = String(id(member));
    let key = base;
    for (let n = 2; map.has(key); n += 1) key = `${base} ${n}`;
    map.set(key, member);
  }
  return map;
}
