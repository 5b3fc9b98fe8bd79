import type { Problem } from "../quantity/problem.ts";
import { type Action, may, type Person } from "./permissions.ts";

type Permitted = { ok: true; value: Person } | { ok: false; problems: Problem[] };

/** The second paragraph of every workflow: the person, or the reason why not as a problem. */
export function requirePermission(
  person: Person | null,
  action: Action,
  about: { authors?: readonly string[] } = {},
): Permitted {
  const answer = may(person, action, about);
  if (answer.yes && person) return { ok: true, value: person };
  return { ok: false, problems: [{ code: answer.yes ? "not-signed-in" : answer.code, where: { field: action } }] };
}
