import type { AgeGroup, ItemCategory, Material } from "../lib/quantity/item-words.ts";
import type { QuantityKind } from "../lib/quantity/kinds.ts";
import type { Unit } from "../lib/quantity/units.ts";

/** Shapes of the invented scenario. Plain data: no class, no function, nothing computed. Dates are ISO days. */

export type PersonKey = "owner" | "tester" | "reviewer";
export type ScenarioPerson = { key: PersonKey; name: string; email: string; role: PersonKey; about: string };

export type InstrumentKey = "analyser-a" | "analyser-b" | "analyser-c";
export type ScenarioMode = { name: string; quantity: QuantityKind; about: string };
export type ScenarioInstrument = {
  key: InstrumentKey;
  name: string;
  kind: string;
  serial: string;
  modes: ScenarioMode[];
  windowMm: number;
  /** What the error figures cover: 1, 2 or 3 standard uncertainties. */
  errorK: 1 | 2 | 3;
  /** Default relative standard uncertainty of calibration, until check-standard sessions are used. */
  calibrationRelativeU: number;
  minimumSeconds: number;
  timeZone: string;
  note: string;
};

/** What a tester answers when the file is imported: what it cannot say itself, or says in its own way. */
export type FileAnswers = {
  encoding: "utf-8" | "utf-8-bom" | "windows-1252" | "utf-16le";
  delimiter: "," | ";" | "\t";
  decimal: "point" | "comma";
  /** Thousands separator found in the numbers, if any. */
  thousands: "none" | "no-break-space";
  shape: "reading-per-row" | "element-per-row";
  dateOrder: "iso" | "day-first";
  timeZone: string;
  errorK: 1 | 2 | 3;
  /** The unit of every column that names none; null where header, units row or unit column say it. */
  unit: string | null;
  quantity: QuantityKind;
  headerRow: number; // 1-based physical line of the first header
  sampleColumn: string;
  spotColumn: string;
  /** Columns whose headers do not say what they are: the tester picks them. */
  changes: { dateTime?: string; spot?: string; seconds?: string };
};

export type FileName =
  | "shelf-a-2026-09-12.csv"
  | "shelf-a-2026-09-19.csv"
  | "pruefbuch-b-2026-10-03.csv"
  | "carnet-c-2026-10-17.tsv"
  | "carnet-c-2026-10-24.tsv"
  | "ugly-day.csv";

export type ScenarioFile = {
  name: FileName;
  instrument: InstrumentKey;
  /** false: left for the tester to import. */
  load: boolean;
  answers: FileAnswers;
  /** Physical rows of the file, each counted once (a quoted line break does not start a row). */
  rows: { total: number; accepted: number; setAside: number; blank: number; header: number };
  /** Shots: equals `rows.accepted` where a row is a reading, fewer where a row is one element of a shot. */
  shots: number;
  about: string;
};

export type ScenarioSession = {
  key: string;
  file: FileName;
  instrument: InstrumentKey;
  operator: PersonKey;
  place: string;
  timeZone: string;
  start: string; // ISO with offset
  end: string;
  conditions: string;
  /** Elements whose recovery the tester asks to correct for. */
  corrections: string[];
};

export type SampleReadings = { file: FileName; sample: string; spots: string[] };

export type ScenarioComponent = {
  key: string; // unique within the specimen
  name: string; // "glaze, inside"
  material: Material;
  form: "bulk" | "coating";
  accessible: boolean;
  thicknessMm: number | null;
  smallestDimensionMm?: number; // across the face that was shot, where it is small
  areaCm2: number | null;
  massG: number | null;
  readings: SampleReadings[];
};

/** A reading that a person set aside, with the reason the page shows. `number` is the file's own reading number. */
export type ScenarioSetAside = { file: FileName; number: string; by: PersonKey; reason: string };

export type ScenarioSpecimen = {
  label: string;
  howGot: string;
  whoPaid: string;
  gotOn: string;
  dateCode: string | null;
  condition: string;
  components: ScenarioComponent[];
};

export type ScenarioPhoto = { file: string; alt: string };

export type ScenarioItem = {
  slug: string;
  name: string;
  aliases: string[];
  marks: string;
  maker: string | null;
  gtin: string | null;
  category: ItemCategory;
  ageGroup: AgeGroup;
  materials: Material[];
  foodContact: boolean;
  mouthable: boolean;
  description: string;
  state: "published" | "submitted" | "draft";
  /** When it was published or submitted, ISO with offset; null for a draft. */
  stateAt: string | null;
  /** Who read it before it was published, if anyone did. */
  review: { by: PersonKey; on: string; note: string } | null;
  specimens: ScenarioSpecimen[];
  setAside: ScenarioSetAside[];
  photos: ScenarioPhoto[];
};

export type ScenarioStandard = {
  key: string;
  name: string;
  matrix: string;
  material: Material;
  /** Modes it is meant for. */
  modes: string[];
  quantity: QuantityKind;
  unit: Unit;
  /** Certified value with its expanded uncertainty U = k·u; value null: certified as below `U`. */
  certified: { element: string; value: number | null; U: number; k: 2 }[];
  certificate: string;
  expires: string;
  /** How the standard is written in the sample column of each file. */
  readings: { file: FileName; sample: string }[];
};

/** Readings in a loaded file that belong to no component yet. */
export type UnassignedReadings = SampleReadings & { forItem: string; suggestedComponent: string };

export type Scenario = {
  registry: { name: string; invented: true; licence: string; contact: string; about: string };
  people: ScenarioPerson[];
  instruments: ScenarioInstrument[];
  files: ScenarioFile[];
  sessions: ScenarioSession[];
  standards: ScenarioStandard[];
  items: ScenarioItem[];
  unassigned: UnassignedReadings[];
};
