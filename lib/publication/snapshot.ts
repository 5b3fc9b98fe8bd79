import * as z from "zod";
import { snapshotInputs } from "./result-inputs.ts";

/**
 * The snapshot: all that a published page, the API, exports and feeds will ever say about an item at one revision.
 * Stored as canonical JSON (RFC 8785); its SHA-256 stands in the log. Format 1 is read for ever: add optional keys,
 * never change or drop one.
 */
const isoDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const interval = z.tuple([z.number(), z.number()]);
const written = z.object({ text: z.string(), value: z.number(), decimals: z.number() });

export const snapshotReading = z.object({
  id: z.string(),
  row: z.number().nullable(), // row of the file it came from; null where entered by hand
  file: z.string().nullable(), // SHA-256 of the raw file
  number: z.string().nullable(),
  takenAt: z.string().nullable(),
  takenAtText: z.string().nullable(),
  secondsCounted: z.number().nullable(),
  mode: z.string().nullable(),
  spot: z.string().nullable(),
  belowDetection: z.boolean(),
  value: written.nullable(),
  error: written.nullable(),
  k: z.union([z.literal(1), z.literal(2), z.literal(3)]).nullable(),
  detectionLimit: written.nullable(),
  unit: z.string(),
  setAside: z.object({ reason: z.string() }).nullable(),
  session: z.string().optional(), // id of its session, where it has one
  factor: z.number().optional(), // the session's correction, where one was applied
});

export const snapshotDecision = z.object({
  limitId: z.string(),
  title: z.string(),
  jurisdiction: z.string(),
  value: z.number().nullable(),
  unit: z.string(),
  failsAt: z.enum([">", ">="]),
  applies: z.enum(["applies", "for-reference", "other-quantity"]),
  why: z.string(),
  verdict: z.enum(["above", "below", "too-close", "not-detected", "cannot-say"]),
  probabilityAbove: z.number().nullable(),
  day: isoDate,
  which: z.enum(["test-day", "today", "both"]),
  checked: z.enum(["verified", "second-hand", "from memory"]),
  element: z.string().optional(), // the element judged; for a limit on a sum, the substances joined by "+"
});

const fitness = z.enum(["fit", "fit-with-correction", "not-fit", "not-shown"]);
const check = z.object({
  takenAt: z.string(), // by the clock put right
  recovery: z.number().nullable(), // read / certified; null: below detection, or a blank
  within: z.boolean().nullable(), // null: it says nothing
});

/** What the session of a page's readings shows: was the instrument fit, element by element (method, step 5). */
export const snapshotSession = z.object({
  id: z.string(),
  label: z.string(),
  instrument: z.object({ name: z.string(), serial: z.string() }),
  startedAt: z.string(),
  endedAt: z.string().nullable(),
  place: z.string().nullable(),
  operator: z.string().nullable(),
  conditions: z.string().nullable(),
  trained: z.boolean(), // the operator confirmed training
  clockShiftMinutes: z.number(), // added to every written time
  inDoubtReason: z.string().nullable(), // why readings about a failed check are used all the same
  fitness: z.array(
    z.object({
      element: z.string(),
      quantity: z.string(),
      mode: z.string().nullable(),
      state: fitness,
      drifts: z.boolean(),
      inDoubt: z.array(z.object({ after: z.string().nullable(), before: z.string().nullable() })),
      standards: z.array(
        z.object({
          name: z.string(),
          material: z.string(),
          unit: z.string(),
          certified: z.number().nullable(),
          below: z.number().nullable(), // a blank is certified as below this
          uCertified: z.number().nullable(), // null: the certificate states none
          recovery: z.number().nullable(),
          uRecovery: z.number().nullable(),
          factor: z.number().nullable(), // readings of a part of the same material are multiplied by it
          checks: z.array(check.extend({ value: z.number().nullable() })),
          history: z.array(check), // earlier readings of it, same element, mode and instrument
        }),
      ),
    }),
  ),
});

