import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { readPrivate } from "@/lib/files/private-files.ts";
import { sha256 } from "@/lib/platform/sha256.ts";
import { assessItem } from "@/lib/publication/assess-item.ts";
import { testsOfItem } from "@/lib/store/other-tests.ts";
import { workingItem } from "@/lib/store/working-item.ts";
import {
  addOtherTestWorkflow,
  keepTestCertificateWorkflow,
  removeOtherTestWorkflow,
} from "@/lib/workflows/add-other-test.ts";
import { removeObjectWorkflow } from "@/lib/workflows/remove-from-item.ts";
import { benchItem, must } from "../support/bench-item.ts";
import { contextAs } from "../support/test-context.ts";

const wipe = {
  ...{ kind: "wipe" as const, element: "pb", valueText: "< 5", unit: "µg/wipe", sampleAreaCm2: 464.5152 },
  ...{ laboratory: "Invented laboratory", method: "invented wipe method", blankText: "< 5 µg" },
};

it("a test stands with its object, beside the readings and never among them; its digest moves the approval", async () => {
  const context = await contextAs("tester");
  const { itemId, specimenId, partId } = await benchItem(context);
  const assessed = async () => assessItem((await workingItem(context.db, itemId, "2026-05-04"))!.assess, sha256);
  const before = await assessed();
  expect(before.specimens[0]).not.toHaveProperty("otherTests");
  const id = must(await addOtherTestWorkflow(context, specimenId, { ...wipe, componentId: partId }));
  const after = await assessed();
  expect(after.specimens[0]?.otherTests).toMatchObject([
    {
      kind: "wipe",
      part: partId,
      element: "Pb",
      valueText: "< 5",
      blankText: "< 5 µg",
      result: { value: null, unit: "µg/ft²" },
    },
  ]);
  expect(after.specimens[0]?.otherTests?.[0]?.result.below).toBeCloseTo(10, 10);
  expect(after.specimens[0]?.parts).toEqual(before.specimens[0]?.parts);
  expect(after.inputsDigest).not.toBe(before.inputsDigest);
  expect(await removeObjectWorkflow(context, specimenId)).toMatchObject({ problems: [{ code: "object-has-tests" }] });
  must(await removeOtherTestWorkflow(context, id, true));
  expect((await assessed()).inputsDigest).toBe(before.inputsDigest);
  must(await removeOtherTestWorkflow(context, id, false));
  expect(await testsOfItem(context.db, itemId)).toHaveLength(1);
});

it("the certificate is kept as it came, and only a certificate", async () => {
  const context = await contextAs("tester");
  const { itemId, specimenId } = await benchItem(context);
  const id = must(await addOtherTestWorkflow(context, specimenId, wipe));
  const dataDir = mkdtempSync(join(tmpdir(), "assay-test-"));
  const bytes = new TextEncoder().encode("%PDF-1.7 invented");
  const key = must(await keepTestCertificateWorkflow(context, dataDir, { id, name: "report.pdf", bytes }));
  expect(Buffer.from((await readPrivate(dataDir, key))!)).toEqual(Buffer.from(bytes));
  expect(await testsOfItem(context.db, itemId)).toMatchObject([{ certificateName: "report.pdf", certificateKey: key }]);
  const script = { id, name: "report.pdf", bytes: new TextEncoder().encode("#!/bin/sh") };
  expect(await keepTestCertificateWorkflow(context, dataDir, script)).toMatchObject({
    problems: [{ code: "certificate-kind" }],
  });
});

it("what cannot be written down says why", async () => {
  const context = await contextAs("tester");
  const { specimenId } = await benchItem(context);
  const code = async (change: object, id = specimenId) => {
    const outcome = await addOtherTestWorkflow(context, id, { ...wipe, ...change });
    return outcome.ok ? "taken" : outcome.problems[0]?.code;
  };
  expect(await code({ element: "Xx" })).toBe("element-unknown");
  expect(await code({ sampleAreaCm2: null })).toBe("area-zero");
  expect(await code({ unit: "mg/L" })).toBe("test-unit");
  expect(await code({ kind: "leachate", unit: "mg/L" })).toBe("test-without-part");
  expect(await code({ reportedOn: "2026-05-05" })).toBe("test-in-future");
  expect(await code({ uText: "about 3" })).toBe("test-uncertainty-unreadable");
  expect(await code({ componentId: "none" })).toBe("unknown-part");
  expect(await code({}, "none")).toBe("unknown-specimen");
});
