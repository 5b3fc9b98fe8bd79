"use client";

import { useState } from "react";
import { Button } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Placeholder } from "@/app/_components/placeholder.tsx";
import { useScripted } from "@/app/_components/use-scripted.ts";
import type { RecomputedResult } from "@/lib/publication/recompute.ts";
import { resultText } from "@/lib/wording/formats.ts";
import type { Language } from "@/lib/wording/language.ts";
import {
  type CheckLine,
  differenceText,
  figuresText,
  type RecomputeReport,
  recomputedTitle,
  recomputeIn,
  remadeText,
  reportLines,
  reproduceCommand,
  severalObjects,
} from "@/lib/wording/recompute.ts";
import styles from "./recompute-panel.module.css";

type State = { step: "asked" | "busy" } | { step: "done"; report: RecomputeReport } | { step: "failed"; why: string };

/**
 * Lets the reader's own browser make every published figure again from the public files and check the log. Without scripts
 * it names the command that does the same. The method's code comes only when it is asked for.
 */
export function RecomputePanel({
  slug,
  revision,
  address,
  language,
}: {
  slug: string;
  revision: number;
  address: string;
  language: Language;
}) {
  const scripted = useScripted();
  const words = recomputeIn[language];
  const [state, setState] = useState<State>({ step: "asked" });

  async function recompute() {
    setState({ step: "busy" });
    const { RecomputeTrouble, recomputeHere } = await import("./recompute-run.ts");
    try {
      setState({ step: "done", report: await recomputeHere(slug, revision, language) });
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
        {state.step === "done" ? <Report report={state.report} language={language} /> : null}
      </div>
    </div>
  );
}

function Report({ report, language }: { report: RecomputeReport; language: Language }) {
  const words = recomputeIn[language];
  const several = severalObjects(report.results);
  return (
    <>
      <ul className={styles.lines}>
        {reportLines(report, {}, language).map((line) => (
          <Line key={line.text} {...line} language={language} />
        ))}
      </ul>
      {report.results.length > 0 ? (
        <Disclosure summary={words.caption} open={report.results.some((one) => one.differences.length > 0)}>
          <DataTable
            caption={words.tableCaption}
            rows={report.results.map((result, index) => ({ result, index }))}
            rowKey={({ index }) => String(index)}
            columns={[
              {
                key: "what",
                head: words.columns.what,
                cell: ({ result }) => recomputedTitle(result, several, language),
              },
              {
                key: "published",
                head: words.columns.published,
                cell: ({ result }) => resultText(result.published, language),
              },
              { key: "recomputed", head: words.columns.recomputed, cell: ({ result }) => remadeText(result, language) },
              {
                key: "figures",
                head: words.columns.figures,
                cell: ({ result }) => <Figures result={result} language={language} />,
              },
            ]}
          />
        </Disclosure>
      ) : null}
    </>
  );
}

const marks = { agrees: "✓", differs: "✗", "not-checked": "–" } as const;

const Line = ({ verdict, text, language }: CheckLine & { language: Language }) => (
  <li data-verdict={verdict}>
    <span aria-hidden="true" className={styles.mark}>
      {marks[verdict]}
    </span>
    <span>
      <strong>{recomputeIn[language].verdictWords[verdict]}.</strong> {text}
    </span>
  </li>
);

function Figures({ result, language }: { result: RecomputedResult; language: Language }) {
  const [first] = result.differences;
  return (
    <>
      {figuresText(result, language)}
      {first ? <span className="small"> – {differenceText(first, language)}</span> : null}
    </>
  );
}
