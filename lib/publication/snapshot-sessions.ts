import type { SessionFitness, StandardVerdict } from "../consistency/session-fitness.ts";
import type { SnapshotSession } from "./snapshot.ts";

/** A session as the bench knows it, with what its check standards showed. */
export type AssessSession = Omit<SnapshotSession, "fitness"> & { fitness: SessionFitness };

type Results = readonly {
  element: string;
  readings: readonly { mode: string | null; session?: string | undefined }[];
}[];
type History = SnapshotSession["fitness"][number]["standards"][number]["history"];

/** A chart of more points than this is read by nobody on a page; the bench draws them all. */
const mostHistory = 24;

/**
 * What a page says of the sessions that its readings were taken in: was the instrument fit for the elements and modes of these results, what the
 * checks read, and how the same standard was read in the same mode by the same instrument before that. Elements the page does not report
 * are left out.
 *
 * `all` holds the item's sessions, and earlier ones of the same instruments for the history.
 */
export function snapshotSessions(all: readonly AssessSession[], results: Results): SnapshotSession[] {
  const used = new Set(results.flatMap((r) => r.readings.flatMap((reading) => reading.session ?? [])));
  const wanted = new Set(results.flatMap((r) => r.readings.map((reading) => keyOf(r.element, reading.mode))));
  return all
    .filter((session) => used.has(session.id))
    .sort((a, b) => (a.startedAt < b.startedAt ? -1 : 1))
    .map(({ fitness, ...session }) => ({
      ...session,
      fitness: fitness.elements
        .filter((e) => wanted.has(keyOf(e.element, e.mode)))
        .map((e) => ({
          element: e.element,
          quantity: e.quantity,
          mode: e.mode,
          state: e.state,
          drifts: e.drifts,
          inDoubt: e.inDoubt,
          standards: e.standards.map((verdict) => ({
            ...standardWords(verdict),
            history: historyOf(all, session, e.element, e.mode, verdict.standard.id),
          })),
        })),
    }));
}

const keyOf = (element: string, mode: string | null): string => JSON.stringify([element, mode]);

function standardWords(verdict: StandardVerdict) {
  const { standard, unit, certified, below, uCertified, recovery, corrected, checks } = verdict;
  return {
    name: standard.name,
    material: standard.material,
    unit,
    certified,
    below,
    uCertified,
    recovery: recovery?.recovery ?? null,
    uRecovery: recovery?.u ?? null,
    factor: corrected?.factor ?? null,
    checks: checks.map(({ takenAt, value, recovery: read, within }) => ({ takenAt, value, recovery: read, within })),
  };
}

function historyOf(
  all: readonly AssessSession[],
  session: Pick<AssessSession, "instrument" | "startedAt">,
  element: string,
  mode: string | null,
  standardId: string,
): History {
  return all
    .filter((s) => s.instrument.serial === session.instrument.serial && s.startedAt < session.startedAt)
    .flatMap((s) => s.fitness.elements.filter((e) => keyOf(e.element, e.mode) === keyOf(element, mode)))
    .flatMap((e) => e.standards.filter((v) => v.standard.id === standardId))
    .flatMap((v) => v.checks.map(({ takenAt, recovery, within }) => ({ takenAt, recovery, within })))
    .sort((a, b) => Date.parse(a.takenAt) - Date.parse(b.takenAt))
    .slice(-mostHistory);
}
