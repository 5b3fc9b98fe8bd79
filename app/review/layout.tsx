import type { Metadata } from "next";
import type { ReactNode } from "react";
import { WorkplaceBar } from "@/app/_components/workplace-bar.tsx";
import { SiteDocument } from "@/app/_site/document.tsx";
import { requirePerson } from "@/lib/access/require-person.ts";
import { paths } from "@/lib/platform/paths.ts";

export const metadata: Metadata = { title: { default: "Review", template: "%s – Review" }, robots: { index: false } };

export default async function ReviewLayout({ children }: { children: ReactNode }) {
  const person = await requirePerson("see-review", paths.review());
  return (
    <SiteDocument language="en">
      <WorkplaceBar person={person} current="review" />
      {children}
    </SiteDocument>
  );
}
