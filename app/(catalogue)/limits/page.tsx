import type { Metadata } from "next";
import { connection } from "next/server";
import { Actions, Button } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { SelectField } from "@/app/_components/field.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { historyOf, isInForce } from "@/lib/limits/limits-in-force.ts";
import { listLimits, type PublicLimit, publicLimit } from "@/lib/limits/list-limits.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { paths } from "@/lib/platform/paths.ts";
import { limitsPage } from "@/lib/wording/catalogue.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { counted } from "@/lib/wording/formats.ts";
import { labelOf, quantityLabels } from "@/lib/wording/labels.ts";
import { historyLine, limitPeriodInFull } from "@/lib/wording/limit-timeline.ts";
import { limitNumber } from "@/lib/wording/limit-words.ts";
import { checkedText } from "@/lib/wording/verdicts.ts";
import styles from "./limits.module.css";

export const metadata: Metadata = { title: limitsPage.title, description: limitsPage.lead };

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };
type Choice = { place: string; element: string; when: string };

const unique = (texts: string[]): string[] => [...new Set(texts)];

/** Every limit the registry knows, place by place; those in force today unless asked otherwise. */
export default async function LimitsPage({ searchParams }: Props) {
  await connection();
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
      <PageHead title={limitsPage.title}>
        <p>{limitsPage.lead}</p>
        <Warning>{limitsPage.caution}</Warning>
        <Filters all={all} choice={choice} />
        <p className="soft">
          {counted(shown.length, "limit")} {choice.when === "all" ? "of any date" : "in force today"}.{" "}
          <a href={paths.api.limits()}>The whole list as JSON</a>
        </p>
      </PageHead>
      {shown.length === 0 ? <EmptyState title={limitsPage.none} /> : null}
      <Ledger>
        {places.map((place) => {
          const rows = shown.filter((limit) => limit.jurisdiction === place);
          return (
            <Entry key={place} title={place}>
              <div>
                <Disclosure
                  summary={
                    <span>
                      {counted(rows.length, "limit")}
                      <span className="visually-hidden">, {place}</span>
                    </span>
                  }
                  open={places.length === 1}
                >
                  <LimitsTable place={place} rows={rows} today={today} />
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
function History({ limit }: { limit: PublicLimit }) {
  const line = historyLine(limit, historyOf(limit.family).map(publicLimit));
  return line === null ? null : <span className={styles.scope}>{line}</span>;
}

function LimitsTable({ place, rows, today }: { place: string; rows: PublicLimit[]; today: string }) {
  return (
    <DataTable
      caption={`Limits: ${place}`}
      hideCaption
      rows={rows}
      rowKey={(limit) => limit.id}
      columns={[
        {
          key: "title",
          head: "Limit",
          cell: (limit) => (
            <>
              <a href={paths.limit(limit.id)}>{limit.title}</a>
              <span className={styles.scope}>{limit.scope}</span>
            </>
          ),
        },
        { key: "element", head: "For", cell: (limit) => limit.substances.join(limit.sum ? " + " : ", ") },
        { key: "value", head: "Number", numeric: true, cell: (limit) => limitNumber(limit) },
        { key: "quantity", head: "What it is about", cell: (limit) => labelOf(quantityLabels, limit.quantity) },
        {
          key: "period",
          head: "In force",
          roomy: true,
          cell: (limit) => (
            <>
              {limitPeriodInFull(limit, today)}
              <History limit={limit} />
            </>
          ),
        },
        { key: "checked", head: "Checked", cell: (limit) => checkedText[limit.checked] },
      ]}
    />
  );
}

function Filters({ all, choice }: { all: PublicLimit[]; choice: Choice }) {
  return (
    <form action={paths.limits()} method="get" className={`${styles.filters} no-print`}>
      <SelectField
        name="place"
        label="Place"
        empty="Every place"
        defaultValue={choice.place}
        choices={unique(all.map((limit) => limit.jurisdiction)).map((value) => ({ value, label: value }))}
      />
      <SelectField
        name="element"
        label="Element"
        empty="Every element"
        defaultValue={choice.element}
        choices={unique(all.flatMap((limit) => limit.substances)).map((value) => ({
          value,
          label: elementTitle(value),
        }))}
      />
      <SelectField
        name="when"
        label="When"
        defaultValue={choice.when}
        empty="In force today"
        choices={[{ value: "all", label: "Of any date" }]}
      />
      <Actions>
        <Button type="submit">Show these</Button>
      </Actions>
    </form>
  );
}
