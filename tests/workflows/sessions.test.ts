import { mkdtempSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readPrivate } from "@/lib/files/private-files.ts";
import type { Context } from "@/lib/platform/context.ts";
import { sha256 } from "@/lib/platform/sha256.ts";
import { assessItem } from "@/lib/publication/assess-item.ts";
import { draftSnapshot } from "@/lib/publication/build-snapshot.ts";
import { snapshotSchema } from "@/lib/publication/snapshot.ts";
import { workingItemOf } from "@/lib/publication/working-item-of.ts";
import { findCheckStandard } from "@/lib/store/check-standards.ts";
import { listReadings } from "@/lib/store/readings.ts";
import { checkedSessions, joinedAsItStands } from "@/lib/store/sessions.ts";
import { workingItem } from "@/lib/store/working-item.ts";
import { assignReadingsWorkflow } from "@/lib/workflows/assign-readings.ts";
import { createItemWorkflow } from "@/lib/workflows/create-item.ts";
import { addComponentWorkflow, addSpecimenWorkflow } from "@/lib/workflows/describe-specimen.ts";
import { importReadingsWorkflow } from "@/lib/workflows/import-readings.ts";
import { keepCertificateWorkflow } from "@/lib/workflows/keep-certificate.ts";
import { markCheckReadingsWorkflow } from "@/lib/workflows/mark-check-readings.ts";
import { pickSessionWorkflow } from "@/lib/workflows/pick-session.ts";
import { retireCheckStandardWorkflow, saveCheckStandardWorkflow } from "@/lib/workflows/save-check-standard.ts";
import { saveInstrumentWorkflow } from "@/lib/workflows/save-instrument.ts";
import { adjustSessionWorkflow, removeSessionWorkflow, saveSessionWorkflow } from "@/lib/workflows/save-session.ts";
import { mugWords, must } from "../support/bench-item.ts";
import { received } from "../support/small-file.ts";
import { contextAs } from "../support/test-context.ts";

/** Invented: a day on which the check in the middle reads 30 % low. Tile: 400 ± 8 ppm of lead. */
const day = [
  "No,Sample,Spot,Time,Mode,Pb (ppm),Pb err",
  "1,CHECK tile,,2026-04-30T09:00:00+02:00,glaze,402,8",
  "2,mug,a,2026-04-30T09:10:00+02:00,glaze,210,6",
  "3,mug,b,2026-04-30T09:12:00+02:00,glaze,214,6",
  "4,Check Tile,,2026-04-30T09:30:00+02:00,glaze,399,8",
  "5,mug,c,2026-04-30T09:40:00+02:00,glaze,148,5",
  "6,CHECK tile,,2026-04-30T10:00:00+02:00,glaze,281,7",
  "7,CHECK tile,,2026-04-30T10:20:00+02:00,glaze,401,8",
  "8,mug,d,2026-04-30T10:30:00+02:00,glaze,208,6",
  "9,CHECK tile,,2026-04-30T10:40:00+02:00,metal,400,8",
].join("\n");

const sitting = {
  timeZone: "Europe/Berlin",
  startedAt: "2026-04-30T08:50:00+02:00",
  endedAt: "2026-04-30T11:00:00+02:00",
  trained: true,
};
const tile = {
  name: "Tile",
  matrix: "glazed tile",
  material: "glaze" as const,
  modes: ["glaze"],
  otherNames: ["CHECK tile"],
  certified: { Pb: { value: 400, below: null, U: 8, k: 2 as const, unit: "ppm" as const } },
};

async function bench(context: Context, { shiftedFile = false } = {}) {
  const instrument = must(
    await saveInstrumentWorkflow(context, {
      name: "A",
      kind: "XRF",
      serial: "A-1",
      modes: ["glaze", "metal"],
      calibrationRel: 0.05,
    }),
  );
  const standard = must(await saveCheckStandardWorkflow(context, tile));
  const text = shiftedFile ? day.replaceAll("T09:", "T06:").replaceAll("T10:", "T07:") : day;
  const session = must(await saveSessionWorkflow(context, { ...sitting, instrumentId: instrument.id }));
  const { batchId, mapping } = await received(context, text, "day.csv");
  const done = must(await importReadingsWorkflow(context, { batchId, mapping, instrumentId: instrument.id }));
  return { instrument, standard, sessionId: session.id, batchId, done };
}

