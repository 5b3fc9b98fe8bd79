import type { Metadata } from "next";
import type { ReactNode } from "react";
import { requirePerson } from "@/lib/access/require-person.ts";
import { paths } from "@/lib/platform/paths.ts";

export const metadata: Metadata = { title: { default: "Review", template: "%s – Review" }, robots: { index: false } };

export default async function ReviewLayout({ children }: { children: ReactNode }) {
  await requirePerson("see-review", paths.review());
  return children;
}
