"use client";

import { useRouter } from "next/navigation";
import {
  type ClipboardEvent,
  type KeyboardEvent,
  useCallback,
  useEffect,
  useMemo,
  useRef,
  useState,
  useTransition,
} from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { elementsIn, type HandColumn, type HandRow, handColumns, handHeader } from "@/lib/readings/hand-entry.ts";
import { pastedCells } from "@/lib/readings/pasted-grid.ts";
import { counted } from "@/lib/wording/formats.ts";
import { type SheetTrouble, saveSheet } from "./actions.ts";
import styles from "./hand-sheet.module.css";
import { PastePreview } from "./paste-preview.tsx";
import { blankRows, type Cell, countFilled, landPaste, moveFrom, type Paste, pasteAt, withCell } from "./sheet.ts";
import { type Asked, type AskedInstrument, SheetQuestions, settingsOf } from "./sheet-questions.tsx";
import { cellId, SheetRow } from "./sheet-row.tsx";

const startRows = 6;

/** Where in the sheet an element stands; null for anything that is no cell. */
function cellOf(target: EventTarget): Cell | null {
  const { row, column } = (target as HTMLElement).dataset ?? {};
  return row === undefined || column === undefined ? null : { row: Number(row), column: Number(column) };
}

const focusCell = (at: Cell): void => {
  const cell = document.getElementById(cellId(at.row, at.column)) as HTMLInputElement | null;
  cell?.focus();
  cell?.select();
};

/** Readings typed by hand, keyboard first. What is said once stands above; the sheet below grows as it is filled. */
export function HandSheet({
  today,
  zones,
  instruments,
}: {
  today: string;
  zones: string[];
  instruments: AskedInstrument[];
}) {
  const router = useRouter();
  const [asked, setAsked] = useState<Asked>({
    instrumentId: "",
    date: today,
    timeZone: "",
    unit: "ppm",
    quantity: "bulk-mass-fraction",
    k: "",
    decimal: "point",
    elements: "Pb, Cd",
    error: true,
    limit: false,
  });
  const [rows, setRows] = useState<HandRow[]>(() => blankRows(startRows));
  const [paste, setPaste] = useState<Paste | null>(null);
  const [troubles, setTroubles] = useState<SheetTrouble[]>([]);
  const [pending, start] = useTransition();
  const entered = useRef("");
  const wanted = useRef<Cell | null>(null);

  const { elements, error, limit } = asked;
  const settings = useMemo(() => settingsOf(asked), [asked]);
  const columns = useMemo(() => handColumns(elementsIn(elements).elements, { error, limit }), [elements, error, limit]);
  const headOf = useCallback((column: HandColumn) => handHeader(column, settings), [settings]);
  const heads = useMemo(() => columns.map(headOf), [columns, headOf]);
  const filled = countFilled(rows, columns);
  const onCell = useCallback(
    (row: number, key: string, text: string) => setRows((before) => withCell(before, row, key, text)),
    [],
  );

  // A cell on a row that was only just added can take the focus once it is drawn.
  useEffect(() => {
    if (wanted.current && rows.length > wanted.current.row) {
      focusCell(wanted.current);
      wanted.current = null;
    }
  }, [rows]);
  useEffect(() => {
    const warn = (event: BeforeUnloadEvent) => event.preventDefault();
    if (filled > 0 && !pending) window.addEventListener("beforeunload", warn);
    return () => window.removeEventListener("beforeunload", warn);
  }, [filled, pending]);

  const onKeyDown = (event: KeyboardEvent<HTMLTableElement>) => {
    const at = cellOf(event.target);
    if (!at || event.nativeEvent.isComposing) return;
    const column = columns[at.column];
    if (event.key === "Escape" && column) return onCell(at.row, column.key, entered.current);
    const to = moveFrom(at, event.key, event.shiftKey, rows.length);
    if (event.key === "Enter" || to) event.preventDefault();
    if (!to) return;
    if (to.row < rows.length) return focusCell(to);
    wanted.current = to;
    setRows((before) => [...before, {}]);
  };
  const onPaste = (event: ClipboardEvent<HTMLTableElement>) => {
    const at = cellOf(event.target);
    const text = event.clipboardData.getData("text/plain");
    // A single cell's text goes in as it does everywhere; only a table is shown first.
    if (!at || !/[\t\n]/.test(text.replace(/\r?\n$/, ""))) return;
    event.preventDefault();
    setPaste(pasteAt(pastedCells(text), at, columns));
  };
  const endPaste = (put: boolean, skipFirst = false) => {
    if (!paste) return;
    if (put) setRows((before) => landPaste(paste, before, columns, skipFirst));
    setPaste(null);
    setTimeout(() => focusCell(paste.at), 0);
  };
  const save = () =>
    start(async () => {
      const reply = await saveSheet({
        instrumentId: asked.instrumentId || null,
        settings,
        elements: elementsIn(elements).elements,
        show: { error, limit },
        rows,
      });
      if ("next" in reply) return router.push(reply.next);
      setTroubles(reply.troubles);
      setTimeout(() => document.getElementById("errors")?.focus(), 0);
    });

  const fieldOf = ({ line, column }: SheetTrouble): string | undefined => {
    const at = column === undefined ? 0 : heads.indexOf(column);
    return line === undefined ? undefined : cellId(line - 1, Math.max(0, at));
  };
  const wrongIn = (index: number): string =>
    troubles
      .filter((t) => t.line === index + 1)
      .map((t) => t.column ?? "")
      .join("\n");

  return (
    <>
      <ErrorSummary errors={troubles.map((t) => ({ field: fieldOf(t), text: t.text }))} />
      <SheetQuestions asked={asked} onAsked={setAsked} zones={zones} instruments={instruments} />
      <p className={`small soft ${styles.keys}`} id="sheet-keys">
        Enter goes down, Shift and Enter up, Tab across, Escape takes back what you typed in a cell. Paste a table from
        a spreadsheet into its first cell. Write &lt;12 for “not detected, below 12”; leave a cell blank where nothing
        was measured. ND and a bare 0 count as not detected and need a limit; “-” and “n/a” as not measured.
      </p>
      {paste ? (
        <PastePreview
          paste={paste}
          rows={rows}
          columns={columns}
          headOf={headOf}
          onPut={(skipFirst) => endPaste(true, skipFirst)}
          onLeave={() => endPaste(false)}
        />
      ) : null}
      <section className={styles.scroll} aria-label="Readings" aria-describedby="sheet-keys">
        <table
          className={styles.table}
          onKeyDown={onKeyDown}
          onPaste={onPaste}
          onFocus={(event) => {
            const target: EventTarget = event.target;
            if (target instanceof HTMLInputElement) entered.current = target.value;
          }}
        >
          <thead>
            <tr>
              <th scope="col">Row</th>
              {columns.map((column, at) => (
                <th key={column.key} scope="col">
                  {heads[at]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              <SheetRow
                // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place
                key={index}
                row={row}
                index={index}
                columns={columns}
                heads={heads}
                wrong={wrongIn(index)}
                onCell={onCell}
              />
            ))}
          </tbody>
        </table>
      </section>
      <Actions thumb>
        <Button kind="primary" disabled={pending || filled === 0} onClick={save}>
          {pending ? "Working …" : `Keep ${counted(filled, "reading")}`}
        </Button>
        <Button kind="quiet" onClick={() => setRows((before) => [...before, ...blankRows(5)])}>
          Five more rows
        </Button>
      </Actions>
    </>
  );
}