async function mugOf(context: Context, batchId: string) {
  const readings = await listReadings(context.db, { batchId, sample: "mug" });
  const item = must(await createItemWorkflow(context, mugWords));
  const specimen = must(
    await addSpecimenWorkflow(context, item.id, { label: "1", howGot: "given", whoPaid: "nobody" }),
  );
  const part = must(await addComponentWorkflow(context, specimen, { name: "glaze", material: "glaze", form: "bulk" }));
  const readingIds = readings.map((r) => r.id);
  must(await assignReadingsWorkflow(context, { readingIds, componentId: part.id, spot: { how: "as-written" } }));
  return { itemId: item.id, partId: part.id };
}

async function pageOf(context: Context, itemId: string) {
  const record = (await workingItem(context.db, itemId, "2026-05-04"))!;
  const assessed = assessItem(record.assess, sha256);
  const registry = { name: "R", invented: true, licence: "CC0", contact: null };
  const review = { reviewed: false, reviewers: [], reviewedOn: null, inputsDigest: null };
  const occasion = { registry, revision: 1, kind: "first" as const, reason: null, publishedAt: "2026-05-04T10:00:00Z" };
  const { snapshot } = draftSnapshot(workingItemOf(record, assessed, { ...occasion, testers: [], review }));
  const result = snapshot.specimens[0]!.parts[0]!.results.find((r) => r.element === "Pb")!;
  return { snapshot: snapshotSchema.parse(snapshot), result, digest: assessed.inputsDigest };
}

describe("a day with a failed check in the middle", () => {
  it("leaves out the readings between the good checks, says so, and shows the value with and without", async () => {
    const context = await contextAs("tester");
    const { batchId, done, sessionId } = await bench(context);
    expect(done.checks).toBe(5);
    const { itemId } = await mugOf(context, batchId);
    const { snapshot, result } = await pageOf(context, itemId);
    expect(result.counts).toMatchObject({ readings: 4, used: 3, setAside: 1 });
    expect(result.readings.find((r) => r.number === "5")?.setAside?.reason).toBe("session-check-failed");
    expect(result.flags).toEqual(expect.arrayContaining(["check-failed", "excluded-readings"]));
    expect(result.withSetAside?.value).toBeLessThan(result.value!);
    expect(result.fitness).toBe("fit");
    expect(result.budget.map((l) => l.code)).toEqual(expect.arrayContaining(["certified-value", "recovery"]));
    expect(result.budget.find((l) => l.code === "recovery")?.shared).toBe("A, 2026-04-30");
    const shown = snapshot.sessions?.[0];
    expect(shown?.id).toBe(sessionId);
    expect(shown?.fitness[0]).toMatchObject({ element: "Pb", mode: "glaze", state: "not-fit" });
    expect(shown?.fitness[0]?.standards[0]?.checks.map((c) => c.within)).toEqual([true, true, false, true]);
  });

  it("uses them only with a written reason, which the page carries and an approval is bound to", async () => {
    const context = await contextAs("tester");
    const { batchId, sessionId } = await bench(context);
    const { itemId } = await mugOf(context, batchId);
    const before = await pageOf(context, itemId);
    expect(await adjustSessionWorkflow(context, sessionId, { inDoubtReason: "why" })).toMatchObject({
      ok: false,
      problems: [{ code: "reason-too-short" }],
    });
    must(await adjustSessionWorkflow(context, sessionId, { inDoubtReason: "The tile had slipped; the mug had not." }));
    const { snapshot, result, digest } = await pageOf(context, itemId);
    expect(result.counts.setAside).toBe(0);
    expect([result.fitness, result.flags.includes("check-failed")]).toEqual(["not-fit", true]);
    expect(snapshot.sessions?.[0]?.inDoubtReason).toBe("The tile had slipped; the mug had not.");
    expect(digest).not.toBe(before.digest);
    must(await adjustSessionWorkflow(context, sessionId, { inDoubtReason: null }));
    expect((await pageOf(context, itemId)).digest).toBe(before.digest);
  });

  it("counts a check in the wrong mode for nothing, and says why", async () => {
    const context = await contextAs("tester");
    const { sessionId, standard } = await bench(context);
    const [checked] = await checkedSessions(context.db, [sessionId]);
    expect(checked?.fitness.uncounted).toEqual([
      { readingId: expect.any(String), standardId: standard.id, why: "wrong-mode" },
    ]);
  });
});

