import { Told } from "@/app/_components/as-written.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import type { FieldChange } from "@/lib/publication/revision-difference.ts";
import type { LogEntry, Snapshot } from "@/lib/publication/snapshot.ts";
import { revisionLine } from "@/lib/wording/catalogue.ts";
import { changeSentence, isDerived, writtenIn } from "@/lib/wording/changes.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";

/** All revisions, and what this one changed against the one before it. */
export function History({
  snapshot,
  revisions,
  changes,
  language,
}: {
  snapshot: Snapshot;
  revisions: LogEntry[];
  changes: FieldChange[] | null;
  language: Language;
}) {
  const [paths, words] = [pathsIn[language], itemPageIn[language].history];
  const own = changes?.filter((change) => !isDerived(change)) ?? [];
  return (
    <>
      {snapshot.reason ? (
        <p>
          <Told text={words.why(snapshot.reason)} own={[snapshot.reason]} language={language} />
        </p>
      ) : null}
      <ol reversed={revisions.length > 1}>
        {[...revisions].reverse().map((entry) => (
          <li key={entry.revision} value={entry.revision}>
            {entry.revision === snapshot.revision ? (
              <>
                {revisionLine(entry, language)} <strong>{words.here}</strong>
              </>
            ) : (
              <a href={paths.revision(entry.slug, entry.revision)}>{revisionLine(entry, language)}</a>
            )}
          </li>
        ))}
      </ol>
      {changes === null ? null : (
        <div>
          <Disclosure summary={words.changed(snapshot.revision - 1, own.length)}>
            <ul>
              {own.map((change, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a fixed list
                <li key={index}>
                  <Told text={changeSentence(change, language)} own={writtenIn(change)} language={language} />
                </li>
              ))}
            </ul>
            <p className="small">
              <a href={paths.difference(snapshot.slug, snapshot.revision)}>{words.asTable}</a>
            </p>
            {own.length < changes.length ? (
              <p className="soft small">{words.more(changes.length - own.length)}</p>
            ) : null}
          </Disclosure>
        </div>
      )}
    </>
  );
}
