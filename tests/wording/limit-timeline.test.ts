import { describe, expect, test } from "vitest";
import { historyOf } from "@/lib/limits/limits-in-force.ts";
import { listLimits, publicLimit } from "@/lib/limits/list-limits.ts";
import {
  firstDay,
  historyLine,
  lastDay,
  limitPeriodInFull,
  limitYears,
  timelineTitle,
} from "@/lib/wording/limit-timeline.ts";

const today = "2026-11-24";
const family = (name: string) => historyOf(name).map(publicLimit);
const limit = (id: string) => {
  const found = listLimits().find((each) => each.id === id);
  if (!found) throw new Error(id);
  return found;
};

describe("the title states the message", () => {
  test.each([
    ["us-childrens-products-pb", "The number went from 600 to 300 to 100 mg/kg"],
    ["us-dust-floor", "The number went from 40 to 10 µg/ft² to a rule without a number"],
    ["wa-cookware-pb", "90 mg/kg today; 10 mg/kg from 1 January 2028"],
    ["us-ceramic-cd-flat", "0.5 µg/mL today"],
  ])("%s", (name, title) => {
    expect(timelineTitle(family(name), today)).toBe(title);
  });
  test("two rules of one number are told once", () => {
    expect(timelineTitle(family("eu-packaging-sum"), today)).toBe("The number went from 600 to 250 to 100 mg/kg");
  });
});

test("a start that is not known says so", () => {
  expect(firstDay(limit("FDA-CD-FLAT"))).toBe("start not known");
  expect(limitPeriodInFull(limit("FDA-CD-FLAT"), today)).toBe("now; start not known");
  expect(limitYears(limit("FDA-CD-FLAT"), today)).toBe("now");
});

test("a number that never took effect says so", () => {
  expect(lastDay(limit("WA-COOK-5"), today)).toBe("never took effect");
  expect(limitPeriodInFull(limit("WA-COOK-5"), today)).toBe("never took effect: replaced before 1 January 2026");
});

test("a day of compliance is said beside the first day", () => {
  expect(limitPeriodInFull(limit("EPA-DLAL-2024-FLOOR"), today)).toBe(
    "since 13 January 2025; asked for from 12 January 2026",
  );
});

test("a number to come says from, not since", () => {
  expect(limitPeriodInFull(limit("WA-COOK-10"), today)).toBe("from 1 January 2028");
  expect(lastDay(limit("WA-COOK-10"), today)).toBe("not yet in force");
});

test("a line of history names the numbers before and after, without those that never took effect", () => {
  expect(historyLine(limit("WA-COOK-90"), family("wa-cookware-pb"))).toBe("after: 10 mg/kg (1 January 2028)");
  expect(historyLine(limit("CPSIA-300"), family("us-childrens-products-pb"))).toBe(
    "before: 600 mg/kg; after: 100 mg/kg (14 August 2011)",
  );
  expect(historyLine(limit("FDA-CD-FLAT"), family("us-ceramic-cd-flat"))).toBeNull();
});

test("every limit has its words, on any day", () => {
  for (const each of listLimits())
    for (const day of ["1990-01-01", today, "2040-01-01"]) {
      expect(limitYears(each, day)).not.toMatch(/undefined|1900/);
      expect(limitPeriodInFull(each, day)).not.toMatch(/undefined|1900/);
      expect(`${firstDay(each)} ${lastDay(each, day)}`).not.toMatch(/undefined|1900/);
    }
});
