import { expect, it } from "vitest";
import { parseWrittenQuantity } from "@/lib/quantity/written-quantity.ts";
import { typedSentence, understoodMoment, understoodQuantity } from "@/lib/wording/typed-words.ts";

const read = (text: string) => {
  const outcome = parseWrittenQuantity(text, { wanted: "mg/kg" });
  if (!outcome.ok) throw new Error(text);
  return outcome.value;
};

it("says back what was typed, and what it is in the unit asked for", () => {
  expect(understoodQuantity(read("0,05 %"), "mg/kg")).toBe("Understood: 0.05 %, which is 500 mg/kg.");
  expect(understoodQuantity(read("412"), "mg/kg")).toBe("Understood: 412 mg/kg.");
  expect(understoodQuantity(read("412"), "mg/kg", read("35"))).toBe("Understood: 412 ± 35 mg/kg.");
  expect(understoodQuantity(read("0.05 %"), "mg/kg", read("30 ppm"))).toBe(
    "Understood: 0.05 % ± 30 ppm, which is 500 ± 30 mg/kg.",
  );
});

it("says what a date, a time and a zone mean together, and where they mean nothing", () => {
  const typed = { date: "2026-10-25", time: "02:30", zone: "Europe/Lisbon" };
  expect(understoodMoment(typed, "+00:00")).toBe("Understood: 25 October 2026, 02:30, Europe/Lisbon (UTC+00:00).");
  expect(understoodMoment(typed, "twice")).toContain("came twice");
  expect(understoodMoment(typed, "never")).toContain("never came");
  expect(understoodMoment({ ...typed, zone: "" }, null)).toContain("no zone yet");
  expect(understoodMoment({ ...typed, time: "" }, null)).toBeNull();
});

it("says to somebody who is typing how a number would be understood", () => {
  const said = (text: string) => {
    const outcome = parseWrittenQuantity(text, { wanted: "cm²" });
    return outcome.ok ? "" : typedSentence(outcome.problems[0] ?? { code: "" });
  };
  expect(said("1,234")).toBe("“1,234” can be read in two ways. Write 1234, or 1.2340.");
  expect(said("heavy")).toBe("“heavy” is not read as a number. Write one such as 12.5.");
  expect(said("12 mm")).toContain("no unit for this figure. Give it in cm²");
  expect(said("1e999")).toContain("power of ten");
});
