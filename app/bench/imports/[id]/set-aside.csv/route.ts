import Papa from "papaparse";
import { may } from "@/lib/access/permissions.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { batchTable } from "@/lib/store/batch-table.ts";
import { asideRows, findBatch } from "@/lib/store/imports.ts";
import { problemSentence } from "@/lib/wording/problems.ts";

type Params = { params: Promise<{ id: string }> };

/** The rows set aside, with their reasons and cells as written; formulas are guarded, since people open this in a spreadsheet. */
export async function GET(_: Request, { params }: Params): Promise<Response> {
  const { id } = await params;
  const { db, person } = await requestContext();
  if (!may(person, "see-bench").yes) return new Response("Sign in first.\n", { status: 403 });
  const batch = await findBatch(db, id);
  const table = batch ? await batchTable(db, batch) : null;
  if (!batch || !table?.ok) return new Response("No such file.\n", { status: 404 });
  const rows = (await asideRows(db, id)).filter((row) => row.mended === null);
  const lines = rows.map((row) => {
    const why = row.problems.map((p) =>
      problemSentence({
        code: p.code,
        where: { row: row.row, ...(p.column ? { column: p.column } : {}) },
        found: p.found,
        allowed: p.expected,
      }),
    );
    return [String(row.row), why.join(" "), ...row.cells];
  });
  const csv = Papa.unparse({ fields: ["row", "why", ...table.value.columns], data: lines }, { escapeFormulae: true });
  const name = `set-aside-${batch.fileName.replace(/[^\w.-]+/g, "_")}.csv`;
  return new Response(`\ufeff${csv}\r\n`, {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": `attachment; filename="${name}"`,
      "cache-control": "no-store",
    },
  });
}
