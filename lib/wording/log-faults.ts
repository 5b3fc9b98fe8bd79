import type { LogFault, LogFaultCode } from "../publication/verify-log.ts";
import { logFaultWords as spanish } from "./es/log-faults.ts";
import type { ByLanguage, Language } from "./language.ts";

export type LogFaultWords = Record<LogFaultCode, (f: LogFault) => string>;

const subject = (f: LogFault): string =>
  f.slug === null ? `Entry ${f.seq}` : `Entry ${f.seq} (${f.slug}, revision ${f.revision})`;

const ofEntry = (f: LogFault): string => (f.seq === null ? "" : ` of entry ${f.seq}`);

const english: LogFaultWords = {
  "entry-malformed": (f) =>
    `${subject(f)} is no log entry${f.field ? `: its member “${f.field}” is not as it should be` : ""}.`,
  "entry-out-of-order": (f) => `${subject(f)} carries the number ${f.found}; by its place it should be ${f.expected}.`,
  "entry-fields-changed": (f) =>
    f.field === undefined || f.field === "hash"
      ? `${subject(f)} was changed: its members give another hash than the one it carries.`
      : `${subject(f)} was changed in its member “${f.field}”: it says “${f.found}”, and its hash was made over “${f.expected}”.`,
  "entry-hash-changed": (f) => `${subject(f)} carries a changed hash; the next entry still holds the true one.`,
  "previous-hash-differs": (f) => `${subject(f)} does not follow the entry before it: the hashes differ.`,
  "snapshot-missing": (f) => `${subject(f)}: its published text is missing.`,
  "snapshot-changed": (f) =>
    `${subject(f)}: its published text was changed; it has another SHA-256 than the log holds.`,
  "snapshot-not-canonical": (f) => `${subject(f)}: its published text is not in canonical form.`,
  "snapshot-unreadable": (f) => `${subject(f)}: its published text cannot be read${f.field ? ` (at ${f.field})` : ""}.`,
  "snapshot-tells-otherwise": (f) =>
    `${subject(f)}: the published text says ${f.field} “${f.found}”, the log says “${f.expected}”.`,
  "snapshot-unlisted": (f) => `There is a published text number ${f.seq} that the log does not list.`,
  "head-differs": (f) => `The log's newest entry should be number ${f.seq} with hash ${f.expected}; found: ${f.found}.`,
  "head-malformed": (f) =>
    `The signed head${ofEntry(f)} is not as it should be${f.field ? `, in its member “${f.field}”` : ""}.`,
  "head-signature-wrong": (f) =>
    f.field === "hash"
      ? `The signed head${ofEntry(f)} was changed in its hash: its signature was made over ${f.expected}.`
      : `The signature of the signed head${ofEntry(f)} does not hold: the head, its key or its signature was changed.`,
  "head-key-differs": (f) =>
    `The head${ofEntry(f)} is signed with another key than the one you expect; found ${f.found}, expected ${f.expected}.`,
};
const words: ByLanguage<LogFaultWords> = { en: english, es: spanish };

/** One fault of the log as a sentence that names the entry and what differs. */
export const logFaultSentence = (fault: LogFault, language: Language = "en"): string =>
  words[language][fault.code](fault);
