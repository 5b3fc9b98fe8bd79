import { cookies, headers } from "next/headers";
import { z } from "zod";
import { environment } from "../platform/environment.ts";
import { auth } from "./auth.ts";
import { fromOwnOrigin } from "./own-origin.ts";
import { type Person, roles } from "./permissions.ts";

const user = z.object({ id: z.string(), name: z.string(), email: z.string(), role: z.enum(roles) });

/** Who is asking, from the session cookie; null when nobody is signed in, or when it is a page of another site that asks. */
export async function currentPerson(): Promise<Person | null> {
  const asked = await headers();
  if (!fromOwnOrigin(asked, environment().baseUrl)) return null;
  // The page that an action answers with is made from the cookies that the action set: one of them may be a new session.
  const cookie = (await cookies()).toString();
  const session = await auth().api.getSession({ headers: new Headers({ cookie }) });
  return session ? user.parse(session.user) : null;
}
