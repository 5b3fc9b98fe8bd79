import { done, type Outcome, refused } from "../quantity/problem.ts";
import { writeOffset, zoneReader } from "./zone-offset.ts";

/**
 * A day and a time of day in a zone, as a moment with its offset: what a form with three fields says together.
 *
 * Refused: `moment-incomplete`, `moment-twice` (clocks were set back; an offset as zone tells the two apart), `moment-never` (clocks
 * skipped it).
 *
 * Example: { date: "2026-09-12", time: "09:40", zone: "Europe/Berlin" } → "2026-09-12T09:40:00+02:00"
 */
export function localMoment({ date, time, zone }: { date: string; time: string; zone: string }): Outcome<string> {
  const [year, month, day] = date.split("-").map(Number);
  const [hour, minute] = time.split(":").map(Number);
  const reader = zone === "" ? null : zoneReader(zone);
  const found = [date, time, zone].filter(Boolean).join(" ");
  if (!reader || !year || !month || !day || hour === undefined || minute === undefined || Number.isNaN(hour + minute))
    return refused({ code: "moment-incomplete", found });
  const offset = reader({ year, month, day, hour, minute, second: 0 });
  if (typeof offset === "string") return refused({ code: `moment-${offset}`, found });
  return done(`${date}T${time.slice(0, 5)}:00${writeOffset(offset)}`);
}
