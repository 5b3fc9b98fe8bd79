import { type Content, modes, type ShotGroup, type ShotPlan } from "./shot-plan.ts";

/**
 * Shots drawn from a plan by a seeded generator, so that the same plan gives the same files for ever. A toy model of an
 * analyser, good enough to look like one and no more: u² = (L/3)² + g·x, with L the detection limit in the time counted.
 */
export type ShotResult = { element: string; value: number; u: number; limit: number; detected: boolean };
export type Shot = {
  number: number;
  at: Date; // local clock written as if it were UTC: only its digits are used
  sample: string;
  spot: string;
  mode: string;
  seconds: number;
  remark: string;
  results: ShotResult[]; // one for each element of the mode, in column order
};

/** Mulberry32 on an FNV-1a hash of the text: public-domain generators, 32-bit integer arithmetic only. */
export function seeded(text: string): () => number {
  let state = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) state = Math.imul(state ^ text.charCodeAt(i), 0x01000193);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A standard normal draw (Box–Muller). */
const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

const atSpot = (content: Content | undefined, random: () => number): number => {
  if (content === undefined) return 0;
  if (typeof content === "number") return content;
  const s = Math.sqrt(Math.log(1 + content.spread ** 2));
  return content.mean * Math.exp(s * normal(random) - (s * s) / 2);
};

const counting: Record<string, number> = { film: 0.004 };

function readElement(
  element: string,
  content: number,
  lead: number,
  group: ShotGroup,
  random: () => number,
): ShotResult {
  const shortening = Math.sqrt(30 / group.seconds);
  // Lead's line sits on arsenic's: the more lead, the less arsenic can be told from nothing.
  const overlap = element === "As" ? 0.028 * lead : 0;
  const limit = (modes[group.mode]![element]! * (0.94 + 0.12 * random()) + overlap) * shortening;
  const g = (counting[group.mode] ?? 0.12) * (30 / group.seconds);
  const u = Math.sqrt((limit / 3) ** 2 + g * content);
  const value = content + u * normal(random);
  return { element, value, u, limit, detected: value > limit };
}

function shootGroup(group: ShotGroup, dayResponse: number, random: () => number): Omit<Shot, "number" | "at">[] {
  const response = dayResponse * (group.response ?? 1);
  return group.spots.flatMap((spot) => {
    const elements = Object.keys(modes[group.mode]!);
    const held = new Map(elements.map((e) => [e, atSpot(group.content[e], random) * response]));
    return Array.from({ length: group.perSpot ?? 1 }, (_, i) => {
      const missed = i === 0 && group.missed?.spot === spot ? group.missed.content : undefined;
      const of = (e: string) => (missed ? atSpot(missed[e], random) : held.get(e)!);
      return {
        sample: group.sample,
        spot,
        mode: group.mode,
        seconds: group.seconds,
        remark: i === 0 ? (group.remarks?.[spot] ?? "") : "",
        results: elements.map((e) => readElement(e, of(e), of("Pb"), group, random)),
      };
    });
  });
}

/** All shots of a plan in order of time. A change in one group leaves the numbers of the others alone. */
export function shoot(plan: ShotPlan): Shot[] {
  const clock = seeded(`${plan.file} clock`);
  let at = Date.parse(`${plan.start}Z`);
  let number = plan.firstNumber;
  return plan.groups.flatMap((group, index) => {
    if (index > 0) at += (group.pauseMinutes ?? 2) * 60_000 + Math.floor(clock() * 45) * 1000;
    const random = seeded(`${plan.file}|${group.sample}|${group.spots.join()}`);
    return shootGroup(group, plan.response, random).map((shot) => {
      const taken = { ...shot, number: number++, at: new Date(at) };
      at += (shot.seconds + 9 + Math.floor(clock() * 24)) * 1000;
      return taken;
    });
  });
}
