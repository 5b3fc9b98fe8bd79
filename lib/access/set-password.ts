import type { makeAuth } from "./auth.ts";

/** Gives a person a new password and ends their old sign-ins. The caller has checked that it may. */
export async function setPassword(auth: ReturnType<typeof makeAuth>, userId: string, password: string): Promise<void> {
  const context = await auth.$context;
  await context.internalAdapter.updatePassword(userId, await context.password.hash(password));
  await context.internalAdapter.deleteUserSessions(userId);
}
