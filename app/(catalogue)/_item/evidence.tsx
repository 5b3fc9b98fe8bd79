import type { ReactNode } from "react";
import { BudgetFigure } from "@/app/_components/budget-figure.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { SpotChart } from "@/app/_components/spot-chart.tsx";
import type { SpotChartInput } from "@/app/_components/spot-chart-layout.ts";
import { Verdict } from "@/app/_components/verdict.tsx";
import { paths } from "@/lib/platform/paths.ts";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { Snapshot, SnapshotDecision, SnapshotResult } from "@/lib/publication/snapshot.ts";
import { contributionName, contributionSource, evaluationWords, shareText } from "@/lib/wording/budget.ts";
import { depthWords } from "@/lib/wording/depth.ts";
import { elementName, elementTitle } from "@/lib/wording/elements.ts";
import { wordsForFlag } from "@/lib/wording/flags.ts";
import {
  amountText,
  counted,
  intervalText,
  plainDate,
  resultText,
  significant,
  withUnit,
} from "@/lib/wording/formats.ts";
import { screeningNote, screeningSentence, screeningTitle, turnsText } from "@/lib/wording/guard-bands.ts";
import { formLabels, labelOf, materialLabels, quantityLabels, stateLabels } from "@/lib/wording/labels.ts";
import { methodName, methodSteps, modelLabels } from "@/lib/wording/models.ts";
import { notComparableTitle, sharedReasons } from "@/lib/wording/reasons.ts";
import {
  limitsOnAxis,
  spotFigure,
  spotFigureNote,
  spotFigureTitle,
  stripFigure,
} from "@/lib/wording/result-figures.ts";
import { checkedText, limitName, sureness, verdictWords, whichDayText } from "@/lib/wording/verdicts.ts";
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
  // Where nothing was detected, a drawing of how little could be seen tells less than the table.
  drawSpots = ({ result, ...figure }) => (result.state === "not-detected" ? figure.table : <SpotChart {...figure} />),
}: {
  placed: PlacedResult[];
  files: Snapshot["files"];
  several?: boolean;
  drawSpots?: DrawSpots;
}) {
  const parts = placed.filter((p, at) => placed.findIndex((other) => samePart(p, other)) === at);
  const folds = (mine: PlacedResult[]) =>
    mine.map((each) => (
      <Disclosure
        key={evidenceId(each)}
        id={evidenceId(each)}
        summary={
          <span>
            {elementTitle(each.result.element)} in {each.part.name}: {resultText(each.result)}
          </span>
        }
      >
        <ResultEvidence placed={each} files={files} drawSpots={drawSpots} />
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
            summary={`${partTitle(part, several)}: ${counted(mine.length, "result")}`}
          >
            {folds(mine)}
          </Disclosure>
        );
      })}
    </div>
  );
}

/** "lead in glaze, outside": tells the tables of one result from those of another. */
const subjectOf = ({ part, result }: PlacedResult): string => `${elementName(result.element)} in ${part.name}`;

function ResultEvidence({
  placed,
  files,
  drawSpots,
}: {
  placed: PlacedResult;
  files: Snapshot["files"];
  drawSpots: DrawSpots;
}) {
  const { part, result } = placed;
  const rows = spotFigure(result);
  const limits = limitsOnAxis(result).map((d) => d.limitId);
  const subject = subjectOf(placed);
  const readings = <ReadingsTable result={result} files={files} subject={subject} />;
  return (
    <>
      <Standing placed={placed} small />
      <Facts
        facts={[
          { name: "Part", value: part.name },
          { name: "Material", value: labelOf(materialLabels, part.material) },
          { name: "Form", value: formLabels[part.form] },
          { name: "A child can touch it", value: part.accessible ? "yes" : "no" },
          { name: "Thickness", value: part.thicknessMm === null ? null : withUnit(String(part.thicknessMm), "mm") },
          {
            name: "Narrowest place",
            value: part.smallestDimensionMm ? withUnit(String(part.smallestDimensionMm), "mm") : null,
          },
          { name: "Area", value: part.areaCm2 === null ? null : withUnit(String(part.areaCm2), "cm²") },
          { name: "Mass", value: part.massG === null ? null : withUnit(String(part.massG), "g") },
          { name: "What the number is", value: labelOf(quantityLabels, result.quantity) },
          { name: "Kind of result", value: stateLabels[result.state] },
          { name: "How deep the analyser saw", value: depthWords(result) },
        ]}
      />
      {rows.length > 0
        ? drawSpots({
            title: spotFigureTitle(result),
            note: spotFigureNote(result.unit),
            input: { rows, limits: limits.length > 0 ? stripFigure(result).limits : [] },
            table: readings,
            result,
          })
        : readings}
      <Method result={result} />
      <Budget result={result} subject={subject} />
      {result.flags.length > 0 ? (
        <>
          <h3>Bear in mind</h3>
          <ul>
            {result.flags.map((flag) => (
              <li key={flag}>{wordsForFlag(flag).sentence}</li>
            ))}
          </ul>
        </>
      ) : null}
      <Decisions result={result} subject={subject} />
      <Screening placed={placed} />
    </>
  );
}

