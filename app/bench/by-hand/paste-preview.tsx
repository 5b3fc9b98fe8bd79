"use client";

import { useEffect, useRef, useState } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { Checkbox } from "@/app/_components/choice-field.tsx";
import type { HandColumn, HandRow } from "@/lib/readings/hand-entry.ts";
import { counted, listed } from "@/lib/wording/formats.ts";
import styles from "./hand-sheet.module.css";
import { landingOf, type Paste } from "./sheet.ts";

const shown = 6;

/** A paste before it lands: how much it is, where it goes, what it would replace. Nothing has changed yet. */
export function PastePreview({
  paste,
  rows,
  columns,
  headOf,
  onPut,
  onLeave,
}: {
  paste: Paste;
  rows: readonly HandRow[];
  columns: readonly HandColumn[];
  headOf: (column: HandColumn) => string;
  onPut: (skipFirst: boolean) => void;
  onLeave: () => void;
}) {
  const [skipFirst, setSkipFirst] = useState(paste.looksHeaded);
  const box = useRef<HTMLElement>(null);
  useEffect(() => box.current?.focus(), []);
  const landing = landingOf(paste, rows, columns, skipFirst);
  const body = skipFirst ? paste.cells.slice(1) : paste.cells;
  const [first, last] = landing.lines;
  return (
    <section
      ref={box}
      tabIndex={-1}
      className={styles.paste}
      aria-labelledby="paste-title"
      onKeyDown={(event) => event.key === "Escape" && onLeave()}
    >
      <h2 id="paste-title">Before it goes in</h2>
      <p>
        {counted(landing.rows, "row")} and {counted(landing.columns.length, "column")} go to{" "}
        {first === last ? `row ${first}` : `rows ${first} to ${last}`}:{" "}
        {listed(landing.columns.map(headOf)) || "no column"}.
        {landing.leftOut > 0
          ? ` ${counted(landing.leftOut, "column has", "columns have")} no place and would be left out.`
          : ""}
        {landing.replaced > 0
          ? ` ${counted(landing.replaced, "cell that holds something is", "cells that hold something are")} replaced.`
          : ""}
      </p>
      <section className={styles.scroll} aria-label="What was pasted">
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Row</th>
              {landing.columns.map((column) => (
                <th key={column.key} scope="col">
                  {headOf(column)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {body.slice(0, shown).map((cells, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a fixed list
              <tr key={index}>
                <th scope="row">{first + index}</th>
                {landing.columns.map((column, at) => (
                  <td key={column.key} className={column.kind === "text" ? undefined : styles.figure}>
                    {cells[at]}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {body.length > shown ? <p className="small soft">and {counted(body.length - shown, "more row")}</p> : null}
      {paste.cells.length > 1 ? (
        <Checkbox
          name="skipFirst"
          label="The first row is a heading: leave it out"
          checked={skipFirst}
          onChange={(event) => setSkipFirst(event.currentTarget.checked)}
        />
      ) : null}
      <Actions>
        <Button kind="primary" disabled={landing.rows === 0} onClick={() => onPut(skipFirst)}>
          Put it in
        </Button>
        <Button onClick={onLeave}>Leave it</Button>
      </Actions>
    </section>
  );
}
