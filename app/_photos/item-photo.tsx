import { PhotoFigure } from "@/app/_components/photo-figure.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { photoMarks } from "@/lib/publication/photo-marks.ts";
import type { Snapshot, SnapshotPhoto } from "@/lib/publication/snapshot.ts";
import { markName, marksNote } from "@/lib/wording/photos.ts";

/** The photo's files as an image names them, narrowest first. */
export const photoSources = (photo: Pick<SnapshotPhoto, "sizes">): { src: string; width: number }[] =>
  (photo.sizes ?? []).map(({ key, width }) => ({ src: paths.photo(key), width }));

/** Names of parts by their ids, for the spots of a photo; the object's too where there are several. */
export function partNamesOf(specimens: Snapshot["specimens"]): ReadonlyMap<string, string> {
  const several = specimens.length > 1;
  return new Map(
    specimens.flatMap(({ label, parts }) =>
      parts.map(({ id, name }) => [id, several ? `${name} (${label})` : name] as const),
    ),
  );
}

/** A photo of an item with its spots drawn on it and told below. `sizes`: how wide it is shown. */
export function ItemPhoto({
  photo,
  parts,
  sizes,
  first,
}: {
  photo: SnapshotPhoto;
  parts: ReadonlyMap<string, string>;
  sizes?: string;
  first?: boolean;
}) {
  const marks = photoMarks(photo);
  const note = marksNote(
    marks,
    (photo.spots ?? []).map((spot) => spot.windowMm),
  );
  return (
    <PhotoFigure
      src={paths.photo(photo.key)}
      sources={photoSources(photo)}
      alt={photo.alt}
      width={photo.width}
      height={photo.height}
      marks={marks}
      {...(sizes === undefined ? {} : { sizes })}
      {...(first === undefined ? {} : { first })}
      caption={
        <>
          {photo.alt}
          {marks.length > 0 ? (
            <ol>
              {marks.map((mark) => (
                <li key={mark.number}>{markName(mark, parts.get(mark.part))}</li>
              ))}
            </ol>
          ) : null}
          {note ? <p>{note}</p> : null}
        </>
      }
    />
  );
}
