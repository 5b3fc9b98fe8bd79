import { describe, expect, it } from "vitest";
import { type Action, actions, may, type Person, type Role, roles, standings } from "@/lib/access/permissions.ts";
import { itemStates } from "@/lib/store/items.ts";
import { permissionTable } from "./permission-table.ts";

const person = (role: Person["role"]): Person => ({ id: role, name: role, email: `${role}@example.org`, role });

const rows = permissionTable
  .trim()
  .split("\n")
  .map((line) => {
    const [action = "", role = "", ...cells] = line.split(/\s+/);
    return { action: action as Action, role: role as Role, cells };
  });

/** A cell as the program answers it. */
function cell(role: Role, action: Action, state: (typeof standings)[number]): string {
  const answer = may(person(role), action, { state, authors: ["somebody else"] });
  return answer.yes ? "y" : answer.code === "not-allowed" ? "role" : "state";
}

describe("the table of role, action and state", () => {
  it("names every action with every role once, and every state", () => {
    expect(rows.map((row) => `${row.action} ${row.role}`)).toEqual(
      actions.flatMap((action) => roles.map((role) => `${action} ${role}`)),
    );
    expect([...standings]).toEqual([...itemStates]);
    expect(rows.flatMap((row) => row.cells)).toHaveLength(actions.length * roles.length * standings.length);
  });

  it.each(rows)("$action, $role: as written in every state", ({ action, role, cells }) => {
    expect(standings.map((state) => cell(role, action, state))).toEqual(cells);
  });

  it("printed", () => {
    const head = `${"".padEnd(29)}${standings.map((state) => state.padEnd(11)).join("")}`;
    const lines = rows.map(
      ({ action, role }) =>
        `${action.padEnd(19)}${role.padEnd(10)}${standings.map((state) => cell(role, action, state).padEnd(11)).join("")}`,
    );
    console.info([head, ...lines].join("\n"));
    expect(lines).toHaveLength(rows.length);
  });
});

describe("whoever asks", () => {
  it.each(actions)("%s is for nobody unknown", (action) => {
    expect(may(null, action)).toEqual({ yes: false, code: "not-signed-in" });
  });

  it("nobody reviews readings they took, not even the owner", () => {
    const about = { authors: ["owner"], state: "submitted" } as const;
    expect(may(person("owner"), "review-item", about)).toEqual({ yes: false, code: "own-readings" });
    expect(may(person("reviewer"), "review-item", { ...about, authors: ["tester"] })).toEqual({ yes: true });
  });

  it("whoever re-tests blind neither looks at the review, nor decides, nor publishes, and does everything else", () => {
    const allowed = (blind: boolean) =>
      actions.filter((a) => may(person("owner"), a, { blind, state: "submitted" }).yes);
    expect(allowed(false).filter((action) => !allowed(true).includes(action))).toEqual([
      "publish-item",
      "see-review",
      "comment-item",
      "review-item",
      "ask-retest",
    ]);
    const draft = { blind: true, state: "draft" } as const;
    for (const action of ["submit-item", "start-revision"] as const)
      expect(may(person("tester"), action, draft)).toEqual({ yes: false, code: "blind-retest" });
  });
});
