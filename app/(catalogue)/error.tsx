"use client";

import { type Broken, BrokenPage } from "@/app/_site/broken-page.tsx";

export default function BrokenCatalogue(broken: Broken) {
  return <BrokenPage {...broken} language="en" />;
}
