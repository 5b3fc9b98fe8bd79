import { expect, it } from "vitest";
import { auditVerdict } from "@/commands/audit/verdict.mjs";

const today = "2026-11-28";
const found = (severity: string) =>
  JSON.stringify({
    vulnerabilities: {
      ladle: { severity, via: [{ source: 7, url: "https://advisories.example/7", title: "pours too much", severity }] },
      kettle: { severity, via: ["ladle"] },
    },
  });
const accepted = {
  package: "ladle",
  advisory: "https://advisories.example/7",
  until: "2027-01-31",
  reason: "We never pour with it; see decision 30.",
};

it("is skipped, and says so, where the registry has no audit or gives no answer", () => {
  const refused = auditVerdict(JSON.stringify({ message: "405 Method Not Allowed", method: "POST" }), [], today);
  expect(refused).toEqual({ state: "skipped", lines: [expect.stringContaining("405 Method Not Allowed")] });
  expect(auditVerdict("", [], today).state).toBe("skipped");
});

it("passes where nothing is known, or nothing worse than moderate", () => {
  expect(auditVerdict(JSON.stringify({ vulnerabilities: {} }), [], today)).toEqual({ state: "passed", lines: [] });
  expect(auditVerdict(found("moderate"), [], today).state).toBe("passed");
});

it("fails on a high one, unless somebody has given a reason that still counts", () => {
  expect(auditVerdict(found("high"), [], today)).toMatchObject({
    state: "FAILED",
    lines: [expect.stringMatching(/! ladle, high/)],
  });
  expect(auditVerdict(found("critical"), [accepted], today).state).toBe("passed");
  expect(auditVerdict(found("high"), [{ ...accepted, advisory: "https://advisories.example/8" }], today).state).toBe(
    "FAILED",
  );
});

it("fails on a reason that has run out, or is none", () => {
  expect(auditVerdict(found("high"), [{ ...accepted, until: "2026-11-27" }], today)).toMatchObject({
    state: "FAILED",
    lines: [expect.stringContaining("which is over"), expect.stringContaining("! ladle")],
  });
  expect(auditVerdict(found("low"), [{ ...accepted, reason: "fine" }], today).state).toBe("FAILED");
});
