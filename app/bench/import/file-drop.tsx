"use client";

import { useRef, useState } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { FileField } from "@/app/_components/field.tsx";
import styles from "./file-drop.module.css";

type Reply = { next?: string; problems?: string[] };
type Sending = { name: string; share: number };

/** Drop a file or pick one; its progress is shown while it goes up. Without scripts it is a plain form. */
export function FileDrop({ action, problem }: { action: string; problem?: string | undefined }) {
  const [errors, setErrors] = useState<string[]>(problem ? [problem] : []);
  const [sending, setSending] = useState<Sending | null>(null);
  const [over, setOver] = useState(false);
  const form = useRef<HTMLFormElement>(null);

  const send = (file: File | null | undefined) => {
    if (!file) return setErrors(["Choose a file first."]);
    setErrors([]);
    setSending({ name: file.name, share: 0 });
    const data = new FormData();
    data.set("file", file);
    // fetch tells nothing of what has gone up; XMLHttpRequest does.
    const request = new XMLHttpRequest();
    request.open("POST", action);
    request.setRequestHeader("accept", "application/json");
    request.upload.onprogress = (event) =>
      event.lengthComputable && setSending({ name: file.name, share: event.loaded / event.total });
    request.onerror = () => {
      setSending(null);
      setErrors([`${file.name} did not arrive: the connection broke. Nothing was kept; send it again.`]);
    };
    request.onload = () => {
      setSending(null);
      const reply = readReply(request.responseText);
      if (reply.next) window.location.assign(reply.next);
      else
        setErrors(
          reply.problems ?? [`${file.name} was not taken (answer ${request.status}). Nothing was kept; try again.`],
        );
    };
    request.send(data);
  };

  const percent = sending ? Math.round(sending.share * 100) : 0;
  return (
    <>
      <ErrorSummary errors={errors.map((text) => ({ field: "file", text }))} title="The file was not taken" />
      <form
        ref={form}
        action={action}
        method="post"
        encType="multipart/form-data"
        className={`${styles.drop} ${over ? styles.over : ""}`}
        onSubmit={(event) => {
          event.preventDefault();
          send(form.current?.querySelector<HTMLInputElement>("input[type=file]")?.files?.[0]);
        }}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          send(event.dataTransfer.files[0]);
        }}
      >
        <FileField
          name="file"
          label="The analyser’s file"
          hint="Text with columns: CSV, TSV or semicolons, up to 50 MB. Drop it here or choose it."
          accept=".csv,.tsv,.txt,.dat,text/*"
          required
        />
        <Actions>
          <Button type="submit" kind="primary" disabled={sending !== null}>
            Read the file
          </Button>
        </Actions>
        <div role="status" className={styles.status}>
          {sending ? (
            <>
              <progress max={100} value={percent} aria-label={`Sending ${sending.name}`} /> {sending.name}: {percent} %
              sent
            </>
          ) : null}
        </div>
      </form>
    </>
  );
}

function readReply(text: string): Reply {
  try {
    return JSON.parse(text) as Reply;
  } catch {
    return {};
  }
}
