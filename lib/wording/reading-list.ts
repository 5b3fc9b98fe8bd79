import { counted } from "./formats.ts";

type State = "unassigned" | "assigned" | "aside" | "check" | "all";

/** Where a reading stands, as a choice and as the title of the list that it makes. */
export const readingStateWords: Record<State, { choice: string; title: string; none: string }> = {
  unassigned: {
    choice: "on no part yet",
    title: "Unassigned readings",
    none: "Every reading has its part",
  },
  assigned: { choice: "on a part", title: "Readings on parts", none: "No reading is on a part" },
  aside: { choice: "set aside", title: "Readings set aside", none: "No reading is set aside" },
  check: { choice: "of check standards", title: "Check readings", none: "No reading is of a check standard" },
  all: { choice: "all readings", title: "All readings", none: "There are no readings yet" },
};

export const readingListWords = {
  lead: "Readings that belong to no part yet. Tick them, say which part they were taken on, and they count towards its number.",
  leadOthers:
    "Every reading of every file that was loaded. Nothing is ever lost: what was set aside stays here, with its reason.",
  partsOf: (items: number, total: number): string =>
    items < total
      ? `Of the ${items} items last worked on; ${total} could be asked for`
      : `Of ${counted(total, "item")}`,
  newItems: (samples: number): string => `Make items out of ${samples === 1 ? "this name" : `these ${samples} names`}`,
  moved: (count: number, part: string): string => `${counted(count, "reading is", "readings are")} now on “${part}”.`,
  setAside: (count: number): string => `${counted(count, "reading is", "readings are")} set aside, with the reason.`,
  restored: (count: number): string => `${counted(count, "reading counts", "readings count")} again.`,
  freed: (count: number): string =>
    `${counted(count, "reading is", "readings are")} taken off and waits among the unassigned.`.replace(
      "are taken off and waits",
      "are taken off and wait",
    ),
  made: (items: number, parts: number, readings: number): string =>
    `${counted(items, "item")} made, with ${counted(parts, "part")} and ${counted(readings, "reading")} on them.`,
  noRange: (text: string, most: number): string =>
    `“${text}” is no range of this list. Write numbers from 1 to ${most}, like 12-18, 21.`,
  noShots: (text: string): string =>
    `No reading of this list has a number of the analyser’s in “${text}”. Write numbers like 12-18, 21.`,
};
