/** A local time to the second; month and day from 1. */
export type LocalTime = { year: number; month: number; day: number; hour: number; minute: number; second: number };

const fixedOffset = /^(?:UTC|GMT)?\s*([+\u2212-])(\d{1,2}):?(\d{2})?$/i;

/** "+02:00", "+0200", "UTC+2", "Z", "UTC" → minutes east of UTC; null where the text is no offset. */
export function readOffset(text: string): number | null {
  const trimmed = text.trim();
  if (/^(?:z|utc|gmt)$/i.test(trimmed)) return 0;
  const match = fixedOffset.exec(trimmed);
  if (!match) return null;
  const minutes = Number(match[2]) * 60 + Number(match[3] ?? "0");
  return minutes > 14 * 60 || Number(match[3] ?? "0") > 59 ? null : match[1] === "+" ? minutes : -minutes;
}

/** 120 → "+02:00". */
export function writeOffset(minutes: number): string {
  const size = Math.abs(minutes);
  return `${minutes < 0 ? "-" : "+"}${String(Math.floor(size / 60)).padStart(2, "0")}:${String(size % 60).padStart(2, "0")}`;
}

const formatterOf = (zone: string): Intl.DateTimeFormat | null => {
  try {
    return new Intl.DateTimeFormat("en-US", {
      ...{ timeZone: zone, hourCycle: "h23", year: "numeric", month: "numeric", day: "numeric" },
      ...{ hour: "numeric", minute: "numeric", second: "numeric" },
    });
  } catch {
    return null;
  }
};

/** True for a fixed offset or a zone of the IANA database that this platform knows. */
export const isTimeZone = (zone: string): boolean =>
  readOffset(zone) !== null || (/^[A-Z]/i.test(zone) && formatterOf(zone) !== null);

const asUtc = (time: LocalTime): number =>
  Date.UTC(time.year, time.month - 1, time.day, time.hour, time.minute, time.second);

function offsetAtInstant(formatter: Intl.DateTimeFormat, instant: number): number {
  const part: Record<string, number> = {};
  for (const { type, value } of formatter.formatToParts(instant)) part[type] = Number(value);
  const local = Date.UTC(
    part["year"]!,
    part["month"]! - 1,
    part["day"]!,
    part["hour"]!,
    part["minute"]!,
    part["second"]!,
  );
  return Math.round((local - instant) / 60_000);
}

/**
 * Makes a reader of offsets for one zone: local time → minutes east of UTC, or "twice" for the hour that a clock change repeats,
 * or "never" for the hour it skips. Answers are kept for each quarter of an hour, since long files stay in few of them.
 * Example: zoneReader("Europe/Lisbon") at 2026-05-03 14:05 → 60. Null for a zone that does not exist.
 */
export function zoneReader(zone: string): ((time: LocalTime) => number | "twice" | "never") | null {
  const fixed = readOffset(zone);
  if (fixed !== null) return () => fixed;
  const formatter = isTimeZone(zone) ? formatterOf(zone) : null;
  if (!formatter) return null;
  const known = new Map<number, number | "twice" | "never">();
  return (time) => {
    const local = asUtc(time);
    const quarter = Math.floor(local / 900_000);
    const cached = known.get(quarter);
    if (cached !== undefined) return cached;
    const day = 86_400_000;
    const candidates = new Set([offsetAtInstant(formatter, local - day), offsetAtInstant(formatter, local + day)]);
    const valid = [...candidates].filter((offset) => offsetAtInstant(formatter, local - offset * 60_000) === offset);
    const answer = valid.length === 0 ? "never" : valid.length > 1 ? "twice" : valid[0]!;
    known.set(quarter, answer);
    return answer;
  };
}
