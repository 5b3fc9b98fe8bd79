"use client";

import { useEffect, useMemo, useRef, useState, useTransition } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Entry, Ledger } from "@/app/_components/entry.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { UndoNotice } from "@/app/_components/undo-notice.tsx";
import { PhotoStage } from "@/app/_photos/photo-stage.tsx";
import { nextLabel, type Place } from "@/app/_photos/spot-moves.ts";
import { type PhotoMark, photoMarks } from "@/lib/publication/photo-marks.ts";
import type { PhotoScale } from "@/lib/publication/photo-scale.ts";
import { markName, marksNote, photoWords } from "@/lib/wording/photos.ts";
import { markSpot, unmarkSpot } from "../actions.ts";
import { PlaceField } from "./place-field.tsx";
import { ScaleBoard } from "./scale-board.tsx";

export type BoardPhoto = {
  id: string;
  src: string;
  sources: { src: string; width: number }[];
  alt: string;
  width: number;
  height: number;
  scale: PhotoScale | null;
};
export type BoardSpot = Place & {
  id: string;
  componentId: string;
  label: string;
  readings: number;
  windowMm: number | null;
};

/** Spots on a photo: marked by a tap, moved by pointer, arrow keys or numbers. Each change is kept at once and can be undone. */
export function SpotBoard({
  itemId,
  photo,
  parts,
  spots: kept,
  unplaced,
  windows,
}: {
  itemId: string;
  photo: BoardPhoto;
  parts: { id: string; name: string }[];
  spots: BoardSpot[];
  /** Spots known from a file or from another time, without a place on any photo. */
  unplaced: { componentId: string; label: string; readings: number }[];
  /** Windows of the registry's analysers, mm. */
  windows: number[];
}) {
  const [moving, setMoving] = useState<ReadonlyMap<string, Place>>(new Map());
  const [partId, setPartId] = useState(parts[0]?.id ?? "");
  const [label, setLabel] = useState<string | null>(null);
  const [said, setSaid] = useState("");
  const [wrong, setWrong] = useState("");
  const [undo, setUndo] = useState<{ text: string; run: () => Promise<{ problems: string[] }> } | null>(null);
  const [pending, start] = useTransition();
  const focusOn = useRef<string | null>(null);
  const settling = useRef<ReturnType<typeof setTimeout>>(undefined);

  const spots = useMemo(() => kept.map((spot) => ({ ...spot, ...moving.get(spot.id) })), [kept, moving]);
  // Before any reading is on a spot nobody knows which analyser will shoot there; the widest window shows the most it can see.
  const [assumed, setAssumed] = useState<number | null>(windows.at(-1) ?? null);
  const drawn = spots.map((s) => ({
    spot: s.label,
    part: s.componentId,
    x: s.x,
    y: s.y,
    windowMm: s.windowMm ?? assumed,
  }));
  const marks = photoMarks({ ...photo, spots: drawn });
  const partName = (id: string) => parts.find((part) => part.id === id)?.name;
  const nameOf = (at: number) => {
    const mark = marks[at] as PhotoMark;
    return markName(mark, partName(mark.part));
  };
  const waiting = unplaced.filter((spot) => spot.componentId === partId).map((spot) => spot.label);
  const used = [...spots, ...unplaced].filter((s) => s.componentId === partId).map((s) => s.label);
  const next = label ?? nextLabel(waiting, used);

  // A spot that was just marked takes the focus, so that the arrow keys move it.
  useEffect(() => {
    const spot = kept.find((each) => each.id === focusOn.current);
    if (!spot) return;
    focusOn.current = null;
    document.getElementById(`mark-${spot.id}`)?.focus();
  }, [kept]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the server has taken over needs no copy here
  useEffect(() => setMoving(new Map()), [kept]);

  const mark = (at: Place) => {
    if (partId === "" || next.trim() === "") return setWrong("Choose a part, and give the spot a name.");
    start(async () => {
      const { problems, value } = await markSpot(itemId, photo.id, { componentId: partId, label: next, ...at });
      setWrong(problems.join(" "));
      const id = value?.[0];
      if (!id) return;
      focusOn.current = id;
      setLabel(null);
      setUndo({ text: `Spot ${next} is marked.`, run: () => unmarkSpot(itemId, id) });
    });
  };
  const move = (id: string, to: Place) => {
    setMoving((before) => new Map(before).set(id, to));
    const at = spots.findIndex((spot) => spot.id === id);
    if (at >= 0) setSaid(photoWords.moved(nameOf(at), to.x, to.y));
  };
  const settle = (id: string, to = moving.get(id)) => {
    const spot = kept.find((each) => each.id === id);
    clearTimeout(settling.current);
    if (!spot || !to || (to.x === spot.x && to.y === spot.y)) return;
    // Held keys come in bursts; only where they end is kept.
    settling.current = setTimeout(() => {
      const { componentId, label: name, x, y } = spot;
      start(async () => {
        const { problems } = await markSpot(itemId, photo.id, { componentId, label: name, ...to });
        setWrong(problems.join(" "));
        if (problems.length > 0) return setMoving(new Map());
        const back = { componentId, label: name, x, y };
        setUndo({ text: `Spot ${name} is moved.`, run: () => markSpot(itemId, photo.id, back) });
      });
    }, 400);
  };
  const takeOff = (id: string) =>
    start(async () => {
      const { problems, value } = await unmarkSpot(itemId, id);
      setWrong(problems.join(" "));
      if (!value?.place) return;
      const { componentId, label: name, place } = value;
      const back = { componentId, label: name, x: place.x, y: place.y };
      setUndo({ text: `Spot ${name} is off the photo.`, run: () => markSpot(itemId, photo.id, back) });
    });
  const note = marksNote(
    marks,
    drawn.map((spot) => spot.windowMm),
  );

  return (
    <Ledger>
      <Entry title="Mark the spots" id="spots">
        {parts.length === 0 ? (
          <p>A spot is on a part. Name a part of the object first, on the item’s page.</p>
        ) : (
          <>
            <p>{photoWords.tap}</p>
            <SelectField
              name="spot-part"
              label="Spots are on the part"
              value={partId}
              onChange={(event) => {
                setPartId(event.currentTarget.value);
                setLabel(null);
              }}
              choices={parts.map(({ id, name }) => ({ value: id, label: name }))}
            />
            <TextField
              name="spot-name"
              label="Name of the next spot"
              hint={waiting.length > 0 ? `In the file, and without a place yet: ${waiting.join(", ")}` : undefined}
              value={next}
              maxLength={60}
              width={14}
              onChange={(event) => setLabel(event.currentTarget.value)}
            />
          </>
        )}
        <UndoNotice
          pending={pending}
          onUndo={() =>
            undo &&
            start(async () => {
              const { problems } = await undo.run();
              setWrong(problems.join(" "));
              setUndo(null);
            })
          }
          onDismiss={() => setUndo(null)}
        >
          {undo?.text ?? null}
        </UndoNotice>
        {wrong ? <p role="alert">{wrong}</p> : null}
        <PhotoStage
          photo={photo}
          marks={marks}
          handles={spots.map((spot, at) => ({ id: spot.id, x: spot.x, y: spot.y, name: nameOf(at) }))}
          keysId="spot-keys"
          onPlace={parts.length > 0 ? mark : undefined}
          onMove={move}
          onSettle={settle}
          onDelete={takeOff}
        >
          <p id="spot-keys" className="small soft">
            {photoWords.keys}
          </p>
          <p role="status" className="small">
            {said}
          </p>
        </PhotoStage>
        {note ? <p className="small soft">{note}</p> : null}
        {windows.length > 1 && photo.scale && spots.some((spot) => spot.windowMm === null) ? (
          <SelectField
            name="spot-window"
            label="Window, for spots without readings yet"
            value={String(assumed)}
            onChange={(event) => setAssumed(Number(event.currentTarget.value))}
            choices={windows.map((mm) => ({ value: String(mm), label: `${mm} mm across` }))}
          />
        ) : null}
        {parts.length > 0 ? (
          <Actions>
            <Button disabled={pending} onClick={() => mark({ x: 0.5, y: 0.5 })}>
              Mark a spot in the middle
            </Button>
          </Actions>
        ) : null}
        {spots.length > 0 ? (
          <DataTable
            caption="Spots on this photo"
            rows={spots}
            rowKey={(spot) => spot.id}
            columns={[
              { key: "spot", head: "Spot", rowHeader: true, cell: (_, at) => nameOf(at) },
              ...(["x", "y"] as const).map((axis) => ({
                key: axis,
                head: axis === "x" ? "From the left, %" : "From the top, %",
                numeric: true,
                cell: (spot: BoardSpot) => (
                  <PlaceField
                    id={`${spot.id}-${axis}`}
                    label={`Spot ${spot.label} ${axis === "x" ? "from the left" : "from the top"}, in %`}
                    share={spot[axis]}
                    onShare={(share) => {
                      const to = { x: spot.x, y: spot.y, [axis]: share };
                      move(spot.id, to);
                      settle(spot.id, to);
                    }}
                  />
                ),
              })),
              { key: "readings", head: "Readings", numeric: true, cell: (spot) => spot.readings },
              {
                key: "off",
                head: "Take off",
                cell: (spot) => (
                  <Button kind="quiet" disabled={pending} onClick={() => takeOff(spot.id)}>
                    Take off<span className="visually-hidden"> spot {spot.label}</span>
                  </Button>
                ),
              },
            ]}
          />
        ) : null}
      </Entry>
      <Entry title="A known length" id="scale">
        <ScaleBoard itemId={itemId} photo={photo} />
      </Entry>
    </Ledger>
  );
}
