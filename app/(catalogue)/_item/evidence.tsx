import type { ReactNode } from "react";
import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { BudgetFigure } from "@/app/_components/budget-figure.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { PageLink } from "@/app/_components/page-link.tsx";
import { SpotChart } from "@/app/_components/spot-chart.tsx";
import type { SpotChartInput } from "@/app/_components/spot-chart-layout.ts";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { Snapshot, SnapshotResult } from "@/lib/publication/snapshot.ts";
import { budgetIn, contributionName, contributionSource, shareText } from "@/lib/wording/budget.ts";
import { yesNo } from "@/lib/wording/catalogue.ts";
import { depthWords } from "@/lib/wording/depth.ts";
import { elementName, elementTitle } from "@/lib/wording/elements.ts";
import { wordsForFlag } from "@/lib/wording/flags.ts";
import { amountText, intervalText, numberText, resultText, significant, withUnit } from "@/lib/wording/formats.ts";
import { guardBandsIn, screeningSentence } from "@/lib/wording/guard-bands.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import { labelOf, labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { methodName, methodSteps, modelsIn } from "@/lib/wording/models.ts";
import {
  limitsOnAxis,
  spotFigure,
  spotFigureNote,
  spotFigureTitle,
  stripFigure,
} from "@/lib/wording/result-figures.ts";
import { Decisions } from "./decisions.tsx";
import styles from "./item-view.module.css";
import { partTitle, samePart } from "./part-title.ts";
import { ReadingsTable } from "./readings-table.tsx";
import { evidenceId, Standing } from "./result-block.tsx";

/** How the readings by spot are drawn: still on public pages, answering to pointer and keys at the bench. */
export type DrawSpots = (figure: {
  title: string;
  note: string;
  input: SpotChartInput;
  table: ReactNode;
  result: SnapshotResult;
}) => ReactNode;

/** All that stands behind each result, one fold to a part and in it one to a result. */
export function Evidence({
  placed,
  files,
  several = false,
  language = "en",
  // Where nothing was detected, a drawing of how little could be seen tells less than the table.
  drawSpots = ({ result, ...figure }) =>
    result.state === "not-detected" ? figure.table : <SpotChart {...figure} language={language} />,
}: {
  placed: PlacedResult[];
  files: Snapshot["files"];
  several?: boolean;
  /** English at the bench. */
  language?: Language;
  drawSpots?: DrawSpots;
}) {
  const words = itemPageIn[language];
  const parts = placed.filter((p, at) => placed.findIndex((other) => samePart(p, other)) === at);
  const folds = (mine: PlacedResult[]) =>
    mine.map((each) => (
      <Disclosure
        key={evidenceId(each)}
        id={evidenceId(each)}
        summary={
          <span>
            <Told
              text={words.elementIn(elementTitle(each.result.element, language), each.part.name)}
              own={[each.part.name]}
              language={language}
            />
            : {resultText(each.result, language)}
          </span>
        }
      >
        <ResultEvidence placed={each} files={files} drawSpots={drawSpots} language={language} />
      </Disclosure>
    ));
  if (parts.length === 1) return <div>{folds(placed)}</div>;
  return (
    <div>
      {parts.map((part) => {
        const mine = placed.filter((p) => samePart(p, part));
        return (
          <Disclosure
            key={`${part.specimen.id} ${part.part.id}`}
            summary={
              <span>
                {asWritten(partTitle(part, several), language)}: {words.results(mine.length)}
              </span>
            }
          >
            {folds(mine)}
          </Disclosure>
        );
      })}
    </div>
  );
}

/** "lead in glaze, outside": tells the tables of one result from those of another. */
const subjectOf = ({ part, result }: PlacedResult, language: Language): string =>
  itemPageIn[language].elementIn(elementName(result.element, language), part.name);

