import { expect, it } from "vitest";
import { type Action, actions, may, type Person, roles } from "@/lib/access/permissions.ts";

const person = (role: Person["role"]): Person => ({ id: role, name: role, email: `${role}@example.org`, role });

/** The whole table, written out: a change of who may do what shows up here. */
const table: Record<Action, string> = {
  "see-bench": "owner tester",
  "import-readings": "owner tester",
  "undo-import": "owner tester",
  "assign-readings": "owner tester",
  "set-aside-reading": "owner tester",
  "edit-item": "owner tester",
  "manage-instruments": "owner tester",
  "submit-item": "owner tester",
  "publish-item": "owner tester",
  "see-review": "owner tester reviewer",
  "review-item": "owner reviewer",
  "manage-people": "owner",
};

it.each(actions)("%s is for those the table names, and nobody unknown", (action) => {
  expect(roles.filter((role) => may(person(role), action).yes).join(" ")).toBe(table[action]);
  expect(may(null, action)).toEqual({ yes: false, code: "not-signed-in" });
});

it("nobody reviews readings they loaded, not even the owner", () => {
  expect(may(person("owner"), "review-item", { authors: ["owner"] })).toEqual({ yes: false, code: "own-readings" });
  expect(may(person("reviewer"), "review-item", { authors: ["tester"] })).toEqual({ yes: true });
});
