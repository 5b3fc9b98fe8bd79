import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry } from "@/app/_components/entry.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { type AmountsState, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import { geometries } from "@/lib/amounts/geometry.ts";
import { findDensityMaterial } from "@/lib/amounts/materials-table.ts";
import type { AmountsResult } from "@/lib/amounts/types.ts";
import { paths } from "@/lib/platform/paths.ts";
import {
  amountSentence,
  amountsPage,
  cautionBeside,
  enteredFacts,
  halvedText,
  ladderCaption,
  ladderSentence,
  neededSentence,
  onAreaSentence,
  referenceDays,
  referencesCaption,
  referenceYears,
} from "@/lib/wording/amount-figures.ts";
import {
  bracketsSentence,
  coatingSentence,
  comparatorSource,
  comparisonLabels,
  dailyText,
  densitySentence,
  dominatesSentence,
  estimateText,
  massSentence,
  massText,
  nearestSentence,
  spreadSentence,
  surfaceNames,
} from "@/lib/wording/amounts.ts";
import { significant, withUnit } from "@/lib/wording/formats.ts";
import { AreaFigure, GrainFigure } from "../_amount/amount-figures.tsx";
import styles from "./amounts.module.css";

type Given = { state: AmountsState; result: AmountsResult };

/** All that was worked out: the amount, how far it would go, both drawn to scale. */
export function AmountSheet({ state, result }: Given) {
  return (
    <>
      {result.amount || result.coating ? <TheAmount result={result} /> : null}
      {result.amount || result.needed ? <HowFar state={state} result={result} /> : null}
      {result.daily.length > 0 || result.leach ? <BesideBenchmarks result={result} /> : null}
      {result.grain || result.spread ? (
        <Entry title={amountsPage.scaleTitle} id="scale">
          <div className={styles.figures}>
            <GrainFigure result={result} />
            <AreaFigure result={result} />
          </div>
        </Entry>
      ) : null}
    </>
  );
}

