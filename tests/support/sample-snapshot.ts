import type {
  LogEntry,
  Snapshot,
  SnapshotDecision,
  SnapshotPart,
  SnapshotReading,
  SnapshotResult,
} from "@/lib/publication/snapshot.ts";

/**
 * An invented snapshot for tests: a child's mug with leaded glaze, one part for every state a result can be in. No such
 * mug, maker, tester or instrument exists. The figures are hand-made but hang together: spots are inverse-variance means
 * of their shots, parts are random-effects means of their spots, and U is k·u_c.
 *
 *   sampleSnapshot()                     the whole mug, six parts
 *   sampleSnapshotOf("too-close")        the same mug with only the part in that state
 *   sampleSnapshot({ revision: 2, … })   with top-level keys replaced
 */
export const sampleStates = ["above", "too-close", "below", "not-detected", "not-quantified", "uneven"] as const;
export type SampleState = (typeof sampleStates)[number];

export const sampleFile = { name: "shelf-mugs.csv", sha256: "3f".repeat(32), rows: 32 };
const digest = "c4".repeat(32);

/** A shot as the file would write it; an error text covers two standard uncertainties, as the analyser states. */
type Shot = { row: number; spot: string; text: string; error?: string; setAside?: string };

const written = (text: string) => ({ text, value: Number(text), decimals: text.split(".")[1]?.length ?? 0 });

function reading(element: string, shot: Shot): SnapshotReading {
  const below = shot.text.startsWith("<");
  const minute = String(10 + shot.row).padStart(2, "0");
  return {
    id: `r${shot.row}-${element}`,
    row: shot.row,
    file: sampleFile.sha256,
    number: String(100 + shot.row),
    takenAt: `2026-11-14T10:${minute}:00+01:00`,
    takenAtText: `14.11.2026 10:${minute}`,
    secondsCounted: 60,
    mode: "Coatings",
    spot: shot.spot,
    belowDetection: below,
    value: below ? null : written(shot.text),
    error: shot.error === undefined ? null : written(shot.error),
    k: shot.error === undefined ? null : 2,
    detectionLimit: below ? written(shot.text.slice(1).trim()) : null,
    unit: "ppm",
    setAside: shot.setAside === undefined ? null : { reason: shot.setAside },
  };
}

/** Spots of a part from its shots, by step 2 of the method; a spot whose shots are all below detection has no value. */
function spotsOf(readings: SnapshotReading[]): SnapshotResult["spots"] {
  const names = [...new Set(readings.filter((r) => r.setAside === null).map((r) => r.spot))];
  return names.map((spot) => {
    const shots = readings.filter((r) => r.spot === spot && r.setAside === null);
    const found = shots.flatMap((r) =>
      r.value && r.error ? [{ x: r.value.value, u: r.error.value / (r.k ?? 1) }] : [],
    );
    const limits = shots.flatMap((r) => (r.detectionLimit ? [r.detectionLimit.value] : []));
    const weight = found.reduce((sum, f) => sum + f.u ** -2, 0);
    const mean = found.reduce((sum, f) => sum + f.x * f.u ** -2, 0) / weight;
    const q = found.reduce((sum, f) => sum + ((f.x - mean) / f.u) ** 2, 0);
    const birge = found.length > 1 ? Math.sqrt(q / (found.length - 1)) : null;
    const detected = found.length > 0;
    return {
      spot,
      shots: shots.map((r) => r.id),
      detected,
      value: detected ? mean : null,
      u: detected ? weight ** -0.5 * Math.max(1, birge ?? 1) : null,
      below: detected ? null : Math.min(...limits),
      birge,
    };
  });
}

function result(element: string, shots: Shot[], change: Partial<SnapshotResult>): SnapshotResult {
  const readings = shots.map((shot) => reading(element, shot));
  const spots = spotsOf(readings);
  const detected = spots.flatMap((s) => (s.value === null ? [] : [{ spot: s.spot, value: s.value, u: s.u }]));
  const values = detected.map((s) => s.value);
  return {
    element,
    quantity: "coating-mass-fraction",
    unit: "mg/kg",
    method: { name: "cupboard-assay-reconcile", version: "1", policy: "1" },
    inputsDigest: digest,
    state: "quantified",
    model: "random-effects",
    value: null,
    u: null,
    U: null,
    k: null,
    nuEff: null,
    interval: null,
    asymmetric: false,
    below: null,
    upperBound: null,
    stated: { value: "", U: null, interval: null, below: null },
    spots,
    highestSpot: detected.length ? detected.reduce((a, b) => (b.value > a.value ? b : a)) : null,
    range: values.length ? [Math.min(...values), Math.max(...values)] : null,
    counts: {
      readings: readings.length,
      used: readings.filter((r) => r.setAside === null).length,
      setAside: readings.filter((r) => r.setAside !== null).length,
      spots: spots.length,
      spotsDetected: detected.length,
    },
    scatter: null,
    budget: [],
    flags: [],
    withSetAside: null,
    crossCheck: null,
    notes: [],
    readings,
    decisions: [],
    ...change,
  };
}

