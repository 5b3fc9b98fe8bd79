import { headers } from "next/headers";
import { z } from "zod";
import { auth } from "./auth.ts";
import { type Person, roles } from "./permissions.ts";

const user = z.object({ id: z.string(), name: z.string(), email: z.string(), role: z.enum(roles) });

/** Who is asking, from the session cookie; null when nobody is signed in. */
export async function currentPerson(): Promise<Person | null> {
  const session = await auth().api.getSession({ headers: await headers() });
  return session ? user.parse(session.user) : null;
}
