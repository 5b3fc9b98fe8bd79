/**
 * Runs once when the server starts. Without an owner, it prints the one-time token that guards the set-up page. A log whose
 * newest entry is not signed yet is signed.
 */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== "nodejs") return;
  const { environment } = await import("./lib/platform/environment.ts");
  const { database } = await import("./lib/store/database.ts");
  const { offerSetUp } = await import("./lib/workflows/set-up-owner.ts");
  const { paths } = await import("./lib/platform/paths.ts");
  const { signedHead } = await import("./app/_log/signed-head.ts");
  await signedHead();
  const { indexWhatIsMissing } = await import("./lib/store/search-index.ts");
  const { categoryLabels, labelOf } = await import("./lib/wording/labels.ts");
  await indexWhatIsMissing(database(), (category) => labelOf(categoryLabels, category));
  const token = await offerSetUp(database());
  if (token)
    console.log(
      `\nNo owner yet. Open ${environment().baseUrl}${paths.setUp()} and give this one-time token: ${token}\n`,
    );
}
