"use client";

import { useCallback, useEffect, useState } from "react";
import { emptyOutbox, onSent } from "./outbox.ts";
import type { TableSheet } from "./sheet.ts";
import { sheetsOf } from "./sheet-store.ts";

/** Milliseconds between tries while something waits; a connection that comes back is noticed at once besides. */
const again = 30_000;

/**
 * The person's sheets on this phone, kept up with every tab, and the way to send what was handed in: by itself when the page opens, when
 * the connection or the person comes back, every half minute while something waits, and by hand. Null until the phone has been asked.
 */
export function useOutbox(personId: string): {
  sheets: TableSheet[] | null;
  broken: boolean;
  send: () => Promise<void>;
  look: () => Promise<void>;
} {
  const [sheets, setSheets] = useState<TableSheet[] | null>(null);
  const [broken, setBroken] = useState(false);
  const look = useCallback(async () => {
    try {
      setSheets(await sheetsOf(personId));
    } catch {
      setBroken(true);
    }
  }, [personId]);
  const send = useCallback(async () => {
    await emptyOutbox(personId).catch(() => setBroken(true));
    await look();
  }, [personId, look]);
  useEffect(() => {
    const wake = () => void send();
    const back = () => document.visibilityState === "visible" && wake();
    wake();
    window.addEventListener("online", wake);
    document.addEventListener("visibilitychange", back);
    const stop = onSent(() => void look());
    return () => {
      window.removeEventListener("online", wake);
      document.removeEventListener("visibilitychange", back);
      stop();
    };
  }, [send, look]);
  const waiting = sheets?.some((sheet) => sheet.state === "waiting") ?? false;
  useEffect(() => {
    if (!waiting) return;
    const timer = setInterval(() => void send(), again);
    return () => clearInterval(timer);
  }, [waiting, send]);
  return { sheets, broken, send, look };
}
