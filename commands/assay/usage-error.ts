/** Something the person at the terminal can put right: its message is the one sentence they are shown. */
export class UsageError extends Error {
  override name = "UsageError";
}
