import type { Metadata } from "next";
import { PageHead } from "@/app/_components/entry.tsx";
import { SearchForm } from "@/app/_components/search-form.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Language } from "@/lib/wording/language.ts";
import { scanWordsIn } from "@/lib/wording/scan.ts";
import { Camera } from "./camera.tsx";

type Props = { language?: Language };

export function generateMetadata({ language = "en" }: Props): Metadata {
  const { open, hint } = scanWordsIn[language];
  return { title: open, description: hint, alternates: alternates(paths.scan(), language) };
}

/** A bar code held before the camera is looked up; its number can be typed as well. */
export default function ScanPage({ language = "en" }: Props) {
  const words = scanWordsIn[language];
  return (
    <>
      <PageHead title={words.title}>
        <p>{words.hint}</p>
      </PageHead>
      <Camera language={language} />
      <SearchForm id="scan-number" label={words.number} hint={words.numberHint} size="large" language={language} />
    </>
  );
}
