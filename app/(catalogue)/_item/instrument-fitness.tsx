import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import type { SnapshotSession } from "@/lib/publication/snapshot.ts";
import { elementName } from "@/lib/wording/elements.ts";
import { amountText } from "@/lib/wording/formats.ts";
import {
  checkRows,
  correctionOnPage,
  dayStates,
  doubtLines,
  doubtWords,
  fitnessWord,
  recoveriesText,
  recoveryOnPage,
  shiftSentence,
  sittingTime,
  trainingWords,
  withoutUncertainty,
} from "@/lib/wording/sessions.ts";

/** Was the instrument fit that day? For every session that the page's readings come from: the checks, and those before them. */
export function InstrumentFitness({ sessions }: { sessions: readonly SnapshotSession[] }) {
  return (
    <>
      <p>
        A check standard is a piece whose content is known. It is read before, between and after the object; a reading
        counts only between checks that came within 20 % of what is certified.
      </p>
      {sessions.map((session) => (
        <section key={session.id} className="flow" aria-label={`Session: ${session.label}`}>
          <h3>
            {session.instrument.name}, {sittingTime(session)}
          </h3>
          <p>
            <strong>{sentenceCase(dayStates(session.fitness))}.</strong>
          </p>
          <Doubt session={session} />
          <Facts
            facts={[
              { name: "Operator", value: session.operator },
              { name: "Place", value: session.place },
              { name: "Conditions", value: session.conditions },
            ]}
          />
          {session.trained ? null : <p>{trainingWords.missingOnPage}</p>}
          {session.clockShiftMinutes === 0 ? null : <p>{shiftSentence(session.clockShiftMinutes)}</p>}
          <Standards session={session} />
        </section>
      ))}
    </>
  );
}

const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function Doubt({ session }: { session: SnapshotSession }) {
  const lines = doubtLines(session.fitness);
  if (lines.length === 0) return null;
  return (
    <>
      <Warning>
        <ul>
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </Warning>
      <p>{session.inDoubtReason === null ? doubtWords.leftOutOnPage : doubtWords.usedAnyway(session.inDoubtReason)}</p>
    </>
  );
}

function Standards({ session }: { session: SnapshotSession }) {
  const rows = session.fitness.flatMap((e) => e.standards.map((standard) => ({ e, standard })));
  if (rows.length === 0) return null;
  const unstated = rows.filter(({ standard: s }) => s.certified !== null && s.uCertified === null);
  const checks = rows.flatMap(({ e, standard }) => checkRows(e, standard));
  return (
    <>
      <DataTable
        caption={`What the check standards showed: ${session.label}`}
        rows={rows}
        rowKey={({ e, standard }) => `${e.element} ${e.mode} ${standard.name}`}
        columns={[
          { key: "element", head: "Element", cell: ({ e }) => elementName(e.element) },
          { key: "mode", head: "Mode", cell: ({ e }) => e.mode ?? "not named" },
          { key: "state", head: "Was it fit?", nowrap: true, cell: ({ e }) => fitnessWord[e.state] },
          { key: "standard", head: "Check standard", cell: ({ standard }) => standard.name },
          {
            key: "certified",
            head: "Certified",
            numeric: true,
            cell: ({ standard: s }) =>
              s.certified === null ? `< ${amountText(s.below ?? 0, s.unit)}` : amountText(s.certified, s.unit),
          },
          {
            key: "read",
            head: "Read",
            roomy: true,
            cell: ({ standard }) => recoveriesText(standard.checks.map((c) => c.recovery)),
          },
          {
            key: "recovery",
            head: "Read over certified",
            nowrap: true,
            cell: ({ standard }) => recoveryOnPage(standard),
          },
          { key: "correction", head: "Corrected", cell: ({ standard }) => correctionOnPage(standard) },
        ]}
      />
      {unstated.length > 0 ? <p>{withoutUncertainty([...new Set(unstated.map(({ e }) => e.element))])}</p> : null}
      <Disclosure summary="Every check of this session, and those before it">
        <DataTable
          caption={`Checks, the latest last: ${session.label}`}
          rows={checks}
          rowKey={(row) => row.key}
          columns={[
            { key: "when", head: "When", nowrap: true, cell: (row) => row.when },
            { key: "element", head: "Element", cell: (row) => row.about },
            { key: "standard", head: "Check standard", cell: (row) => row.standard },
            { key: "read", head: "Read", numeric: true, cell: (row) => row.read },
            { key: "recovery", head: "Over certified", numeric: true, cell: (row) => row.recovery },
            { key: "judged", head: "Within 20 %", cell: (row) => row.judged },
            { key: "session", head: "Session", cell: (row) => row.session },
          ]}
        />
      </Disclosure>
    </>
  );
}
