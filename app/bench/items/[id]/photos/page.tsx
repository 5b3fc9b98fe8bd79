import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { findItem } from "@/lib/store/items.ts";
import { type PhotoRecord, removedPhotos } from "@/lib/store/photos.ts";
import { counted } from "@/lib/wording/formats.ts";
import { photoWords } from "@/lib/wording/photos.ts";
import { largestPhoto } from "@/lib/workflows/add-photo.ts";
import { BenchTabs } from "../../../bench-tabs.tsx";
import { PhotoDrop } from "./photo-drop.tsx";
import { PhotoShelf, type ShelfPhoto } from "./photo-shelf.tsx";

export const metadata: Metadata = { title: "Photos" };

type Props = { params: Promise<{ id: string }>; searchParams: Promise<{ problem?: string }> };

/** An item's photos: more of them, their words, their order, taken away and put back. */
export default async function PhotosPage({ params, searchParams }: Props) {
  const { id } = await params;
  const { problem } = await searchParams;
  const item = await findItem(database(), id);
  if (!item) notFound();
  const removed = await removedPhotos(database(), id);
  return (
    <>
      <PageHead title="Photos" kicker={<a href={paths.benchItem(id)}>{item.name}</a>}>
        <p>{photoWords.first}</p>
      </PageHead>
      <BenchTabs current={paths.bench()} />
      <Ledger>
        <Entry title="Add photos" id="add">
          <PhotoDrop
            action={paths.benchPhotoUpload(id)}
            hint={photoWords.hint}
            largest={largestPhoto}
            problem={problem?.slice(0, 500)}
          />
        </Entry>
        <Entry title="On this item" id="photos" aside={counted(item.photos.length, "photo")}>
          <PhotoShelf
            itemId={id}
            photos={item.photos.map((photo) => shelfPhoto(id, photo))}
            removed={removed.map((photo) => shelfPhoto(id, photo))}
          />
        </Entry>
      </Ledger>
    </>
  );
}

/** The narrowest file is enough here. */
function shelfPhoto(itemId: string, { id, fileKey, files, width, height, alt, spots, scale }: PhotoRecord): ShelfPhoto {
  const smallest = files[0] ?? { key: fileKey, width, height };
  return {
    id,
    alt,
    src: paths.photo(smallest.key),
    width: smallest.width,
    height: smallest.height,
    spotsHref: paths.benchPhoto(itemId, id),
    spots: photoWords.spotsOn(spots.length),
    scale: scale !== null,
  };
}
