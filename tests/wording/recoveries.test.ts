import { describe, expect, it } from "vitest";
import { recoveriesText } from "@/lib/wording/sessions.ts";

describe("recoveriesText", () => {
  it("says a range, one value, and what was missed", () => {
    expect(recoveriesText([0.98, 1.02, null])).toBe("0.98 to 1.02 of the certified value; 1 time not detected");
    expect(recoveriesText([1])).toBe("1 of the certified value");
  });
  it("has no range where no check found anything", () => {
    expect(recoveriesText([null, null])).toBe("2 times not detected");
    expect(recoveriesText([])).toBe("");
  });
});
