import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { connection } from "next/server";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { parseAmounts, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths as english } from "@/lib/platform/paths.ts";
import { amountExamples, amountFiguresIn } from "@/lib/wording/amount-figures.ts";
import { amountCautions } from "@/lib/wording/amounts.ts";
import { stateIn } from "@/lib/wording/amounts-state.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { problemSentenceIn } from "@/lib/wording/problems.ts";
import { loadAmounts } from "../_amount/load-amounts.ts";
import { AmountSheet, Entered } from "./amount-sheet.tsx";
import styles from "./amounts.module.css";
import { AmountsForm, amountFieldId, answerId } from "./amounts-form.tsx";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>>; language?: Language };

export async function generateMetadata({ searchParams, language = "en" }: Props): Promise<Metadata> {
  const { title, lead } = amountFiguresIn[language].page;
  const query = serialiseAmounts(parseAmounts(await searchParams));
  return { title, description: lead, alternates: alternates(english.amounts(query), language) };
}

/** The calculator: all it knows stands in the address, so that an answer can be kept, sent and printed. */
export default async function AmountsPage({ searchParams, language = "en" }: Props) {
  const amountsPage = amountFiguresIn[language].page;
  const paths = pathsIn[language];
  await connection();
  const given = await searchParams;
  const state = parseAmounts(given);
  const query = serialiseAmounts(state);
  // A form sends every field; the address keeps only what was said.
  if (Object.keys(given).length > new URLSearchParams(query).size) redirect(paths.amounts(query));
  const result = loadAmounts(state);
  const errors = result.problems.map((problem) => ({
    field: problem.where?.field,
    text: problemSentenceIn(problem, language),
  }));
  const byField = new Map(errors.flatMap(({ field, text }) => (field === undefined ? [] : [[field, text] as const])));
  const worked = result.amount !== null || result.needed !== null || result.coating !== null || result.leach !== null;
  return (
    <div className={styles.handout} data-handout>
      <PageHead title={amountsPage.title}>
        <p className="answer no-print">{amountsPage.lead}</p>
        {errors.length > 0 ? (
          <div id={answerId}>
            <ErrorSummary
              errors={errors.map(({ field, text }) => ({ field: field && amountFieldId(field), text }))}
              title={catalogueIn[language].site.mend(errors.length)}
            />
          </div>
        ) : null}
      </PageHead>
      <Ledger>
        <Entry title={amountsPage.formTitle} id="form">
          <div className="no-print flow">
            <AmountsForm state={state} errors={byField} language={language} />
            {query === "" ? <Examples language={language} /> : null}
          </div>
          <Entered state={state} language={language} />
          {errors.length > 0 ? null : <span id={answerId} />}
        </Entry>
        {worked ? (
          <AmountSheet state={state} result={result} language={language} />
        ) : (
          <Entry title={amountsPage.amountTitle} id="amount">
            <EmptyState title={amountsPage.nothing} headingLevel={3}>
              <p>{errors.length > 0 ? amountsPage.unfinished : amountsPage.nothingText}</p>
            </EmptyState>
          </Entry>
        )}
        <Entry title={amountsPage.cautionsTitle} id="cautions">
          <ul>
            {amountCautions(state.element, language).map((caution) => (
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
        {worked ? <TakeAlong query={query} language={language} /> : null}
      </Ledger>
    </div>
  );
}

function Examples({ language }: { language: Language }) {
  const { page: amountsPage, examples } = amountFiguresIn[language];
  return (
    <section className="flow">
      <h3>{amountsPage.examplesTitle}</h3>
      <ul>
        {amountExamples.map(({ text, state }, index) => (
          <li key={text}>
            <a href={pathsIn[language].amounts(serialiseAmounts(stateIn(parseAmounts(state), language)))}>
              {examples[index]}
            </a>
          </li>
        ))}
      </ul>
      <p className="soft small">{amountsPage.examplesNote}</p>
    </section>
  );
}

function TakeAlong({ query, language }: { query: string; language: Language }) {
  const amountsPage = amountFiguresIn[language].page;
  const asked = language === "en" ? query : `${query}&language=${language}`;
  return (
    <Entry title={amountsPage.takeTitle} id="take" screenOnly>
      <ul>
        <li>{amountsPage.print}</li>
        <li>
          <a href={english.amountsSvg(asked)} download>
            {amountsPage.svg}
          </a>
        </li>
        <li>
          <a href={english.amountsPng(asked)} download>
            {amountsPage.png}
          </a>
        </li>
        <li>{amountsPage.address}</li>
      </ul>
    </Entry>
  );
}
