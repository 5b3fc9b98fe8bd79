import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { counted } from "@/lib/wording/formats.ts";
import type { Draft } from "./load-draft.ts";
import { rowText } from "./remark-places.ts";

/** Every row behind the item, part by part, each with the way to remark on it. */
export function Rows({ draft: { record } }: { draft: Draft }) {
  const parts = record.item.specimens.flatMap((s) => s.components);
  return (
    <div>
      {parts.map((part) => {
        const own = record.readings.filter((r) => r.componentId === part.id);
        return own.length === 0 ? null : (
          <Disclosure key={part.id} summary={`${part.name}: ${counted(own.length, "row")}`}>
            <DataTable
              caption={`Rows on ${part.name}`}
              hideCaption
              rows={own}
              rowKey={(r) => r.id}
              muted={(r) => r.setAside !== null}
              rowNote={(r) => (r.setAside ? <>Set aside: {r.setAside.reason}</> : null)}
              columns={[
                { key: "spot", head: "Spot", cell: (r) => r.spot ?? "not named" },
                { key: "row", head: "File and row", cell: (r) => `${r.fileName}, ${r.row}` },
                { key: "results", head: "As written", roomy: true, cell: rowText },
                {
                  key: "remark",
                  head: "Remark",
                  cell: (r) => (
                    <a href={`?about=reading:${r.id}#remark`}>
                      Remark
                      <span className="visually-hidden">
                        {" "}
                        on row {r.row} of {r.fileName}
                      </span>
                    </a>
                  ),
                },
              ]}
            />
          </Disclosure>
        );
      })}
    </div>
  );
}
