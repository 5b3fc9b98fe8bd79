import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry } from "@/app/_components/entry.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { PageLink } from "@/app/_components/page-link.tsx";
import { type AmountsState, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import { geometries } from "@/lib/amounts/geometry.ts";
import { findDensityMaterial } from "@/lib/amounts/materials-table.ts";
import type { AmountsResult } from "@/lib/amounts/types.ts";
import {
  amountFiguresIn,
  amountSentence,
  enteredFacts,
  halvedText,
  ladderSentence,
  neededSentence,
  onAreaSentence,
  referenceDays,
  referenceYears,
} from "@/lib/wording/amount-figures.ts";
import {
  amountRecord,
  amountsIn,
  coatingSentence,
  comparatorSource,
  dailyText,
  densitySentence,
  dominatesSentence,
  estimateText,
  massSentence,
  massText,
  nearestSentence,
  spreadSentence,
} from "@/lib/wording/amounts.ts";
import { amountText, significant, withUnit } from "@/lib/wording/formats.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { limitTitle, placeName } from "@/lib/wording/verdicts.ts";
import { AreaFigure, GrainFigure } from "../_amount/amount-figures.tsx";
import styles from "./amounts.module.css";

type Given = { state: AmountsState; result: AmountsResult; language: Language };

/** All that was worked out: the amount, how far it would go, both drawn to scale. */
export function AmountSheet({ state, result, language }: Given) {
  const amountsPage = amountFiguresIn[language].page;
  return (
    <>
      {result.amount || result.coating ? <TheAmount result={result} language={language} /> : null}
      {result.amount || result.needed ? <HowFar state={state} result={result} language={language} /> : null}
      {result.daily.length > 0 || result.leach ? <BesideBenchmarks result={result} language={language} /> : null}
      {result.grain || result.spread ? (
        <Entry title={amountsPage.scaleTitle} id="scale">
          <div className={styles.figures}>
            <GrainFigure result={result} language={language} />
            <AreaFigure result={result} language={language} />
          </div>
        </Entry>
      ) : null}
    </>
  );
}

/** Days of a daily benchmark: arithmetic, folded away, and never on the printed sheet. */
function BesideBenchmarks({ result: { daily, leach }, language }: { result: AmountsResult; language: Language }) {
  const amountsPage = amountFiguresIn[language].page;
  const paths = pathsIn[language];
  const rows = [
    ...daily.map((one) => ({ ...one, of: amountsPage.arithmeticTotal })),
    ...(leach?.daily ?? []).map((one) => ({
      ...one,
      of: `${amountsPage.arithmeticLeach}: ${amountText(leach?.drawn.value ?? 0, "µg", language)}`,
    })),
  ];
  const labels = [...new Set([daily[0]?.days.label, leach?.drawn.label])].filter((one) => one !== undefined);
  return (
    <Entry title={amountsPage.arithmeticTitle} id="benchmarks" screenOnly>
      {leach ? (
        <p>
          {amountsPage.arithmeticLeach}: {amountText(leach.drawn.value, leach.drawn.unit, language)}.
        </p>
      ) : null}
      <Disclosure summary={amountsPage.arithmeticSummary} open={leach !== null}>
        {labels.map((label) => (
          <p key={label}>{amountsIn[language].comparisons[label]}</p>
        ))}
        <DataTable
          caption={amountsPage.arithmeticTitle}
          hideCaption
          rows={rows}
          rowKey={(row) => `${row.of} ${row.benchmark.limitId}`}
          columns={[
            { key: "of", head: amountsPage.of, roomy: true, cell: (row) => row.of },
            { key: "days", head: amountsPage.is, numeric: true, cell: (row) => dailyText(row, language) },
            {
              key: "benchmark",
              head: amountsPage.benchmark,
              roomy: true,
              cell: ({ benchmark }) => (
                <>
                  <PageLink href={paths.limit(benchmark.limitId)} language={language}>
                    {placeName(benchmark.jurisdiction, language)}, {limitTitle(benchmark.title, language)}
                  </PageLink>{" "}
                  ({amountRecord(benchmark.checked, language)})
                </>
              ),
            },
          ]}
        />
      </Disclosure>
    </Entry>
  );
}

/** What was typed, at the head of a printed sheet. */
export function Entered({ state, language }: { state: AmountsState; language: Language }) {
  const shape = geometries[state.shape];
  const facts = enteredFacts(
    state,
    {
      material: (id) => amountRecord(findDensityMaterial(id)?.name ?? id, language),
      dimensions: Object.keys(shape.dimensions),
      dimensionKind: (name) => shape.dimensions[name] ?? "length",
    },
    language,
  );
  return <p className={styles.entered}>{facts.map(({ name, value }) => `${name}: ${value}`).join("; ")}.</p>;
}

function TheAmount({ result, language }: { result: AmountsResult; language: Language }) {
  const { page: amountsPage, figures } = amountFiguresIn[language];
  const { mass, amount, element, nearestMass, coating } = result;
  const uncertain = amount !== null && amount.interval[0] !== amount.interval[1];
  const [nearest] = nearestMass;
  const doubt = mass === null ? null : dominatesSentence(mass, language);
  return (
    <Entry title={amountsPage.amountTitle} id="amount">
      {mass ? <p className="answer">{massSentence(mass, element, language)}</p> : null}
      {mass === null && amount ? <p className="answer">{amountSentence(amount, element, language)}</p> : null}
      {amount ? <p className={styles.screen}>{figures.beside}</p> : null}
      {nearest && amount ? (
        <p>
          {nearestSentence(nearest, { atMost: amount.atMost }, language)}{" "}
          <span className={`soft small ${styles.screen}`}>({comparatorSource(nearest.comparator, language)})</span>
        </p>
      ) : null}
      {uncertain ? <p className="soft small">{amountsIn[language].brackets}</p> : null}
      {doubt ? <p>{doubt}</p> : null}
      {mass ? (
        <div className={styles.screen}>
          <Facts
            facts={[
              { name: amountsPage.partWeight, value: mass.part ? estimateText(mass.part, language) : null },
              { name: amountsPage.volume, value: mass.volume ? estimateText(mass.volume, language) : null },
            ]}
          />
        </div>
      ) : null}
      {mass?.density ? <p className="soft small">{densitySentence(mass.density, language)}</p> : null}
      {coating ? <p>{coatingSentence(coating, language)}</p> : null}
    </Entry>
  );
}

function HowFar({ state, result, language }: Given) {
  const amountsPage = amountFiguresIn[language].page;
  const { spread, onArea, needed, nearestArea } = result;
  const [nearest] = nearestArea;
  return (
    <Entry title={amountsPage.spreadTitle} id="how-far">
      {spread ? (
        // On paper the drawing below says it.
        <p className={`answer ${styles.screen}`}>
          {spreadSentence(spread, language)}{" "}
          {nearest ? nearestSentence(nearest, { atMost: spread.area.atMost }, language) : null}
        </p>
      ) : result.amount ? (
        <p className="no-print">{amountsPage.pick}</p>
      ) : null}
      {onArea ? <p>{onAreaSentence(onArea, language)}</p> : null}
      {needed && !onArea ? <p>{neededSentence(needed, language)}</p> : null}
      <div className={`${styles.tables} ${onArea ? styles.two : ""}`}>
        <References state={state} result={result} language={language} />
        {onArea ? <Ladder onArea={onArea} language={language} /> : null}
      </div>
    </Entry>
  );
}

/** The area at each published loading; each can be taken as the loading to draw. */
function References({ state, result, language }: Given) {
  const { page: amountsPage, figures } = amountFiguresIn[language];
  const paths = pathsIn[language];
  const loadingText = (value: number): string => amountText(value, "µg/ft²", language);
  if (result.references.length === 0) return null;
  const taken = (value: number): string =>
    paths.amounts(serialiseAmounts({ ...state, loading: String(value), loadingUnit: "µg/ft²" }));
  return (
    <DataTable
      caption={figures.published}
      rows={result.references}
      rowKey={({ reference }) => reference.limitId}
      columns={[
        {
          key: "loading",
          head: amountsPage.loading,
          nowrap: true,
          cell: ({ reference }) => loadingText(reference.value),
        },
        {
          key: "surface",
          head: amountsPage.on,
          nowrap: true,
          cell: ({ reference }) => amountsIn[language].surfaces[reference.surface],
        },
        { key: "area", head: amountsPage.goesOver, numeric: true, cell: ({ area }) => estimateText(area, language) },
        {
          key: "period",
          head: amountsPage.publishedFor,
          roomy: true,
          cell: ({ reference }) => (
            <>
              <PageLink className="no-print" href={paths.limit(reference.limitId)} language={language}>
                {referenceDays(reference, language)}
              </PageLink>
              <span className="print-only">{referenceYears(reference, language)}</span>
            </>
          ),
        },
        {
          key: "draw",
          head: amountsPage.drawing,
          nowrap: true,
          cell: ({ reference }) =>
            state.loading === String(reference.value) && state.loadingUnit === "µg/ft²" ? (
              amountsPage.drawn
            ) : (
              <a
                className="no-print"
                href={taken(reference.value)}
                aria-label={amountsPage.drawItAt(loadingText(reference.value))}
              >
                {amountsPage.drawIt}
              </a>
            ),
        },
      ]}
    />
  );
}

function Ladder({ onArea, language }: { onArea: NonNullable<AmountsResult["onArea"]>; language: Language }) {
  const { page: amountsPage, figures } = amountFiguresIn[language];
  return (
    <div>
      <DataTable
        caption={figures.halvedAgain}
        rows={onArea.ladder}
        rowKey={(step) => String(step.halvings)}
        columns={[
          { key: "halvings", head: amountsPage.halved, cell: (step) => halvedText(step.halvings, language) },
          {
            key: "mass",
            head: amountsPage.amount,
            numeric: true,
            cell: (step) => (step.mass === null ? "–" : massText(step.mass, 3, language)),
          },
          {
            key: "loading",
            head: amountsPage.loading,
            numeric: true,
            cell: (step) => withUnit(significant(step.loading, 3), "µg/ft²", language),
          },
        ]}
      />
      <p className="soft small">{ladderSentence(onArea.area, language)}</p>
    </div>
  );
}