/** A wipe, a leachate or a laboratory's result on an object: a kind of test of its own, never mixed with readings. */
export const snapshotOtherTest = z.object({
  id: z.string(),
  kind: z.enum(["wipe", "leachate", "laboratory"]),
  part: z.string().nullable(), // id of the part it was made on
  element: z.string(),
  valueText: z.string(), // as the laboratory wrote it
  unit: z.string(), // as the laboratory wrote it
  sampleAreaCm2: z.number().nullable(),
  blankText: z.string().nullable(), // what it says of its blank; never subtracted here
  laboratory: z.string(),
  method: z.string(),
  reportedOn: isoDate.nullable(),
  certificateName: z.string().nullable(),
  note: z.string(),
  result: z.object({
    quantity: z.string(),
    unit: z.string(),
    value: z.number().nullable(),
    u: z.number().nullable(), // standard uncertainty; null where none is stated
    below: z.number().nullable(), // "< reporting limit"
  }),
  decisions: z.array(snapshotDecision),
});

/** How deep the element is read in the part's material, typically: `share` of its signal comes from the top `mm`. */
export const snapshotDepth = z.object({
  material: z.string(),
  line: z.string(), // "Pb Lβ"
  mm: z.number(),
  share: z.number(),
  /** Share of a thick part's signal that this part gives by its thickness; null where that is not known. */
  ofThick: z.number().nullable(),
});

export const snapshotResult = z.object({
  element: z.string(),
  quantity: z.string(),
  unit: z.string(),
  method: z.object({ name: z.string(), version: z.string(), policy: z.string() }),
  inputsDigest: z.string(),
  state: z.enum(["quantified", "range-only", "not-quantified", "not-detected", "no-readings"]),
  model: z.string(),
  value: z.number().nullable(),
  u: z.number().nullable(),
  U: z.number().nullable(),
  k: z.number().nullable(),
  nuEff: z.number().nullable(),
  interval: interval.nullable(),
  asymmetric: z.boolean(),
  below: z.number().nullable(),
  upperBound: z.number().nullable(),
  stated: z.object({
    value: z.string(),
    U: z.string().nullable(),
    interval: z.tuple([z.string(), z.string()]).nullable(),
    below: z.string().nullable(),
  }),
  spots: z.array(
    z.object({
      spot: z.string().nullable(),
      shots: z.array(z.string()),
      detected: z.boolean(),
      value: z.number().nullable(),
      u: z.number().nullable(),
      below: z.number().nullable(),
      birge: z.number().nullable(),
    }),
  ),
  highestSpot: z.object({ spot: z.string().nullable(), value: z.number(), u: z.number().nullable() }).nullable(),
  range: interval.nullable(),
  counts: z.object({
    readings: z.number(),
    used: z.number(),
    setAside: z.number(),
    spots: z.number(),
    spotsDetected: z.number(),
  }),
  scatter: z.object({ q: z.number(), df: z.number(), p: z.number(), tau: z.number(), relative: z.number() }).nullable(),
  budget: z.array(
    z.object({
      code: z.string(),
      value: z.number().nullable(),
      u: z.number(),
      nu: z.number().nullable(),
      type: z.enum(["A", "B"]),
      share: z.number(),
      source: z.string(),
      shared: z.string().optional(), // session whose results all have this line in common
    }),
  ),
  flags: z.array(z.string()),
  withSetAside: z.object({ value: z.number().nullable(), interval: interval.nullable() }).nullable(),
  crossCheck: z
    .object({
      median: z.number(),
      scaledMad: z.number(),
      algorithmA: z.number().nullable(),
      leaveOneOut: interval.nullable(),
      candidates: z.array(z.string()),
    })
    .nullable(),
  notes: z.array(z.string()),
  readings: z.array(snapshotReading),
  decisions: z.array(snapshotDecision),
  inputs: snapshotInputs.optional(), // absent before they were kept
  fitness: fitness.optional(), // of the sessions of the readings used; absent before sessions were known
  depth: snapshotDepth.optional(), // absent where the material or the element is not in our table, or before it was
});

export const snapshotPart = z.object({
  id: z.string(),
  name: z.string(), // "glaze, inside"
  material: z.string(),
  form: z.enum(["bulk", "coating"]),
  accessible: z.boolean(),
  thicknessMm: z.number().nullable(),
  smallestDimensionMm: z.number().nullable().optional(), // narrowest measure across the face that was shot
  areaCm2: z.number().nullable(),
  massG: z.number().nullable(),
  results: z.array(snapshotResult),
});