function ResultEvidence({
  placed,
  files,
  drawSpots,
  language,
}: {
  placed: PlacedResult;
  files: Snapshot["files"];
  drawSpots: DrawSpots;
  language: Language;
}) {
  const { part, result } = placed;
  const [words, labels] = [itemPageIn[language], labelsIn[language]];
  const size = (value: number | null | undefined, unit: string) =>
    value ? withUnit(String(value), unit, language) : null;
  const own = [part.name];
  const told = (text: string) => <Told text={text} own={own} language={language} />;
  const rows = spotFigure(result, language);
  const limits = limitsOnAxis(result).map((d) => d.limitId);
  const subject = subjectOf(placed, language);
  const readings = (
    <ReadingsTable result={result} files={files} caption={told(words.readingsCaption(subject))} language={language} />
  );
  return (
    <>
      <Standing placed={placed} small language={language} />
      <Facts
        facts={[
          { name: words.facts.part, value: asWritten(part.name, language) },
          { name: words.facts.material, value: labelOf(labels.material, part.material) },
          { name: words.facts.form, value: labels.form[part.form] },
          { name: words.facts.reachable, value: yesNo(part.accessible, language) },
          { name: words.facts.thickness, value: size(part.thicknessMm, "mm") },
          { name: words.facts.narrowest, value: size(part.smallestDimensionMm, "mm") },
          { name: words.facts.area, value: size(part.areaCm2, "cm²") },
          { name: words.facts.mass, value: size(part.massG, "g") },
          { name: words.facts.quantity, value: labelOf(labels.quantity, result.quantity) },
          { name: words.facts.state, value: labels.state[result.state] },
          { name: words.facts.depth, value: depthWords(result, language) },
        ]}
      />
      {rows.length > 0
        ? drawSpots({
            title: spotFigureTitle(result, language),
            note: spotFigureNote(result.unit, language),
            input: { rows, limits: limits.length > 0 ? stripFigure(result, language).limits : [] },
            table: readings,
            result,
          })
        : readings}
      <Method result={result} language={language} />
      <Budget
        result={result}
        caption={(share, name) => told(words.budgetCaption(subject, share, name))}
        language={language}
      />
      {result.flags.length > 0 ? (
        <>
          <h3>{words.bearInMind}</h3>
          <ul>
            {result.flags.map((flag) => (
              <li key={flag}>{wordsForFlag(flag, language).sentence}</li>
            ))}
          </ul>
        </>
      ) : null}
      <Decisions result={result} caption={told(words.decisionsCaption(subject))} language={language} />
      <Screening placed={placed} language={language} />
    </>
  );
}

function Method({ result, language }: { result: SnapshotResult; language: Language }) {
  const { facts, howMade } = itemPageIn[language];
  const { crossCheck, withSetAside, unit } = result;
  const amount = (value: number | null): string | null => (value === null ? null : amountText(value, unit, language));
  const range = ([low, high]: readonly [number, number]): string =>
    intervalText([significant(low), significant(high)], unit, language);
  return (
    <>
      <h3>{howMade}</h3>
      <ol>
        {methodSteps(result, language).map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <Facts
        facts={[
          { name: facts.model, value: labelOf(modelsIn[language].labels, result.model) },
          {
            name: facts.range,
            value: result.stated.interval ? intervalText(result.stated.interval, unit, language) : null,
          },
          { name: facts.u, value: amount(result.u) },
          { name: facts.k, value: result.k === null ? null : numberText(result.k, 3, language) },
          { name: facts.nu, value: result.nuEff === null ? null : numberText(result.nuEff, 3, language) },
          {
            name: facts.withSetAside,
            value: withSetAside?.value
              ? `${amountText(withSetAside.value, unit, language)}${
                  withSetAside.interval ? ` (${range(withSetAside.interval)})` : ""
                }`
              : null,
          },
          { name: facts.median, value: amount(crossCheck?.median ?? null) },
          { name: facts.robust, value: amount(crossCheck?.algorithmA ?? null) },
          {
            name: facts.leaveOneOut,
            value: crossCheck?.leaveOneOut ? range(crossCheck.leaveOneOut) : null,
          },
          {
            name: facts.method,
            value: (
              <PageLink href={pathsIn[language].methods()} language={language}>
                {methodName(result, language)}
              </PageLink>
            ),
          },
          { name: facts.digest, value: <code className={styles.hash}>{result.inputsDigest}</code> },
        ]}
      />
    </>
  );
}

function Budget({
  result,
  caption,
  language,
}: {
  result: SnapshotResult;
  caption: (share: string, name: string) => ReactNode;
  language: Language;
}) {
  const [largest] = [...result.budget].sort((a, b) => b.share - a.share);
  if (!largest) return null;
  return (
    <BudgetFigure
      caption={caption(shareText(largest.share, language), contributionName(largest.code, language).toLowerCase())}
      unit={result.unit}
      language={language}
      rows={result.budget.map((line) => ({
        code: line.code,
        name: contributionName(line.code, language),
        u: numberText(line.u, 2, language),
        nu: line.nu === null ? "∞" : numberText(line.nu, 3, language),
        kind: budgetIn[language].evaluation[line.type],
        share: line.share,
        shareText: shareText(line.share, language),
        source: contributionSource(line.source, line.shared, language),
      }))}
    />
  );
}

/** An extra beside the decisions, never one of them. */
function Screening({ placed: { part, result }, language }: { placed: PlacedResult; language: Language }) {
  const sentence = screeningSentence(part, result, language);
  return sentence === null ? null : (
    <>
      <h3>{guardBandsIn[language].title}</h3>
      <p>{sentence}</p>
      <p className="soft small">{guardBandsIn[language].note}</p>
    </>
  );
}
