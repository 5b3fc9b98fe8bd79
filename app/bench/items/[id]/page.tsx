import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { ButtonLink } from "@/app/_components/button.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { ThumbBar } from "@/app/_components/thumb-bar.tsx";
import { Notice } from "@/app/_components/warning.tsx";
import { loadDraft } from "@/app/_draft/load-draft.ts";
import { PartResults } from "@/app/_draft/part-results.tsx";
import { PastReviews } from "@/app/_draft/past-reviews.tsx";
import { ResultSummary } from "@/app/_draft/result-summary.tsx";
import { currentPerson } from "@/lib/access/current-person.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { allTestsOfItem } from "@/lib/store/other-tests.ts";
import { itemStateWords } from "@/lib/wording/bench.ts";
import { yesNo } from "@/lib/wording/catalogue.ts";
import { counted } from "@/lib/wording/formats.ts";
import { ageGroupLabels, categoryLabels, formLabels, labelOf, materialLabels } from "@/lib/wording/labels.ts";
import { stripKey } from "@/lib/wording/result-figures.ts";
import { BenchTabs } from "../../bench-tabs.tsx";
import { ItemFields } from "../item-fields.tsx";
import { editItem } from "./actions.ts";
import { NextEntry } from "./next-entry.tsx";
import { Objects } from "./objects.tsx";
import { BenchTests } from "./other-tests.tsx";
import { PartReadings } from "./part-readings.tsx";
import { Photos } from "./photos.tsx";
import { WhatNext } from "./what-next.tsx";

export const metadata: Metadata = { title: "Item" };

type Props = {
  params: Promise<{ id: string }>;
  searchParams: Promise<{ published?: string; photo?: string; test?: string }>;
};

/** An item at the bench: what it is, what was measured, what comes next. Every figure is worked out as the page is asked for. */
export default async function BenchItemPage({ params, searchParams }: Props) {
  const { id } = await params;
  const { published, photo, test } = await searchParams;
  const person = await currentPerson();
  const draft = await loadDraft(id, systemClock(), person?.id ?? null);
  if (!draft) notFound();
  const { record, snapshot, placed } = draft;
  const { item } = record;
  const tests = draft.blind ? [] : await allTestsOfItem(database(), item.id);
  const parts = snapshot.specimens.flatMap((specimen) => specimen.parts.map((part) => ({ specimen, part })));
  return (
    <>
      <PageHead
        title={item.name}
        kicker={
          <>
            {labelOf(categoryLabels, item.category)} · {itemStateWords[item.state]}
          </>
        }
      />
      <BenchTabs current={paths.bench()} />
      {published && draft.published ? (
        <Notice title={`Revision ${draft.published.revision} is published`} live>
          <p>
            Anybody can read it now: <a href={paths.item(item.slug)}>{paths.item(item.slug)}</a>
          </p>
        </Notice>
      ) : null}
      <Ledger>
        <Entry title="What comes next" id="next">
          <NextEntry draft={draft} />
        </Entry>
        <Entry title="The item in words" id="words">
          <Facts
            facts={[
              { name: "Marks on it", value: item.marks },
              { name: "Also called", value: item.aliases.join("; ") },
              { name: "Maker", value: item.maker },
              { name: "Product code", value: item.gtin },
              { name: "Made for", value: labelOf(ageGroupLabels, item.ageGroup) },
              { name: "Touches food or drink", value: yesNo(item.foodContact) },
              { name: "A child can put it in the mouth", value: yesNo(item.mouthable) },
              { name: "Description", value: item.description },
            ]}
          />
          <Disclosure summary="Change the words">
            <ActionForm action={editItem.bind(null, item.id)} submit="Save the words" submitKind="secondary">
              <ItemFields item={item} />
            </ActionForm>
          </Disclosure>
        </Entry>
        <Entry title="Objects and parts" id="objects" aside={counted(parts.length, "part")}>
          <Objects record={record} placed={placed} />
        </Entry>
        <Entry title="Other tests" id="tests">
          <BenchTests
            itemId={item.id}
            specimens={snapshot.specimens}
            certificates={
              new Map(tests.flatMap((t) => (t.certificateName ? [[t.id, t.certificateName] as const] : [])))
            }
            takenAway={tests.filter((t) => t.removed)}
            problem={test?.slice(0, 500)}
          />
        </Entry>
        <Entry title="Photos" id="photos">
          <Photos item={item} problem={photo?.slice(0, 500)} />
        </Entry>
        {placed.length > 0 ? (
          <Entry title="Results so far" id="results" aside={counted(placed.length, "result")}>
            <ResultSummary placed={placed} />
            <p className="soft small">{stripKey}</p>
          </Entry>
        ) : null}
        {parts.map(({ specimen, part }) => (
          <Entry
            key={part.id}
            id={`part-${part.id}`}
            title={part.name}
            aside={
              <>
                {snapshot.specimens.length > 1 ? `${specimen.label} · ` : ""}
                {labelOf(materialLabels, part.material)} · {formLabels[part.form].toLowerCase()}
              </>
            }
          >
            <PartResults placed={placed.filter((p) => p.part.id === part.id)} files={snapshot.files} />
            <WhatNext partId={part.id} draft={draft} />
            <PartReadings part={part} readings={record.readings.filter((r) => r.componentId === part.id)} />
          </Entry>
        ))}
        {draft.reviews.length > 0 ? (
          <Entry title="Reviews" id="reviews">
            <PastReviews reviews={draft.reviews} inputsDigest={draft.inputsDigest} />
          </Entry>
        ) : null}
      </Ledger>
      <ThumbBar>
        <ButtonLink kind="primary" href="#next">
          What comes next
        </ButtonLink>
      </ThumbBar>
    </>
  );
}
