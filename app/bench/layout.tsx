import type { Metadata } from "next";
import type { ReactNode } from "react";
import { WorkplaceBar } from "@/app/_components/workplace-bar.tsx";
import { SiteDocument } from "@/app/_site/document.tsx";
import { requirePerson } from "@/lib/access/require-person.ts";
import { paths } from "@/lib/platform/paths.ts";
import { OutboxNotice } from "./_offline/outbox-notice.tsx";

export const metadata: Metadata = { title: { default: "Bench", template: "%s – Bench" }, robots: { index: false } };

export default async function BenchLayout({ children }: { children: ReactNode }) {
  const person = await requirePerson("see-bench", paths.bench());
  return (
    <SiteDocument language="en">
      <WorkplaceBar person={person} current="bench" />
      <OutboxNotice personId={person.id} />
      {children}
    </SiteDocument>
  );
}
