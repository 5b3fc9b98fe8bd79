import type { ReconcileInput, ShotInput } from "../../lib/reconcile/types.ts";
import { randomStream } from "../../lib/statistics/random-stream.ts";

export type Readings = { x: number[]; u: number[] };

/**
 * Invented parts of five readings each: contents 50 to 1000 mg/kg, counting u 1 to 5 % of the content, a third of the parts without,
 * a third with 2 % and a third with `spread` between spots. Values are rounded as an instrument prints them.
 */
export function makeReadings(parts: number, spread: number): Readings[] {
  const stream = randomStream(20261124);
  return Array.from({ length: parts }, (_, part) => {
    const content = 50 + 950 * stream.uniform();
    const between = [0, 0.02, spread][part % 3]! * content;
    const x: number[] = [];
    const u: number[] = [];
    for (let reading = 0; reading < 5; reading++) {
      const counting = Number((content * (0.01 + 0.04 * stream.uniform())).toFixed(1));
      x.push(Number((content + between * stream.normal() + counting * stream.normal()).toFixed(1)));
      u.push(counting);
    }
    return { x, u };
  });
}

const written = (value: number) => ({ text: value.toFixed(1), value, decimals: 1 });

/** The same readings as `reconcile` takes them: one shot a spot, an instrument's stated calibration beside them. */
export const asInput = ({ x, u }: Readings, part: number): ReconcileInput => ({
  element: "Pb",
  quantity: "bulk-mass-fraction",
  form: "bulk",
  contributions: [{ code: "calibration", relative: 0.05, type: "B", source: "instrument-default" }],
  minimumSeconds: 20,
  shots: x.map(
    (value, spot): ShotInput => ({
      id: `part ${part} reading ${spot + 1}`,
      spot: String(spot + 1),
      quantity: "bulk-mass-fraction",
      mode: "plastic",
      unit: "ppm",
      belowDetection: false,
      value: written(value),
      error: written(u[spot]!),
      k: 1,
      detectionLimit: null,
      secondsCounted: 30,
      takenAt: "2026-03-14T10:00:00+01:00",
      setAside: null,
      arsenicValue: null,
      leadValue: value,
    }),
  ),
});
