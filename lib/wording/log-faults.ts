import type { LogFault, LogFaultCode } from "../publication/verify-log.ts";

const subject = (f: LogFault): string =>
  f.slug === null ? `Entry ${f.seq}` : `Entry ${f.seq} (${f.slug}, revision ${f.revision})`;

const words: Record<LogFaultCode, (f: LogFault) => string> = {
  "entry-malformed": (f) =>
    `${subject(f)} is no log entry${f.field ? `: its member “${f.field}” is not as it should be` : ""}.`,
  "entry-out-of-order": (f) => `${subject(f)} carries the number ${f.found}; by its place it should be ${f.expected}.`,
  "entry-fields-changed": (f) => `${subject(f)} was changed: its members give another hash than the one it carries.`,
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
};

/** One fault of the log as a sentence that names the entry and what differs. */
export const logFaultSentence = (fault: LogFault): string => words[fault.code](fault);
