/** A log-likelihood with its slopes and second slopes in the parameter m that is asked about and the other one, r. */
export type Local = { l: number; gM: number; gR: number; hMM: number; hRR: number; hMR: number };

/** Where the likelihood is highest, and how r's best value moves with m there. */
export type Top = { l: number; m: number; r: number; drift: number };

const mostRounds = 25;

/**
 * One end of a profile interval by Newton in both parameters at once (after Venzon and Moolgavkar, Applied Statistics 37 (1988) 87, from
 * memory): the m on the side of `step` where the likelihood, highest in r, lies `cut`/2 below the top.
 *
 * Newton works on √deviance, which is nearly a straight line in m, with the profile and its slope taken from the point at hand by
 * their second-order correction in r. `least` and `most` bound r: with `bounded` the profile may lie on it, otherwise a search that gets
 * there is given up. Null wherever Newton does not settle or goes beyond `reach`; the caller then searches step by step. A second crossing farther
 * out is not looked for here.
 */
export function newtonProfileEnd(
  at: (m: number, r: number) => Local,
  top: Top,
  step: number,
  cut: number,
  { least, most, bounded, reach }: { least: number; most: number; bounded: boolean; reach: number },
): { m: number; r: number; drift: number } | null {
  const target = Math.sqrt(cut);
  const side = Math.sign(step);
  let m = top.m + step;
  let r = Math.max(least, top.r + Math.max(-1, Math.min(1, top.drift * step)));
  let inside = top.m;
  let outside = side * Number.POSITIVE_INFINITY;
  for (let round = 0; round < mostRounds; round++) {
    const { l, gM, gR, hRR, hMR } = at(m, r);
    const pinned = bounded && r <= least && gR <= 0;
    if (!pinned && !(hRR < 0)) return null;
    let dR = pinned ? 0 : -gR / hRR;
    if (r + dR < least) {
      if (!bounded) return null;
      dR = least - r;
    }
    if (Math.abs(dR) > 0.5) {
      r += Math.max(-1, Math.min(1, dR));
      if (!(r > least && r < most)) return null;
      continue;
    }
    const deviance = 2 * (top.l - l - gR * dR - 0.5 * hRR * dR * dR * (pinned ? 0 : 1));
    const slope = gM + hMR * dR;
    const root = Math.sqrt(Math.max(deviance, 0));
    if (root < target) inside = side > 0 ? Math.max(inside, m) : Math.min(inside, m);
    else outside = side > 0 ? Math.min(outside, m) : Math.max(outside, m);
    const gone = m - top.m;
    const newton = side * slope < 0 && root > 0 ? ((root - target) * root) / slope : gone;
    let next = m + Math.max(-Math.abs(gone), Math.min(Math.abs(gone), newton));
    const between = side > 0 ? next > inside && next < outside : next < inside && next > outside;
    const drift = pinned ? 0 : -hMR / hRR;
    const settled = Math.abs(newton) <= 1e-7 * Math.abs(gone) && Math.abs(dR) <= 1e-4;
    if (settled) return { m: m + newton, r: r + dR, drift };
    // Where nothing beyond the cut was met yet this is infinite, and so beyond reach.
    if (!between) next = 0.5 * (inside + outside);
    r = Math.max(least, r + dR + Math.max(-1, Math.min(1, drift * (next - m))));
    m = next;
    if (!(side * (reach - m) > 0 && r < most)) return null;
  }
  return null;
}
