import { DataTable } from "@/app/_components/data-table.tsx";
import type { FactorSurvey } from "@/lib/consistency/factor-survey.ts";
import type { LevelReadings, LevelsCompared, WithoutOne } from "@/lib/consistency/part-consistency.ts";
import type { SessionPrecision } from "@/lib/consistency/session-precision.ts";
import type { StoredReading } from "@/lib/store/readings.ts";
import { asWritten } from "@/lib/wording/bench.ts";
import {
  comparedText,
  componentText,
  consistencyPage,
  detectedText,
  factorWords,
  inseparableText,
  levelName,
  markedText,
  precisionSentences,
  withoutText,
} from "@/lib/wording/consistency.ts";
import { amountText } from "@/lib/wording/formats.ts";
import { differenceText } from "@/lib/wording/retests.ts";

/** The readings by spot, session, analyser, operator and object: how many, their mean and their spread. */
export function Levels({ levels, unit }: { levels: LevelReadings[]; unit: string }) {
  return (
    <DataTable
      caption="Mean and standard deviation of the readings detected"
      rows={levels}
      rowKey={({ factor, level }) => `${factor} ${level}`}
      columns={[
        { key: "level", head: "Which", roomy: true, rowHeader: true, cell: ({ level }) => levelName(level) },
        { key: "factor", head: "What", cell: ({ factor }) => factorWords[factor] },
        { key: "n", head: "Readings", cell: detectedText },
        {
          key: "mean",
          head: "Mean",
          numeric: true,
          cell: ({ mean }) => (mean === null ? "–" : amountText(mean, unit)),
        },
        { key: "sd", head: "Spread (s)", numeric: true, cell: ({ sd }) => (sd === null ? "–" : amountText(sd, unit)) },
      ]}
    />
  );
}

/** Each factor's part of the scatter, one at a time, and which cannot be told apart. */
export function Components({ survey, unit }: { survey: FactorSurvey | null; unit: string }) {
  if (survey === null) return <p>{consistencyPage.belowDetection}</p>;
  return (
    <>
      <DataTable
        caption="One factor at a time (restricted maximum likelihood)"
        rows={survey.alone}
        rowKey={({ factor }) => factor}
        columns={[
          { key: "factor", head: "From one", cell: ({ factor }) => factorWords[factor] },
          { key: "levels", head: "How many", numeric: true, cell: ({ levels }) => levels },
          {
            key: "says",
            head: "What they say",
            roomy: true,
            cell: ({ factor, result }) => componentText(factor, result, unit),
          },
        ]}
      />
      {survey.inseparable.length > 0 ? (
        <ul>
          {survey.inseparable.map((factors) => (
            <li key={factors.join(" ")}>{inseparableText(factors)}</li>
          ))}
        </ul>
      ) : null}
    </>
  );
}

/** Repeatability, reproducibility, h and k; where the design lacks something, what. */
export function Precision({ precision, unit }: { precision: SessionPrecision | null; unit: string }) {
  if (precision === null) return <p>{consistencyPage.belowDetection}</p>;
  return (
    <>
      <ul>
        {precisionSentences(precision, unit).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {precision.status === "ok" ? (
        <DataTable
          caption="Sessions: h tells a mean that stands apart, k a spread that does"
          rows={precision.sessions}
          rowKey={(row) => row.session}
          columns={[
            { key: "session", head: "Session", roomy: true, cell: (row) => row.session },
            { key: "n", head: "Readings", numeric: true, cell: (row) => row.readings },
            { key: "mean", head: "Mean", numeric: true, cell: (row) => amountText(row.mean, unit) },
            { key: "sd", head: "s", numeric: true, cell: (row) => (row.sd === null ? "–" : amountText(row.sd, unit)) },
            { key: "h", head: "h", cell: (row) => markedText(row.h, row.hMark) },
            { key: "k", head: "k", cell: (row) => markedText(row.k, row.kMark) },
          ]}
        />
      ) : null}
    </>
  );
}

/** Results of two analysers, operators, sessions or objects, each by itself, with zeta and E_n. */
export function ComparedLevels({ rows, unit }: { rows: LevelsCompared[]; unit: string }) {
  if (rows.length === 0)
    return (
      <p>
        There is only one analyser, one operator, one session and one object here, so there is nothing to hold beside
        another. A re-test by somebody else would be.
      </p>
    );
  return (
    <DataTable
      caption="Each reconciled by itself"
      rows={rows}
      rowKey={({ factor, a, b }) => `${factor} ${a} ${b}`}
      columns={[
        {
          key: "pair",
          head: "Which two",
          roomy: true,
          cell: ({ a, b }) => `${a} and ${b}`,
        },
        { key: "factor", head: "What", cell: ({ factor }) => factorWords[factor] },
        {
          key: "difference",
          head: "Difference",
          numeric: true,
          cell: ({ compared }) => (compared ? differenceText(compared.difference, unit) : "–"),
        },
        { key: "says", head: "Do they agree?", roomy: true, cell: ({ compared }) => comparedText(compared) },
      ]}
    />
  );
}

/** The result with each reading left out in turn. */
export function WithoutEach({
  without,
  rows,
  unit,
}: {
  without: WithoutOne[] | null;
  rows: ReadonlyMap<string, StoredReading>;
  unit: string;
}) {
  if (without === null) return <p>{consistencyPage.tooMany}</p>;
  const shown = without.flatMap((one) => {
    const reading = rows.get(one.id);
    return reading ? [{ one, reading }] : [];
  });
  return (
    <DataTable
      caption="The value, its range, and by how much it moves"
      rows={shown}
      rowKey={({ one }) => one.id}
      columns={[
        { key: "row", head: "Without", roomy: true, cell: ({ reading }) => `${reading.fileName}, ${reading.row}` },
        { key: "spot", head: "Spot", cell: ({ reading }) => reading.spot ?? "not named" },
        {
          key: "read",
          head: "It reads",
          roomy: true,
          cell: ({ reading }) =>
            reading.results
              .slice(0, 3)
              .map((r) => `${r.element} ${asWritten(r)}`)
              .join("; "),
        },
        { key: "value", head: "The value would be", roomy: true, cell: ({ one }) => withoutText(one, unit) },
      ]}
    />
  );
}
