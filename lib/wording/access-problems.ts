import { allowedText, type ProblemWords, quoted } from "./problem-sentence.ts";

/** Who is asking, and what they may do. */
export const accessProblems: ProblemWords = {
  "not-signed-in": () => "Please sign in first. Your work is not lost: after signing in you come back to this page.",
  "not-allowed": () => "Your role does not allow this. Ask the owner of this registry if you need it.",
  "own-readings": () => "You took or loaded these readings yourself, so someone else has to review them.",
  "wrong-sign-in": () => "That e-mail address and password do not go together. Check both and try again.",
  "wrong-token": () =>
    "That set-up token is not the right one. Copy it again from the terminal where this registry was started.",
  "owner-exists": () => "This registry already has an owner. Please sign in instead.",
  "email-taken": (p) => `There is already a person with the e-mail address ${quoted(p.found)}. Use another one.`,
  "rate-limited": (p) =>
    `Too many tries in a short time. Please wait ${p.allowed ?? "a minute"} and try again. Nothing was changed.`,
  "wrong-password": () => "That is not your password as it stands now. Nothing was changed.",
  "wrong-code": () =>
    "That code is not right. Codes change every half minute: type the one that your app shows now, and see that your phone’s clock is set by itself. Nothing was changed.",
  "no-code": () => "Type the six digits that your app shows now, or one of your recovery codes, which have ten.",
  "no-first-code": () => "Type the six digits that your app shows now.",
  "code-used": () =>
    "That code was sent once already, and each counts once. Wait until your app shows the next, half a minute at most, and type that one.",
  "code-wait-over": () =>
    "Too much time or too many wrong codes have passed since your password. Please sign in anew, password first.",
  "second-step-is-on": () =>
    "The second step is on already. Turn it off first if you want to move it to another device.",
  "second-step-is-off": () => "There is no second step to sign in. Nothing was changed.",
  "own-second-step": () => "Your own second step you turn off on your account’s page, with your password.",
  "invitation-gone": () =>
    "This link cannot be used: it was used already, taken back or replaced by a newer one, or it is too old. An invitation is good for a week, a link for a new password for a day. Ask the owner of the registry for a new one.",
  "own-password-link": () =>
    "Your own password you change on your account’s page, with the old one. Should you have forgotten it, another owner can make you a link, or whoever has the machine.",
  "no-such-person": () => "Nobody who can sign in has that address. Nothing was changed.",
  "password-too-long": (p) => `That password is too long.${allowedText(p)}`,
  "password-easy-to-guess": () =>
    "That password is one of the first that somebody would try. Take a few words that do not belong together, or let a password manager make one.",
  "password-too-short": (p) => `That password is too short.${allowedText(p)}`,
};
