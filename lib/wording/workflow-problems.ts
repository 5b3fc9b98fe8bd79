import type { Problem } from "../quantity/problem.ts";
import { allowedText, foundText, type ProblemWords, placeOf, quoted } from "./problem-sentence.ts";

/** What a tester or a reviewer asked for and could not have. */
export const workflowProblems: ProblemWords = {
  "not-found": (p) =>
    `There is nothing here${p.found ? ` by the name ${quoted(p.found)}` : ""}. Check the address, or search for the item.`,
  "unknown-item": (p) => `There is no item ${quoted(p.found)}. It may have been renamed; search for it.`,
  "unknown-specimen": (p) => `There is no object ${quoted(p.found)} in this item. Reload the page and choose again.`,
  "made-on-unreadable": (p) =>
    `${quoted(p.found)} is no date of making. Write a year, a month or a day: 2010, 2010-05 or 2010-05-31. Leave it empty where nobody knows.`,
  "made-after-got": (p) =>
    `It cannot have been made later (${p.found ?? "?"}) than it was got (${p.allowed ?? "?"}). One of the two is wrong.`,
  "unknown-part": (p) => `There is no part ${quoted(p.found)} in this item. Reload the page and choose again.`,
  "stands-in-publication": (p) =>
    `It stands in revision ${p.found ?? "1"} of the published page, so it stays. What was wrong with it is said by a correction.`,
  "object-has-tests": (p) =>
    `There ${p.found === "1" ? "is 1 wipe or laboratory result" : `are ${p.found ?? "some"} wipes or laboratory results`} of this object. Take them away first.`,
  "is-back-already": (p) => `${quoted(p.found)} is back already. Reload the page.`,
  "items-form": (p) => {
    const what: Record<string, string> = {
      ...{ item: "a name", part: "a part", category: "a kind of object", material: "a material", form: "a form" },
      ...{ howGot: "how it was got", whoPaid: "who paid" },
    };
    return `Say ${what[p.found ?? ""] ?? "what is missing"}${p.where?.row === undefined ? " for all of them" : ` for the ${p.where.row}. ticked name, or for all of them`}.`;
  },
  "part-named-twice": (p) =>
    `The item ${quoted(p.allowed)} has two parts called ${quoted(p.found)}. Give each its own name, or give them one item each.`,
  "item-of-two-kinds": (p) =>
    `The item ${quoted(p.found)} is given two kinds of object. Choose the same kind for all its parts, or give them different names.`,
  "group-without-readings": (p) =>
    `No reading called ${quoted(p.found)} waits any more; somebody put them on a part meanwhile. Reload the page.`,
  "item-in-use": () =>
    "One of the items has photos, remarks or results of other tests by now, so they are not taken back. Take away what is wrong by hand.",
  "unknown-reading": (p) =>
    `There is no reading ${quoted(p.found)}. It may have been undone with its file; reload the page.`,
  "unknown-spot": (p) => `There is no spot ${quoted(p.found)} on this part. Reload the page and choose again.`,
  "unknown-instrument": (p) => `There is no instrument ${quoted(p.found)}. Add it first, or choose another.`,
  "unknown-import": (p) => `There is no import ${quoted(p.found)}. It may have been undone.`,
  "slug-taken": (p) => `Another item already has the address ${quoted(p.found)}. Choose another name.`,
  "serial-taken": (p) =>
    `The serial number ${quoted(p.found)} already belongs to ${p.allowed ? `the instrument ${quoted(p.allowed)}` : "another instrument"}.`,
  "gtin-not-a-code": (p) => `${quoted(p.found)} is not a product code.${allowedText(p)}`,
  "gtin-check-digit": (p) =>
    `The product code ${quoted(p.found)} has a wrong last digit${p.allowed ? `; it should be ${p.allowed}` : ""}. Check the digits on the label.`,
  "reason-too-short": (p) =>
    `Please write why, in ${p.allowed ?? "a few words"}. The reason is published with the reading.`,
  "reason-missing": () => "Please write why. The reason is published and stays.",
  "already-imported": (p) => alreadyImported(p),
  "same-reading": (p) =>
    `${placeOf(p)}the same reading is already here${p.found ? ` (${quoted(p.found)})` : ""}. It was not counted twice.`,
  "import-published": (p) =>
    `Published pages stand on this import${p.found ? ` (${quoted(p.found)})` : ""}, so it cannot be undone. Publish a correction instead.`,
  "import-not-loaded": (p) => `${fileOf(p)} is not loaded, so there is nothing to undo.`,
  "import-not-undone": (p) => `${fileOf(p)} has not been undone, so there is nothing to bring back.`,
  "unknown-row": (p) =>
    `There is no such row waiting to be mended${p.found ? ` (${quoted(p.found)})` : ""}. Reload the page.`,
  "row-already-mended": (p) =>
    `${p.where?.row === undefined ? "This row" : `Row ${p.where.row}`} has already been mended. Nothing was loaded a second time.`,
  "import-undone": () => "This import has already been undone.",
  "too-large": (p) =>
    `${placeOf(p)}this is too large${p.found ? ` (${p.found})` : ""}.${allowedText(p)} Nothing was stored.`,
  "file-unreadable": (p) =>
    `${placeOf(p)}the file could not be read as a table.${foundText(p)}${allowedText(p)} Nothing was stored.`,
  "column-needs-element": (p) => `${placeOf(p)}say which element these figures are of, by its symbol, such as Pb.`,
  "file-missing": () => "Choose a file first.",
  "needs-company": (p) => `${placeOf(p)}this cannot stand alone.${foundText(p)}${allowedText(p)}`,
  "disk-full": () =>
    "The registry’s disk is full, so nothing of this was kept. Tell whoever runs it; as soon as there is room, send it again.",
  "disk-read-only": () =>
    "The registry cannot write to its disk just now, so nothing of this was kept. Tell whoever runs it, and send it again later.",
  "database-away": () =>
    "The registry’s database does not answer just now, so nothing of this was kept. Send it again in a while.",
  "store-failed": () => "The change could not be stored, and nothing of it was kept. Please try again.",
};

const fileOf = (p: Problem): string => (p.where?.file ? `The file ${quoted(p.where.file)}` : "This file");

/** `found` is the state of the import ("imported", "undone") or the name under which the same bytes came before. */
function alreadyImported(p: Problem): string {
  if (p.found === "undone") return `${fileOf(p)} was loaded and undone. Bring it back from its own page instead.`;
  const other = p.found && p.found !== "imported" && p.found !== p.where?.file ? ` as ${quoted(p.found)}` : "";
  return `${fileOf(p)} has been loaded before${other}. Nothing was loaded a second time.`;
}
