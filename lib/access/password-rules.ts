import type { Problem } from "../quantity/problem.ts";

/**
 * Length is the one rule (NIST SP 800-63B-4 §3.1.1.2: at least 15 characters where the password stands alone, at least 64 taken, no
 * rules of composition, no forced change, a list of what is commonly chosen; all from memory). A character is a code point.
 */
export const shortestPassword = 15;
export const longestPassword = 128;

/** Long passwords that many people choose; our own short list, from memory, spelt without spaces, marks or case. */
const common = new Set(
  `passwordpassword passwordpassword1 password1password1 passwordpassword123 password1234567 password12345678 passwort123456789
  contrasenacontrasena motdepassemotdepasse iloveyouiloveyou iloveyouforever iloveyousomuch letmeinletmein letmeinplease
  welcomewelcome welcometomylife administrator administrator1 administrator123 correcthorsebatterystaple
  thequickbrownfox thequickbrownfoxjumpsoverthelazydog tobeornottobe maytheforcebewithyou qwertyuiopasdfgh qwertyuiopasdfghjkl
  qwertyuiopasdfghjklzxcvbnm qwertyuiop12345 qwertyuiop123456 qwerty123456789 1qaz2wsx3edc4rfv 1q2w3e4r5t6y7u8i zaq12wsxcde34rfv
  thisismypassword thisisapassword mysecretpassword nopasswordneeded donotforgetthis ihavenopassword trustno1trustno1
  changemechangeme changemeplease1 verysecretpassword secretpassword1 supersecretpassword`.split(/\s+/),
);

/** Runs that fingers make by themselves, forwards and backwards. */
const runs = [
  "0123456789",
  "abcdefghijklmnopqrstuvwxyz",
  "qwertyuiop",
  "asdfghjkl",
  "zxcvbnm",
  "qwertzuiop",
  "azertyuiop",
];

const folded = (text: string): string =>
  text
    .normalize("NFKC")
    .toLowerCase()
    .replaceAll(/[\s\p{P}\p{S}]/gu, "");

/** "abcabcabcabcabc", "aaaaaaaaaaaaaaa": one short piece again and again, the last time perhaps cut off. */
const repeats = (text: string): boolean =>
  [1, 2, 3, 4, 5, 6].some(
    (size) =>
      text ===
      text
        .slice(0, size)
        .repeat(Math.ceil(text.length / size))
        .slice(0, text.length),
  );

/** Made of runs of a row of keys or of the alphabet from its first sign to its last, each of four or more. */
function isRuns(text: string): boolean {
  const rows = runs.flatMap((row) => [row + row, [...(row + row)].reverse().join("")]);
  let rest = text;
  while (rest !== "") {
    let longest = 0;
    for (let length = Math.min(rest.length, 52); length >= Math.min(4, rest.length); length -= 1)
      if (rows.some((row) => row.includes(rest.slice(0, length)))) {
        longest = length;
        break;
      }
    if (longest === 0) return false;
    rest = rest.slice(longest);
  }
  return true;
}

/** What is left of a password once its owner's own words are out of it. */
const withoutOwnWords = (password: string, words: readonly string[]): string =>
  words
    .map(folded)
    .filter((word) => word.length >= 4)
    .reduce((left, word) => left.replaceAll(word, ""), folded(password));

/**
 * Why a new password is not taken, or null. Whole passwords are looked at, never parts: a long phrase that holds a common word is
 * a good one.
 *
 * @example passwordProblem("a long password", { email: "ann@example.org", name: "Ann" }) // null
 */
export function passwordProblem(password: string, about: { email: string; name: string }): Problem | null {
  const where = { field: "password" };
  const length = [...password].length;
  if (length < shortestPassword)
    return {
      code: "password-too-short",
      where,
      found: `${length} characters`,
      allowed: `at least ${shortestPassword} characters`,
    };
  if (length > longestPassword)
    return {
      code: "password-too-long",
      where,
      found: `${length} characters`,
      allowed: `at most ${longestPassword} characters`,
    };
  const plain = folded(password);
  const own = withoutOwnWords(password, [
    about.email.split("@")[0] ?? "",
    ...about.name.split(/\s+/),
    "cupboardassay",
    "cupboard",
  ]);
  if (common.has(plain) || repeats(plain) || isRuns(plain) || own.length < 6)
    return { code: "password-easy-to-guess", where };
  return null;
}