describe("check readings", () => {
  it("are put on no part, can be taken off and back, and a part's readings are not taken for checks unseen", async () => {
    const context = await contextAs("tester");
    const { batchId, standard } = await bench(context);
    const { partId } = await mugOf(context, batchId);
    const [check] = await listReadings(context.db, { batchId, check: true });
    const assign = { readingIds: [check!.id], componentId: partId, spot: { how: "each" as const } };
    expect(await assignReadingsWorkflow(context, assign)).toMatchObject({ problems: [{ code: "is-check-reading" }] });
    must(await markCheckReadingsWorkflow(context, { readingIds: [check!.id], checkStandardId: null }));
    expect(await listReadings(context.db, { batchId, check: true })).toHaveLength(4);
    const back = must(
      await markCheckReadingsWorkflow(context, { readingIds: [check!.id], checkStandardId: standard.id }),
    );
    expect(back.before).toEqual([{ readingId: check!.id, checkStandardId: null }]);
    const [mug] = await listReadings(context.db, { batchId, sample: "mug" });
    const wrong = await markCheckReadingsWorkflow(context, { readingIds: [mug!.id], checkStandardId: standard.id });
    expect(wrong).toMatchObject({ ok: false, problems: [{ code: "reading-on-part" }] });
  });

  it("of a retired standard are not recognised, and are again once it is back", async () => {
    const context = await contextAs("tester");
    const standard = must(await saveCheckStandardWorkflow(context, tile));
    must(await retireCheckStandardWorkflow(context, standard.id, true));
    const first = await received(context, day, "first.csv");
    expect(must(await importReadingsWorkflow(context, { ...first, instrumentId: null })).checks).toBe(0);
    must(await retireCheckStandardWorkflow(context, standard.id, false));
    const second = await received(context, day.replaceAll("2026-04-30", "2026-04-29"), "second.csv");
    expect(must(await importReadingsWorkflow(context, { ...second, instrumentId: null })).checks).toBe(5);
  });

  it("two standards never answer to one name", async () => {
    const context = await contextAs("tester");
    must(await saveCheckStandardWorkflow(context, tile));
    const again = await saveCheckStandardWorkflow(context, { ...tile, name: "Other", otherNames: ["check TILE"] });
    expect(again).toMatchObject({ ok: false, problems: [{ code: "standard-name-taken", allowed: "Tile" }] });
  });
});

describe("sessions and times", () => {
  it("a clock three hours slow is offered the shift, joins with it, and the day's checks then hold", async () => {
    const context = await contextAs("tester");
    const { sessionId, batchId } = await bench(context, { shiftedFile: true });
    const { gaps } = await joinedAsItStands(context.db, { batchId });
    expect(gaps[0]?.shift).toEqual({ sessionId, minutes: 180 });
    must(await adjustSessionWorkflow(context, sessionId, { clockShiftMinutes: 180 }));
    expect(await listReadings(context.db, { sessionId })).toHaveLength(9);
    const { itemId } = await mugOf(context, batchId);
    const { snapshot, result } = await pageOf(context, itemId);
    expect(result.counts).toMatchObject({ used: 3, setAside: 1 });
    expect(result.readings[0]?.takenAt).toBe("2026-04-30T06:10:00+02:00");
    expect(snapshot.sessions?.[0]).toMatchObject({ clockShiftMinutes: 180 });
    expect(snapshot.sessions?.[0]?.fitness[0]?.standards[0]?.checks[0]?.takenAt).toBe("2026-04-30T09:00:00+02:00");
  });

  it("a reading that two sessions claim is told, until a person says which has it", async () => {
    const context = await contextAs("tester");
    const { instrument, sessionId } = await bench(context);
    must(await removeSessionWorkflow(context, sessionId));
    const halves = [
      { ...sitting, instrumentId: instrument.id, endedAt: "2026-04-30T09:45:00+02:00" },
      { ...sitting, instrumentId: instrument.id, startedAt: "2026-04-30T09:35:00+02:00" },
    ];
    const [first, second] = [
      must(await saveSessionWorkflow(context, halves[0]!)),
      must(await saveSessionWorkflow(context, halves[1]!)),
    ];
    const claimed = (await listReadings(context.db, { text: "5" })).find((r) => r.number === "5")!;
    const claim = { id: claimed.id, sessionIds: [first.id, second.id] };
    // The one that was there first keeps what it had; both claim it, and that is told.
    expect((await joinedAsItStands(context.db)).overlaps).toEqual([{ ...claim, keptIn: first.id }]);
    must(await pickSessionWorkflow(context, { readingIds: [claimed.id], sessionId: null }));
    expect((await joinedAsItStands(context.db)).overlaps).toEqual([{ ...claim, keptIn: null }]);
    must(await pickSessionWorkflow(context, { readingIds: [claimed.id], sessionId: second.id }));
    expect((await listReadings(context.db, { sessionId: second.id })).map((r) => r.number)).toContain("5");
    const stranger = (await listReadings(context.db, { sessionId: first.id }))[0]!;
    expect(await pickSessionWorkflow(context, { readingIds: [stranger.id], sessionId: second.id })).toMatchObject({
      problems: [{ code: "not-a-claim" }],
    });
  });

  it("refuses an end before the start, and what a reviewer asks", async () => {
    const context = await contextAs("tester");
    const { instrument } = await bench(context);
    const upside = { ...sitting, instrumentId: instrument.id, endedAt: "2026-04-30T08:00:00+02:00" };
    expect(await saveSessionWorkflow(context, upside)).toMatchObject({ problems: [{ code: "ends-before-start" }] });
    const reviewer = await contextAs("reviewer", context.db);
    expect(await saveCheckStandardWorkflow(reviewer, tile)).toMatchObject({ problems: [{ code: "not-allowed" }] });
  });
});

