"use client";

import { useEffect, useRef, useState } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { ConfirmDialog } from "@/app/_components/confirm-dialog.tsx";
import { Entry, Ledger } from "@/app/_components/entry.tsx";
import type { AskedInstrument } from "@/app/bench/by-hand/sheet-questions.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { tableWords } from "@/lib/wording/table-sheets.ts";
import { filledReadings } from "../_offline/send-sheet.ts";
import { newSheet, type TableSheet } from "../_offline/sheet.ts";
import { dropSheet, keepSheet } from "../_offline/sheet-store.ts";
import { useOutbox } from "../_offline/use-outbox.ts";
import { SheetForm } from "./sheet-form.tsx";
import styles from "./table-book.module.css";

/** Milliseconds of quiet after which what was typed is kept. */
const quiet = 200;

/** The sheets on this phone, each with where it stands, and the one that is open. */
export function TableBook({
  personId,
  largestPhoto,
  zones,
  instruments,
}: {
  personId: string;
  largestPhoto: number;
  zones: string[];
  instruments: AskedInstrument[];
}) {
  const { sheets, broken, send, look } = useOutbox(personId);
  const [open, setOpen] = useState<TableSheet | null>(null);
  const [kept, setKept] = useState(true);
  const latest = useRef<TableSheet | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);

  const keepNow = async () => {
    clearTimeout(timer.current);
    if (!latest.current) return;
    const sheet = latest.current;
    latest.current = null;
    await keepSheet(sheet);
    setKept(latest.current === null);
  };
  const change = (next: TableSheet) => {
    const sheet = { ...next, changedAt: new Date().toISOString() };
    setOpen(sheet);
    setKept(false);
    latest.current = sheet;
    clearTimeout(timer.current);
    timer.current = setTimeout(() => void keepNow(), quiet);
  };
  // A page that goes away keeps what was typed in its last moment.
  useEffect(() => {
    const leave = () => latest.current && void keepSheet(latest.current);
    window.addEventListener("pagehide", leave);
    document.addEventListener("visibilitychange", leave);
    return () => {
      window.removeEventListener("pagehide", leave);
      document.removeEventListener("visibilitychange", leave);
    };
  }, []);
  const handIn = async (sheet: TableSheet) => {
    clearTimeout(timer.current);
    latest.current = null;
    await keepSheet({ ...sheet, state: "waiting", problems: [] });
    setOpen(null);
    await look();
    await send();
  };
  const close = async () => {
    await keepNow();
    setOpen(null);
    await look();
  };

  if (broken) return <p role="alert">{tableWords.cannotKeep}</p>;
  if (open)
    return (
      <SheetForm
        sheet={open}
        kept={kept}
        largestPhoto={largestPhoto}
        zones={zones}
        instruments={instruments}
        onChange={change}
        onHandIn={() => void handIn(open)}
        onClose={() => void close()}
      />
    );
  const waiting = sheets?.filter((sheet) => sheet.state === "waiting").length ?? 0;
  return (
    <Ledger>
      <Entry title="New sheet" id="new">
        <Actions>
          <Button
            kind="primary"
            onClick={() => {
              const sheet = newSheet(crypto.randomUUID(), personId, new Date());
              change(sheet);
            }}
          >
            Begin a sheet
          </Button>
        </Actions>
      </Entry>
      <Entry title="On this phone" id="sheets">
        <div role="status" className="flow">
          {waiting > 0 ? <p>{tableWords.waiting(waiting)}</p> : null}
        </div>
        {waiting > 0 ? (
          <Actions>
            <Button onClick={() => void send()}>{tableWords.sendNow}</Button>
          </Actions>
        ) : null}
        {sheets?.length === 0 ? <p>No sheet is on this phone.</p> : null}
        <ul className={styles.sheets}>
          {sheets?.map((sheet) => (
            <li key={sheet.id} className="flow">
              <h3>{tableWords.heading(sheet.item.name)}</h3>
              <p>{tableWords.states[sheet.state]}</p>
              <p className="small soft">
                {tableWords.contents(sheet.photos.length, sheet.spots.length, filledReadings(sheet.readings).length)}
              </p>
              {sheet.problems.length > 0 ? <p role="alert">{sheet.problems.join(" ")}</p> : null}
              <Actions>
                {sheet.state === "draft" ? <Button onClick={() => setOpen(sheet)}>Go on with it</Button> : null}
                {sheet.state === "sent" ? (
                  <>
                    <a href={paths.benchItem(sheet.done.itemId ?? "")}>Open the item</a>
                    <Button kind="quiet" onClick={() => void dropSheet(sheet).then(look)}>
                      Put this line away
                    </Button>
                  </>
                ) : (
                  <ConfirmDialog
                    ask="Throw it away"
                    title={`Throw “${tableWords.heading(sheet.item.name)}” away?`}
                    confirm="Throw it away"
                    onConfirm={() => void dropSheet(sheet).then(look)}
                  >
                    <p>It lies on this phone only. Its photos, spots and readings are gone then.</p>
                  </ConfirmDialog>
                )}
              </Actions>
            </li>
          ))}
        </ul>
      </Entry>
    </Ledger>
  );
}
