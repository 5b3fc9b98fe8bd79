import { describe, expect, it } from "vitest";
import { joinSessions, type LooseReading, type Sitting, shiftedTime } from "@/lib/consistency/join-sessions.ts";

const at = (clock: string, day = 14) => `2026-03-${day}T${clock}:00+01:00`;
const reading = (id: string, clock: string | null, more: Partial<LooseReading> = {}): LooseReading => ({
  ...{ id, instrumentId: "a", takenAt: clock === null ? null : at(clock), sessionId: null, ...more },
});
const sitting = (id: string, from: string, to: string | null, more: Partial<Sitting> = {}): Sitting => ({
  ...{
    id,
    instrumentId: "a",
    startedAt: at(from),
    endedAt: to === null ? null : at(to),
    clockShiftMinutes: 0,
    ...more,
  },
});

describe("readings join sessions", () => {
  it("by time and instrument, both ends included, also across zones", () => {
    const zulu = reading("z", null, { takenAt: "2026-03-14T09:30:00Z" });
    const joined = joinSessions(
      [reading("1", "10:00"), reading("2", "11:00"), reading("3", "10:30", { instrumentId: "b" }), zulu],
      [sitting("s", "10:00", "11:00")],
    );
    expect(joined.moves.map((m) => m.id)).toEqual(["1", "2", "z"]);
    expect(joined.gaps.map((g) => g.readingIds)).toEqual([["3"]]);
  });
  it("stay apart where two claim them, unless a person chose one", () => {
    const two = [sitting("s", "10:00", "11:00"), sitting("t", "10:50", "12:00")];
    expect(joinSessions([reading("1", "10:55")], two)).toMatchObject({
      moves: [],
      overlaps: [{ id: "1", sessionIds: ["s", "t"], keptIn: null }],
    });
    const chosen = joinSessions([reading("1", "10:55", { sessionId: "t" })], two);
    expect(chosen).toMatchObject({ moves: [], overlaps: [{ id: "1", keptIn: "t" }] });
    expect(joinSessions([reading("1", "10:10", { sessionId: "t" })], two).moves).toEqual([{ id: "1", sessionId: "s" }]);
  });
  it("without a time or an instrument wait for a person, whose word stands", () => {
    expect(joinSessions([reading("1", null), reading("2", "10:00", { instrumentId: null })], []).unplaced).toEqual([
      "1",
      "2",
    ]);
    expect(joinSessions([reading("1", null, { sessionId: "s" })], [])).toMatchObject({ moves: [], unplaced: [] });
  });
  it("outside any session come in stretches, a new one after three hours", () => {
    const joined = joinSessions([reading("1", "08:00"), reading("2", "10:59"), reading("3", "14:00")], []);
    expect(joined.gaps.map((g) => g.readingIds)).toEqual([["1", "2"], ["3"]]);
  });
  it("of a clock set wrong by hours are offered the shift that brings them all in, and join once it is made", () => {
    const wrong = [reading("1", "06:40"), reading("2", "08:10")];
    const [gap] = joinSessions(wrong, [sitting("s", "09:30", "11:20")]).gaps;
    expect(gap?.shift).toEqual({ sessionId: "s", minutes: 180 });
    const shifted = joinSessions(wrong, [sitting("s", "09:30", "11:20", { clockShiftMinutes: 180 })]);
    expect(shifted.moves.map((m) => m.sessionId)).toEqual(["s", "s"]);
    expect(
      joinSessions([reading("1", "06:00"), reading("2", "08:55")], [sitting("s", "09:30", "11:20")]).gaps[0]?.shift,
    ).toBeNull();
  });
});

it("a written time is put right in its own zone, over midnight too", () => {
  expect(shiftedTime(at("23:30"), 60)).toBe("2026-03-15T00:30:00+01:00");
  expect(shiftedTime("2026-03-14T00:10:00Z", -30)).toBe("2026-03-13T23:40:00Z");
});

describe("a clock put right", () => {
  it("moves a written time in its own zone, over midnight, and one without a zone as it stands", () => {
    expect(shiftedTime("2026-03-14T00:10:00+05:30", -20)).toBe("2026-03-13T23:50:00+05:30");
    expect(shiftedTime("2026-03-14T10:00:00Z", 90)).toBe("2026-03-14T11:30:00Z");
    expect(shiftedTime("2026-03-14T10:00:00", 5)).toBe("2026-03-14T10:05:00");
    expect(shiftedTime("2026-03-14T10:00:00+01:00", 0)).toBe("2026-03-14T10:00:00+01:00");
  });
});
