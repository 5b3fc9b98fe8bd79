import type { ReactNode } from "react";
import { SiteDocument } from "@/app/_site/document.tsx";

export default function StyleLayout({ children }: { children: ReactNode }) {
  return <SiteDocument language="en">{children}</SiteDocument>;
}
