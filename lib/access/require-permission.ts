import type { Problem } from "../quantity/problem.ts";
import { type About, type Action, may, type Person } from "./permissions.ts";

type Permitted = { ok: true; value: Person } | { ok: false; problems: Problem[] };

/** The second paragraph of every workflow: the person, or the reason why not as a problem. */
export function requirePermission(person: Person | null, action: Action, about: About = {}): Permitted {
  const answer = may(person, action, about);
  if (answer.yes && person) return { ok: true, value: person };
  const code = answer.yes ? "not-signed-in" : answer.code;
  return { ok: false, problems: [{ code, where: { field: action }, ...(about.state ? { found: about.state } : {}) }] };
}
