/** Runs once when the server starts. Without an owner, it prints the one-time token that guards the set-up page. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== "nodejs") return;
  const { environment } = await import("./lib/platform/environment.ts");
  const { database } = await import("./lib/store/database.ts");
  const { offerSetUp } = await import("./lib/workflows/set-up-owner.ts");
  const { paths } = await import("./lib/platform/paths.ts");
  const token = await offerSetUp(database());
  if (token)
    console.log(
      `\nNo owner yet. Open ${environment().baseUrl}${paths.setUp()} and give this one-time token: ${token}\n`,
    );
}
