"use client";

import { useEffect, useState } from "react";
import { Button } from "@/app/_components/button.tsx";
import { FileField, TextField } from "@/app/_components/field.tsx";
import { PhotoStage } from "@/app/_photos/photo-stage.tsx";
import { nextLabel, type Place } from "@/app/_photos/spot-moves.ts";
import { photoMarks } from "@/lib/publication/photo-marks.ts";
import { markName, photoWords } from "@/lib/wording/photos.ts";
import { tableWords } from "@/lib/wording/table-sheets.ts";
import { dropWords } from "@/lib/wording/typed-words.ts";
import type { SheetPhoto, TableSheet } from "../_offline/sheet.ts";
import { dropPhotoBlob, keepPhotoBlob, photoBlob } from "../_offline/sheet-store.ts";

type Props = { sheet: TableSheet; largest: number; onChange: (sheet: TableSheet) => void };

/** Photos of a sheet, from the camera or the phone's album, each with its words and the spots tapped on it. */
export function SheetPhotos({ sheet, largest, onChange }: Props) {
  const [wrong, setWrong] = useState<string[]>([]);
  const add = async (files: File[]) => {
    const added: SheetPhoto[] = [];
    const refused: string[] = [];
    for (const file of files) {
      if (file.size > largest) {
        refused.push(dropWords.tooLarge(file.name, file.size, largest));
        continue;
      }
      // What the browser cannot draw, no spot can be marked on; the registry looks at it again by its content.
      const picture = await createImageBitmap(file).catch(() => null);
      if (!picture) {
        refused.push(tableWords.noPicture(file.name));
        continue;
      }
      const id = crypto.randomUUID();
      await keepPhotoBlob(id, file);
      added.push({ id, name: file.name, alt: "", width: picture.width, height: picture.height });
      picture.close();
    }
    setWrong(refused);
    if (added.length > 0) onChange({ ...sheet, photos: [...sheet.photos, ...added] });
  };
  return (
    <>
      {wrong.map((text) => (
        <p key={text} role="alert">
          {text}
        </p>
      ))}
      {(["camera", "album"] as const).map((from) => (
        <FileField
          key={from}
          id={`photo-${from}`}
          name={`photo-${from}`}
          label={from === "camera" ? "Take a photo" : "Choose photos"}
          accept="image/jpeg,image/png,image/webp,image/avif"
          {...(from === "camera" ? { capture: "environment" as const } : { multiple: true })}
          onChange={(event) => {
            const input = event.currentTarget;
            void add([...(input.files ?? [])]).then(() => {
              input.value = "";
            });
          }}
        />
      ))}
      {sheet.photos.map((photo, at) => (
        <OnePhoto key={photo.id} photo={photo} at={at} sheet={sheet} onChange={onChange} />
      ))}
    </>
  );
}

function OnePhoto({
  photo,
  at,
  sheet,
  onChange,
}: {
  photo: SheetPhoto;
  at: number;
  sheet: TableSheet;
  onChange: (sheet: TableSheet) => void;
}) {
  const src = useBlobUrl(photo.id);
  const own = sheet.spots.filter((spot) => spot.photoId === photo.id);
  const marks = photoMarks({
    ...photo,
    scale: null,
    spots: own.map(({ label, x, y }) => ({ spot: label, part: "", x, y, windowMm: null })),
  });
  const setAlt = (alt: string) =>
    onChange({ ...sheet, photos: sheet.photos.map((each) => (each.id === photo.id ? { ...each, alt } : each)) });
  const mark = (place: Place) => {
    const label = nextLabel(
      [],
      sheet.spots.map((spot) => spot.label),
    );
    onChange({ ...sheet, spots: [...sheet.spots, { label, photoId: photo.id, ...place }] });
  };
  const move = (label: string, to: Place) =>
    onChange({ ...sheet, spots: sheet.spots.map((spot) => (spot.label === label ? { ...spot, ...to } : spot)) });
  const takeOff = (label: string) =>
    onChange({
      ...sheet,
      spots: sheet.spots.filter((spot) => spot.label !== label),
      readings: sheet.readings.map((row) => (row["spot"] === label ? { ...row, spot: "" } : row)),
    });
  const drop = () => {
    void dropPhotoBlob(photo.id);
    onChange({
      ...sheet,
      photos: sheet.photos.filter((each) => each.id !== photo.id),
      spots: sheet.spots.filter((spot) => spot.photoId !== photo.id),
    });
  };
  const keysId = `keys-${photo.id}`;
  return (
    <section className="flow" aria-label={`Photo ${at + 1}`}>
      {src ? (
        <PhotoStage
          photo={{ ...photo, src, sources: [] }}
          marks={marks}
          handles={own.map((spot, n) => ({
            id: spot.label,
            x: spot.x,
            y: spot.y,
            name: markName({ number: n + 1, spot: spot.label }, undefined),
          }))}
          keysId={keysId}
          onPlace={mark}
          onMove={move}
          onSettle={() => undefined}
          onDelete={takeOff}
        >
          <p id={keysId} className="small soft">
            {photoWords.tap} {photoWords.keys}
          </p>
        </PhotoStage>
      ) : (
        <p>Reading the photo …</p>
      )}
      <Button onClick={() => mark({ x: 0.5, y: 0.5 })}>
        Mark a spot in the middle<span className="visually-hidden"> of photo {at + 1}</span>
      </Button>
      {own.length > 0 ? (
        <ul>
          {own.map((spot, n) => (
            <li key={spot.label}>
              {markName({ number: n + 1, spot: spot.label }, undefined)}{" "}
              <Button kind="quiet" onClick={() => takeOff(spot.label)}>
                Take off<span className="visually-hidden"> spot {spot.label}</span>
              </Button>
            </li>
          ))}
        </ul>
      ) : null}
      <TextField
        id={`alt-${photo.id}`}
        name={`alt-${photo.id}`}
        label={`What photo ${at + 1} shows`}
        hint="For whoever cannot see it; at least 8 characters, or later on the item’s page"
        optional
        value={photo.alt}
        maxLength={300}
        onChange={(event) => setAlt(event.currentTarget.value)}
      />
      <Button kind="quiet" onClick={drop}>
        Take photo {at + 1} off this sheet
      </Button>
    </section>
  );
}

/** An address for the bytes of a photo on this phone, while it is shown. */
function useBlobUrl(id: string): string | null {
  const [url, setUrl] = useState<string | null>(null);
  useEffect(() => {
    let made: string | null = null;
    let gone = false;
    void photoBlob(id).then((blob) => {
      if (!blob || gone) return;
      made = URL.createObjectURL(blob);
      setUrl(made);
    });
    return () => {
      gone = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [id]);
  return url;
}
