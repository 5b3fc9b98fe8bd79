"use client";

import { useState } from "react";
import { Button } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Placeholder } from "@/app/_components/placeholder.tsx";
import { useScripted } from "@/app/_components/use-scripted.ts";
import type { RecomputedResult } from "@/lib/publication/recompute.ts";
import { resultText } from "@/lib/wording/formats.ts";
import {
  type CheckLine,
  differenceText,
  figuresText,
  type RecomputeReport,
  recomputedTitle,
  remadeText,
  reportLines,
  reproduceCommand,
  severalObjects,
  recomputeWords as words,
} from "@/lib/wording/recompute.ts";
import styles from "./recompute-panel.module.css";

type State = { step: "asked" | "busy" } | { step: "done"; report: RecomputeReport } | { step: "failed"; why: string };

/**
 * Lets the reader's own browser make every published figure again from the public files and check the log. Without scripts
 * it names the command that does the same. The method's code comes only when it is asked for.
 */
export function RecomputePanel({ slug, revision, address }: { slug: string; revision: number; address: string }) {
  const scripted = useScripted();
  const [state, setState] = useState<State>({ step: "asked" });

  async function recompute() {
    setState({ step: "busy" });
    const { RecomputeTrouble, recomputeHere } = await import("./recompute-run.ts");
    try {
      setState({ step: "done", report: await recomputeHere(slug, revision) });
    } catch (error) {
      if (!(error instanceof RecomputeTrouble)) throw error;
      setState({ step: "failed", why: error.message });
    }
  }

  return (
    <div className="flow" id="recompute">
      <p>{scripted ? words.lead : words.withoutScripts}</p>
      {scripted ? (
        <p>
          <Button onClick={recompute} disabled={state.step === "busy"}>
            {state.step === "done" ? words.again : words.button}
          </Button>
        </p>
      ) : (
        <p>
          <code className={styles.command}>{reproduceCommand(address)}</code>
        </p>
      )}
      <div role="status" className="flow">
        {state.step === "busy" ? <Placeholder label={words.busy} lines={5} /> : null}
        {state.step === "failed" ? <p>{words.failed(state.why)}</p> : null}
        {state.step === "done" ? <Report report={state.report} /> : null}
      </div>
    </div>
  );
}

function Report({ report }: { report: RecomputeReport }) {
  const several = severalObjects(report.results);
  return (
    <>
      <ul className={styles.lines}>
        {reportLines(report).map((line) => (
          <Line key={line.text} {...line} />
        ))}
      </ul>
      {report.results.length > 0 ? (
        <Disclosure summary={words.caption} open={report.results.some((one) => one.differences.length > 0)}>
          <DataTable
            caption={words.tableCaption}
            rows={report.results.map((result, index) => ({ result, index }))}
            rowKey={({ index }) => String(index)}
            columns={[
              { key: "what", head: words.columns.what, cell: ({ result }) => recomputedTitle(result, several) },
              { key: "published", head: words.columns.published, cell: ({ result }) => resultText(result.published) },
              { key: "recomputed", head: words.columns.recomputed, cell: ({ result }) => remadeText(result) },
              { key: "figures", head: words.columns.figures, cell: ({ result }) => <Figures result={result} /> },
            ]}
          />
        </Disclosure>
      ) : null}
    </>
  );
}

const marks = { agrees: "✓", differs: "✗", "not-checked": "–" } as const;

const Line = ({ verdict, text }: CheckLine) => (
  <li data-verdict={verdict}>
    <span aria-hidden="true" className={styles.mark}>
      {marks[verdict]}
    </span>
    <span>
      <strong>{words.verdictWords[verdict]}.</strong> {text}
    </span>
  </li>
);

function Figures({ result }: { result: RecomputedResult }) {
  const [first] = result.differences;
  return (
    <>
      {figuresText(result)}
      {first ? <span className="small"> – {differenceText(first)}</span> : null}
    </>
  );
}
