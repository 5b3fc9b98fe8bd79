import { type ProblemWords, placeOf, quoted } from "./problem-sentence.ts";

const nothing = "Nothing was kept.";

/** What can be wrong with a photo, its spots and what a phone sends later. */
export const photoProblems: ProblemWords = {
  "unknown-photo": (p) =>
    `There is no photo ${quoted(p.found)} of this item. It may have been taken away; reload the page.`,
  "photo-heic": (p) =>
    `${placeOf(p)}this is a HEIC picture, which few programs can read. Send it as a JPEG: on the phone, choose “Most compatible” in the camera’s format settings, or export the picture as JPEG. ${nothing}`,
  "photo-other-kind": (p) =>
    `${placeOf(p)}this is ${p.found ?? "no picture"}, whatever its name says. Send ${p.allowed ?? "a photo"}. ${nothing}`,
  "photo-too-many-pixels": (p) =>
    `${placeOf(p)}the picture has ${p.found ?? "too many pixels"}; at most ${p.allowed ?? "50 million"} are taken. Make it smaller and send it again. ${nothing}`,
  "photo-unreadable": (p) =>
    `${placeOf(p)}the picture cannot be read to its end: it was cut short or is damaged. Copy it from the camera again and send that. ${nothing}`,
  "photo-without-words": (p) =>
    `A photo of this item${p.found ? ` (${quoted(p.found)})` : ""} has no words yet. Say what it shows, for readers who cannot see it.`,
  "scale-too-short": () =>
    "The two ends of the known length lie almost on one point. Mark a longer stretch, end to end.",
  "spots-do-not-divide": (p) =>
    `${p.found ?? "The"} readings do not go evenly into ${p.allowed ?? "these"} spots. Set a stray reading aside, mark the missing spot, or join them by hand.`,
  "sent-by-another": () =>
    "This was already sent under another sign-in. Sign in as the person who wrote it down, or write it down anew.",
};
