"use client";

import { type ReactNode, useEffect, useRef, useState } from "react";
import { dropWords } from "@/lib/wording/typed-words.ts";
import { Actions, Button } from "./button.tsx";
import { ErrorSummary } from "./error-summary.tsx";
import { FileField } from "./field.tsx";
import styles from "./file-drop.module.css";
import { FileList, type FileState } from "./file-list.tsx";
import { sendFile } from "./send-file.ts";
import { useScripted } from "./use-scripted.ts";

/**
 * Drop files or choose them; they go up one after the other, each with its own progress and its own answer. One file that is
 * taken leads straight on; of several, each has its link. Without scripts it is a plain form for one file. The route at
 * `action` answers `{ next }` or `{ problems }` to whoever accepts JSON.
 */
export function FileDrop({
  action,
  name = "file",
  label,
  hint,
  accept,
  submit,
  nextText,
  problem,
  camera,
  largest,
  onAllSent,
}: {
  action: string;
  name?: string;
  label: ReactNode;
  hint: ReactNode;
  accept: string;
  submit: string;
  /** The link of a file that was taken, where several were sent. */
  nextText: string;
  problem?: string | undefined;
  /** The label of a second field that opens a phone's camera; what is taken goes up at once. */
  camera?: string;
  /** Bytes a file may have: a larger one is not sent at all. The route holds the same limit. */
  largest?: number;
  /** What to do when all are through, in place of being led on. */
  onAllSent?: () => void;
}) {
  const scripted = useScripted();
  const [errors, setErrors] = useState<string[]>(problem ? [problem] : []);
  const [files, setFiles] = useState<FileState[]>([]);
  const [over, setOver] = useState(false);
  const busy = files.some((f) => f.state === "waiting" || f.state === "sending");
  const form = useRef<HTMLFormElement>(null);
  useMissedDrops();

  const send = async (chosen: File[]) => {
    if (busy) return;
    if (chosen.length === 0) return setErrors([dropWords.choose]);
    setErrors([]);
    const entries = chosen.map((file, at) => ({ file, id: `${at} ${file.name}` }));
    setFiles(entries.map(({ file, id }) => ({ id, name: file.name, state: "waiting" })));
    const become = (next: FileState) => setFiles((all) => all.map((f) => (f.id === next.id ? next : f)));
    for (const { file, id } of entries) {
      const base = { id, name: file.name };
      if (largest !== undefined && file.size > largest) {
        become({ ...base, state: "refused", problems: [dropWords.tooLarge(file.name, file.size, largest)] });
        continue;
      }
      become({ ...base, state: "sending", share: 0 });
      const sent = await sendFile(action, name, file, (share) => become({ ...base, state: "sending", share }));
      if (sent.ok && entries.length === 1 && !onAllSent) return window.location.assign(sent.next);
      if (sent.ok) become({ ...base, state: "taken", next: sent.next });
      else if (entries.length > 1 || onAllSent) become({ ...base, state: "refused", problems: sent.problems });
      else {
        setFiles([]);
        setErrors(sent.problems);
      }
    }
    if (!onAllSent) return;
    form.current?.reset();
    onAllSent();
  };

  return (
    <>
      <ErrorSummary errors={errors.map((text) => ({ field: name, text }))} title="The file was not taken" />
      <form
        ref={form}
        action={action}
        method="post"
        encType="multipart/form-data"
        className={`${styles.drop} ${over ? styles.over : ""}`}
        onSubmit={(event) => {
          event.preventDefault();
          void send([...(form.current?.querySelector<HTMLInputElement>("input[type=file]")?.files ?? [])]);
        }}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          void send([...event.dataTransfer.files]);
        }}
      >
        <FileField name={name} label={label} hint={hint} accept={accept} multiple={scripted} required />
        {camera && scripted ? (
          <FileField
            name={`${name}-camera`}
            label={camera}
            accept="image/*"
            capture="environment"
            disabled={busy}
            onChange={(event) => void send([...(event.currentTarget.files ?? [])])}
          />
        ) : null}
        <Actions>
          <Button type="submit" kind="primary" disabled={busy}>
            {submit}
          </Button>
        </Actions>
      </form>
      <FileList files={files} nextText={nextText} />
    </>
  );
}

/** A file dropped beside the box would otherwise replace the page, and with it all that was typed. */
function useMissedDrops(): void {
  useEffect(() => {
    const stop = (event: DragEvent) => event.preventDefault();
    window.addEventListener("dragover", stop);
    window.addEventListener("drop", stop);
    return () => {
      window.removeEventListener("dragover", stop);
      window.removeEventListener("drop", stop);
    };
  }, []);
}
