"use client";

import { useState, useTransition } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { SelectField } from "@/app/_components/field.tsx";
import { UndoNotice } from "@/app/_components/undo-notice.tsx";
import { dealToSpots } from "@/lib/readings/in-order-of-time.ts";
import { dealSentence, photoWords } from "@/lib/wording/photos.ts";
import { joinSpots, unjoinSpots } from "../actions.ts";

export type JoinPart = {
  id: string;
  name: string;
  spots: { id: string; number: number; label: string }[];
  /** In order of time. */
  readings: {
    id: string;
    name: string;
    takenAt: string;
    written: string;
    spotId: string | null;
    spot: string | null;
    setAside: boolean;
  }[];
};

/** Which readings were shot on which spot: dealt in order of time, or one by one. */
export function JoinReadings({ itemId, parts }: { itemId: string; parts: JoinPart[] }) {
  const [undo, setUndo] = useState<{ text: string; before: unknown } | null>(null);
  const [wrong, setWrong] = useState("");
  const [pending, start] = useTransition();
  const join = (componentId: string, how: object) =>
    start(async () => {
      const { problems, value } = await joinSpots(itemId, { componentId, join: how });
      setWrong(problems.join(" "));
      if (value) setUndo({ text: photoWords.joined(value.before.length), before: value.before });
    });
  const shown = parts.filter((part) => part.spots.length > 0);
  return (
    <>
      <UndoNotice
        pending={pending}
        onUndo={() =>
          undo &&
          start(async () => {
            setWrong((await unjoinSpots(itemId, undo.before)).problems.join(" "));
            setUndo(null);
          })
        }
        onDismiss={() => setUndo(null)}
      >
        {undo?.text ?? null}
      </UndoNotice>
      {wrong ? <p role="alert">{wrong}</p> : null}
      {shown.length === 0 ? <p>Mark a spot first.</p> : null}
      {shown.map((part) => (
        <PartJoin key={part.id} part={part} pending={pending} onJoin={(how) => join(part.id, how)} />
      ))}
    </>
  );
}

function PartJoin({ part, pending, onJoin }: { part: JoinPart; pending: boolean; onJoin: (how: object) => void }) {
  const used = part.readings.filter((reading) => !reading.setAside);
  const dealt = dealToSpots(used, part.spots);
  const label = (spot: JoinPart["spots"][number]) => `${spot.number}: spot ${spot.label}`;
  return (
    <div className="flow">
      <h3>{part.name}</h3>
      <p>{dealSentence(used.length, part.spots.length)}</p>
      {dealt ? (
        <>
          <DataTable
            caption={`In order of time, on ${part.name}`}
            rows={dealt}
            rowKey={([spot]) => spot.id}
            columns={[
              { key: "spot", head: "Spot", cell: ([spot]) => label(spot) },
              { key: "readings", head: "Readings", cell: ([, readings]) => readings.map((r) => r.name).join(", ") },
            ]}
          />
          <Actions>
            <Button
              disabled={pending}
              onClick={() => onJoin({ how: "in-order", spotIds: part.spots.map((spot) => spot.id) })}
            >
              Join them in this order<span className="visually-hidden"> on {part.name}</span>
            </Button>
          </Actions>
        </>
      ) : null}
      {part.readings.length > 0 ? (
        <Disclosure summary={`One by one: ${part.name}`}>
          <DataTable
            caption={`Readings of ${part.name}`}
            rows={part.readings}
            rowKey={(reading) => reading.id}
            muted={(reading) => reading.setAside}
            columns={[
              { key: "name", head: "No.", rowHeader: true, cell: (r) => r.name },
              { key: "time", head: "Taken", nowrap: true, cell: (r) => r.takenAt },
              { key: "written", head: "As written", nowrap: true, cell: (r) => r.written },
              {
                key: "spot",
                head: "Spot",
                cell: (r) => (
                  <SelectField
                    id={`spot-of-${r.id}`}
                    name={`spot-of-${r.id}`}
                    label={`Spot of reading ${r.name}`}
                    hideLabel
                    disabled={pending}
                    value={
                      part.spots.some((spot) => spot.id === r.spotId) ? (r.spotId ?? "") : r.spot ? "elsewhere" : ""
                    }
                    onChange={(event) => {
                      const spotId = event.currentTarget.value || null;
                      onJoin({ how: "by-hand", pairs: [{ readingId: r.id, spotId }] });
                    }}
                    empty="no spot named"
                    choices={[
                      ...(r.spot && !part.spots.some((spot) => spot.id === r.spotId)
                        ? [{ value: "elsewhere", label: `${r.spot}, not on this photo`, disabled: true }]
                        : []),
                      ...part.spots.map((spot) => ({ value: spot.id, label: label(spot) })),
                    ]}
                  />
                ),
              },
            ]}
          />
        </Disclosure>
      ) : null}
    </div>
  );
}
