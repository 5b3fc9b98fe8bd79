"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useEffect, useRef, useState } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";

type Line = { step?: "reading" | "writing"; done?: number; total?: number; next?: string; problems?: string[] };

/** The mapping form. While rows are read and written it shows how far; without scripts it is a plain form. */
export function LoadForm({
  action,
  problem,
  children,
}: {
  action: string;
  problem?: string | undefined;
  children: ReactNode;
}) {
  const router = useRouter();
  const form = useRef<HTMLFormElement>(null);
  const [errors, setErrors] = useState<string[]>(problem ? [problem] : []);
  const [progress, setProgress] = useState<Line | null>(null);

  useEffect(() => {
    if (errors.length > 0) form.current?.querySelector<HTMLElement>("#errors")?.focus();
  }, [errors]);

  const send = async (data: FormData) => {
    setErrors([]);
    setProgress({ step: "reading", done: 0, total: 0 });
    try {
      const response = await fetch(action, { method: "POST", body: data, headers: { accept: "application/x-ndjson" } });
      for await (const line of linesOf(response)) {
        if (line.problems) setErrors(line.problems);
        else if (line.next) {
          if (data.get("intent") === "look") router.refresh();
          else window.location.assign(line.next);
        } else setProgress(line);
      }
    } catch {
      setErrors([
        "The connection broke before an answer came. Look at the list of files on the bench: the import happened whole, or not at all.",
      ]);
    }
    setProgress(null);
    router.refresh();
  };

  const percent = progress?.total ? Math.round(((progress.done ?? 0) / progress.total) * 100) : 0;
  return (
    <form
      ref={form}
      action={action}
      method="post"
      encType="multipart/form-data"
      onSubmit={(event) => {
        event.preventDefault();
        void send(new FormData(event.currentTarget, (event.nativeEvent as SubmitEvent).submitter));
      }}
    >
      <ErrorSummary errors={errors.map((text) => ({ text }))} title="Not loaded yet" />
      {children}
      <div role="status">
        {progress ? (
          <p>
            <progress max={100} value={percent} aria-label="Progress" />{" "}
            {progress.step === "writing" ? "Writing readings" : "Reading rows"}: {progress.done} of{" "}
            {progress.total || "…"}
          </p>
        ) : null}
      </div>
      <Actions thumb>
        <Button type="submit" name="intent" value="load" kind="primary" disabled={progress !== null}>
          Load the readings
        </Button>
        <Button type="submit" name="intent" value="look" disabled={progress !== null}>
          Keep and look again
        </Button>
      </Actions>
    </form>
  );
}

async function* linesOf(response: Response): AsyncGenerator<Line> {
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader();
  let rest = "";
  for (let chunk = await reader?.read(); chunk && !chunk.done; chunk = await reader?.read()) {
    const lines = (rest + chunk.value).split("\n");
    rest = lines.pop() ?? "";
    for (const line of lines) if (line.trim()) yield JSON.parse(line) as Line;
  }
  if (rest.trim()) yield JSON.parse(rest) as Line;
}
