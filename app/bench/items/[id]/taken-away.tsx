"use client";

import { createContext, type ReactNode, useContext, useState, useTransition } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { UndoNotice } from "@/app/_components/undo-notice.tsx";
import type { Removed } from "@/lib/store/removed.ts";
import { move, putBack, takeAway } from "./actions.ts";

type Kind = "object" | "part";
type Work = {
  pending: boolean;
  take: (kind: Kind, id: string, name: string) => void;
  shift: (kind: Kind, id: string, by: "up" | "down") => void;
};
const WorkContext = createContext<Work | null>(null);

/** Around the objects of an item: what was taken away last can be put back from here, its own place being gone. */
export function TakenAway({ itemId, children }: { itemId: string; children: ReactNode }) {
  const [errors, setErrors] = useState<string[]>([]);
  const [last, setLast] = useState<{ name: string; readings: number; removed: Removed } | null>(null);
  const [pending, start] = useTransition();
  const take = (kind: Kind, id: string, name: string) =>
    start(async () => {
      const reply = await takeAway(itemId, kind, id);
      setErrors(reply.problems);
      if (reply.removed) setLast({ name, readings: reply.removed.assignments.length, removed: reply.removed });
    });
  const shift = (kind: Kind, id: string, by: "up" | "down") =>
    start(async () => setErrors((await move(itemId, kind, id, by)).problems));
  const undo = () =>
    start(async () => {
      if (!last) return;
      const reply = await putBack(itemId, last.removed);
      setErrors(reply.problems);
      setLast(null);
    });
  return (
    <WorkContext value={{ pending, take, shift }}>
      <ErrorSummary errors={errors.map((text) => ({ text }))} />
      <UndoNotice pending={pending} onUndo={undo} onDismiss={() => setLast(null)} undoText="Put it back">
        {last
          ? `“${last.name}” is taken away${last.readings > 0 ? `; its ${last.readings} readings wait among the unassigned ones` : ""}.`
          : null}
      </UndoNotice>
      {children}
    </WorkContext>
  );
}

/** Moves an object or a part among its kind, or takes it away. */
export function Handling({ kind, id, name, at, of }: { kind: Kind; id: string; name: string; at: number; of: number }) {
  const work = useContext(WorkContext);
  if (!work) return null;
  return (
    <Actions>
      {at > 0 ? (
        <Button disabled={work.pending} onClick={() => work.shift(kind, id, "up")}>
          Move “{name}” up
        </Button>
      ) : null}
      {at < of - 1 ? (
        <Button disabled={work.pending} onClick={() => work.shift(kind, id, "down")}>
          Move “{name}” down
        </Button>
      ) : null}
      <Button kind="quiet" disabled={work.pending} onClick={() => work.take(kind, id, name)}>
        Take “{name}” away
      </Button>
    </Actions>
  );
}