const childrens: SnapshotDecision = {
  limitId: "us-cpsia-lead-100",
  title: "US children's products",
  jurisdiction: "US",
  value: 100,
  unit: "mg/kg",
  failsAt: ">",
  applies: "applies",
  why: "The mug is made for children of 12 or younger and a child can touch this part.",
  verdict: "above",
  probabilityAbove: 1,
  day: "2026-11-14",
  which: "both",
  checked: "verified",
};
const paint: SnapshotDecision = {
  ...childrens,
  limitId: "us-paint-lead-90",
  title: "US paint on children's goods",
  value: 90,
  why: "The band is painted on, and the mug is made for children.",
};
const leach: SnapshotDecision = {
  ...childrens,
  limitId: "us-ceramic-leach-lead",
  title: "US lead leaching from cups and mugs",
  value: 0.5,
  unit: "µg/mL",
  applies: "other-quantity",
  why: "That limit is for lead that comes out into a weak acid. A laboratory leach test would be needed.",
  verdict: "cannot-say",
  probabilityAbove: null,
  checked: "from memory",
};

const calibration = "instrument-default";

const part = (id: string, name: string, material: string, form: SnapshotPart["form"], results: SnapshotResult[]) => ({
  id,
  name,
  material,
  form,
  accessible: true,
  thicknessMm: form === "coating" ? 0.25 : 3.5,
  areaCm2: null,
  massG: null,
  results,
});