export const snapshotPhoto = z.object({
  key: z.string(), // name under /photos/; the widest file
  alt: z.string(),
  width: z.number(),
  height: z.number(),
  sha256: z.string(),
  /** The same picture at other widths, narrowest first, the widest with them; absent before there were several. */
  sizes: z.array(z.object({ key: z.string(), width: z.number(), height: z.number(), sha256: z.string() })).optional(),
  /** A known length marked on it: ends as shares of width and height from the top left, and the length. */
  scale: z
    .object({ x1: z.number(), y1: z.number(), x2: z.number(), y2: z.number(), lengthMm: z.number() })
    .nullable()
    .optional(),
  /** Spots marked on it, in their order: part by id, place as shares of width and height, window that shot there. */
  spots: z
    .array(
      z.object({
        spot: z.string(),
        part: z.string(),
        x: z.number(),
        y: z.number(),
        windowMm: z.number().nullable(),
      }),
    )
    .optional(),
});

export const snapshotSchema = z.object({
  format: z.literal(1),
  registry: z.object({ name: z.string(), invented: z.boolean(), licence: z.string(), contact: z.string().nullable() }),
  slug: z.string(),
  revision: z.number().int().positive(),
  kind: z.enum(["first", "correction", "update", "withdrawal"]),
  reason: z.string().nullable(),
  publishedAt: z.string(), // ISO with offset
  item: z.object({
    name: z.string(),
    aliases: z.array(z.string()),
    marks: z.string(), // maker's marks as a person would describe them
    maker: z.string().nullable(),
    gtin: z.string().nullable(),
    category: z.string(),
    ageGroup: z.string(),
    foodContact: z.boolean(),
    mouthable: z.boolean(),
    description: z.string(),
  }),
  specimens: z.array(
    z.object({
      id: z.string(),
      label: z.string(),
      howGot: z.string(),
      whoPaid: z.string(),
      gotOn: isoDate.nullable(),
      dateCode: z.string().nullable(),
      madeOn: z.string().nullable().optional(), // ISO year, month or day, as far as known
      condition: z.string().nullable(),
      parts: z.array(snapshotPart),
      otherTests: z.array(snapshotOtherTest).optional(),
    }),
  ),
  photos: z.array(snapshotPhoto),
  testedOn: isoDate,
  testers: z.array(z.object({ name: z.string() })),
  instruments: z.array(
    z.object({
      name: z.string(),
      kind: z.string(),
      serial: z.string(),
      windowMm: z.number().nullable(),
      errorK: z.union([z.literal(1), z.literal(2), z.literal(3)]).nullable(),
      fitness,
    }),
  ),
  sessions: z.array(snapshotSession).optional(),
  files: z.array(z.object({ name: z.string(), sha256: z.string(), rows: z.number() })),
  review: z.object({
    reviewed: z.boolean(),
    reviewers: z.array(z.string()),
    reviewedOn: isoDate.nullable(),
    inputsDigest: z.string().nullable(),
    /** What each reviewer said of their ties to the maker; absent before it was asked. */
    interests: z.array(z.object({ name: z.string(), statement: z.string() })).optional(),
  }),
  /** What the tester said of theirs; absent before it was asked. */
  interests: z.string().optional(),
});

export type Snapshot = z.infer<typeof snapshotSchema>;
export type SnapshotPhoto = z.infer<typeof snapshotPhoto>;
export type SnapshotPart = z.infer<typeof snapshotPart>;
export type SnapshotResult = z.infer<typeof snapshotResult>;
export type SnapshotSession = z.infer<typeof snapshotSession>;
export type SnapshotDepth = z.infer<typeof snapshotDepth>;
export type SnapshotOtherTest = z.infer<typeof snapshotOtherTest>;
export type SnapshotReading = z.infer<typeof snapshotReading>;
export type SnapshotDecision = z.infer<typeof snapshotDecision>;

/** One entry of the publication log, as /api/v1/log shows it. */
export const logEntrySchema = z.object({
  seq: z.number().int().positive(),
  slug: z.string(),
  revision: z.number().int().positive(),
  kind: z.enum(["first", "correction", "update", "withdrawal"]),
  publishedAt: z.string(),
  snapshotSha256: z.string(),
  previousHash: z.string(),
  hash: z.string(),
});
export type LogEntry = z.infer<typeof logEntrySchema>;
