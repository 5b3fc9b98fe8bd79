import { createHash } from "node:crypto";
import { infiniteThicknessMm } from "@/lib/attenuation/reading-depth.ts";
import { type SessionFitness, sessionFitness, shotFitness } from "@/lib/consistency/session-fitness.ts";
import type { QuantityKind } from "@/lib/quantity/kinds.ts";
import { answerQuestions } from "@/lib/readings/answer-questions.ts";
import { decodeBytes } from "@/lib/readings/decode-bytes.ts";
import { settleAndAsk } from "@/lib/readings/open-questions.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { readRows } from "@/lib/readings/read-rows.ts";
import { readTable } from "@/lib/readings/read-table.ts";
import { type PartReading, partInputs } from "@/lib/reconcile/part-inputs.ts";
import { reconcile } from "@/lib/reconcile/reconcile.ts";
import type { ReconcileInput, ReconcileResult } from "@/lib/reconcile/types.ts";
import { makeFiles } from "@/sample-data/make-files.ts";
import { scenario } from "@/sample-data/scenario.ts";
import type { FileName, ScenarioFile, ScenarioSession } from "@/sample-data/scenario-types.ts";

/** The scenario read without a database: file → readings with the stated answers → parts → results. */
const made = new Map(makeFiles().map((f) => [f.name, f]));

const must = <T>(outcome: { ok: true; value: T } | { ok: false; problems: unknown }): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

export function readScenarioFile(file: ScenarioFile) {
  const { answers } = file;
  const { text, encoding } = must(decodeBytes(made.get(file.name)!.bytes));
  const table = must(readTable(text));
  const proposed = proposeMapping(table).mapping;
  const chosen = { ...proposed, roles: { ...proposed.roles, ...answers.changes } };
  const { mapping, questions } = settleAndAsk(table, chosen);
  const answered = must(
    answerQuestions(mapping, {
      k: answers.errorK,
      timeZone: answers.timeZone,
      quantity: answers.quantity,
      ...(answers.unit ? { unit: answers.unit } : {}),
    }),
  );
  const { readings, setAside, account } = must(readRows(table, answered));
  return { encoding, table, mapping, questions, readings, setAside, account };
}

const kept = new Map<FileName, ReturnType<typeof readScenarioFile>["readings"]>();
const readingsOf = (name: FileName) => {
  const readings = kept.get(name) ?? readScenarioFile(scenario.files.find((f) => f.name === name)!).readings;
  kept.set(name, readings);
  return readings;
};
const sha256 = (text: string): string => createHash("sha256").update(text).digest("hex");

/** Every result of one part: `resultsOf("red-band-poppy-mug", 0, "band")`. */
export const resultsOf = (slug: string, specimen: number, key: string): ReconcileResult[] =>
  inputsOf(slug, specimen, key).map((input) => reconcile(input, sha256));

/** What reconcile is handed for one part: an input for each element, quantity kind and mode. */
export function inputsOf(slug: string, specimen: number, key: string): ReconcileInput[] {
  const item = scenario.items.find((i) => i.slug === slug)!;
  const component = item.specimens[specimen]!.components.find((c) => c.key === key)!;
  const readings = component.readings.flatMap(({ file, sample }) => {
    const owner = scenario.files.find((f) => f.name === file)!.instrument;
    const analyser = scenario.instruments.find((i) => i.key === owner)!;
    return readingsOf(file)
      .filter((r) => r.sample === sample)
      .map((r): PartReading => {
        const aside = item.setAside.find((s) => s.file === file && s.number === r.number);
        return {
          ...{ id: `${file} ${r.number}`, spot: r.spot, mode: r.mode, secondsCounted: r.secondsCounted },
          ...{ takenAt: r.takenAt, results: r.results },
          setAside: aside ? { reason: aside.reason } : null,
          instrument: {
            calibrationRel: analyser.calibrationRelativeU,
            windowMm: analyser.windowMm,
            minimumSeconds: analyser.minimumSeconds,
          },
        };
      });
  });
  const thickFor = (element: string) => infiniteThicknessMm(component.material, element);
  return partInputs(component, readings, thickFor, (reading, { element, quantity }) => {
    const session = scenario.sessions.find((s) => reading.id.startsWith(s.file))!;
    const about = { id: session.key, label: session.key, doubtAllowed: false };
    const shot = { element, quantity, mode: reading.mode, takenAt: reading.takenAt };
    return shotFitness(fitnessOf(session), about, shot, component.material);
  }).map(({ input }) => input);
}

const fitness = new Map<string, SessionFitness>();
/** What the check standards of a sitting show, worked out from the readings of its file. */
export function fitnessOf({ key, file, corrections }: ScenarioSession): SessionFitness {
  const known = fitness.get(key);
  if (known) return known;
  const standards = scenario.standards.map(({ expires, unit, certified, ...s }) => ({
    ...{ id: s.key, name: s.name, material: s.material, modes: s.modes, expiresOn: expires },
    certified: Object.fromEntries(
      certified.map(({ element, value, U, k }) => [
        element,
        value === null ? { value, below: U, U: null, k, unit } : { value, below: null, U, k, unit },
      ]),
    ),
  }));
  const checks = scenario.standards.flatMap(({ key: standardId, readings }) =>
    readingsOf(file)
      .filter((r) => readings.some((own) => own.file === file && own.sample === r.sample))
      .map(({ number, takenAt, mode, results }) => ({ id: `${number}`, standardId, takenAt, mode, results })),
  );
  const found = sessionFitness({ standards, checks, corrections });
  fitness.set(key, found);
  return found;
}

export const resultOf = (
  slug: string,
  key: string,
  element: string,
  quantity: QuantityKind = "bulk-mass-fraction",
  specimen = 0,
): ReconcileResult => resultsOf(slug, specimen, key).find((r) => r.element === element && r.quantity === quantity)!;