const makers: Record<SampleState, () => SnapshotPart> = {
  above: () =>
    part("p-glaze-out", "glaze, outside", "glaze", "coating", [
      result(
        "Pb",
        [
          { row: 5, spot: "A", text: "398", error: "12" },
          { row: 6, spot: "A", text: "404", error: "12.2" },
          { row: 7, spot: "B", text: "421", error: "13" },
          { row: 8, spot: "B", text: "425", error: "13.2" },
          { row: 9, spot: "C", text: "409", error: "12.4" },
          { row: 10, spot: "C", text: "415", error: "12.6" },
          { row: 11, spot: "C", text: "12", error: "3", setAside: "The nose slipped off the mug during the shot." },
        ],
        {
          value: 411.8620090873221,
          u: 17.657032781685412,
          U: 34.96169587578103,
          k: 1.9800436635109333,
          nuEff: 119.32982494772808,
          interval: [376.90031321154106, 446.8237049631032],
          stated: { value: "412", U: "35", interval: ["377", "447"], below: null },
          scatter: {
            q: 12.224158232927918,
            df: 2,
            p: 0.0022159388251354515,
            tau: 10.066938283085017,
            relative: 0.0244,
          },
          budget: [
            {
              code: "scatter-and-counting",
              value: 411.8620090873221,
              u: 6.353133353424964,
              nu: 2,
              type: "A",
              share: 0.1294614586902532,
              source: "random-effects",
            },
            {
              code: "calibration",
              value: null,
              u: 16.474480363492884,
              nu: null,
              type: "B",
              share: 0.8705385413097468,
              source: calibration,
            },
          ],
          flags: ["scatter-beyond-counting", "excluded-readings", "check-missing", "screening-only"],
          withSetAside: { value: 344.9, interval: [130.2, 559.6] },
          crossCheck: {
            median: 411.9520030718034,
            scaledMad: 16.3,
            algorithmA: null,
            leaveOneOut: [406.3, 417.4],
            candidates: [],
          },
          decisions: [childrens, leach],
        },
      ),
    ]),
  "too-close": () =>
    part("p-rim", "painted rim band", "paint", "coating", [
      result(
        "Pb",
        [
          { row: 12, spot: "A", text: "93", error: "5" },
          { row: 13, spot: "A", text: "91", error: "4.8" },
          { row: 14, spot: "B", text: "97", error: "5.2" },
          { row: 15, spot: "B", text: "95", error: "5" },
          { row: 16, spot: "C", text: "89", error: "4.8" },
          { row: 17, spot: "C", text: "88", error: "4.8" },
        ],
        {
          value: 92.1069736550837,
          u: 3.503073632958267,
          U: 7.512737774745716,
          k: 2.144613148882451,
          nuEff: 14.01208564409675,
          interval: [84.59423588033799, 99.61971142982942],
          stated: { value: "92.1", U: "7.5", interval: ["84.6", "99.6"], below: null },
          scatter: { q: 9.084710174129782, df: 2, p: 0.010648299328265751, tau: 3.29675780799604, relative: 0.0358 },
          budget: [
            {
              code: "scatter-and-counting",
              value: 92.1069736550837,
              u: 2.1531836293309903,
              nu: 2,
              type: "A",
              share: 0.3778014376972844,
              source: "random-effects",
            },
            {
              code: "calibration",
              value: null,
              u: 2.763209209652511,
              nu: null,
              type: "B",
              share: 0.6221985623027156,
              source: calibration,
            },
          ],
          flags: ["check-missing"],
          decisions: [{ ...paint, verdict: "too-close", probabilityAbove: 0.7214314172475668 }],
        },
      ),
    ]),
  below: () =>
    part("p-handle", "handle, glaze", "glaze", "coating", [
      result(
        "Pb",
        [
          { row: 18, spot: "A", text: "21", error: "2.8" },
          { row: 19, spot: "B", text: "23", error: "3.0" },
          { row: 20, spot: "C", text: "22", error: "2.8" },
        ],
        {
          value: 21.955108359133124,
          u: 1.0566393156866916,
          U: 2.663640955281918,
          k: 2.5208611072273643,
          nuEff: 5.349644424254793,
          interval: [19.291467403851208, 24.61874931441504],
          stated: { value: "22.0", U: "2.7", interval: ["19.3", "24.6"], below: null },
          scatter: { q: 0.9516964680609087, df: 2, p: 0.621357776057303, tau: 0, relative: 0 },
          budget: [
            {
              code: "scatter-and-counting",
              value: 21.955108359133124,
              u: 0.8262339491328653,
              nu: 2,
              type: "A",
              share: 0.6114381597860136,
              source: "random-effects",
            },
            {
              code: "calibration",
              value: null,
              u: 0.6586532507739937,
              nu: null,
              type: "B",
              share: 0.38856184021398643,
              source: calibration,
            },
          ],
          flags: ["check-missing"],
          decisions: [{ ...childrens, verdict: "below", probabilityAbove: 1.4735042591525823e-9 }],
        },
      ),
    ]),
  "not-detected": () =>
    part("p-body", "body, bare foot ring", "ceramic-body", "bulk", [
      result(
        "Cd",
        [
          { row: 21, spot: "A", text: "<5" },
          { row: 22, spot: "B", text: "< 4.6" },
          { row: 23, spot: "C", text: "<4.8" },
        ],
        {
          quantity: "bulk-mass-fraction",
          state: "not-detected",
          model: "none",
          below: 5,
          stated: { value: "", U: null, interval: null, below: "5" },
          flags: ["check-missing"],
          decisions: [
            {
              ...childrens,
              limitId: "eu-plastics-cadmium-100",
              title: "EU cadmium in plastics",
              jurisdiction: "EU",
              applies: "for-reference",
              why: "That limit is for plastics. It is shown only to compare.",
              verdict: "not-detected",
              probabilityAbove: 0.001,
              checked: "second-hand",
            },
          ],
        },
      ),
    ]),
  "not-quantified": () =>
    part("p-flower", "painted flower", "paint", "coating", [
      result(
        "Cd",
        [
          { row: 24, spot: "A", text: "14", error: "6" },
          { row: 25, spot: "B", text: "<11" },
          { row: 26, spot: "C", text: "<12" },
        ],
        {
          state: "not-quantified",
          model: "none",
          upperBound: 19.4,
          stated: { value: "", U: null, interval: null, below: null },
          flags: ["mixed-detection", "near-detection-limit", "check-missing"],
          decisions: [
            {
              ...paint,
              limitId: "eu-paint-cadmium-1000",
              title: "EU cadmium in paints",
              jurisdiction: "EU",
              value: 1000,
              failsAt: ">=",
              verdict: "below",
              probabilityAbove: 0.001,
            },
          ],
        },
      ),
    ]),
  uneven: () =>
    part("p-decal", "printed decal on the handle side", "paint", "coating", [
      result(
        "Pb",
        [
          { row: 27, spot: "A", text: "82", error: "5" },
          { row: 28, spot: "B", text: "61", error: "4.4" },
          { row: 29, spot: "C", text: "148", error: "6.8" },
          { row: 30, spot: "D", text: "97", error: "5.2" },
          { row: 31, spot: "E", text: "123", error: "6.2" },
        ],
        {
          model: "lognormal",
          value: 102.3,
          u: 15.4,
          interval: [73.1, 159.2],
          asymmetric: true,
          stated: { value: "102", U: null, interval: ["73", "159"], below: null },
          scatter: { q: 141.7, df: 4, p: 1.2e-29, tau: 33.8, relative: 0.33 },
          budget: [
            {
              code: "scatter-and-counting",
              value: 102.3,
              u: 15.1,
              nu: 4,
              type: "A",
              share: 0.9614,
              source: "lognormal",
            },
            { code: "calibration", value: null, u: 3.07, nu: null, type: "B", share: 0.0386, source: calibration },
          ],
          flags: ["uneven", "scatter-beyond-counting", "check-missing"],
          decisions: [{ ...paint, verdict: "too-close", probabilityAbove: 0.79 }],
        },
      ),
    ]),
};

