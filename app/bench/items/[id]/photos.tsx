import { Actions, Button } from "@/app/_components/button.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { FileField, TextField } from "@/app/_components/field.tsx";
import { PhotoFigure, PhotoRow } from "@/app/_components/photo-figure.tsx";
import { paths } from "@/lib/platform/paths.ts";
import type { ItemTree } from "@/lib/store/items.ts";

/** The item's photos, and the form that adds one. A plain form to a route: a photo is too large for a server action. */
export function Photos({ item, problem }: { item: ItemTree; problem?: string | undefined }) {
  return (
    <>
      {problem ? (
        <ErrorSummary errors={[{ field: "photo-file", text: problem }]} title="The photo was not taken" />
      ) : null}
      {item.photos.length > 0 ? (
        <PhotoRow>
          {item.photos.map((photo) => (
            <PhotoFigure
              key={photo.id}
              src={paths.photo(photo.fileKey)}
              alt={photo.alt}
              width={photo.width}
              height={photo.height}
              caption={photo.alt}
            />
          ))}
        </PhotoRow>
      ) : (
        <p>No photo yet. A reader tells by it whether theirs is the same.</p>
      )}
      <Disclosure summary="Add a photo" open={problem !== undefined}>
        <form action={`${paths.benchItem(item.id)}/photos`} method="post" encType="multipart/form-data">
          <FileField
            id="photo-file"
            name="photo"
            label="Photo"
            hint="JPEG, PNG, WebP or AVIF, up to 20 MB. Place, time and camera are taken out before it is kept."
            accept="image/jpeg,image/png,image/webp,image/avif"
            required
          />
          <TextField
            id="photo-alt"
            name="alt"
            label="What it shows"
            hint="For whoever cannot see it: “White mug from the side, red poppies under a red band”"
            minLength={8}
            maxLength={300}
            required
            width={44}
          />
          <Actions>
            <Button type="submit">Add the photo</Button>
          </Actions>
        </form>
      </Disclosure>
    </>
  );
}
