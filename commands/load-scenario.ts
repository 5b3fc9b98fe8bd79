import { randomBytes } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { addPerson } from "../lib/access/add-person.ts";
import { makeAuth } from "../lib/access/auth.ts";
import type { Person } from "../lib/access/permissions.ts";
import { setPassword } from "../lib/access/set-password.ts";
import type { Context } from "../lib/platform/context.ts";
import { environment } from "../lib/platform/environment.ts";
import { secretFile } from "../lib/platform/secret-file.ts";
import type { Outcome } from "../lib/quantity/problem.ts";
import { answerQuestions } from "../lib/readings/answer-questions.ts";
import { proposeMapping } from "../lib/readings/propose-mapping.ts";
import { batchTable } from "../lib/store/batch-table.ts";
import { type Database, openDatabase } from "../lib/store/database.ts";
import { itemDraft } from "../lib/store/item-draft.ts";
import { listPeople } from "../lib/store/people.ts";
import { saveRegistry } from "../lib/store/publications.ts";
import { listReadings, type StoredReading } from "../lib/store/readings.ts";
import { problemSentence } from "../lib/wording/problems.ts";
import { noTies } from "../lib/wording/review.ts";
import { addOtherTestWorkflow } from "../lib/workflows/add-other-test.ts";
import { addPhotoWorkflow } from "../lib/workflows/add-photo.ts";
import { assignReadingsWorkflow } from "../lib/workflows/assign-readings.ts";
import { claimItemWorkflow } from "../lib/workflows/claim-item.ts";
import { createItemWorkflow } from "../lib/workflows/create-item.ts";
import { addComponentWorkflow, addSpecimenWorkflow } from "../lib/workflows/describe-specimen.ts";
import { importReadingsWorkflow } from "../lib/workflows/import-readings.ts";
import { publishItemWorkflow } from "../lib/workflows/publish-item.ts";
import { receiveFileWorkflow } from "../lib/workflows/receive-file.ts";
import { reviewItemWorkflow, submitItemWorkflow } from "../lib/workflows/review-item.ts";
import { saveCheckStandardWorkflow } from "../lib/workflows/save-check-standard.ts";
import { saveInstrumentWorkflow } from "../lib/workflows/save-instrument.ts";
import { saveSessionWorkflow } from "../lib/workflows/save-session.ts";
import { setReadingAsideWorkflow } from "../lib/workflows/set-reading-aside.ts";
import { setTermsWorkflow } from "../lib/workflows/set-terms.ts";
import { otherTests } from "../sample-data/other-tests.ts";
import { scenario } from "../sample-data/scenario.ts";
import type { PersonKey, ScenarioFile, ScenarioItem } from "../sample-data/scenario-types.ts";

/**
 * Loads the invented scenario through the very workflows that people use, and prints three sign-ins with passwords
 * made now. On a second start only the passwords are made anew.
 */
const sampleData = join(import.meta.dirname, "..", "sample-data");

function must<T>(outcome: Outcome<T>, doing: string): T {
  if (outcome.ok) return outcome.value;
  throw new Error(`The scenario could not be loaded, ${doing}: ${outcome.problems.map(problemSentence).join(" ")}`);
}

type Loading = { db: Database; people: Record<PersonKey, Person>; as: (key: PersonKey, at?: string | null) => Context };

async function main(): Promise<void> {
  const { databaseUrl, baseUrl, port, dataDir } = environment();
  const db = openDatabase(databaseUrl);
  const auth = makeAuth(db, { baseUrl, port, secret: secretFile(dataDir, "auth-secret"), cookies: false });
  const fresh = (await listPeople(db)).length === 0;
  const signIns = await makePeople(db, auth);
  if (fresh) {
    console.log("Loading the invented scenario …");
    await loadAll({ db, people: signIns.people, as: contextOf(db, signIns.people) }, dataDir);
  }
  console.log(
    `\n${scenario.registry.name}: everything in it is invented.\n\n  ${baseUrl}\n\nSign-ins, with passwords made just now:`,
  );
  for (const { role, email, password } of signIns.lines)
    console.log(`  ${role.padEnd(9)} ${email.padEnd(32)} ${password}`);
  console.log("");
  await db.$disconnect();
}

