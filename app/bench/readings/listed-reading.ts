import type { StoredReading } from "@/lib/store/readings.ts";
import type { ListedReading } from "./reading-list.tsx";

/** A reading's results as the file wrote them, the first few, so that a tester recognises the shot. */
export function listedReading(reading: StoredReading): ListedReading {
  const shown = reading.results.slice(0, 5).map((r) => {
    const written = r.belowDetection ? `below ${r.detectionLimit?.text ?? "its limit"}` : (r.value?.text ?? "");
    return `${r.element} ${written} ${r.unit}`;
  });
  const more = reading.results.length - shown.length;
  return {
    id: reading.id,
    number: reading.number ?? "",
    sample: reading.sample ?? "",
    spot: reading.spotText ?? "",
    note: reading.note ?? "",
    mode: reading.mode ?? "",
    time: reading.takenAtText ?? "",
    aside: reading.setAside?.reason ?? "",
    results: shown.join("; ") + (more > 0 ? `; and ${more} more` : ""),
  };
}
