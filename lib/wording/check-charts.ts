import { type CheckChart, checkChart } from "../consistency/check-chart.ts";
import { counted, listed, significant } from "./formats.ts";
import { aboutElement, dayAndClock, signalWords, withinWords } from "./sessions.ts";

/** One reading of a standard as a share of its certified value. */
export type CheckPoint = { takenAt: string; recovery: number | null; within: boolean | null };

export type CheckFigure = {
  title: string;
  note: string;
  input: {
    points: { id: string; label: string; value: number; signal: boolean; words: string }[];
    center: number;
    limits: [number, number];
  } | null;
  rows: { id: string; when: string; recovery: string; average: string; judged: string; says: string }[];
};

/**
 * A standard's readings of one element over time, as a chart and its table: each as a share of the certified value, the limits of single readings,
 * and where a chart or a rule speaks up. Fewer than two readings have a table only.
 */
export function checkFigure(
  about: { standard: string; element: string; mode: string | null },
  points: readonly CheckPoint[],
): CheckFigure {
  const named = points.map((point, at) => ({ ...point, id: String(at) }));
  const chart = checkChart(
    named.map(({ id, takenAt, recovery }) => ({ id, takenAt, value: recovery, u: null, detectionLimit: null })),
    { certified: 1 },
  );
  const saysOf = (id: string): string[] => (chart.status === "ok" ? signalsAt(chart, id) : []);
  const averages = new Map(chart.status === "ok" ? chart.points.map((p) => [p.id, p.ewma]) : []);
  const ordered = [...named].sort((a, b) => Date.parse(a.takenAt) - Date.parse(b.takenAt));
  const failed = new Set(named.filter((p) => p.within === false).map((p) => p.id));
  const subject = `${about.standard}: ${aboutElement(about.element, about.mode)}`;
  return {
    title: `${subject}. ${headline(ordered, chart, saysOf)}`,
    note: "Each point is what was read over what is certified. The dashed lines stand three standard deviations from the middle, from how much these readings differ one after the other; a ringed square is where a check failed, or a chart or a rule speaks up.",
    input:
      chart.status === "ok"
        ? {
            center: chart.center,
            limits: chart.limits,
            points: chart.points.map(({ id, takenAt, recovery }) => ({
              id,
              label: takenAt.slice(0, 10),
              value: recovery,
              signal: saysOf(id).length > 0 || failed.has(id),
              words: `${dayAndClock(takenAt)}: ${significant(recovery, 3)} of the certified value${failed.has(id) ? ", outside 20 %" : ""}${saysOf(id).length > 0 ? `; ${listed(saysOf(id))}` : ""}`,
            })),
          }
        : null,
    rows: ordered.map(({ id, takenAt, recovery, within }) => ({
      id,
      when: dayAndClock(takenAt),
      recovery: recovery === null ? "not detected" : significant(recovery, 3),
      average: averages.has(id) ? significant(averages.get(id)!, 3) : "–",
      judged: withinWords(within),
      says: listed(saysOf(id)) || "–",
    })),
  };
}

function signalsAt(chart: Extract<CheckChart, { status: "ok" }>, id: string): string[] {
  return Object.entries(chart.signals)
    .filter(([, ids]) => ids.includes(id))
    .map(([name]) => signalWords[name]!);
}

function headline(points: readonly CheckPoint[], chart: CheckChart, saysOf: (id: string) => string[]): string {
  const failed = points.filter((p) => p.within === false).length;
  const band = failed === 0 ? "All within 20 %" : `${counted(failed, "check")} of ${points.length} failed`;
  if (chart.status !== "ok") return `${band}; too few or too like for a chart.`;
  const speaking = chart.points.filter((p) => saysOf(p.id).length > 0).length;
  return `${band}; ${speaking === 0 ? "the charts see no shift" : `the charts speak up at ${counted(speaking, "point")}`}.`;
}
