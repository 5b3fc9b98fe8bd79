import type { Answers } from "@/lib/readings/answer-questions.ts";
import { answerQuestions } from "@/lib/readings/answer-questions.ts";
import { type ColumnUse, usesOf } from "@/lib/readings/column-uses.ts";
import { gatherEvidence } from "@/lib/readings/gather-evidence.ts";
import { type Mapping, mappingSchema } from "@/lib/readings/mapping.ts";
import type { OpenedFile } from "@/lib/readings/open-file.ts";
import { type Question, settleAndAsk } from "@/lib/readings/open-questions.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { headerFingerprint, type Table } from "@/lib/readings/table.ts";
import type { Database } from "@/lib/store/database.ts";
import { type Batch, rememberedMapping } from "@/lib/store/imports.ts";
import { type Instrument, listInstruments } from "@/lib/store/instruments.ts";

/** Everything the mapping screen shows of a waiting file. */
export type MappingView = {
  table: Table;
  sheet: string | null;
  sheets: OpenedFile["sheets"];
  mapping: Mapping;
  source: "draft" | "remembered" | "proposed";
  uses: ColumnUse[];
  samples: string[][];
  questions: Question[];
  modes: string[];
  notices: ReturnType<typeof proposeMapping>["notices"];
  instruments: Instrument[];
  instrument: Instrument | null;
};

export async function mappingView(db: Database, batch: Batch, file: OpenedFile): Promise<MappingView> {
  const { table, sheet, sheets } = file;
  const instruments = await listInstruments(db);
  const proposal = proposeMapping(table);
  const { mapping: start, source, remembered } = await startingMapping(db, batch, file);
  const named = batch.instrumentId ?? remembered?.instrumentId ?? null;
  const instrument = instruments.find((i) => i.id === named) ?? instrumentNamedIn(table, start, instruments);
  const known = answerQuestions(start, answersOfInstrument(instrument, start));
  const { mapping, questions } = settleAndAsk(table, known.ok ? known.value : start);
  return {
    ...{ table, sheet, sheets },
    mapping,
    source,
    uses: usesOf(table, mapping),
    samples: table.columns.map((_, at) => samplesOf(table, at)),
    questions,
    modes: [...gatherEvidence(table, mapping).modes].sort(),
    notices: proposal.notices,
    instruments,
    instrument,
  };
}

/**
 * Where a waiting file's mapping starts: what was said of it so far, else what was said of a file with the same header, else what the
 * header seems to say. The screen and the form that it sends start from the same.
 */
export async function startingMapping(
  db: Database,
  batch: Batch,
  { table, sheet }: OpenedFile,
): Promise<{ mapping: Mapping; source: MappingView["source"]; remembered: RememberedMapping | null }> {
  const drafted = draftOf(batch, sheet);
  if (drafted) return { mapping: { ...drafted, sheet }, source: "draft", remembered: null };
  const remembered = await rememberedMapping(db, headerFingerprint(table));
  if (!remembered) return { mapping: { ...proposeMapping(table).mapping, sheet }, source: "proposed", remembered };
  return {
    mapping: { ...mappingSchema.parse(JSON.parse(remembered.mapping)), sheet },
    source: "remembered",
    remembered,
  };
}
type RememberedMapping = NonNullable<Awaited<ReturnType<typeof rememberedMapping>>>;

/** What was said so far, where it was said of this very sheet. */
function draftOf(batch: Batch, sheet: string | null): Mapping | null {
  const draft = batch.mapping === null ? null : mappingSchema.parse(JSON.parse(batch.mapping));
  return draft?.sheet === sheet ? draft : null;
}

const answersOfInstrument = (instrument: Instrument | null, mapping: Mapping): Answers => ({
  ...(instrument?.errorK ? { k: instrument.errorK } : {}),
  ...(instrument?.timeZone && mapping.timeZone === null ? { timeZone: instrument.timeZone } : {}),
});

/** The analyser whose serial number stands in the file: in its serial column or above the header. */
function instrumentNamedIn(table: Table, mapping: Mapping, instruments: readonly Instrument[]): Instrument | null {
  const at = mapping.roles.serial ? table.columns.indexOf(mapping.roles.serial) : -1;
  const texts = new Set<string>();
  for (const row of table.rows) {
    if (row.kind === "preamble") for (const cell of row.cells) texts.add(cell.trim());
    if (row.kind === "data" && at >= 0) texts.add((row.cells[at] ?? "").trim());
  }
  const found = instruments.filter((i) =>
    [...texts].some((text) => text === i.serial || text.split(/[\s:,]+/).includes(i.serial)),
  );
  return found.length === 1 ? found[0]! : null;
}

function samplesOf(table: Table, at: number): string[] {
  const samples: string[] = [];
  for (const row of table.rows) {
    const cell = row.kind === "data" ? (row.cells[at] ?? "").trim() : "";
    if (cell !== "" && !samples.includes(cell)) samples.push(cell);
    if (samples.length === 3) break;
  }
  return samples;
}
