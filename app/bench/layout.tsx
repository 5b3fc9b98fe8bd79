import type { Metadata } from "next";
import type { ReactNode } from "react";
import { requirePerson } from "@/lib/access/require-person.ts";
import { paths } from "@/lib/platform/paths.ts";

export const metadata: Metadata = { title: { default: "Bench", template: "%s – Bench" }, robots: { index: false } };

export default async function BenchLayout({ children }: { children: ReactNode }) {
  await requirePerson("see-bench", paths.bench());
  return children;
}
