import type { Limit, Nature, Precision } from "../limits/types.ts";
import { groupDigits, plainDate } from "./formats.ts";

/** A limit's own words: its number, its dates, what kind of rule it is. */
export const limitNumber = (limit: Pick<Limit, "value" | "unit">): string =>
  limit.value === null ? "a rule without a number" : `${groupDigits(String(limit.value))} ${limit.unit}`;

const dateWords = (iso: string, known: Precision): string => {
  const full = plainDate(iso);
  if (known === "year") return iso.slice(0, 4);
  if (known === "month") return full.split(" ").slice(1).join(" ");
  return full;
};

/** "since 14 August 2011"; "15 June 1978 to 13 August 2009"; "since a day we do not know". */
export function limitPeriod(limit: {
  from: string;
  until: string | null;
  fromKnown: Precision;
  neverTookEffect: boolean;
}): string {
  if (limit.neverTookEffect) return "replaced before its first day";
  const start = limit.fromKnown === "unknown" ? null : dateWords(limit.from, limit.fromKnown);
  if (limit.until === null) return start === null ? "now; start not known" : `since ${start}`;
  return start === null ? `until ${plainDate(limit.until)}` : `${start} to ${plainDate(limit.until)}`;
}

export const natureWords: Record<Nature, string> = {
  binding: "binding where and on what it says",
  guidance: "guidance: advice by an authority",
  settlement: "settlement: agreed by certain firms in a court case",
  advisory: "advisory: a level to act on, not a bound",
};

export const failsText: Record<Limit["failsAt"], string> = {
  ">": "above the number; the number itself still passes",
  ">=": "at the number and above",
};