async function makePeople(db: Database, auth: ReturnType<typeof makeAuth>) {
  const known = new Map((await listPeople(db)).map((p) => [p.email, p]));
  const people = {} as Record<PersonKey, Person>;
  const lines: { role: string; email: string; password: string }[] = [];
  for (const { key, name, email, role } of scenario.people) {
    const password = randomBytes(9).toString("base64url");
    const person = known.get(email.toLowerCase());
    if (person) await setPassword(auth, person.id, password);
    people[key] = person ?? (await addPerson(auth, { name, email, password, role }));
    lines.push({ role, email, password });
  }
  return { people, lines };
}

const contextOf =
  (db: Database, people: Record<PersonKey, Person>) =>
  (key: PersonKey, at: string | null = null): Context => ({
    db,
    person: people[key],
    clock: () => (at ? new Date(at) : new Date()),
  });

async function loadAll(loading: Loading, dataDir: string): Promise<void> {
  const { about: _, ...registry } = scenario.registry;
  await saveRegistry(loading.db, registry);
  // Some of its pages were published before the shelf asked for reviews; they say so.
  must(await setTermsWorkflow(loading.as("owner"), { ...termsOf(registry), approvalsNeeded: 0 }), "setting terms");
  const instrumentIds = new Map<string, string>();
  for (const i of scenario.instruments) {
    const fields = {
      name: i.name,
      kind: i.kind,
      serial: i.serial,
      modes: i.modes.map((m) => m.name),
      windowMm: i.windowMm,
      errorK: i.errorK,
      calibrationRel: i.calibrationRelativeU,
      timeZone: i.timeZone,
      minimumSeconds: i.minimumSeconds,
    };
    instrumentIds.set(i.key, must(await saveInstrumentWorkflow(loading.as("tester"), fields), `adding ${i.name}`).id);
  }
  await registerStandards(loading);
  await openSessions(loading, instrumentIds);
  const batches = new Map<string, string>();
  for (const file of scenario.files.filter((f) => f.load))
    batches.set(file.name, await loadFile(loading, file, instrumentIds.get(file.instrument) ?? null));
  const items = [...scenario.items].sort((a, b) => (a.stateAt ?? "9").localeCompare(b.stateAt ?? "9"));
  for (const item of items) await loadItem(loading, item, batches, dataDir);
  must(await setTermsWorkflow(loading.as("owner"), { ...termsOf(registry), approvalsNeeded: 1 }), "setting terms");
}

const termsOf = ({ licence, contact }: { licence: string; contact: string | null }) => ({
  licence,
  contact,
  rightOfReply:
    "A maker who sees it otherwise can write to the address above. The answer is shown on the item’s page, in full and with its date.",
});

async function loadFile({ as, db }: Loading, file: ScenarioFile, instrumentId: string | null): Promise<string> {
  const bytes = new Uint8Array(readFileSync(join(sampleData, "files", file.name)));
  const { batch } = must(await receiveFileWorkflow(as("tester"), { name: file.name, bytes }), `receiving ${file.name}`);
  const table = must(await batchTable(db, batch), `reading ${file.name}`);
  const proposed = proposeMapping(table).mapping;
  const { changes, errorK, timeZone, quantity, unit } = file.answers;
  const base = { ...proposed, roles: { ...proposed.roles, ...changes } };
  const mapping = must(
    answerQuestions(base, { k: errorK, timeZone, quantity, ...(unit ? { unit } : {}) }),
    `mapping ${file.name}`,
  );
  must(
    await importReadingsWorkflow(as("tester"), { batchId: batch.id, mapping, instrumentId }),
    `importing ${file.name}`,
  );
  return batch.id;
}

const readingsOf = (db: Database, batchId: string | undefined, sample: string): Promise<StoredReading[]> =>
  batchId === undefined ? Promise.resolve([]) : listReadings(db, { batchId, sample }, 10_000);

