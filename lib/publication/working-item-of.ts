import { worst } from "../consistency/session-fitness.ts";
import type { AssessedItem, AssessInput } from "./assess-item.ts";
import type { WorkingItem } from "./build-snapshot.ts";
import type { PhotoScale } from "./photo-scale.ts";
import type { Snapshot, SnapshotPhoto } from "./snapshot.ts";
import { snapshotSessions } from "./snapshot-sessions.ts";

/** A photo as the bench holds it: its files narrowest first, its spots in their order. */
export type WorkingPhoto = Omit<SnapshotPhoto, "key" | "sizes" | "scale" | "spots"> & {
  fileKey: string;
  files: NonNullable<SnapshotPhoto["sizes"]>;
  scale: PhotoScale | null;
  spots: { label: string; componentId: string; x: number; y: number; windowMm: number | null }[];
};

/** What the bench holds of an item, as far as its page will say it. */
export type BenchRecord = {
  item: { slug: string; photos: WorkingPhoto[] };
  instruments: Omit<Snapshot["instruments"][number], "fitness">[];
  files: Snapshot["files"];
  assess: AssessInput;
};

/** What goes with one publication of it. */
export type Occasion = Pick<
  Snapshot,
  "registry" | "revision" | "kind" | "reason" | "publishedAt" | "testers" | "review" | "interests"
>;

/** The item on the bench, its assessed results and the occasion put together as what a publication takes. */
export function workingItemOf(record: BenchRecord, assessed: AssessedItem, occasion: Occasion): WorkingItem {
  const results = assessed.specimens.flatMap((s) => s.parts.flatMap((p) => p.results));
  const sessions = snapshotSessions(
    record.assess.sessions ?? [],
    results.map((r) => ({ element: r.reconciled.element, readings: r.readings })),
  );
  return {
    ...occasion,
    slug: record.item.slug,
    item: record.assess.item,
    specimens: assessed.specimens.map(
      ({ id, label, howGot, whoPaid, gotOn, dateCode, madeOn, condition, parts, otherTests }) => ({
        id,
        label,
        howGot,
        whoPaid,
        gotOn,
        dateCode,
        ...(madeOn === undefined ? {} : { madeOn }),
        condition,
        ...(otherTests ? { otherTests } : {}),
        parts: parts.map((part) => ({ ...part, results: part.results.map(({ mode: _, ...result }) => result) })),
      }),
    ),
    photos: record.item.photos.map(snapshotPhotoOf),
    // Without a time on any reading, the day of publishing is the last on which it can have been tested.
    testedOn: record.assess.testDay ?? occasion.publishedAt.slice(0, 10),
    instruments: record.instruments.map(({ name, kind, serial, windowMm, errorK }) => ({
      name,
      kind,
      serial,
      windowMm,
      errorK,
      fitness: worst(results.flatMap((r) => r.instruments[serial] ?? [])),
    })),
    ...(sessions.length > 0 ? { sessions } : {}),
    files: record.files,
  };
}

/** A photo on the bench as its page would show it. */
export const snapshotPhotoOf = ({
  fileKey,
  alt,
  width,
  height,
  sha256,
  files,
  scale,
  spots,
}: WorkingPhoto): SnapshotPhoto => ({
  key: fileKey,
  alt,
  width,
  height,
  sha256,
  sizes: files.map((file) => ({ key: file.key, width: file.width, height: file.height, sha256: file.sha256 })),
  scale,
  spots: spots.map(({ label, componentId, x, y, windowMm }) => ({ spot: label, part: componentId, x, y, windowMm })),
});
