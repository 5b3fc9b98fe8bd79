import { describe, expect, it } from "vitest";
import { decide, heldOf } from "@/lib/limits/decide.ts";
import { evennessIsHidden, onLogScale } from "@/lib/reconcile/evenness.ts";
import { fewSpotsBound } from "@/lib/reconcile/few-spots-bound.ts";
import { defaultPolicy } from "@/lib/reconcile/types.ts";
import { censoredRandomEffects } from "@/lib/statistics/censored-random-effects.ts";
import { lognormalRandomEffects } from "@/lib/statistics/lognormal-random-effects.ts";
import { randomStream } from "@/lib/statistics/random-stream.ts";
import { missed, resultOf, seen } from "./shots.ts";

const policy = { spreadAllowed: 1, level: 0.95 } as const;

describe("the bound of a mean from few spots below a limit", () => {
  it("is the mean of the lognormal whose share below the limit is just 0.05^(1/n) (by hand: σ 0.8326, z −0.3361 for three spots)", () => {
    const sigma = Math.sqrt(Math.log(2));
    expect(fewSpotsBound(10, 3, 3, policy)).toBeCloseTo(10 * Math.exp(sigma ** 2 / 2 + 0.3361 * sigma), 2);
    expect(fewSpotsBound(10, 2, 2, policy)).toBeCloseTo(10 * Math.exp(sigma ** 2 / 2 + 0.7602 * sigma), 2);
  });
  it("takes Clopper and Pearson's least share where some were not below (2 of 3: 3F² − 2F³ = 0.05, F 0.13535)", () => {
    const sigma = Math.sqrt(Math.log(2));
    expect(3 * 0.13535 ** 2 - 2 * 0.13535 ** 3).toBeCloseTo(0.05, 4);
    expect(fewSpotsBound(10, 2, 3, policy)).toBeCloseTo(10 * Math.exp(sigma ** 2 / 2 + 1.1015 * sigma), 1);
  });
  it("comes down to the limit with eight spots, grows with the spread allowed, and leaves one spot alone", () => {
    expect(fewSpotsBound(10, 8, 8, policy)).toBe(10);
    expect(fewSpotsBound(10, 5, 5, policy)).toBeGreaterThan(fewSpotsBound(10, 5, 5, { ...policy, spreadAllowed: 0.5 }));
    expect(fewSpotsBound(10, 1, 1, policy)).toBe(10);
  });
  it("is passed by the true mean at most once in twenty, drawn from lognormals with the spread allowed", () => {
    const random = randomStream(8);
    const sigma = Math.sqrt(Math.log(2));
    for (const spots of [2, 3, 5]) {
      // The limit that makes the bound equal to the mean, 100: the worst there is.
      const limit = 100 / fewSpotsBound(1, spots, spots, policy);
      let allBelow = 0;
      for (let part = 0; part < 20_000; part++) {
        let below = true;
        for (let spot = 0; spot < spots; spot++)
          if (100 * Math.exp(sigma * random.normal() - sigma ** 2 / 2) >= limit) below = false;
        if (below) allBelow += 1;
      }
      expect(allBelow / 20_000).toBeGreaterThan(0.045);
      expect(allBelow / 20_000).toBeLessThan(0.055);
    }
  });
});

describe("what the bound decides", () => {
  const verdict = (result: ReturnType<typeof resultOf>, limit: number): string =>
    decide(heldOf(result), { value: limit, failsAt: ">", anyReportedValue: false }, 0.05).verdict;
  it("reports the limit reached and calls three spots below it only where the bound is", () => {
    const result = resultOf([missed(9), missed(10), missed(8)]);
    expect(result).toMatchObject({ state: "not-detected", below: 10, stated: { below: "10" } });
    expect(result.upperBound).toBeCloseTo(18.7, 1);
    expect([12, 18, 19].map((limit) => verdict(result, limit))).toEqual(["not-detected", "not-detected", "below"]);
  });
  it("lets one spot speak for itself", () => {
    expect(verdict(resultOf([missed(10)]), 10)).toBe("below");
  });
  it("bounds one detected spot of five no lower than the spots not seen allow", () => {
    const bound = resultOf([seen(21, 1), missed(20), missed(20), missed(20), missed(20)]).upperBound ?? 0;
    expect(bound).toBeGreaterThanOrEqual(fewSpotsBound(20, 4, 5, defaultPolicy));
  });
});

describe("errors that hide whether a part is even", () => {
  it("are those over a tenth of the mean (policy)", () => {
    expect(evennessIsHidden(100, [9, 9, 9], defaultPolicy)).toBe(false);
    expect(evennessIsHidden(100, [11, 11, 11], defaultPolicy)).toBe(true);
    expect(evennessIsHidden(-3, [11], defaultPolicy)).toBe(false);
  });
  it("move the upper end to the log scale and nothing else", () => {
    const [plain, wide] = [
      resultOf([seen(50, 15), seen(52, 15), seen(48, 15)], { policy: { evenSeenTo: 1 } }),
      resultOf([seen(50, 15), seen(52, 15), seen(48, 15)]),
    ];
    expect(wide.model).toBe("random-effects");
    expect(wide.value).toBe(plain.value);
    expect(wide.interval?.[0]).toBeCloseTo(plain.interval?.[0] ?? 0, 9);
    expect(wide.interval?.[1]).toBeCloseTo(onLogScale(50, plain.interval?.[1] ?? 0), 9);
    expect(wide.U).toBeNull();
  });
  it("leave the part of ordinary readings as it was", () => {
    const result = resultOf([seen(412, 9), seen(405, 8), seen(421, 10), seen(398, 9), seen(417, 9)]);
    expect(result.asymmetric).toBe(false);
    expect(result.stated).toMatchObject({ value: "410", U: "11" });
  });
});

describe("an uneven part with spots not seen", () => {
  it("ends as low as the lower of its two models", () => {
    const shots = [seen(40, 1), seen(30, 1), seen(45, 1), seen(34, 1), seen(52, 1), missed(28), missed(28)];
    const x = [40, 30, 45, 34, 52, 28, 28];
    const [u, censored] = [x.map(() => 1), x.map((_, i) => i > 4)];
    const normal = censoredRandomEffects(x, u, censored, { cut: "small-sample" });
    const lognormal = lognormalRandomEffects(x, u, censored);
    const result = resultOf(shots);
    expect(result.model).toBe("censored-lognormal");
    expect(normal.interval?.[0] ?? 0).toBeLessThan(lognormal.interval?.[0] ?? 0);
    expect(result.interval?.[0]).toBeCloseTo(normal.interval?.[0] ?? 0, 6);
    expect(result.interval?.[1]).toBeCloseTo(lognormal.interval?.[1] ?? 0, 6);
  });
});
