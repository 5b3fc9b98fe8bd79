import { settingsOf } from "@/app/bench/by-hand/sheet-questions.tsx";
import { elementsIn, type HandRow } from "@/lib/readings/hand-entry.ts";
import type { TableSheet } from "./sheet.ts";

/** What a step is answered with: its value; sentences of what is wrong; or nothing, where the connection is gone. */
export type StepAnswer = { ok: true; value: Record<string, string> } | { ok: false; problems: string[] } | "offline";
export type Post = (step: string, body: object | FormData) => Promise<StepAnswer>;

/** Readings that hold a figure; a card left empty is none. */
export const filledReadings = (readings: readonly HandRow[]): HandRow[] =>
  readings.filter((row) => Object.entries(row).some(([key, text]) => key !== "spot" && text.trim() !== ""));

/**
 * Sends a sheet step by step: item with object and part, each photo, the spots, the readings. `keep` is told after every step, so
 * that a closed tab goes on where it stopped; a step whose answer was lost is sent again under the same id and makes nothing twice.
 */
export async function sendSheet(
  sheet: TableSheet,
  {
    post,
    keep,
    photo,
  }: {
    post: Post;
    keep: (sheet: TableSheet) => Promise<void>;
    /** The bytes of a photo as they lie on the phone. */
    photo: (id: string) => Promise<Blob | undefined>;
  },
): Promise<TableSheet> {
  let now: TableSheet = { ...sheet, problems: [] };
  const settle = async (changed: Partial<TableSheet>): Promise<TableSheet> => {
    now = { ...now, ...changed };
    await keep(now);
    return now;
  };
  for (const step of stepsOf) {
    const asked = await step(now, photo);
    for (const { name, body, done } of asked) {
      const answer = await post(name, body);
      if (answer === "offline") return settle({ state: "waiting" });
      // What the registry refuses goes back to be mended.
      if (!answer.ok) return settle({ state: "draft", problems: answer.problems });
      await settle({ done: done(now.done, answer.value) });
    }
  }
  return settle({ state: "sent" });
}

type Done = TableSheet["done"];
type Step = { name: string; body: object | FormData; done: (before: Done, value: Record<string, string>) => Done };

/** Each looks at what is done already and answers with what it still has to send. */
const stepsOf: ((sheet: TableSheet, photo: (id: string) => Promise<Blob | undefined>) => Step[] | Promise<Step[]>)[] = [
  ({ id, item, object, part, done }) =>
    done.itemId
      ? []
      : [
          {
            name: "item",
            body: { step: "item", sendId: id, item, object, part },
            done: (before, { itemId = "", partId = "" }) => ({ ...before, itemId, partId }),
          },
        ],
  async ({ photos, done }, blobOf) => {
    const steps: Step[] = [];
    for (const { id, name, alt } of photos.filter((photo) => !(photo.id in done.photoIds))) {
      const blob = await blobOf(id);
      if (!blob) continue; // the browser has cleared it away; the rest still goes
      const body = new FormData();
      body.set("photo", new File([blob], name, { type: blob.type }));
      body.set("alt", alt);
      body.set("sendId", id);
      steps.push({
        name: `photo ${done.itemId}`,
        body,
        done: (before, { id: kept = "" }) => ({ ...before, photoIds: { ...before.photoIds, [id]: kept } }),
      });
    }
    return steps;
  },
  ({ spots: marked, done }) => {
    const spots = marked.flatMap(({ photoId, ...spot }) => {
      const kept = done.photoIds[photoId];
      return kept ? [{ ...spot, photoId: kept }] : [];
    });
    if (spots.length === 0 || done.spots) return [];
    const body = { step: "spots", partId: done.partId, spots };
    return [{ name: "spots", body, done: (before) => ({ ...before, spots: true }) }];
  },
  ({ id, item, part, asked, readings, done }) => {
    const rows = filledReadings(readings);
    if (rows.length === 0 || done.readings) return [];
    const sample = `${item.name}, ${part.name}`;
    return [
      {
        name: "readings",
        body: {
          step: "readings",
          partId: done.partId,
          instrumentId: asked.instrumentId || null,
          settings: settingsOf(asked),
          elements: elementsIn(asked.elements).elements,
          show: { error: asked.error, limit: asked.limit },
          // Numbered within the sheet: two shots with the same figures stay two.
          rows: rows.map((row, at) => ({ ...row, sample, number: `${id.slice(0, 8)}-${at + 1}` })),
        },
        done: (before) => ({ ...before, readings: true }),
      },
    ];
  },
];
