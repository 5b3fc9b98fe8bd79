import { ButtonLink } from "@/app/_components/button.tsx";
import { PhotoRow } from "@/app/_components/photo-figure.tsx";
import { ItemPhoto } from "@/app/_photos/item-photo.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { snapshotPhotoOf } from "@/lib/publication/working-item-of.ts";
import type { ItemTree } from "@/lib/store/items.ts";
import { photoWords } from "@/lib/wording/photos.ts";

/** The item's photos with their spots, and the way to work on them. */
export function Photos({ item }: { item: ItemTree; problem?: string | undefined }) {
  const parts = new Map(item.specimens.flatMap((s) => s.components.map(({ id, name }) => [id, name] as const)));
  return (
    <>
      {item.photos.length > 0 ? (
        <PhotoRow>
          {item.photos.map((photo) => (
            <ItemPhoto
              key={photo.id}
              photo={snapshotPhotoOf(photo)}
              parts={parts}
              sizes="(min-width: 30rem) 20rem, 92vw"
            />
          ))}
        </PhotoRow>
      ) : (
        <p>{photoWords.none}</p>
      )}
      <p>
        <ButtonLink href={paths.benchPhotos(item.id)}>
          {item.photos.length > 0 ? "Photos and spots" : "Add photos"}
        </ButtonLink>
      </p>
    </>
  );
}
