import type { Metadata } from "next";
import { connection } from "next/server";
import { Actions, Button } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { SelectField } from "@/app/_components/field.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { historyOf, isInForce } from "@/lib/limits/limits-in-force.ts";
import { listLimits, type PublicLimit, publicLimit } from "@/lib/limits/list-limits.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { paths } from "@/lib/platform/paths.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { labelOf, labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { historyLine, limitPeriodInFull } from "@/lib/wording/limit-timeline.ts";
import { limitTold } from "@/lib/wording/limit-told.ts";
import { limitNumber } from "@/lib/wording/limit-words.ts";
import { limitsPageIn } from "@/lib/wording/limits-page.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { placeName, verdictsIn } from "@/lib/wording/verdicts.ts";
import styles from "./limits.module.css";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>>; language?: Language };
type Choice = { place: string; element: string; when: string };

export function generateMetadata({ language = "en" }: Pick<Props, "language">): Metadata {
  const { title, lead } = limitsPageIn[language];
  return { title, description: lead, alternates: alternates(paths.limits(), language) };
}

const unique = (texts: string[]): string[] => [...new Set(texts)];

/** Every limit the registry knows, place by place; those in force today unless asked otherwise. */
export default async function LimitsPage({ searchParams, language = "en" }: Props) {
  await connection();
  const words = limitsPageIn[language];
  const params = await searchParams;
  const text = (key: string): string => (typeof params[key] === "string" ? params[key] : "");
  const choice: Choice = { place: text("place"), element: text("element"), when: text("when") };
  const today = systemClock().toISOString().slice(0, 10);
  const all = listLimits();
  const shown = all.filter(
    (limit) =>
      (choice.place === "" || limit.jurisdiction === choice.place) &&
      (choice.element === "" || limit.substances.includes(choice.element)) &&
      (choice.when === "all" || isInForce(limit, today)),
  );
  const places = unique(shown.map((limit) => limit.jurisdiction));
  return (
    <>
      <PageHead title={words.title}>
        <p>{words.lead}</p>
        <Warning language={language}>{words.caution}</Warning>
        <Filters all={all} choice={choice} language={language} />
        <p className="soft">
          {words.shown(shown.length, choice.when === "all")} <a href={paths.api.limits()}>{words.asJson}</a>
        </p>
      </PageHead>
      {shown.length === 0 ? <EmptyState title={words.none} /> : null}
      <Ledger>
        {places.map((place) => {
          const rows = shown.filter((limit) => limit.jurisdiction === place);
          const name = placeName(place, language);
          return (
            <Entry key={place} title={name}>
              <div>
                <Disclosure
                  summary={
                    <span>
                      {words.count(rows.length)}
                      <span className="visually-hidden">, {name}</span>
                    </span>
                  }
                  open={places.length === 1}
                >
                  <LimitsTable place={name} rows={rows} today={today} language={language} />
                </Disclosure>
              </div>
            </Entry>
          );
        })}
      </Ledger>
    </>
  );
}

/** The numbers before and after this one, where there are any. */
function History({ limit, language }: { limit: PublicLimit; language: Language }) {
  const line = historyLine(limit, historyOf(limit.family).map(publicLimit), language);
  return line === null ? null : <span className={styles.scope}>{line}</span>;
}

type TableProps = { place: string; rows: PublicLimit[]; today: string; language: Language };

function LimitsTable({ place, rows, today, language }: TableProps) {
  const words = limitsPageIn[language];
  const heads = words.columns;
  return (
    <DataTable
      caption={words.caption(place)}
      hideCaption
      rows={rows.map((limit) => limitTold(limit, language))}
      rowKey={(limit) => limit.id}
      columns={[
        {
          key: "title",
          head: heads.limit,
          cell: (limit) => (
            <>
              <a href={pathsIn[language].limit(limit.id)}>{limit.title}</a>
              <span className={styles.scope}>{limit.scope}</span>
            </>
          ),
        },
        {
          key: "element",
          head: heads.element,
          cell: (limit) => limit.substances.join(limit.sum ? " + " : ", "),
        },
        { key: "value", head: heads.value, numeric: true, cell: (limit) => limitNumber(limit, language) },
        {
          key: "quantity",
          head: heads.quantity,
          cell: (limit) => labelOf(labelsIn[language].quantity, limit.quantity),
        },
        {
          key: "period",
          head: heads.period,
          roomy: true,
          cell: (limit) => (
            <>
              {limitPeriodInFull(limit, today, language)}
              <History limit={limit} language={language} />
            </>
          ),
        },
        { key: "checked", head: heads.checked, cell: (limit) => verdictsIn[language].checked[limit.checked] },
      ]}
    />
  );
}

function Filters({ all, choice, language }: { all: PublicLimit[]; choice: Choice; language: Language }) {
  const words = limitsPageIn[language].filters;
  return (
    <form action={pathsIn[language].limits()} method="get" className={`${styles.filters} no-print`}>
      <SelectField
        name="place"
        label={words.place}
        empty={words.everyPlace}
        defaultValue={choice.place}
        choices={unique(all.map((limit) => limit.jurisdiction)).map((value) => ({
          value,
          label: placeName(value, language),
        }))}
      />
      <SelectField
        name="element"
        label={words.element}
        empty={words.everyElement}
        defaultValue={choice.element}
        choices={unique(all.flatMap((limit) => limit.substances)).map((value) => ({
          value,
          label: elementTitle(value, language),
        }))}
      />
      <SelectField
        name="when"
        label={words.when}
        defaultValue={choice.when}
        empty={words.today}
        choices={[{ value: "all", label: words.anyDate }]}
      />
      <Actions>
        <Button type="submit">{words.show}</Button>
      </Actions>
    </form>
  );
}
