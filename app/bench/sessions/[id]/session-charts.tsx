import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry } from "@/app/_components/entry.tsx";
import { database } from "@/lib/store/database.ts";
import { type CheckedSession, checksOverTime } from "@/lib/store/sessions.ts";
import { aboutElement } from "@/lib/wording/sessions.ts";
import { CheckHistory } from "../../check-standards/check-history.tsx";

/** Each standard of the session, element by element, over all its readings with this analyser. */
export async function SessionCharts({ checked }: { checked: CheckedSession }) {
  const { session, fitness } = checked;
  const wanted = fitness.elements.flatMap((e) =>
    e.standards
      .filter((v) => v.certified !== null)
      .map((v) => ({ element: e.element, mode: e.mode, id: v.standard.id })),
  );
  if (wanted.length === 0) return null;
  const standards = checked.standards.filter((s) => wanted.some((w) => w.id === s.id));
  const overTime = await Promise.all(
    standards.map(async (standard) => {
      const own = (await checksOverTime(database(), standard)).find((o) => o.instrumentId === session.instrumentId);
      return { standard, elements: own?.fitness.elements ?? [] };
    }),
  );
  return (
    <Entry title="Over time" id="over-time" aside="every reading of the standard with this analyser">
      {overTime.flatMap(({ standard, elements }) =>
        elements
          .filter((e) => wanted.some((w) => w.id === standard.id && w.element === e.element && w.mode === e.mode))
          .map((e) => (
            <Disclosure
              key={`${standard.id} ${e.element} ${e.mode}`}
              summary={`${standard.name}: ${aboutElement(e.element, e.mode)}`}
            >
              <CheckHistory
                standard={standard.name}
                element={e.element}
                mode={e.mode}
                points={e.standards.flatMap((v) => v.checks)}
              />
            </Disclosure>
          )),
      )}
    </Entry>
  );
}
