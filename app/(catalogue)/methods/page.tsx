import type { Metadata } from "next";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { cautions } from "@/lib/wording/cautions.ts";
import { methodPage } from "@/lib/wording/method-page.ts";
import { CoverageTable } from "./coverage-table.tsx";

export const metadata: Metadata = { title: methodPage.title, description: methodPage.lead };

/** The method in plain words. */
export default function MethodsPage() {
  return (
    <>
      <PageHead title={methodPage.title}>
        <p className="answer">{methodPage.lead}</p>
        <p className="soft">{methodPage.policy}</p>
      </PageHead>
      <Ledger>
        {methodPage.steps.map((step, index) => (
          <Entry key={step.title} title={step.title} aside={`Step ${index + 1}`}>
            <p>{step.text}</p>
          </Entry>
        ))}
        <Entry title="What no reading tells">
          <p>{cautions["total-content"].text}</p>
          <p>{cautions["this-one-only"].text}</p>
        </Entry>
        <CoverageTable />
        <Entry title="Sources">
          <p>{methodPage.sources}</p>
        </Entry>
      </Ledger>
    </>
  );
}
