import type { Metadata } from "next";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { paths } from "@/lib/platform/paths.ts";
import { cautionsIn } from "@/lib/wording/cautions.ts";
import type { Language } from "@/lib/wording/language.ts";
import { methodPageIn } from "@/lib/wording/method-page.ts";
import { CoverageTable } from "./coverage-table.tsx";

type Props = { language?: Language };

export function generateMetadata({ language = "en" }: Props): Metadata {
  const { title, lead } = methodPageIn[language];
  return { title, description: lead, alternates: alternates(paths.methods(), language) };
}

/** The method in plain words. */
export default function MethodsPage({ language = "en" }: Props) {
  const methodPage = methodPageIn[language];
  const cautions = cautionsIn[language].always;
  return (
    <>
      <PageHead title={methodPage.title}>
        <p className="answer">{methodPage.lead}</p>
        <p className="soft">{methodPage.policy}</p>
      </PageHead>
      <Ledger>
        {methodPage.steps.map((step, index) => (
          <Entry key={step.title} title={step.title} aside={methodPage.step(index + 1)}>
            <p>{step.text}</p>
          </Entry>
        ))}
        <Entry title={methodPage.notTold}>
          <p>{cautions["total-content"].text}</p>
          <p>{cautions["this-one-only"].text}</p>
        </Entry>
        <CoverageTable language={language} />
        <Entry title={methodPage.sourcesTitle}>
          <p>{methodPage.sources}</p>
        </Entry>
      </Ledger>
    </>
  );
}
