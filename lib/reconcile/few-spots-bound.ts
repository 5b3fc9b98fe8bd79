import { fQuantile, normalQuantile } from "../statistics/distributions.ts";
import type { Policy } from "./types.ts";

/**
 * How high the mean of a part can be, one-sided 95 %, when most of its spots lay below `limit` and nothing tells how much the part
 * differs from place to place:
 *
 *   limit · max(1, exp(σ²/2 − σ·z)),  σ² = ln(1 + spread²),  z = Φ⁻¹(F),
 *
 * F the least share of the part below the limit that `below` of `spots` allow (Clopper and Pearson, Biometrika 26 (1934) 404: the beta
 * quantile; 0.05^(1/n) where all were below), and `spread` the largest relative spread of contents allowed for (`spreadAllowed`, policy).
 * Any lognormal with that share below the limit and no more spread has its mean at or under the bound, whatever its values:
 * three spots below 10 can come from a mean of 18.7, eight cannot from one above 10.
 *
 * One spot says nothing of the rest of the part and speaks for itself alone: the limit as it is.
 *
 * Sources: the share, Clopper and Pearson (1934), and Wilks, Ann. Math. Statist. 12 (1941) 91 for all below (both from memory); the mean
 * of a lognormal from its quantile, Aitchison and Brown (1957, from memory); the spread allowed is the registry's policy.
 *
 * @example fewSpotsBound(10, 3, 3, { spreadAllowed: 1, level: 0.95 }) // 18.72
 */
export function fewSpotsBound(
  limit: number,
  below: number,
  spots: number,
  { spreadAllowed, level }: Pick<Policy, "spreadAllowed" | "level">,
): number {
  if (spots < 2 || below < 1) return limit;
  const [d1, d2] = [2 * below, 2 * (spots - below + 1)];
  const f = fQuantile(1 - level, d1, d2);
  const share = (d1 * f) / (d1 * f + d2);
  const sigma = Math.sqrt(Math.log1p(spreadAllowed ** 2));
  return limit * Math.max(1, Math.exp(sigma * (sigma / 2 - normalQuantile(share))));
}
