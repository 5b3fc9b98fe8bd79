import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { PhotoFigure } from "@/app/_components/photo-figure.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { photoMarks } from "@/lib/publication/photo-marks.ts";
import type { Snapshot, SnapshotPhoto } from "@/lib/publication/snapshot.ts";
import type { Language } from "@/lib/wording/language.ts";
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
  language = "en",
}: {
  photo: SnapshotPhoto;
  parts: ReadonlyMap<string, string>;
  sizes?: string;
  first?: boolean;
  language?: Language;
}) {
  const marks = photoMarks(photo);
  const note = marksNote(
    marks,
    (photo.spots ?? []).map((spot) => spot.windowMm),
    language,
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
          {asWritten(photo.alt, language)}
          {marks.length > 0 ? (
            <ol>
              {marks.map((mark) => (
                <li key={mark.number}>
                  <Told
                    text={markName(mark, parts.get(mark.part), language)}
                    own={[parts.get(mark.part), mark.spot]}
                    language={language}
                  />
                </li>
              ))}
            </ol>
          ) : null}
          {note ? <p>{note}</p> : null}
        </>
      }
    />
  );
}
