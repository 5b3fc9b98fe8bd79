"use client";

import { useId, useRef, useState } from "react";
import type { Language } from "@/lib/wording/language.ts";
import { scanWordsIn } from "@/lib/wording/scan.ts";
import { Actions, Button } from "./button.tsx";
import dialogStyles from "./confirm-dialog.module.css";
import styles from "./scan-button.module.css";
import { useScripted } from "./use-scripted.ts";

/** Milliseconds after which a hint says what else can be done. */
const patience = 12_000;

/**
 * Reads a bar code with the camera, writes it into the field and sends the field's form. Shown where there are scripts and a
 * camera may be asked for; what reads the code is fetched when the button is pressed.
 */
export function ScanButton({ field, language = "en" }: { field: string; language?: Language }) {
  const scanWords = scanWordsIn[language];
  const scripted = useScripted();
  const dialog = useRef<HTMLDialogElement>(null);
  const video = useRef<HTMLVideoElement>(null);
  const stop = useRef<AbortController>(null);
  const titleId = useId();
  const [said, setSaid] = useState<string>(scanWords.starting);
  if (!scripted || !navigator.mediaDevices?.getUserMedia) return null;

  async function scan() {
    if (!dialog.current || !video.current) return;
    dialog.current.showModal();
    setSaid(scanWords.starting);
    const ours = new AbortController();
    stop.current = ours;
    const slow = setTimeout(() => setSaid(scanWords.slow), patience);
    try {
      const { scanCode } = await import("./scan-code.ts");
      video.current.onplaying = () => setSaid(scanWords.looking);
      const code = await scanCode(video.current, ours.signal);
      if (code === null) return;
      setSaid(scanWords.found(code));
      const input = document.getElementById(field) as HTMLInputElement;
      input.value = code;
      input.form?.requestSubmit();
    } catch (error) {
      const name = error instanceof DOMException ? error.name : "";
      setSaid(
        name === "NotAllowedError"
          ? scanWords.refused
          : name === "NotFoundError"
            ? scanWords.noCamera
            : scanWords.trouble,
      );
    } finally {
      clearTimeout(slow);
    }
  }

  return (
    <>
      <Button aria-haspopup="dialog" onClick={scan}>
        {scanWords.open}
      </Button>
      <dialog
        ref={dialog}
        className={dialogStyles.dialog}
        aria-labelledby={titleId}
        onClose={() => stop.current?.abort()}
      >
        <h2 id={titleId} className={dialogStyles.title}>
          {scanWords.title}
        </h2>
        <div className="flow">
          <video ref={video} className={styles.video} playsInline muted aria-label={scanWords.picture} />
          <p role="status">
            <strong>{said}</strong>
          </p>
          <p className="small">{scanWords.hint}</p>
        </div>
        <Actions>
          <Button onClick={() => dialog.current?.close()}>{scanWords.close}</Button>
        </Actions>
      </dialog>
    </>
  );
}
