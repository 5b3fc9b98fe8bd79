import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { z } from "zod";
import { readingsAgree } from "../../lib/exports/readings-agree.ts";
import { readingsCsv } from "../../lib/exports/readings-csv.ts";
import { paths } from "../../lib/platform/paths.ts";
import { sha256 } from "../../lib/platform/sha256.ts";
import { verifySignature } from "../../lib/platform/signing-key.ts";
import { changedInputs, checkRevision } from "../../lib/publication/check-revision.ts";
import { readSnapshot } from "../../lib/publication/read-snapshot.ts";
import { recomputeSnapshot } from "../../lib/publication/recompute.ts";
import type { Snapshot } from "../../lib/publication/snapshot.ts";
import { resultText } from "../../lib/wording/formats.ts";
import { problemSentence } from "../../lib/wording/problems.ts";
import {
  differenceText,
  figuresText,
  recomputedTitle,
  recomputeWords,
  remadeText,
  reportLines,
  severalObjects,
} from "../../lib/wording/recompute.ts";
import { headName } from "./exported-paths.ts";
import { ask, logAnswerSchema, registryAddress } from "./fetched-log.ts";
import { why } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

type Bytes = Uint8Array<ArrayBuffer>;
type PublicFiles = { snapshot: Bytes; readings: string | null; log: z.infer<typeof logAnswerSchema> | null };

/**
 * `npm run assay -- reproduce URL|FILE`: works every result of a published revision out again from its public files, holds
 * each published figure beside its own, and checks the revision against the log. The address is that of an item, of one of
 * its revisions, or of its JSON; the file a snapshot, alone or in an exported folder with its log. Exit code 0 where all
 * agree, 1 where something differs.
 */
export async function run(args: string[]): Promise<number> {
  const [where, ...others] = args;
  if (where === undefined || where.startsWith("-"))
    throw new UsageError("Name what to reproduce: npm run assay -- reproduce URL|FILE.");
  if (others.length > 0) throw new UsageError(`One revision at a time: "${others[0]}" came after "${where}".`);
  const files = /^https?:\/\//i.test(where) ? await fetchedFiles(where) : filesBeside(where);
  const snapshot = read(files.snapshot, where);
  const digest = async (data: string | Uint8Array) => sha256(data);
  const results = recomputeSnapshot(snapshot);
  const { slug, revision } = snapshot;
  const report = {
    results,
    readings: readingsAgree(files.readings ?? readingsCsv(snapshot), snapshot),
    changedInputs: await changedInputs(results, digest),
    log:
      files.log &&
      (await checkRevision({ bytes: files.snapshot, slug, revision, log: files.log }, digest, async (...one) =>
        verifySignature(...one),
      )),
  };
  const lines = reportLines(report, {
    readings: files.readings !== null,
    noLog: "The revision was not held against a log: the file stands alone.",
  });
  process.stdout.write(`${snapshot.item.name}, revision ${revision}\n`);
  for (const result of results) {
    const name = recomputedTitle(result, severalObjects(results));
    process.stdout.write(
      `  ${name}: published ${resultText(result.published)}, made again ${remadeText(result)}; ${figuresText(result)}\n`,
    );
    for (const difference of result.differences) process.stdout.write(`    ${differenceText(difference)}\n`);
  }
  for (const { verdict, text } of lines) process.stdout.write(`${recomputeWords.verdictWords[verdict]}: ${text}\n`);
  const differing = lines.filter((one) => one.verdict === "differs");
  if (differing.length === 0) return 0;
  process.stderr.write(
    `This revision does not hold: ${differing.length === 1 ? "1 check" : `${differing.length} checks`} found a difference.\n`,
  );
  return 1;
}

function read(bytes: Bytes, where: string): Snapshot {
  const found = readSnapshot(new TextDecoder().decode(bytes));
  if (found.ok) return found.value;
  const [problem] = found.problems;
  throw new UsageError(`"${where}" is no published revision. ${problem ? problemSentence(problem) : ""}`.trim());
}

/** The three public files of a revision, from any of its addresses. */
async function fetchedFiles(address: string): Promise<PublicFiles> {
  const url = new URL(address);
  const [, before = "", slug, inPath] =
    /^(.*?)(?:\/api\/v1)?\/items\/([^/]+)(?:\/revisions\/(\d+))?\/?$/.exec(url.pathname) ?? [];
  if (slug === undefined)
    throw new UsageError(
      `"${address}" is not the address of an item: expected …/items/NAME or …/items/NAME/revisions/NUMBER.`,
    );
  const base = registryAddress(`${url.origin}${before}`);
  const number = inPath ?? url.searchParams.get("revision");
  const revision = number === null ? undefined : Number(number);
  const name = decodeURIComponent(slug);
  const snapshot = await ask(`${base}${paths.api.item(name, revision)}`);
  if (snapshot === null) throw new UsageError(`There is no published revision at ${address}.`);
  // The newest may move on meanwhile: the other files are asked for by the revision that came.
  const { revision: came } = read(snapshot, address);
  const [readings, log] = await Promise.all([
    ask(`${base}${paths.api.readings(name, came)}`),
    ask(`${base}${paths.api.log()}`),
  ]);
  return {
    snapshot,
    readings: new TextDecoder().decode(readings ?? new Uint8Array()),
    log: parsedLog(new TextDecoder().decode(log ?? new Uint8Array()), `${base}${paths.api.log()}`),
  };
}

/** A snapshot file, with the log of the exported folder it lies in (snapshots/NAME/NUMBER.json). */
function filesBeside(file: string): PublicFiles {
  let snapshot: Bytes;
  try {
    snapshot = new Uint8Array(readFileSync(file));
  } catch (error) {
    throw new UsageError(`"${file}" could not be read: ${why(error)}.`);
  }
  const folder = join(dirname(file), "..", "..");
  const at = join(folder, "log.json");
  if (!existsSync(at)) return { snapshot, readings: null, log: null };
  const log = parsedLog(readFileSync(at, "utf8"), at);
  const head = join(folder, headName);
  const signed = existsSync(head) ? { head: JSON.parse(readFileSync(head, "utf8")) as unknown } : {};
  return { snapshot, readings: null, log: { ...log, ...signed } };
}

function parsedLog(text: string, at: string): z.infer<typeof logAnswerSchema> {
  try {
    return logAnswerSchema.parse(JSON.parse(text));
  } catch {
    throw new UsageError(`${at} is no publication log.`);
  }
}
