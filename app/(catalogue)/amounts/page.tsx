import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { connection } from "next/server";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { parseAmounts, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { amountExamples, amountsPage } from "@/lib/wording/amount-figures.ts";
import { amountCautions } from "@/lib/wording/amounts.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { loadAmounts } from "../_amount/load-amounts.ts";
import { AmountSheet, Entered } from "./amount-sheet.tsx";
import styles from "./amounts.module.css";
import { AmountsForm, amountFieldId, answerId } from "./amounts-form.tsx";

export const metadata: Metadata = { title: amountsPage.title, description: amountsPage.lead };

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

/** The calculator: all it knows stands in the address, so that an answer can be kept, sent and printed. */
export default async function AmountsPage({ searchParams }: Props) {
  await connection();
  const given = await searchParams;
  const state = parseAmounts(given);
  const query = serialiseAmounts(state);
  // A form sends every field; the address keeps only what was said.
  if (Object.keys(given).length > new URLSearchParams(query).size) redirect(paths.amounts(query));
  const result = loadAmounts(state);
  const errors = result.problems.map((problem) => ({ field: problem.where?.field, text: problemSentence(problem) }));
  const byField = new Map(errors.flatMap(({ field, text }) => (field === undefined ? [] : [[field, text] as const])));
  const worked = result.amount !== null || result.needed !== null || result.coating !== null || result.leach !== null;
  return (
    <div className={styles.handout} data-handout>
      <PageHead title={amountsPage.title}>
        <p className="answer no-print">{amountsPage.lead}</p>
        {errors.length > 0 ? (
          <div id={answerId}>
            <ErrorSummary errors={errors.map(({ field, text }) => ({ field: field && amountFieldId(field), text }))} />
          </div>
        ) : null}
      </PageHead>
      <Ledger>
        <Entry title={amountsPage.formTitle} id="form">
          <div className="no-print flow">
            <AmountsForm state={state} errors={byField} />
            {query === "" ? <Examples /> : null}
          </div>
          <Entered state={state} />
          {errors.length > 0 ? null : <span id={answerId} />}
        </Entry>
        {worked ? (
          <AmountSheet state={state} result={result} />
        ) : (
          <Entry title={amountsPage.amountTitle} id="amount">
            <EmptyState title={amountsPage.nothing} headingLevel={3}>
              <p>{errors.length > 0 ? amountsPage.unfinished : amountsPage.nothingText}</p>
            </EmptyState>
          </Entry>
        )}
        <Entry title={amountsPage.cautionsTitle} id="cautions">
          <ul>
            {amountCautions(state.element).map((caution) => (
              <li key={caution.code}>
                <strong>{caution.title}.</strong> {caution.text}
              </li>
            ))}
          </ul>
          <p className="print-only small">
            {environment().baseUrl}
            {paths.amounts(query)}
          </p>
        </Entry>
        {worked ? <TakeAlong query={query} /> : null}
      </Ledger>
    </div>
  );
}

function Examples() {
  return (
    <section className="flow">
      <h3>{amountsPage.examplesTitle}</h3>
      <ul>
        {amountExamples.map(({ text, state }) => (
          <li key={text}>
            <a href={paths.amounts(serialiseAmounts(parseAmounts(state)))}>{text}</a>
          </li>
        ))}
      </ul>
      <p className="soft small">{amountsPage.examplesNote}</p>
    </section>
  );
}

function TakeAlong({ query }: { query: string }) {
  return (
    <Entry title={amountsPage.takeTitle} id="take" screenOnly>
      <ul>
        <li>{amountsPage.print}</li>
        <li>
          <a href={paths.amountsSvg(query)} download>
            {amountsPage.svg}
          </a>
        </li>
        <li>
          <a href={paths.amountsPng(query)} download>
            {amountsPage.png}
          </a>
        </li>
        <li>{amountsPage.address}</li>
      </ul>
    </Entry>
  );
}
