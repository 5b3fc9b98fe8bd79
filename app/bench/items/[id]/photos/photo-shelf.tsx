"use client";

import { useState, useTransition } from "react";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { Actions, Button, ButtonLink } from "@/app/_components/button.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { TextField } from "@/app/_components/field.tsx";
import { UndoNotice } from "@/app/_components/undo-notice.tsx";
import { photoWords } from "@/lib/wording/photos.ts";
import { describePhoto, movePhoto, putPhotoBack, takePhotoAway } from "./actions.ts";
import styles from "./photo-shelf.module.css";

export type ShelfPhoto = {
  id: string;
  alt: string;
  src: string;
  width: number;
  height: number;
  spotsHref: string;
  spots: string;
  scale: boolean;
};

/** The photos in their order, each with its words and what can be done with it. */
export function PhotoShelf({
  itemId,
  photos,
  removed,
}: {
  itemId: string;
  photos: ShelfPhoto[];
  removed: ShelfPhoto[];
}) {
  const [taken, setTaken] = useState<ShelfPhoto | null>(null);
  const [wrong, setWrong] = useState("");
  const [pending, start] = useTransition();
  const run = (work: () => Promise<{ problems: string[] }>, after: () => void = () => undefined) =>
    start(async () => {
      const { problems } = await work();
      setWrong(problems.join(" "));
      if (problems.length === 0) after();
    });
  return (
    <>
      <UndoNotice
        pending={pending}
        onUndo={() =>
          taken &&
          run(
            () => putPhotoBack(itemId, taken.id),
            () => setTaken(null),
          )
        }
        onDismiss={() => setTaken(null)}
        undoText="Put it back"
      >
        {taken ? `The photo “${taken.alt || "without words"}” is taken away. Published pages keep it.` : null}
      </UndoNotice>
      {wrong ? <p role="alert">{wrong}</p> : null}
      {photos.length === 0 ? <p>{photoWords.none}</p> : null}
      <ol className={styles.shelf}>
        {photos.map((photo, at) => (
          <li key={photo.id} className={styles.photo}>
            <Picture photo={photo} />
            <div className="flow">
              <p className="small soft">
                Photo {at + 1}: {photo.spots}
                {photo.scale ? ", a known length marked" : ""}
              </p>
              <ActionForm
                action={describePhoto.bind(null, itemId, photo.id)}
                submit="Save the words"
                submitKind="secondary"
              >
                <TextField
                  id={`alt-${photo.id}`}
                  name="alt"
                  label="What it shows"
                  hint="For whoever cannot see it: “White mug from the side, red poppies under a red band”"
                  defaultValue={photo.alt}
                  minLength={8}
                  maxLength={300}
                  required
                />
              </ActionForm>
              <Actions>
                <ButtonLink href={photo.spotsHref}>
                  Spots and known length<span className="visually-hidden"> on photo {at + 1}</span>
                </ButtonLink>
                <Button
                  kind="quiet"
                  disabled={pending || at === 0}
                  onClick={() => run(() => movePhoto(itemId, photo.id, -1))}
                >
                  Earlier<span className="visually-hidden">: photo {at + 1}</span>
                </Button>
                <Button
                  kind="quiet"
                  disabled={pending || at === photos.length - 1}
                  onClick={() => run(() => movePhoto(itemId, photo.id, 1))}
                >
                  Later<span className="visually-hidden">: photo {at + 1}</span>
                </Button>
                <Button
                  kind="quiet"
                  disabled={pending}
                  onClick={() =>
                    run(
                      () => takePhotoAway(itemId, photo.id),
                      () => setTaken(photo),
                    )
                  }
                >
                  Take away<span className="visually-hidden">: photo {at + 1}</span>
                </Button>
              </Actions>
            </div>
          </li>
        ))}
      </ol>
      {removed.length > 0 ? (
        <Disclosure summary={`Taken away: ${removed.length}`}>
          <ul className={styles.shelf}>
            {removed.map((photo) => (
              <li key={photo.id} className={styles.photo}>
                <Picture photo={photo} />
                <div className="flow">
                  <p>{photo.alt || photoWords.noWords}</p>
                  <Button disabled={pending} onClick={() => run(() => putPhotoBack(itemId, photo.id))}>
                    Put it back
                  </Button>
                </div>
              </li>
            ))}
          </ul>
        </Disclosure>
      ) : null}
    </>
  );
}

function Picture({ photo }: { photo: ShelfPhoto }) {
  return (
    // biome-ignore lint/performance/noImgElement: photos are made to size and stripped when they are stored
    <img
      src={photo.src}
      alt={photo.alt || `A photo that ${photoWords.noWords}`}
      width={photo.width}
      height={photo.height}
      loading="lazy"
      decoding="async"
    />
  );
}
