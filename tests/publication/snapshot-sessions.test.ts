import { describe, expect, it } from "vitest";
import type { ElementFitness, StandardVerdict } from "@/lib/consistency/session-fitness.ts";
import { type AssessSession, snapshotSessions } from "@/lib/publication/snapshot-sessions.ts";

/** Invented sessions; no such instrument or standard exists. */
const verdict = (change: Partial<StandardVerdict>): StandardVerdict => ({
  standard: { id: "std", name: "Invented glaze", material: "glaze" } as StandardVerdict["standard"],
  ...{ unit: "mg/kg", certified: 100, below: null, uCertified: 2, checks: [], state: "fit", inDoubt: [] },
  ...{ recovery: null, contributions: [], corrected: null, drifts: false, ...change },
});
const session = (id: string, startedAt: string, standards: StandardVerdict[]): AssessSession =>
  ({
    ...{ id, label: id, startedAt, instrument: { serial: "X-1" } },
    fitness: {
      elements: ["Pb", "Cd"].map(
        (element): ElementFitness => ({
          ...{
            element,
            quantity: "bulk-mass-fraction",
            mode: null,
            state: "fit",
            standards,
            inDoubt: [],
            drifts: false,
          },
        }),
      ),
      uncounted: [],
    },
  }) as unknown as AssessSession;
const check = (takenAt: string) =>
  ({ takenAt, value: 98, recovery: 0.98, within: true }) as StandardVerdict["checks"][number];
const results = (...ids: string[]) => [{ element: "Pb", readings: ids.map((id) => ({ mode: null, session: id })) }];

const morning = session("morning", "2026-05-02T08:00:00Z", [
  verdict({ checks: [check("2026-05-02T08:05:00Z")], recovery: { recovery: 0.98, u: 0.01 } as never }),
]);
const noon = session("noon", "2026-05-02T12:00:00Z", [verdict({ checks: [check("2026-05-02T12:05:00Z")] })]);
const night = session("night", "2026-05-02T20:00:00Z", []);

describe("sessions on a page", () => {
  it("come in the order of their beginnings, and only those that readings were taken in", () => {
    const ids = (...all: AssessSession[]) =>
      snapshotSessions(all, results("night", "morning", "noon")).map((s) => s.id);
    expect(ids(night, noon, morning)).toEqual(["morning", "noon", "night"]);
    expect(ids(morning, noon, night)).toEqual(["morning", "noon", "night"]);
    expect(snapshotSessions([morning, noon], results("noon")).map((s) => s.id)).toEqual(["noon"]);
  });
  it("name elements that the page reports, and no others", () => {
    const [one] = snapshotSessions([morning], results("morning"));
    expect(one!.fitness.map((each) => each.element)).toEqual(["Pb"]);
  });
  it("give the recovery where there is one, and the checks of sessions before as history", () => {
    const [first, second] = snapshotSessions([noon, morning], results("morning", "noon"));
    expect(first!.fitness[0]!.standards[0]).toMatchObject({ recovery: 0.98, uRecovery: 0.01, history: [] });
    expect(second!.fitness[0]!.standards[0]).toMatchObject({
      ...{ recovery: null, uRecovery: null, factor: null },
      history: [{ takenAt: "2026-05-02T08:05:00Z", recovery: 0.98, within: true }],
    });
  });
});
