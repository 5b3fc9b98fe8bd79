import type { Metadata } from "next";
import { PageHead } from "@/app/_components/entry.tsx";
import { labelBody, labelSize } from "@/app/_share/label-svg.ts";
import { type ShareProps, shareRevision } from "@/app/_share/share-revision.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { shareWords } from "@/lib/wording/share.ts";
import styles from "./labels.module.css";

export async function generateMetadata(props: ShareProps): Promise<Metadata> {
  const { item } = await shareRevision(props);
  return { title: shareWords.labelsTitle(item.snapshot.item.name), robots: { index: false } };
}

const onSheet = 24;

/** A sheet of labels for the object: three across, eight down, one A4 page. */
export default async function LabelsPage(props: ShareProps) {
  const { item } = await shareRevision(props);
  const { snapshot } = item;
  const { body, title } = labelBody(snapshot, environment().baseUrl);
  return (
    <>
      <div className="no-print">
        <PageHead title={shareWords.labelsTitle(snapshot.item.name)}>
          <p>
            {shareWords.labelsLead} {shareWords.print}
          </p>
          <p>
            <a href={paths.item(snapshot.slug)}>{snapshot.item.name}</a> ·{" "}
            <a href={paths.labelSvg(snapshot.slug)}>{shareWords.label}</a>
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
