import type { Asked } from "@/app/bench/by-hand/sheet-questions.tsx";
import type { HandRow } from "@/lib/readings/hand-entry.ts";

/** A photo on the phone; its bytes lie beside the sheet. `id` is what it is sent under, once. */
export type SheetPhoto = { id: string; name: string; alt: string; width: number; height: number };
export type SheetSpot = { label: string; photoId: string; x: number; y: number };

/**
 * What is written down at the table, whole: it lives on the phone until the server has all of it. Ids are made here, so that
 * sending twice makes nothing twice.
 */
export type TableSheet = {
  id: string;
  personId: string;
  changedAt: string;
  /** draft: still being written; waiting: handed in, not all of it sent; sent: all of it is with the registry */
  state: "draft" | "waiting" | "sent";
  item: {
    name: string;
    category: string;
    ageGroup: string;
    foodContact: boolean;
    mouthable: boolean;
    marks: string;
  };
  object: { label: string; howGot: string; whoPaid: string };
  part: { name: string; material: string; form: string };
  photos: SheetPhoto[];
  spots: SheetSpot[];
  /** What is said once for all readings. */
  asked: Asked;
  readings: HandRow[];
  /** What the server has answered so far, step by step. */
  done: { itemId?: string; partId?: string; photoIds: Record<string, string>; spots?: true; readings?: true };
  /** Why it did not go; empty where nothing is wrong but the connection. */
  problems: string[];
};

export const newSheet = (id: string, personId: string, now: Date): TableSheet => ({
  id,
  personId,
  changedAt: now.toISOString(),
  state: "draft",
  item: { name: "", category: "", ageGroup: "unknown", foodContact: false, mouthable: false, marks: "" },
  object: { label: "", howGot: "", whoPaid: "" },
  part: { name: "", material: "", form: "" },
  photos: [],
  spots: [],
  asked: {
    instrumentId: "",
    date: now.toISOString().slice(0, 10),
    timeZone: "",
    unit: "ppm",
    quantity: "bulk-mass-fraction",
    k: "",
    decimal: "point",
    elements: "Pb",
    error: true,
    limit: false,
  },
  readings: [],
  done: { photoIds: {} },
  problems: [],
});

/** As short as the words of a photo may be. */
const shortestAlt = 8;

/** What has to be there before a sheet can go: the fields that are empty, by their ids and names. */
export const missingIn = ({ item, object, part, photos }: TableSheet): { id: string; name: string }[] => [
  ...(
    [
      ["item-name", "the name of the item", item.name],
      ["item-category", "the kind of object", item.category],
      ["object-label", "what you call the object", object.label],
      ["object-howGot", "how it was got", object.howGot],
      ["object-whoPaid", "who paid", object.whoPaid],
      ["part-name", "the part", part.name],
      ["part-material", "the material", part.material],
      ["part-form", "the form", part.form],
    ] as const
  ).flatMap(([id, name, value]) => (value.trim() === "" ? [{ id, name }] : [])),
  ...photos.flatMap(({ id, alt }, at) =>
    alt.trim() !== "" && alt.trim().length < shortestAlt
      ? [{ id: `alt-${id}`, name: `longer words for photo ${at + 1}, or none for now` }]
      : [],
  ),
];
