import { PageHead } from "@/app/_components/entry.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { noSuchRevision } from "@/lib/wording/revisions.ts";

export default function NoSuchRevision() {
  return (
    <PageHead title={noSuchRevision.title}>
      <p>{noSuchRevision.text}</p>
      <p>
        <a href={paths.items()}>Search for the item</a>
      </p>
    </PageHead>
  );
}
