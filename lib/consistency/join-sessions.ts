import { instantOf } from "./instant.ts";

/** A sitting as far as joining asks. `clockShiftMinutes` is added to what the instrument wrote; `endedAt` null: not ended yet. */
export type Sitting = {
  id: string;
  instrumentId: string;
  startedAt: string;
  endedAt: string | null;
  clockShiftMinutes: number;
};

/** A reading that looks for its session; `instrumentId` by the serial it wrote, else the one its file was loaded for. */
export type LooseReading = {
  id: string;
  instrumentId: string | null;
  takenAt: string | null;
  sessionId: string | null;
};

export type Joined = {
  /** Where each reading goes; null: nowhere yet. Holds those only whose session changes. */
  moves: { id: string; sessionId: string | null }[];
  /** Readings that two sessions or more claim, and the one of them that has it, if one does. */
  overlaps: { id: string; sessionIds: string[]; keptIn: string | null }[];
  /** Readings outside any session, in stretches as they were taken. */
  gaps: Gap[];
  /** Readings that no time or no instrument places; a person says where they belong. */
  unplaced: string[];
};

export type Gap = {
  instrumentId: string;
  /** First and last as written. */
  from: string;
  to: string;
  readingIds: string[];
  /** A session whose clock, put right by whole quarters of an hour, would hold all of them. */
  shift: { sessionId: string; minutes: number } | null;
};

/** Policy: readings of one instrument with a longer pause between them are two sittings; common practice, no source. */
const pauseHours = 3;
/** Policy: a clock can be wrong by the width of all time zones and a summer hour. */
const mostShiftMinutes = 27 * 60;
const minute = 60_000;

/**
 * Which session each reading belongs to: the one of its instrument that its time, put right by the session's clock shift, falls into (ends
 * included). A reading that two claim stays where it is, if that is one of them, and belongs to neither otherwise; it is listed as long as both
 * claim it. Without a time, what a person said stands.
 *
 * @example joinSessions([{ id: "r", instrumentId: "a", takenAt: "2026-03-14T10:00:00Z", sessionId: null }],
 *   [{ id: "s", instrumentId: "a", startedAt: "2026-03-14T09:00:00Z", endedAt: "2026-03-14T11:00:00Z", clockShiftMinutes: 0 }]).moves // [{ id: "r", sessionId: "s" }]
 */
export function joinSessions(readings: readonly LooseReading[], sittings: readonly Sitting[]): Joined {
  const joined: Joined = { moves: [], overlaps: [], gaps: [], unplaced: [] };
  const loose: (LooseReading & { instrumentId: string; takenAt: string })[] = [];
  for (const reading of readings) {
    const { id, instrumentId, takenAt, sessionId } = reading;
    if (takenAt === null || instrumentId === null) {
      if (sessionId === null) joined.unplaced.push(id);
      continue;
    }
    const claims = sittings.filter((s) => s.instrumentId === instrumentId && holds(s, takenAt)).map((s) => s.id);
    const kept = sessionId !== null && claims.includes(sessionId);
    const next = kept ? sessionId : claims.length === 1 ? (claims[0] as string) : null;
    if (next !== sessionId) joined.moves.push({ id, sessionId: next });
    if (claims.length > 1) joined.overlaps.push({ id, sessionIds: claims, keptIn: next });
    if (claims.length === 0) loose.push({ ...reading, instrumentId, takenAt });
  }
  joined.gaps = stretches(loose).map((stretch) => gapOf(stretch, sittings));
  return joined;
}

/** Whether a session's time holds a reading. */
function holds(sitting: Sitting, takenAt: string): boolean {
  const at = instantOf(takenAt) + sitting.clockShiftMinutes * minute;
  return at >= instantOf(sitting.startedAt) && (sitting.endedAt === null || at <= instantOf(sitting.endedAt));
}

type Timed = LooseReading & { instrumentId: string; takenAt: string };

function stretches(readings: readonly Timed[]): Timed[][] {
  const ordered = [...readings].sort(
    (a, b) => a.instrumentId.localeCompare(b.instrumentId) || instantOf(a.takenAt) - instantOf(b.takenAt),
  );
  const found: Timed[][] = [];
  for (const reading of ordered) {
    const last = found.at(-1)?.at(-1);
    const follows =
      last?.instrumentId === reading.instrumentId &&
      instantOf(reading.takenAt) - instantOf(last.takenAt) <= pauseHours * 60 * minute;
    if (follows) found.at(-1)?.push(reading);
    else found.push([reading]);
  }
  return found;
}

function gapOf(stretch: readonly Timed[], sittings: readonly Sitting[]): Gap {
  const [first, last] = [stretch[0] as Timed, stretch.at(-1) as Timed];
  const shifts = sittings
    .filter((s) => s.instrumentId === first.instrumentId && s.clockShiftMinutes === 0 && s.endedAt !== null)
    .flatMap((s) => {
      const minutes = shiftInto(s, first.takenAt, last.takenAt);
      return minutes === null ? [] : [{ sessionId: s.id, minutes }];
    })
    .sort((a, b) => Math.abs(a.minutes) - Math.abs(b.minutes));
  return {
    instrumentId: first.instrumentId,
    from: first.takenAt,
    to: last.takenAt,
    readingIds: stretch.map((r) => r.id),
    shift: shifts[0] ?? null,
  };
}

/** The smallest shift by whole hours, else by quarters of an hour, that takes both ends into the session. */
function shiftInto(sitting: Sitting, from: string, to: string): number | null {
  const least = (instantOf(sitting.startedAt) - instantOf(from)) / minute;
  const most = (instantOf(sitting.endedAt as string) - instantOf(to)) / minute;
  for (const step of [60, 15]) {
    const candidates = [Math.ceil(least / step) * step, Math.floor(most / step) * step].filter(
      (shift) => shift >= least && shift <= most && shift !== 0 && Math.abs(shift) <= mostShiftMinutes,
    );
    const [smallest] = candidates.sort((a, b) => Math.abs(a) - Math.abs(b));
    if (smallest !== undefined) return smallest;
  }
  return null;
}

/**
 * A written time put right by so many minutes, in the zone it was written in.
 *
 * @example shiftedTime("2026-03-14T23:30:00+01:00", 60) // "2026-03-15T00:30:00+01:00"
 */
export function shiftedTime(takenAt: string, minutes: number): string {
  if (minutes === 0) return takenAt;
  const zone = /(Z|[+-]\d\d:\d\d)$/.exec(takenAt)?.[0] ?? "";
  const local = new Date(Date.parse(`${takenAt.slice(0, takenAt.length - zone.length)}Z`) + minutes * minute);
  return `${local.toISOString().slice(0, 19)}${zone}`;
}
