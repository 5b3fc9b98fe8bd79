"use client";

import { useState, useTransition } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { Fieldset } from "@/app/_components/choice-field.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { NumberField } from "@/app/_components/field.tsx";
import { UndoNotice } from "@/app/_components/undo-notice.tsx";
import { PhotoStage } from "@/app/_photos/photo-stage.tsx";
import type { Place } from "@/app/_photos/spot-moves.ts";
import type { PhotoScale } from "@/lib/publication/photo-scale.ts";
import { lengthTyped, photoWords, placeText } from "@/lib/wording/photos.ts";
import { markScale } from "../actions.ts";
import { PlaceField } from "./place-field.tsx";
import type { BoardPhoto } from "./spot-board.tsx";

type Ends = { a: Place; b: Place };
const fresh: Ends = { a: { x: 0.25, y: 0.9 }, b: { x: 0.75, y: 0.9 } };
const endsOf = (scale: PhotoScale | null): Ends =>
  scale ? { a: { x: scale.x1, y: scale.y1 }, b: { x: scale.x2, y: scale.y2 } } : fresh;

/** The known length: both its ends on the photo, by pointer, keys or numbers, and how long it is. */
export function ScaleBoard({ itemId, photo }: { itemId: string; photo: BoardPhoto }) {
  const [open, setOpen] = useState(false);
  const [ends, setEnds] = useState<Ends>(() => endsOf(photo.scale));
  const [text, setText] = useState(photo.scale ? String(photo.scale.lengthMm) : "");
  const [wrong, setWrong] = useState<string[]>([]);
  const [undo, setUndo] = useState<{ text: string; before: PhotoScale | null } | null>(null);
  const [pending, start] = useTransition();
  const lengthMm = lengthTyped(text);
  const keep = (scale: PhotoScale | null, done: string | null) =>
    start(async () => {
      const { problems, value } = await markScale(itemId, photo.id, scale);
      setWrong(problems);
      if (problems.length > 0) return;
      setUndo(done ? { text: done, before: value?.before ?? null } : null);
      setOpen(false);
    });
  const save = () => {
    if (lengthMm === null) return setWrong(["Give the length between the ends, in mm: a number such as 50."]);
    const { a, b } = ends;
    keep({ x1: a.x, y1: a.y, x2: b.x, y2: b.y, lengthMm }, `The known length is marked: ${text} mm.`);
  };
  const moveEnd = (id: string, to: Place) => setEnds((before) => ({ ...before, [id]: to }));
  return (
    <>
      <p>{photo.scale ? `Marked: ${photo.scale.lengthMm} mm.` : photoWords.scaleAbout}</p>
      <UndoNotice pending={pending} onUndo={() => undo && keep(undo.before, null)} onDismiss={() => setUndo(null)}>
        {undo?.text ?? null}
      </UndoNotice>
      {open ? (
        <>
          <ErrorSummary errors={wrong.map((each) => ({ field: "scale-length", text: each }))} />
          <PhotoStage
            photo={photo}
            marks={[]}
            line={[ends.a, ends.b]}
            handles={(["a", "b"] as const).map((end) => ({
              id: end,
              square: true,
              name: `${end === "a" ? "One end" : "Other end"} of the known length: ${placeText(ends[end].x, ends[end].y)}`,
              ...ends[end],
            }))}
            keysId="scale-keys"
            onMove={moveEnd}
            onSettle={() => undefined}
          >
            <p id="scale-keys" className="small soft">
              Drag both ends onto the ends of something you know the length of. Arrow keys move an end a little, Shift
              and an arrow key ten times as far.
            </p>
          </PhotoStage>
          {(["a", "b"] as const).map((end) => (
            <Fieldset key={end} legend={end === "a" ? "One end" : "Other end"}>
              {(["x", "y"] as const).map((axis) => (
                <div key={axis}>
                  {axis === "x" ? "From the left, %" : "From the top, %"}
                  <PlaceField
                    id={`scale-${end}-${axis}`}
                    label={`${end === "a" ? "One end" : "Other end"} ${axis === "x" ? "from the left" : "from the top"}, in %`}
                    share={ends[end][axis]}
                    onShare={(share) => moveEnd(end, { ...ends[end], [axis]: share })}
                  />
                </div>
              ))}
            </Fieldset>
          ))}
          <NumberField
            id="scale-length"
            name="scale-length"
            label="Length between the ends"
            unit="mm"
            value={text}
            onChange={(event) => setText(event.currentTarget.value)}
          />
          <Actions>
            <Button kind="primary" disabled={pending} onClick={save}>
              Save the known length
            </Button>
            <Button kind="quiet" onClick={() => setOpen(false)}>
              Leave it as it was
            </Button>
          </Actions>
        </>
      ) : (
        <Actions>
          <Button
            onClick={() => {
              setEnds(endsOf(photo.scale));
              setWrong([]);
              setOpen(true);
            }}
          >
            {photo.scale ? "Mark it anew" : "Mark a known length"}
          </Button>
          {photo.scale ? (
            <Button kind="quiet" disabled={pending} onClick={() => keep(null, "The known length is taken off.")}>
              Take it off
            </Button>
          ) : null}
        </Actions>
      )}
    </>
  );
}
