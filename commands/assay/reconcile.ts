import { sha256 } from "../../lib/platform/sha256.ts";
import { answerFor } from "./answer.ts";
import { readOptions } from "./options.ts";
import { readFile } from "./read-file.ts";
import { printedTable } from "./table.ts";

/** `npm run assay -- reconcile FILE`, CSV, XLSX or ODS: an instrument file to reported values, without a database. */
export async function run(args: string[]): Promise<number> {
  const options = readOptions(args);
  const answer = answerFor(await readFile(options), options.calibration, sha256);
  process.stdout.write(options.json ? `${JSON.stringify(answer, null, 2)}\n` : printedTable(answer));
  return 0;
}
