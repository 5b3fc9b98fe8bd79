import { randomStream } from "@/lib/statistics/random-stream.ts";

/**
 * A day's work in one file of the scenario's analyser A: 200 shots of 15 invented things and of a check standard that is read wrongly
 * in the middle of the day. The same seed writes the same bytes.
 */
export type JourneyThing = { sample: string; item: string; part: string; lead: number };

const names = [
  "amber sugar bowl",
  "blue milk jug",
  "cream gravy boat",
  "dotted egg cup",
  "earthen candle plate",
  "fluted cake dish",
  "grey oil cruet",
  "hen butter dish",
  "ivory salt pig",
  "jade tea caddy",
  "kite-mark saucer",
  "lilac soup plate",
  "mottled mixing bowl",
  "nutmeg spice jar",
  "olive pickle dish",
];

export const journeyThings: JourneyThing[] = names.map((name, at) => ({
  sample: `K${String(at + 1).padStart(2, "0")} ${name} / glaze, inside`,
  item: `K${String(at + 1).padStart(2, "0")} ${name}`,
  part: "glaze, inside",
  // From next to nothing to a leaded glaze, mg/kg.
  lead: [8, 35, 60, 85, 120, 240, 700, 1500, 4200, 30, 95, 15, 45, 380, 70][at] ?? 50,
}));

export const checkSample = "CHECK Rowan tile";
const elements = ["Pb", "Cd", "As", "Sb", "Cr", "Hg"];
/** mg/kg on the tile's certificate (sample-data/standards.ts). */
const certified: Record<string, number> = { Pb: 5150, Cd: 940, Sb: 260 };
/** Below this the analyser sees nothing; mg/kg. */
const limit: Record<string, number> = { Pb: 6, Cd: 12, As: 10, Sb: 16, Cr: 35, Hg: 6 };

type Shot = { sample: string; spot: string; seconds: number; content: Record<string, number> };

/** Checks stand at the start, after every third of the things, and at the end; those after the seventh thing read a quarter low. */
function shots(things: readonly JourneyThing[]): Shot[] {
  const check = (factor: number): Shot[] =>
    ["1", "2"].map((spot) => ({
      ...{ sample: checkSample, spot, seconds: 30 },
      content: Object.fromEntries(Object.entries(certified).map(([e, value]) => [e, value * factor])),
    }));
  const list: Shot[] = check(1);
  things.forEach(({ sample, lead }, at) => {
    const count = at < 10 ? 13 : 12;
    for (let n = 0; n < count; n += 1)
      list.push({ sample, spot: "abcd"[n % 4] ?? "a", seconds: 40, content: { Pb: lead, Cd: at % 4 === 1 ? 90 : 0 } });
    if (at === 4 || at === 9) list.push(...check(1));
    if (at === 6) list.push(...check(0.75));
  });
  return [...list, ...check(1)];
}

export type JourneyFile = { name: string; text: string; shots: number; checks: number };

/** `day`: of November 2026; also the seed. `things`: how many of the fifteen. */
export function journeyFile({ day = 21, things = 15 } = {}): JourneyFile {
  const random = randomStream(day);
  const all = shots(journeyThings.slice(0, things));
  const start = Date.UTC(2026, 10, day, 8, 30);
  const rows = all.map(({ sample, spot, seconds, content }, at) => {
    const clock = new Date(start + at * 75_000).toISOString();
    const results = elements.flatMap((element) => {
      const true_ = (content[element] ?? 0) * (1 + 0.03 * random.normal());
      const u = Math.sqrt(4 + (0.012 * true_) ** 2 + 0.4 * Math.max(true_, 0));
      const read = true_ + u * random.normal();
      const least = limit[element] ?? 10;
      return read > least
        ? [read.toFixed(1), u.toFixed(1)]
        : ["<LOD", (least * (1 + 0.1 * random.uniform())).toFixed(1)];
    });
    const cell = sample.includes(",") ? `"${sample}"` : sample;
    return [
      day * 1000 + at,
      `${clock.slice(0, 10)} ${clock.slice(11, 19)}`,
      seconds,
      "glass and glaze",
      cell,
      spot,
      ...results,
      "",
    ].join(",");
  });
  const header = [
    "Shot",
    "Clock",
    "Count time",
    "Mode",
    "Part",
    "Spot",
    ...elements.flatMap((e) => [e, `${e} +/-`]),
    "Remark",
  ];
  const preamble = [
    "Shelf analyser A, shot list",
    "Invented demonstration data: no real object was measured",
    "Serial,SA-0417",
    "Shot by,T. Quillfeather",
    "Results in ppm",
  ];
  return {
    name: `shelf-a-2026-11-${day}.csv`,
    text: `${[...preamble, header.join(","), ...rows].join("\n")}\n`,
    shots: all.length,
    checks: all.filter((shot) => shot.sample === checkSample).length,
  };
}