/** The invented mug's part in one state. */
export const samplePart = (state: SampleState): SnapshotPart => makers[state]();

/** The whole invented mug at revision 1; `change` replaces top-level keys. */
export function sampleSnapshot(change: Partial<Snapshot> = {}): Snapshot {
  return {
    format: 1,
    registry: {
      name: "Elm Street Lending Shelf (invented)",
      invented: true,
      licence: "CC-BY-4.0",
      contact: "corrections@shelf.example",
    },
    slug: "bluebell-mug",
    revision: 1,
    kind: "first",
    reason: null,
    publishedAt: "2026-11-24T09:30:00+01:00",
    item: {
      name: "Bluebell child's mug",
      aliases: ["bluebell cup", "tasse à clochettes"],
      marks: "A bluebell and the number 12 pressed into the foot",
      maker: null,
      gtin: null,
      category: "mug-or-cup",
      ageGroup: "child-3-to-12",
      foodContact: true,
      mouthable: true,
      description: "A small glazed mug with a painted rim, a flower and a decal. Invented for this demonstration.",
    },
    specimens: [
      {
        id: "s-1",
        label: "mug 1",
        howGot: "given to the lending shelf",
        whoPaid: "nobody; it was a gift",
        gotOn: "2026-11-02",
        dateCode: null,
        condition: "used, glaze worn at the rim",
        parts: sampleStates.map(samplePart),
      },
    ],
    photos: [
      {
        key: "bluebell-mug-1.jpg",
        alt: "The mug from the side, spots A to C marked",
        width: 1200,
        height: 900,
        sha256: "7a".repeat(32),
      },
    ],
    testedOn: "2026-11-14",
    testers: [{ name: "Rowan Vale (invented)" }],
    instruments: [
      { name: "Shelf analyser", kind: "handheld XRF", serial: "EX-0007", windowMm: 8, errorK: 2, fitness: "not-shown" },
    ],
    files: [sampleFile],
    review: {
      reviewed: true,
      reviewers: ["Ines Marlow (invented)"],
      reviewedOn: "2026-11-20",
      inputsDigest: digest,
    },
    ...change,
  };
}

/** The mug with only the part in `state`: a page that shows one answer. */
export function sampleSnapshotOf(state: SampleState, change: Partial<Snapshot> = {}): Snapshot {
  const whole = sampleSnapshot();
  const [specimen] = whole.specimens;
  if (!specimen) throw new Error("the sample has one specimen");
  return { ...whole, specimens: [{ ...specimen, parts: [samplePart(state)] }], ...change };
}

/** Revision 2, a correction, and revision 3, a withdrawal that keeps title and reason only. */
export const sampleCorrection = (): Snapshot =>
  sampleSnapshot({
    revision: 2,
    kind: "correction",
    reason: "The photograph's spots B and C were named the wrong way round.",
    publishedAt: "2026-11-26T14:00:00+01:00",
  });
export const sampleWithdrawal = (): Snapshot =>
  sampleSnapshot({
    revision: 3,
    kind: "withdrawal",
    reason: "The check standard of that day turned out to be another one than was written down.",
    publishedAt: "2026-11-29T08:15:00+01:00",
    specimens: [],
    photos: [],
  });

/** Where a snapshot would stand in a log; its hashes are none. */
export const sampleEntry = (snapshot: Snapshot): LogEntry => ({
  seq: snapshot.revision,
  slug: snapshot.slug,
  revision: snapshot.revision,
  kind: snapshot.kind,
  publishedAt: snapshot.publishedAt,
  snapshotSha256: "a".repeat(64),
  previousHash: "0".repeat(64),
  hash: "b".repeat(64),
});
