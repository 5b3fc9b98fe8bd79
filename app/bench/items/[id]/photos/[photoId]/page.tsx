import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { photoSources } from "@/app/_photos/item-photo.tsx";
import { currentPerson } from "@/lib/access/current-person.ts";
import { paths } from "@/lib/platform/paths.ts";
import { inOrderOfTime } from "@/lib/readings/in-order-of-time.ts";
import { database } from "@/lib/store/database.ts";
import { listInstruments } from "@/lib/store/instruments.ts";
import { findItem } from "@/lib/store/items.ts";
import { readingsOfComponents, type StoredReading } from "@/lib/store/readings.ts";
import { keptApart } from "@/lib/store/retests.ts";
import { spotsOfItem } from "@/lib/store/spots.ts";
import { asWritten } from "@/lib/wording/bench.ts";
import { BenchTabs } from "../../../../bench-tabs.tsx";
import { type JoinPart, JoinReadings } from "./join-readings.tsx";
import { SpotBoard } from "./spot-board.tsx";

export const metadata: Metadata = { title: "Spots on a photo" };

type Props = { params: Promise<{ id: string; photoId: string }> };

/** One photo: spots marked on it, a known length, and which readings were shot where. */
export default async function PhotoPage({ params }: Props) {
  const { id, photoId } = await params;
  const db = database();
  const item = await findItem(db, id);
  const photo = item?.photos.find((each) => each.id === photoId);
  if (!item || !photo) notFound();
  const several = item.specimens.length > 1;
  const parts = item.specimens.flatMap(({ label, components }) =>
    components.map(({ id: partId, name }) => ({ id: partId, name: several ? `${name} (${label})` : name })),
  );
  const [spots, instruments, readings] = await Promise.all([
    spotsOfItem(db, id),
    listInstruments(db),
    readingsOfComponents(
      db,
      parts.map((part) => part.id),
    ),
  ]);
  // Whoever measures this item blind sees their own readings only.
  const shown = await keptApart(db, id, readings, (await currentPerson())?.id ?? null);
  const here = spots.filter((spot) => spot.photoId === photoId);
  const windows = [...new Set(instruments.flatMap(({ windowMm }) => (windowMm === null ? [] : [windowMm])))];
  return (
    <>
      <PageHead
        title="Spots on a photo"
        kicker={
          <>
            <a href={paths.benchItem(id)}>{item.name}</a> · <a href={paths.benchPhotos(id)}>Photos</a>
          </>
        }
      />
      <BenchTabs current={paths.bench()} />
      <SpotBoard
        itemId={id}
        photo={{
          id: photoId,
          src: paths.photo(photo.fileKey),
          sources: photoSources({ sizes: photo.files }),
          alt: photo.alt,
          width: photo.width,
          height: photo.height,
          scale: photo.scale,
        }}
        parts={parts}
        spots={here.flatMap(({ id: spotId, componentId, label, x, y, readings: count }) =>
          x === null || y === null
            ? []
            : [
                {
                  id: spotId,
                  componentId,
                  label,
                  x,
                  y,
                  readings: count,
                  windowMm: photo.spots.find((s) => s.id === spotId)?.windowMm ?? null,
                },
              ],
        )}
        unplaced={spots
          .filter((spot) => spot.photoId === null)
          .map(({ componentId, label, readings: count }) => ({ componentId, label, readings: count }))}
        windows={windows.sort((a, b) => a - b)}
      />
      <Ledger>
        <Entry title="Readings on these spots" id="join">
          <JoinReadings
            itemId={id}
            parts={parts.map((part): JoinPart => {
              const own = shown.filter((r) => r.componentId === part.id);
              return {
                ...part,
                spots: here
                  .filter((spot) => spot.componentId === part.id)
                  .map((spot) => ({ id: spot.id, number: here.indexOf(spot) + 1, label: spot.label })),
                readings: inOrderOfTime(own).map(readingRow),
              };
            })}
          />
        </Entry>
      </Ledger>
    </>
  );
}

function readingRow(reading: StoredReading): JoinPart["readings"][number] {
  const [first] = reading.results;
  return {
    id: reading.id,
    name: reading.number ?? `row ${reading.row}`,
    takenAt: reading.takenAtText ?? reading.takenOn ?? "",
    written: first ? `${first.element} ${asWritten(first)}` : "",
    spotId: reading.spotId,
    spot: reading.spot,
    setAside: reading.setAside !== null,
  };
}
