import type { ReactNode } from "react";
import { DataTable } from "@/app/_components/data-table.tsx";
import { PageLink } from "@/app/_components/page-link.tsx";
import { Verdict } from "@/app/_components/verdict.tsx";
import type { SnapshotDecision, SnapshotResult } from "@/lib/publication/snapshot.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { turnsText } from "@/lib/wording/guard-bands.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { sharedReasons } from "@/lib/wording/reasons.ts";
import { limitName, sureness, verdictsIn } from "@/lib/wording/verdicts.ts";
import { reasonShown } from "./reason-shown.ts";

/** How a result stands to every limit: a table of those it is held against, and why the others cannot be. */
export function Decisions({
  result,
  caption,
  language,
}: {
  result: SnapshotResult;
  caption: ReactNode;
  language: Language;
}) {
  const compared = result.decisions.filter((d) => d.applies !== "other-quantity");
  const others = result.decisions.filter((d) => d.applies === "other-quantity");
  return (
    <>
      {compared.length > 0 ? (
        <Compared result={result} decisions={compared} caption={caption} language={language} />
      ) : null}
      {others.length > 0 ? <NotComparable decisions={others} language={language} /> : null}
    </>
  );
}

/** Limits on something else than was measured: each reason once, with the limits it holds for. */
function NotComparable({ decisions, language }: { decisions: SnapshotDecision[]; language: Language }) {
  const { notComparable, fails } = itemPageIn[language];
  const say = verdictsIn[language];
  return (
    <>
      <h3>{notComparable.title}</h3>
      {sharedReasons(decisions, (d) => d.why).map(({ shared, each }) => (
        <div key={shared} className="small">
          <p>{reasonShown(shared, language)}</p>
          <ul>
            {each.map(({ of, own }) => (
              <li key={`${of.limitId} ${of.day} ${of.value}`}>
                <PageLink href={pathsIn[language].limit(of.limitId)} language={language}>
                  {limitName(of, language)}
                </PageLink>
                . {reasonShown(own, language)}{" "}
                {notComparable.about(
                  fails[of.failsAt],
                  plainDate(of.day, language),
                  say.whichDay[of.which],
                  say.checked[of.checked],
                )}
              </li>
            ))}
          </ul>
        </div>
      ))}
    </>
  );
}

function Compared({
  result,
  decisions,
  caption,
  language,
}: {
  result: SnapshotResult;
  decisions: SnapshotDecision[];
  caption: ReactNode;
  language: Language;
}) {
  const { decisions: heads, fails } = itemPageIn[language];
  const say = verdictsIn[language];
  return (
    <DataTable
      caption={caption}
      rows={decisions}
      rowKey={(d) => `${d.limitId} ${d.day} ${d.value}`}
      rowNote={(d) => reasonShown(d.why, language)}
      columns={[
        {
          key: "limit",
          head: heads.limit,
          roomy: true,
          cell: (d) => (
            <PageLink href={pathsIn[language].limit(d.limitId)} language={language}>
              {limitName(d, language)}
            </PageLink>
          ),
        },
        {
          key: "verdict",
          head: heads.verdict,
          cell: (d) => <Verdict verdict={d.verdict} words={say.verdicts[d.verdict]} />,
        },
        { key: "sure", roomy: true, head: heads.sure, cell: (d) => sureness(d, language) ?? "–" },
        { key: "turns", roomy: true, head: heads.turns, cell: (d) => turnsText(result, d, language) ?? "–" },
        {
          key: "fails",
          head: heads.fails,
          cell: (d) => fails[d.failsAt],
        },
        {
          key: "day",
          roomy: true,
          head: heads.day,
          cell: (d) => `${plainDate(d.day, language)}; ${say.whichDay[d.which]}`,
        },
        { key: "checked", head: heads.checked, roomy: true, cell: (d) => say.checked[d.checked] },
      ]}
    />
  );
}
