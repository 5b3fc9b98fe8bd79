import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import type { SnapshotSession } from "@/lib/publication/snapshot.ts";
import { elementName } from "@/lib/wording/elements.ts";
import { amountText } from "@/lib/wording/formats.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import type { Language } from "@/lib/wording/language.ts";
import {
  checkRows,
  correctionOnPage,
  dayStates,
  doubtLines,
  recoveriesText,
  recoveryOnPage,
  sessionsIn,
  shiftSentence,
  sittingTime,
  withoutUncertainty,
} from "@/lib/wording/sessions.ts";

/** Was the instrument fit that day? For every session that the page's readings come from: the checks, and those before them. */
export function InstrumentFitness({
  sessions,
  language,
}: {
  sessions: readonly SnapshotSession[];
  language: Language;
}) {
  const words = itemPageIn[language];
  const written = (text: string | null) => asWritten(text, language);
  return (
    <>
      <p>{words.checksLead}</p>
      {sessions.map((session) => (
        <section key={session.id} className="flow" aria-label={words.session(session.label)}>
          <h3>
            {written(session.instrument.name)}, {sittingTime(session, language)}
          </h3>
          <p>
            <strong>
              <Told
                text={`${sentenceCase(dayStates(session.fitness, language))}.`}
                own={session.fitness.map(({ mode }) => mode)}
                language={language}
              />
            </strong>
          </p>
          <Doubt session={session} language={language} />
          <Facts
            facts={[
              { name: words.checkFacts.operator, value: session.operator },
              { name: words.checkFacts.place, value: written(session.place) },
              { name: words.checkFacts.conditions, value: written(session.conditions) },
            ]}
          />
          {session.trained ? null : <p>{sessionsIn[language].untrained}</p>}
          {session.clockShiftMinutes === 0 ? null : <p>{shiftSentence(session.clockShiftMinutes, language)}</p>}
          <Standards session={session} language={language} />
        </section>
      ))}
    </>
  );
}

const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function Doubt({ session, language }: { session: SnapshotSession; language: Language }) {
  const say = sessionsIn[language];
  const modes = session.fitness.map(({ mode }) => mode);
  const lines = doubtLines(session.fitness, language);
  if (lines.length === 0) return null;
  return (
    <>
      <Warning language={language}>
        <ul>
          {lines.map((line) => (
            <li key={line}>
              <Told text={line} own={modes} language={language} />
            </li>
          ))}
        </ul>
      </Warning>
      <p>
        {session.inDoubtReason === null ? (
          say.leftOut
        ) : (
          <Told text={say.usedAnyway(session.inDoubtReason)} own={[session.inDoubtReason]} language={language} />
        )}
      </p>
    </>
  );
}

function Standards({ session, language }: { session: SnapshotSession; language: Language }) {
  const words = itemPageIn[language];
  const written = (text: string | null) => asWritten(text, language);
  const { name } = session.instrument;
  const sitting = `${name}, ${sittingTime(session, language)}`;
  const titled = (text: string) => <Told text={text} own={[name]} language={language} />;
  const rows = session.fitness.flatMap((e) => e.standards.map((standard) => ({ e, standard })));
  if (rows.length === 0) return null;
  const unstated = rows.filter(({ standard: s }) => s.certified !== null && s.uCertified === null);
  const checks = rows.flatMap(({ e, standard }) =>
    checkRows(e, standard, language).map((row) => ({ ...row, mode: e.mode })),
  );
  return (
    <>
      <DataTable
        caption={titled(words.standardsCaption(sitting))}
        rows={rows}
        rowKey={({ e, standard }) => `${e.element} ${e.mode} ${standard.name}`}
        columns={[
          { key: "element", head: words.standards.element, cell: ({ e }) => elementName(e.element, language) },
          { key: "mode", head: words.standards.mode, cell: ({ e }) => written(e.mode) ?? words.standards.notNamed },
          {
            key: "state",
            head: words.standards.state,
            nowrap: true,
            cell: ({ e }) => sessionsIn[language].word[e.state],
          },
          { key: "standard", head: words.standards.standard, cell: ({ standard }) => written(standard.name) },
          {
            key: "certified",
            head: words.standards.certified,
            numeric: true,
            cell: ({ standard: s }) =>
              s.certified === null
                ? `< ${amountText(s.below ?? 0, s.unit, language)}`
                : amountText(s.certified, s.unit, language),
          },
          {
            key: "read",
            head: words.standards.read,
            roomy: true,
            cell: ({ standard }) =>
              recoveriesText(
                standard.checks.map((c) => c.recovery),
                language,
              ),
          },
          {
            key: "recovery",
            head: words.standards.recovery,
            nowrap: true,
            cell: ({ standard }) => recoveryOnPage(standard, language),
          },
          {
            key: "correction",
            head: words.standards.corrected,
            cell: ({ standard }) => correctionOnPage(standard, language),
          },
        ]}
      />
      {unstated.length > 0 ? (
        <p>{withoutUncertainty([...new Set(unstated.map(({ e }) => e.element))], language)}</p>
      ) : null}
      <Disclosure summary={words.everyCheck}>
        <DataTable
          caption={titled(words.checksCaption(sitting))}
          rows={checks}
          rowKey={(row) => row.key}
          columns={[
            { key: "when", head: words.checks.when, nowrap: true, cell: (row) => row.when },
            {
              key: "element",
              head: words.standards.element,
              cell: (row) => <Told text={row.about} own={[row.mode]} language={language} />,
            },
            { key: "standard", head: words.standards.standard, cell: (row) => written(row.standard) },
            { key: "read", head: words.standards.read, numeric: true, cell: (row) => row.read },
            { key: "recovery", head: words.checks.recovery, numeric: true, cell: (row) => row.recovery },
            { key: "judged", head: words.checks.judged, cell: (row) => row.judged },
            { key: "session", head: words.checks.session, cell: (row) => row.session },
          ]}
        />
      </Disclosure>
    </>
  );
}