/** Days of a daily benchmark: arithmetic, folded away, and never on the printed sheet. */
function BesideBenchmarks({ result: { daily, leach } }: { result: AmountsResult }) {
  const rows = [
    ...daily.map((one) => ({ ...one, of: amountsPage.arithmeticTotal })),
    ...(leach?.daily ?? []).map((one) => ({
      ...one,
      of: `${amountsPage.arithmeticLeach}: ${withUnit(significant(leach?.drawn.value ?? 0), "µg")}`,
    })),
  ];
  const labels = [...new Set([daily[0]?.days.label, leach?.drawn.label])].filter((one) => one !== undefined);
  return (
    <Entry title={amountsPage.arithmeticTitle} id="benchmarks" screenOnly>
      {leach ? (
        <p>
          {amountsPage.arithmeticLeach}: {withUnit(significant(leach.drawn.value), leach.drawn.unit)}.
        </p>
      ) : null}
      <Disclosure summary={amountsPage.arithmeticSummary} open={leach !== null}>
        {labels.map((label) => (
          <p key={label}>{comparisonLabels[label]}</p>
        ))}
        <DataTable
          caption={amountsPage.arithmeticTitle}
          hideCaption
          rows={rows}
          rowKey={(row) => `${row.of} ${row.benchmark.limitId}`}
          columns={[
            { key: "of", head: "Of", roomy: true, cell: (row) => row.of },
            { key: "days", head: "Is", numeric: true, cell: (row) => dailyText(row) },
            {
              key: "benchmark",
              head: "Benchmark",
              roomy: true,
              cell: ({ benchmark }) => (
                <>
                  <a href={paths.limit(benchmark.limitId)}>
                    {benchmark.jurisdiction}, {benchmark.title}
                  </a>{" "}
                  ({benchmark.checked})
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
export function Entered({ state }: { state: AmountsState }) {
  const shape = geometries[state.shape];
  const facts = enteredFacts(state, {
    material: (id) => findDensityMaterial(id)?.name ?? id,
    dimensions: Object.keys(shape.dimensions),
    dimensionKind: (name) => shape.dimensions[name] ?? "length",
  });
  return <p className={styles.entered}>{facts.map(({ name, value }) => `${name}: ${value}`).join("; ")}.</p>;
}

function TheAmount({ result }: { result: AmountsResult }) {
  const { mass, amount, element, nearestMass, coating } = result;
  const uncertain = amount !== null && amount.interval[0] !== amount.interval[1];
  const [nearest] = nearestMass;
  const doubt = mass === null ? null : dominatesSentence(mass);
  return (
    <Entry title={amountsPage.amountTitle} id="amount">
      {mass ? <p className="answer">{massSentence(mass, element)}</p> : null}
      {mass === null && amount ? <p className="answer">{amountSentence(amount, element)}</p> : null}
      {amount ? <p className={styles.screen}>{cautionBeside}</p> : null}
      {nearest && amount ? (
        <p>
          {nearestSentence(nearest, { atMost: amount.atMost })}{" "}
          <span className={`soft small ${styles.screen}`}>({comparatorSource(nearest.comparator)})</span>
        </p>
      ) : null}
      {uncertain ? <p className="soft small">{bracketsSentence}</p> : null}
      {doubt ? <p>{doubt}</p> : null}
      {mass ? (
        <div className={styles.screen}>
          <Facts
            facts={[
              { name: "Weight of the part", value: mass.part ? estimateText(mass.part) : null },
              { name: "Volume", value: mass.volume ? estimateText(mass.volume) : null },
            ]}
          />
        </div>
      ) : null}
      {mass?.density ? <p className="soft small">{densitySentence(mass.density)}</p> : null}
      {coating ? <p>{coatingSentence(coating)}</p> : null}
    </Entry>
  );
}

function HowFar({ state, result }: Given) {
  const { spread, onArea, needed, nearestArea } = result;
  const [nearest] = nearestArea;
  return (
    <Entry title={amountsPage.spreadTitle} id="how-far">
      {spread ? (
        // On paper the drawing below says it.
        <p className={`answer ${styles.screen}`}>
          {spreadSentence(spread)} {nearest ? nearestSentence(nearest, { atMost: spread.area.atMost }) : null}
        </p>
      ) : result.amount ? (
        <p className="no-print">{amountsPage.pick}</p>
      ) : null}
      {onArea ? <p>{onAreaSentence(onArea)}</p> : null}
      {needed && !onArea ? <p>{neededSentence(needed)}</p> : null}
      <div className={`${styles.tables} ${onArea ? styles.two : ""}`}>
        <References state={state} result={result} />
        {onArea ? <Ladder onArea={onArea} /> : null}
      </div>
    </Entry>
  );
}

/** The area at each published loading; each can be taken as the loading to draw. */
function References({ state, result }: Given) {
  if (result.references.length === 0) return null;
  const taken = (value: number): string =>
    paths.amounts(serialiseAmounts({ ...state, loading: String(value), loadingUnit: "µg/ft²" }));
  return (
    <DataTable
      caption={referencesCaption}
      rows={result.references}
      rowKey={({ reference }) => reference.limitId}
      columns={[
        {
          key: "loading",
          head: "Loading",
          nowrap: true,
          cell: ({ reference }) => withUnit(significant(reference.value), "µg/ft²"),
        },
        { key: "surface", head: "On", nowrap: true, cell: ({ reference }) => surfaceNames[reference.surface] },
        { key: "area", head: "It would go over", numeric: true, cell: ({ area }) => estimateText(area) },
        {
          key: "period",
          head: "Published for",
          roomy: true,
          cell: ({ reference }) => (
            <>
              <a className="no-print" href={paths.limit(reference.limitId)}>
                {referenceDays(reference)}
              </a>
              <span className="print-only">{referenceYears(reference)}</span>
            </>
          ),
        },
        {
          key: "draw",
          head: "Drawing",
          nowrap: true,
          cell: ({ reference }) =>
            state.loading === String(reference.value) && state.loadingUnit === "µg/ft²" ? (
              "drawn"
            ) : (
              <a
                className="no-print"
                href={taken(reference.value)}
                aria-label={`draw it at ${withUnit(significant(reference.value), "µg/ft²")}`}
              >
                draw it
              </a>
            ),
        },
      ]}
    />
  );
}

function Ladder({ onArea }: { onArea: NonNullable<AmountsResult["onArea"]> }) {
  return (
    <div>
      <DataTable
        caption={ladderCaption}
        rows={onArea.ladder}
        rowKey={(step) => String(step.halvings)}
        columns={[
          { key: "halvings", head: "Halved", cell: (step) => halvedText(step.halvings) },
          {
            key: "mass",
            head: "Amount",
            numeric: true,
            cell: (step) => (step.mass === null ? "–" : massText(step.mass, 3)),
          },
          {
            key: "loading",
            head: "Loading",
            numeric: true,
            cell: (step) => withUnit(significant(step.loading, 3), "µg/ft²"),
          },
        ]}
      />
      <p className="soft small">{ladderSentence(onArea.area)}</p>
    </div>
  );
}