describe("the record of an instrument", () => {
  it("says what errors cover in a mode where that differs, and readings take it", async () => {
    const context = await contextAs("tester");
    const instrument = must(
      await saveInstrumentWorkflow(context, {
        ...{ name: "A", kind: "XRF", serial: "A-1", modes: ["glaze", "metal"], errorK: 2, errorKByMode: { metal: 3 } },
      }),
    );
    const { batchId, mapping } = await received(context, day, "day.csv");
    must(await importReadingsWorkflow(context, { batchId, mapping, instrumentId: instrument.id }));
    const ks = (await listReadings(context.db, { batchId })).map((r) => [r.mode, r.results[0]?.k]);
    expect(ks.filter(([mode]) => mode === "metal")).toEqual([["metal", 3]]);
    expect(new Set(ks.filter(([mode]) => mode === "glaze").map(([, k]) => k))).toEqual(new Set([2]));
  });

  it("flags a value outside the calibrated range", async () => {
    const context = await contextAs("tester");
    const { batchId, instrument } = await bench(context);
    const { itemId } = await mugOf(context, batchId);
    expect((await pageOf(context, itemId)).result.flags).not.toContain("outside-calibrated-range");
    const range = { mode: "glaze", element: "Pb", low: 0.05, high: 1, unit: "%" as const };
    must(await saveInstrumentWorkflow(context, { ...instrument, calibratedRanges: [range] }, instrument.id));
    expect((await pageOf(context, itemId)).result.flags).toContain("outside-calibrated-range");
    const upside = { ...range, low: 2 };
    expect(
      await saveInstrumentWorkflow(context, { ...instrument, calibratedRanges: [upside] }, instrument.id),
    ).toMatchObject({ problems: [{ code: "range-upside-down" }] });
  });
});

it("a certificate is kept as it came, privately; what is none is refused and leaves no file", async () => {
  const context = await contextAs("tester");
  const dataDir = mkdtempSync(join(tmpdir(), "assay-certificate-"));
  const { id } = must(await saveCheckStandardWorkflow(context, tile));
  const text = new TextEncoder().encode("MZ no certificate");
  const refused = await keepCertificateWorkflow(context, dataDir, { id, name: "tile.pdf", bytes: text });
  expect(refused).toMatchObject({ ok: false, problems: [{ code: "certificate-kind" }] });
  expect(readdirSync(dataDir)).toEqual([]);
  const bytes = new TextEncoder().encode("%PDF-1.7 invented");
  const { key } = must(await keepCertificateWorkflow(context, dataDir, { id, name: "tile.pdf", bytes }));
  expect(Buffer.from((await readPrivate(dataDir, key))!)).toEqual(Buffer.from(bytes));
  expect(await findCheckStandard(context.db, { id })).toMatchObject({
    certificateKey: key,
    certificateName: "tile.pdf",
  });
});
