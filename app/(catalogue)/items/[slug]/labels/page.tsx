import type { Metadata } from "next";
import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { labelBody, labelSize } from "@/app/_share/label-svg.ts";
import { type ShareProps, shareRevision } from "@/app/_share/share-revision.ts";
import { alternates } from "@/app/_site/alternates.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { shareIn } from "@/lib/wording/share.ts";
import styles from "./labels.module.css";

export async function generateMetadata(props: ShareProps): Promise<Metadata> {
  const { language = "en" } = props;
  const { item } = await shareRevision(props);
  return {
    title: shareIn[language].labelsTitle(item.snapshot.item.name),
    robots: { index: false },
    alternates: alternates(paths.labels(item.snapshot.slug), language),
  };
}

const onSheet = 24;

/** A sheet of labels for the object: three across, eight down, one A4 page. */
export default async function LabelsPage(props: ShareProps) {
  const { language = "en" } = props;
  const [words, at] = [shareIn[language], pathsIn[language]];
  const { item } = await shareRevision(props);
  const { snapshot } = item;
  const { name } = snapshot.item;
  const { body, title } = labelBody(snapshot, environment().baseUrl, language);
  return (
    <>
      <div className="no-print">
        <PageHead title={<Told text={words.labelsTitle(name)} own={[name]} language={language} />}>
          <p>
            {words.labelsLead} {words.print}
          </p>
          <p>
            <a href={at.item(snapshot.slug)}>{asWritten(name, language)}</a> ·{" "}
            <a href={at.labelSvg(snapshot.slug)}>{words.label}</a>
          </p>
        </PageHead>
      </div>
      <div className={styles.sheet}>
        {Array.from({ length: onSheet }, (_, i) => (
          <svg
            // biome-ignore lint/suspicious/noArrayIndexKey: all alike
            key={i}
            className={styles.label}
            viewBox={`0 0 ${labelSize.width} ${labelSize.height}`}
            {...(i === 0 ? { role: "img", "aria-label": title } : { "aria-hidden": true })}
            // biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing, its texts escaped by xmlText
            dangerouslySetInnerHTML={{ __html: body }}
          />
        ))}
      </div>
    </>
  );
}
