import { redirect } from "next/navigation";
import { paths } from "../platform/paths.ts";
import { currentPerson } from "./current-person.ts";
import { type Action, may, type Person } from "./permissions.ts";

/** For screens: the signed-in person who may do `action`; others are sent to sign in, or told that they may not. */
export async function requirePerson(action: Action, here: string): Promise<Person> {
  const person = await currentPerson();
  const answer = may(person, action);
  if (person && answer.yes) return person;
  redirect(person ? `${paths.account()}?refused=${action}` : `${paths.signIn()}?next=${encodeURIComponent(here)}`);
}