async function registerStandards({ as }: Loading): Promise<void> {
  for (const { name, matrix, material, unit, certificate, expires, ...standard } of scenario.standards) {
    const certified = Object.fromEntries(
      standard.certified.map(({ element, value, U, k }) => [
        element,
        value === null ? { value, below: U, U: null, k, unit } : { value, below: null, U, k, unit },
      ]),
    );
    const otherNames = [...new Set(standard.readings.map((r) => r.sample))];
    must(
      await saveCheckStandardWorkflow(as("tester"), {
        ...{ name, matrix, material, certified, certificate, expiresOn: expires, otherNames },
        modes: standard.modes,
      }),
      `registering ${name}`,
    );
  }
}

/** The sittings, so that the readings of the files find theirs when they are loaded. */
async function openSessions({ as }: Loading, instrumentIds: Map<string, string>): Promise<void> {
  for (const { key, instrument, operator, place, timeZone, start, end, conditions, corrections } of scenario.sessions) {
    const person = as(operator).person;
    must(
      await saveSessionWorkflow(as("tester"), {
        instrumentId: instrumentIds.get(instrument) ?? "",
        operatorId: person?.id ?? null,
        ...{ place, timeZone, conditions, corrections, startedAt: start, endedAt: end, trained: true },
      }),
      `opening the sitting ${key}`,
    );
  }
}

async function loadItem(
  loading: Loading,
  item: ScenarioItem,
  batches: Map<string, string>,
  dataDir: string,
): Promise<void> {
  const { db, as } = loading;
  const tester = as("tester", item.stateAt);
  const { name, aliases, marks, maker, gtin, category, ageGroup, foodContact, mouthable, description } = item;
  const words = { name, aliases, marks, maker, gtin, category, ageGroup, foodContact, mouthable, description };
  const { id } = must(await createItemWorkflow(tester, words, item.slug), `making ${item.name}`);
  for (const photo of item.photos) {
    const bytes = new Uint8Array(readFileSync(join(sampleData, "photos", photo.file)));
    const file = { name: photo.file, bytes };
    must(await addPhotoWorkflow(tester, { itemId: id, alt: photo.alt }, file, dataDir), `keeping ${photo.file}`);
  }
  for (const { components, ...specimen } of item.specimens) {
    const specimenId = must(await addSpecimenWorkflow(tester, id, specimen), `adding ${specimen.label}`);
    for (const { key: _, readings, ...component } of components) {
      const part = must(await addComponentWorkflow(tester, specimenId, component), `adding ${component.name}`);
      for (const { file, sample } of readings) {
        const found = await readingsOf(db, batches.get(file), sample);
        if (found.length === 0) continue;
        const readingIds = found.map((r) => r.id);
        const spot = { how: "as-written" } as const;
        must(await assignReadingsWorkflow(tester, { readingIds, componentId: part.id, spot }), `assigning ${sample}`);
      }
      for (const { slug, part: on, ...test } of otherTests)
        if (slug === item.slug && on === component.name && specimen.label === item.specimens[0]?.label)
          must(await addOtherTestWorkflow(tester, specimenId, { ...test, componentId: part.id }), `testing ${on}`);
    }
  }
  for (const { file, number, by, reason } of item.setAside) {
    const batchId = batches.get(file);
    if (!batchId) continue;
    const readingIds = (await listReadings(db, { batchId, text: number }, 10_000))
      .filter((r) => r.number === number)
      .map((r) => r.id);
    must(await setReadingAsideWorkflow(as(by, item.stateAt), { readingIds, reason }), `setting aside ${number}`);
  }
  await settleState(loading, item, id);
}

async function settleState({ db, as }: Loading, item: ScenarioItem, id: string): Promise<void> {
  if (item.state === "draft") return;
  const tester = as("tester", item.stateAt);
  must(await submitItemWorkflow(tester, { itemId: id, interests: noTies }), `submitting ${item.name}`);
  if (item.review) {
    const reviewer = as(item.review.by, item.review.on);
    must(await claimItemWorkflow(reviewer, { itemId: id, interests: noTies }), `claiming ${item.name}`);
    const shownDigest = (await itemDraft(db, id, { now: new Date(item.review.on) }))?.digest ?? "";
    must(
      await reviewItemWorkflow(reviewer, { itemId: id, decision: "approved", note: item.review.note, shownDigest }),
      `reviewing ${item.name}`,
    );
  }
  if (item.state === "published") must(await publishItemWorkflow(tester, { itemId: id }), `publishing ${item.name}`);
}

await main();
process.exit(0);
