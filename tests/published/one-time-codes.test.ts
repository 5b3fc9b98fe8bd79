import { createOTP } from "@better-auth/utils/otp";
import { afterEach, describe, expect, it, vi } from "vitest";
import { totp } from "../support/totp.ts";

/** RFC 6238 Appendix B, the lines of SHA-1: seconds since 1970 and the code of eight digits; the key is the ASCII text of 20 digits. From memory. */
const appendixB: [seconds: number, code: string][] = [
  [59, "94287082"],
  [1_111_111_109, "07081804"],
  [1_111_111_111, "14050471"],
  [1_234_567_890, "89005924"],
  [2_000_000_000, "69279037"],
  [20_000_000_000, "65353130"],
];
/** RFC 4226 Appendix D: the codes of the counters 0 to 9 for the same key. From memory. */
const appendixD = "755224 287082 359152 969429 338314 254676 287922 162583 399871 520489".split(" ");
const key = "12345678901234567890";

afterEach(() => vi.useRealTimers());

describe("codes by time, RFC 6238 Appendix B", () => {
  it.each(appendixB)(
    "at %i s: %s, by the library that asks for codes and by the tests' own app",
    async (seconds, code) => {
      vi.useFakeTimers({ now: seconds * 1000, toFake: ["Date"] });
      expect(await createOTP(key, { digits: 8, period: 30 }).totp()).toBe(code);
      expect(totp(Buffer.from(key), seconds * 1000, 8)).toBe(code);
      // As the product asks for them: the last six digits, and no others.
      const asked = createOTP(key, { digits: 6, period: 30 });
      expect(await asked.verify(code.slice(2))).toBe(true);
      expect(await asked.verify(code.slice(0, 6))).toBe(false);
    },
  );
});

it.each(appendixD.map((code, counter) => [counter, code] as const))(
  "codes by counter, RFC 4226 Appendix D: %i is %s",
  async (counter, code) => {
    expect(await createOTP(key).hotp(counter)).toBe(code);
  },
);
