import { decisionsByResult } from "@/lib/limits/decisions-for.ts";
import { subjectOf } from "@/lib/limits/subject-of.ts";
import { buildSnapshot, type WorkingResult } from "@/lib/publication/build-snapshot.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { reconcile } from "@/lib/reconcile/reconcile.ts";
import type { ReconcileInput } from "@/lib/reconcile/types.ts";
import { scenario } from "@/sample-data/scenario.ts";
import { inputsOf } from "../scenario/read-scenario.ts";
import { sha256 } from "./sample-revisions.ts";
import { sampleSnapshot } from "./sample-snapshot.ts";

const frame = sampleSnapshot();
const [specimen] = frame.specimens;
const days = { testDay: "2026-11-14", today: "2026-11-24" };

/** A part of the scenario as it would be published, in the frame of the sample snapshot. */
export function snapshotOfPart(
  inputs: readonly ReconcileInput[],
  part: Omit<Snapshot["specimens"][number]["parts"][number], "results">,
  change: Partial<Snapshot> = {},
): Snapshot {
  const reconciled = inputs.map((input) => reconcile(input, sha256));
  const decided = decisionsByResult(subjectOf({ item: frame.item, specimen: specimen!, part }), reconciled, days);
  const results = inputs.map(
    (input, i): WorkingResult => ({
      reconciled: reconciled[i]!,
      input,
      decisions: decided[i]!,
      readings: input.shots.map(({ quantity, unit, belowDetection, value, error, k, detectionLimit, ...shot }, n) => ({
        id: shot.id,
        file: null,
        row: n + 1,
        number: null,
        takenAt: shot.takenAt,
        takenAtText: null,
        secondsCounted: shot.secondsCounted,
        mode: shot.mode,
        spot: shot.spot,
        setAside: shot.setAside,
        result: { element: input.element, quantity, unit, belowDetection, value, error, k, detectionLimit },
      })),
    }),
  );
  const built = buildSnapshot({ ...frame, ...change, specimens: [{ ...specimen!, parts: [{ ...part, results }] }] });
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  return built.value;
}

const parts = scenario.items.flatMap((item) =>
  item.specimens.flatMap((one, n) =>
    one.components.map(({ key, readings: _, ...part }) => ({
      name: `${item.slug}, ${part.name}`,
      inputs: inputsOf(item.slug, n, key),
      part: { ...part, id: key } as Parameters<typeof snapshotOfPart>[1],
    })),
  ),
);
/** Every part of the scenario that was measured. */
export const measuredParts = parts.filter(({ inputs }) => inputs.length > 0);
