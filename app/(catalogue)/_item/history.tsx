import { Disclosure } from "@/app/_components/disclosure.tsx";
import { paths } from "@/lib/platform/paths.ts";
import type { FieldChange } from "@/lib/publication/revision-difference.ts";
import type { LogEntry, Snapshot } from "@/lib/publication/snapshot.ts";
import { revisionLine } from "@/lib/wording/catalogue.ts";
import { changeSentence, isDerived } from "@/lib/wording/changes.ts";
import { counted } from "@/lib/wording/formats.ts";

/** All revisions, and what this one changed against the one before it. */
export function History({
  snapshot,
  revisions,
  changes,
}: {
  snapshot: Snapshot;
  revisions: LogEntry[];
  changes: FieldChange[] | null;
}) {
  const own = changes?.filter((change) => !isDerived(change)) ?? [];
  return (
    <>
      {snapshot.reason ? <p>Why this revision: {snapshot.reason}</p> : null}
      <ol reversed={revisions.length > 1}>
        {[...revisions].reverse().map((entry) => (
          <li key={entry.revision} value={entry.revision}>
            {entry.revision === snapshot.revision ? (
              <>
                {revisionLine(entry)} <strong>(this page)</strong>
              </>
            ) : (
              <a href={paths.revision(entry.slug, entry.revision)}>{revisionLine(entry)}</a>
            )}
          </li>
        ))}
      </ol>
      {changes === null ? null : (
        <div>
          <Disclosure
            summary={`What changed against revision ${snapshot.revision - 1}: ${counted(own.length, "field")}`}
          >
            <ul>
              {own.map((change, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a fixed list
                <li key={index}>{changeSentence(change)}</li>
              ))}
            </ul>
            <p className="small">
              <a href={paths.difference(snapshot.slug, snapshot.revision)}>The same as a table, field by field</a>
            </p>
            {own.length < changes.length ? (
              <p className="soft small">{counted(changes.length - own.length, "more field")} followed from these.</p>
            ) : null}
          </Disclosure>
        </div>
      )}
    </>
  );
}
