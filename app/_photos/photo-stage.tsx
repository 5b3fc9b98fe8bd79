"use client";

import { type PointerEvent, type ReactNode, useRef, useState } from "react";
import { PhotoImage, PhotoMarks } from "@/app/_components/photo-figure.tsx";
import { type Place, placeUnder, stepFrom } from "@/app/_photos/spot-moves.ts";
import type { PhotoMark } from "@/lib/publication/photo-marks.ts";
import styles from "./photo-stage.module.css";

/** Something on the photo that can be moved: a spot, or an end of the known length. */
export type Handle = Place & { id: string; name: string; square?: boolean };

/**
 * A photo on which marks are placed: a tap or click places one, a mark is dragged, or moved by arrow keys once it has the focus.
 * `onMove` is told every step, `onSettle` when the mark stands still.
 */
export function PhotoStage({
  photo,
  marks,
  handles,
  line,
  keysId,
  onPlace,
  onMove,
  onSettle,
  onDelete,
  children,
}: {
  photo: {
    src: string;
    sources: readonly { src: string; width: number }[];
    alt: string;
    width: number;
    height: number;
  };
  marks: readonly PhotoMark[];
  handles: readonly Handle[];
  /** A line between two places: the known length. */
  line?: [Place, Place] | null;
  /** The id of the sentence that says which keys do what. */
  keysId: string;
  onPlace?: ((at: Place) => void) | undefined;
  onMove: (id: string, to: Place) => void;
  onSettle: (id: string) => void;
  onDelete?: (id: string) => void;
  children?: ReactNode;
}) {
  const frame = useRef<HTMLDivElement>(null);
  const dragged = useRef<string | null>(null);
  const [held, setHeld] = useState<string | null>(null);
  const under = (event: PointerEvent): Place =>
    placeUnder(event, frame.current?.getBoundingClientRect() ?? { left: 0, top: 0, width: 1, height: 1 });
  return (
    <div className={styles.stage}>
      <div ref={frame} className={styles.frame}>
        <PhotoImage
          src={photo.src}
          sources={photo.sources}
          alt={photo.alt || "The photo; it has no words yet"}
          width={photo.width}
          height={photo.height}
          sizes="(min-width: 60rem) 56rem, 100vw"
          loading="eager"
        />
        {onPlace ? (
          // The keyboard has its own way: the button “Mark a spot in the middle”, then the arrow keys.
          // biome-ignore lint/a11y/noStaticElementInteractions: see above
          // biome-ignore lint/a11y/useKeyWithClickEvents: see above
          <div
            className={styles.sheet}
            onClick={(event) => onPlace(placeUnder(event, event.currentTarget.getBoundingClientRect()))}
          />
        ) : null}
        {line ? (
          <svg className={styles.line} viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
            {["under", "over"].map((which) => (
              <line
                key={which}
                className={styles[which]}
                x1={line[0].x * 100}
                y1={line[0].y * 100}
                x2={line[1].x * 100}
                y2={line[1].y * 100}
                vectorEffect="non-scaling-stroke"
              />
            ))}
          </svg>
        ) : null}
        <PhotoMarks marks={marks} width={photo.width} height={photo.height} />
        {handles.map((handle) => (
          <button
            key={handle.id}
            type="button"
            id={`mark-${handle.id}`}
            className={`${styles.handle} ${handle.square ? styles.square : ""} ${held === handle.id ? styles.held : ""}`}
            style={{ insetInlineStart: `${handle.x * 100}%`, insetBlockStart: `${handle.y * 100}%` }}
            aria-label={handle.name}
            aria-describedby={keysId}
            onPointerDown={(event) => {
              event.currentTarget.setPointerCapture(event.pointerId);
              dragged.current = handle.id;
              setHeld(handle.id);
            }}
            onPointerMove={(event) => dragged.current === handle.id && onMove(handle.id, under(event))}
            onPointerUp={() => {
              dragged.current = null;
              setHeld(null);
              onSettle(handle.id);
            }}
            onPointerCancel={() => {
              dragged.current = null;
              setHeld(null);
              onSettle(handle.id);
            }}
            onKeyDown={(event) => {
              const to = stepFrom(handle, event.key, event.shiftKey);
              if (to) {
                event.preventDefault();
                onMove(handle.id, to);
              }
              if (event.key === "Delete" && onDelete) onDelete(handle.id);
            }}
            onKeyUp={(event) => event.key.startsWith("Arrow") && onSettle(handle.id)}
          />
        ))}
      </div>
      {children}
    </div>
  );
}
