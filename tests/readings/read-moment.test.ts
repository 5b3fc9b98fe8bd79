import { describe, expect, it } from "vitest";
import { orderEvidence, readMoment } from "@/lib/readings/read-moment.ts";
import { isTimeZone, readOffset, writeOffset, zoneReader } from "@/lib/readings/zone-offset.ts";

const inShort = (text: string, order: "day-first" | "month-first" | null = null): string => {
  const moment = readMoment(text, order);
  if (!moment) return "unreadable";
  const { date, clock } = moment;
  const day = date ? [date.year, date.month, date.day].join("-") : "";
  const time = clock ? `${[clock.hour, clock.minute, clock.second].join(":")}${clock.offset ?? ""}` : "";
  return [day, time].filter(Boolean).join(" ");
};

describe("readMoment", () => {
  it.each([
    ["2026-05-03", "2026-5-3"],
    ["2026-05-03T14:05:06.789+02:00", "2026-5-3 14:5:6120"],
    ["2026-05-03 14:05Z", "2026-5-3 14:5:00"],
    ["2026/05/03 14:05 UTC-3", "2026-5-3 14:5:0-180"],
    ["03.05.2026 14:05", "2026-5-3 14:5:0"],
    ["3.5.26, 14:05 Uhr", "2026-5-3 14:5:0"],
    ["3 May 2026 2:05 PM", "2026-5-3 14:5:0"],
    ["3-May-26 12:00 am", "2026-5-3 0:0:0"],
    ["3. März 2026", "2026-3-3"],
    ["3 de mayo de 2026", "2026-5-3"],
    ["3 août 2026", "2026-8-3"],
    ["May 3, 2026", "2026-5-3"],
    ["14:05", "14:5:0"],
    ["05/05/2026", "2026-5-5"],
  ])("reads %s", (text, expected) => {
    expect(inShort(text)).toBe(expected);
  });
  it("reads 3/4/2026 only by a stated order", () => {
    expect([inShort("3/4/2026"), inShort("3/4/2026", "day-first"), inShort("3/4/2026", "month-first")]).toEqual([
      ...["unreadable", "2026-4-3", "2026-3-4"],
    ]);
  });
  it.each([
    "31.06.2026",
    "2026-13-01",
    "2026-05-03 25:00",
    "13:00 PM",
    "45415.58",
    "soon",
    "",
    "3 Smarch 2026",
    "29.02.2025",
  ])("refuses %s", (text) => {
    expect(inShort(text)).toBe("unreadable");
  });
  it.each([
    ["25/03/2026 10:00", "day-first"],
    ["03-25-2026", "month-first"],
    ["04/03/2026", "either"],
    ["04.03.2026", "unneeded"],
    ["04/04/2026", "unneeded"],
    ["2026-04-03", "unneeded"],
  ])("%s shows %s", (text, order) => {
    expect(orderEvidence(text)).toBe(order);
  });
});

/** Offsets of the tz database (iana.org/time-zones); the European Union's changes are on the last Sundays of March and October. */
describe("offsets of zones", () => {
  const at = (zone: string, month: number, day: number, hour: number, minute = 0) =>
    zoneReader(zone)!({ year: 2026, month, day, hour, minute, second: 0 });
  it.each([
    ["Europe/Berlin", 1, 15, 12, 60],
    ["Europe/Berlin", 7, 15, 12, 120],
    ["Asia/Kolkata", 7, 15, 12, 330],
    ["America/St_Johns", 1, 15, 12, -210],
    ["+05:45", 1, 1, 0, 345],
    ["UTC", 1, 1, 0, 0],
  ])("%s, %i-%i %i h", (zone, month, day, hour, offset) => {
    expect(at(zone, month, day, hour)).toBe(offset);
  });
  it("names the hour that comes twice and the hour that never is", () => {
    expect([at("Europe/Berlin", 10, 25, 2, 30), at("Europe/Berlin", 3, 29, 2, 30)]).toEqual(["twice", "never"]);
    expect([at("Europe/Berlin", 10, 25, 1, 59), at("Europe/Berlin", 10, 25, 3, 0)]).toEqual([120, 60]);
  });
  it("knows what is no zone", () => {
    expect(["Nowhere/Atoll", "", "+25:00", "noon"].map(isTimeZone)).toEqual([false, false, false, false]);
  });
  it("are read and written alike", () => {
    for (const minutes of [-720, -210, 0, 60, 345, 840]) expect(readOffset(writeOffset(minutes))).toBe(minutes);
    expect([readOffset("+2"), readOffset("-0330"), readOffset("z")]).toEqual([120, -210, 0]);
  });
});
