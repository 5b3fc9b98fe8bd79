import type { makeAuth } from "./auth.ts";
import type { Person, Role } from "./permissions.ts";

type Auth = ReturnType<typeof makeAuth>;

/** Makes a person who can sign in with e-mail and password. The caller has checked that it may. */
export async function addPerson(
  auth: Auth,
  input: { name: string; email: string; password: string; role: Role },
): Promise<Person> {
  const context = await auth.$context;
  const email = input.email.toLowerCase();
  const password = await context.password.hash(input.password);
  const user = await context.internalAdapter.createUser(
    { name: input.name, email, emailVerified: true, role: input.role },
    { method: "email-password" },
  );
  await context.internalAdapter.linkAccount({
    userId: user.id,
    accountId: user.id,
    providerId: "credential",
    password,
  });
  return { id: user.id, name: input.name, email, role: input.role };
}
