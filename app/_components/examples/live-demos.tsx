"use client";

import { useState } from "react";
import { Button } from "../button.tsx";
import { ConfirmDialog } from "../confirm-dialog.tsx";
import { SelectableTable } from "../selectable-table.tsx";
import { UndoNotice } from "../undo-notice.tsx";

const readings = [
  { id: "r1", number: 1, sample: "mug, inside", spot: "A", lead: 412 },
  { id: "r2", number: 2, sample: "mug, inside", spot: "B", lead: 398 },
  { id: "r3", number: 3, sample: "mug, outside", spot: "A", lead: 18 },
  { id: "r4", number: 4, sample: "handle", spot: "A", lead: null },
  { id: "r5", number: 5, sample: "handle", spot: "B", lead: 22 },
];

/** Rows to tick and sort, some of them ticked from the start. */
export function TickedRows({ start = [], none = false }: { start?: string[]; none?: boolean }) {
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set(start));
  return (
    <SelectableTable
      caption={none ? "No readings to tick" : "Readings to tick"}
      rows={none ? [] : readings}
      rowKey={(r) => r.id}
      rowLabel={(r) => `Reading ${r.number}, ${r.sample}, ${r.spot}`}
      ticked={ticked}
      onTicked={setTicked}
      columns={[
        { key: "number", head: "No.", numeric: true, cell: (r) => r.number, sortBy: (r) => r.number },
        { key: "sample", head: "Sample", rowHeader: true, cell: (r) => r.sample, sortBy: (r) => r.sample },
        { key: "spot", head: "Spot", cell: (r) => r.spot },
        {
          key: "lead",
          head: "Lead (ppm)",
          numeric: true,
          cell: (r) => r.lead ?? "below 5",
          sortBy: (r) => r.lead,
        },
      ]}
    />
  );
}

/** A thing that can be done and undone. */
export function DoneAndUndone() {
  const [done, setDone] = useState(true);
  return (
    <>
      <UndoNotice onUndo={() => setDone(false)} onDismiss={() => setDone(false)}>
        {done ? "3 readings are now on “glaze, inside”." : null}
      </UndoNotice>
      {done ? null : <Button onClick={() => setDone(true)}>Put them there again</Button>}
    </>
  );
}

/** A thing that cannot be undone, and is asked about. */
export function AskedTwice() {
  const [gone, setGone] = useState(false);
  return (
    <>
      <ConfirmDialog
        ask="Take this part away"
        askKind="secondary"
        title="Take “handle rivet” away?"
        confirm="Take it away"
        onConfirm={() => setGone(true)}
      >
        <p>It has no readings. Its name, material and form are forgotten.</p>
      </ConfirmDialog>
      <p role="status">{gone ? "“handle rivet” is gone." : ""}</p>
    </>
  );
}
