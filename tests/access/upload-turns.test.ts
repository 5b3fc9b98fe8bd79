import { expect, it } from "vitest";
import { takeUploadTurn } from "@/lib/access/upload-turns.ts";
import { contextAs, fixedNow, person } from "../support/test-context.ts";

it("lets one person send so many in a quarter of an hour, and another person as many", async () => {
  const context = await contextAs("tester");
  const other = { ...context, person: await person(context.db, "tester", "other") };
  for (let n = 0; n < 3; n += 1) expect(await takeUploadTurn(context, 3)).toBeNull();
  expect(await takeUploadTurn(context, 3)).toEqual({ code: "rate-limited", allowed: "15 minutes" });
  expect(await takeUploadTurn(other, 3)).toBeNull();
  const later = { ...context, clock: () => new Date(fixedNow.getTime() + 15 * 60_000 + 1) };
  expect(await takeUploadTurn(later, 3)).toBeNull();
});