function Method({ result }: { result: SnapshotResult }) {
  const { crossCheck, withSetAside, unit } = result;
  const amount = (value: number | null): string | null => (value === null ? null : amountText(value, unit));
  return (
    <>
      <h3>How the number was made</h3>
      <ol>
        {methodSteps(result).map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <Facts
        facts={[
          { name: "Model", value: labelOf(modelLabels, result.model) },
          {
            name: "Range, 95 in 100",
            value: result.stated.interval ? intervalText(result.stated.interval, unit) : null,
          },
          { name: "Standard uncertainty", value: amount(result.u) },
          { name: "Coverage factor", value: result.k === null ? null : significant(result.k) },
          { name: "Degrees of freedom", value: result.nuEff === null ? null : significant(result.nuEff) },
          {
            name: "With the readings set aside",
            value: withSetAside?.value
              ? `${amountText(withSetAside.value, unit)}${
                  withSetAside.interval
                    ? ` (${intervalText([significant(withSetAside.interval[0]), significant(withSetAside.interval[1])], unit)})`
                    : ""
                }`
              : null,
          },
          { name: "Cross-check: median of the spots", value: amount(crossCheck?.median ?? null) },
          { name: "Cross-check: robust mean", value: amount(crossCheck?.algorithmA ?? null) },
          {
            name: "Cross-check: one spot left out",
            value: crossCheck?.leaveOneOut
              ? intervalText([significant(crossCheck.leaveOneOut[0]), significant(crossCheck.leaveOneOut[1])], unit)
              : null,
          },
          {
            name: "Method",
            value: <a href={paths.methods()}>{methodName(result)}</a>,
          },
          { name: "Digest of the inputs", value: <code className={styles.hash}>{result.inputsDigest}</code> },
        ]}
      />
    </>
  );
}

function Budget({ result, subject }: { result: SnapshotResult; subject: string }) {
  const [largest] = [...result.budget].sort((a, b) => b.share - a.share);
  if (!largest) return null;
  return (
    <BudgetFigure
      caption={`Where the doubt about ${subject} comes from: ${shareText(largest.share)} from “${contributionName(largest.code).toLowerCase()}”`}
      unit={result.unit}
      rows={result.budget.map((line) => ({
        code: line.code,
        name: contributionName(line.code),
        u: significant(line.u, 2),
        nu: line.nu === null ? "∞" : significant(line.nu),
        kind: evaluationWords[line.type],
        share: line.share,
        shareText: shareText(line.share),
        source: contributionSource(line.source, line.shared),
      }))}
    />
  );
}

/** An extra beside the decisions, never one of them. */
function Screening({ placed: { part, result } }: { placed: PlacedResult }) {
  const sentence = screeningSentence(part, result);
  return sentence === null ? null : (
    <>
      <h3>{screeningTitle}</h3>
      <p>{sentence}</p>
      <p className="soft small">{screeningNote}</p>
    </>
  );
}

function Decisions({ result, subject }: { result: SnapshotResult; subject: string }) {
  const compared = result.decisions.filter((d) => d.applies !== "other-quantity");
  const others = result.decisions.filter((d) => d.applies === "other-quantity");
  return (
    <>
      {compared.length > 0 ? <Compared result={result} decisions={compared} subject={subject} /> : null}
      {others.length > 0 ? <NotComparable decisions={others} /> : null}
    </>
  );
}

const failsText = { ">": "above the number", ">=": "at the number or above" } as const;

/** Limits on something else than was measured: each reason once, with the limits it holds for. */
function NotComparable({ decisions }: { decisions: SnapshotDecision[] }) {
  return (
    <>
      <h3>{notComparableTitle}</h3>
      {sharedReasons(decisions, (d) => d.why).map(({ shared, each }) => (
        <div key={shared} className="small">
          <p>{shared}</p>
          <ul>
            {each.map(({ of, own }) => (
              <li key={`${of.limitId} ${of.day} ${of.value}`}>
                <a href={paths.limit(of.limitId)}>{limitName(of)}</a>. {own} Fails {failsText[of.failsAt]}; rules of{" "}
                {plainDate(of.day)}; {whichDayText[of.which]}; the limit was {checkedText[of.checked]}.
              </li>
            ))}
          </ul>
        </div>
      ))}
    </>
  );
}

function Compared({
  result,
  decisions,
  subject,
}: {
  result: SnapshotResult;
  decisions: SnapshotDecision[];
  subject: string;
}) {
  return (
    <DataTable
      caption={`Held beside each limit: ${subject}`}
      rows={decisions}
      rowKey={(d) => `${d.limitId} ${d.day} ${d.value}`}
      rowNote={(d) => d.why}
      columns={[
        { key: "limit", head: "Limit", roomy: true, cell: (d) => <a href={paths.limit(d.limitId)}>{limitName(d)}</a> },
        {
          key: "verdict",
          head: "Verdict",
          cell: (d) => <Verdict verdict={d.verdict} words={verdictWords[d.verdict]} />,
        },
        { key: "sure", roomy: true, head: "How sure", cell: (d) => sureness(d) ?? "–" },
        { key: "turns", roomy: true, head: "The verdict turns", cell: (d) => turnsText(result, d) ?? "–" },
        {
          key: "fails",
          head: "Fails",
          cell: (d) => failsText[d.failsAt],
        },
        { key: "day", roomy: true, head: "Rules of", cell: (d) => `${plainDate(d.day)}; ${whichDayText[d.which]}` },
        { key: "checked", head: "The limit was", roomy: true, cell: (d) => checkedText[d.checked] },
      ]}
    />
  );
}
