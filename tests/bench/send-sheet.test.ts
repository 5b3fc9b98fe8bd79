import { describe, expect, it } from "vitest";
import { type Post, type StepAnswer, sendSheet } from "@/app/bench/_offline/send-sheet.ts";
import { missingIn, newSheet, type TableSheet } from "@/app/bench/_offline/sheet.ts";

const now = new Date("2026-11-20T10:00:00Z");
const written = (): TableSheet => ({
  ...newSheet("0f8fad5b-d9cb-469f-a165-70867728950e", "p1", now),
  state: "waiting",
  item: { name: "Jug", category: "mug-or-cup", ageGroup: "adult", foodContact: true, mouthable: false, marks: "" },
  object: { label: "jug 1", howGot: "given", whoPaid: "nobody" },
  part: { name: "glaze", material: "glaze", form: "coating" },
  photos: [
    { id: "photo-a", name: "a.jpg", alt: "The jug from the side", width: 40, height: 30 },
    { id: "photo-b", name: "b.jpg", alt: "", width: 40, height: 30 },
  ],
  spots: [{ label: "1", photoId: "photo-b", x: 0.5, y: 0.25 }],
  readings: [{ spot: "1", "Pb value": "412", "Pb error": "36" }, { spot: "1" }],
});

/** A registry that answers each id once and the same ever after, over a line that may drop an answer after the work is done. */
function registry(drop: (call: number) => boolean) {
  const answers = new Map<string, StepAnswer>();
  const kinds: string[] = [];
  let call = 0;
  const post: Post = async (step, body) => {
    call += 1;
    const sent = body instanceof FormData ? Object.fromEntries(body) : (body as Record<string, unknown>);
    const id = `${step} ${String(sent["sendId"] ?? "")}`;
    if (!answers.has(id)) {
      kinds.push(step.split(" ")[0] ?? "");
      const value = step === "item" ? { itemId: "i1", partId: "c1" } : { id: `kept-${String(sent["sendId"])}` };
      answers.set(id, { ok: true, value });
    }
    return drop(call) ? "offline" : (answers.get(id) as StepAnswer);
  };
  return { post, kinds, bodies: answers };
}
const photo = async () => new Blob([new Uint8Array(3)], { type: "image/jpeg" });

describe("sending a sheet", () => {
  it("goes item, photos, spots, readings, and is sent then", async () => {
    const { post, kinds } = registry(() => false);
    const kept: TableSheet[] = [];
    const sent = await sendSheet(written(), { post, photo, keep: async (sheet) => void kept.push(sheet) });
    expect(kinds).toEqual(["item", "photo", "photo", "spots", "readings"]);
    expect(sent.state).toBe("sent");
    expect(sent.done.photoIds).toEqual({ "photo-a": "kept-photo-a", "photo-b": "kept-photo-b" });
    // Kept after every step, so that a closed tab goes on there.
    expect(kept.map((sheet) => Object.keys(sheet.done.photoIds).length)).toEqual([0, 1, 2, 2, 2, 2]);
  });

  it.each([1, 2, 3, 4, 5])("after answer %i was lost it goes on there and makes nothing twice", async (lost) => {
    const { post, kinds } = registry((call) => call === lost);
    let kept = written();
    const keep = async (sheet: TableSheet) => {
      kept = structuredClone(sheet);
    };
    expect((await sendSheet(kept, { post, photo, keep })).state).toBe("waiting");
    // As after a closed tab: only what was kept is known.
    expect((await sendSheet(kept, { post, photo, keep })).state).toBe("sent");
    expect(kinds).toEqual(["item", "photo", "photo", "spots", "readings"]);
  });

  it("goes back to be mended where something is refused, with what is done kept", async () => {
    const { post } = registry(() => false);
    const refusing: Post = async (step, body) =>
      step === "readings" ? { ok: false, problems: ["Not a number."] } : post(step, body);
    const sent = await sendSheet(written(), { post: refusing, photo, keep: async () => undefined });
    expect(sent).toMatchObject({ state: "draft", problems: ["Not a number."], done: { itemId: "i1", spots: true } });
  });
});

describe("what is missing in a sheet", () => {
  it("is named field by field; a whole one misses nothing", () => {
    expect(missingIn(written())).toEqual([]);
    expect(missingIn(newSheet("x", "p1", now)).map(({ id }) => id)).toEqual([
      "item-name",
      "item-category",
      "object-label",
      "object-howGot",
      "object-whoPaid",
      "part-name",
      "part-material",
      "part-form",
    ]);
    const [first] = written().photos;
    const short = { ...written(), photos: [{ ...first!, alt: "Jug" }] };
    expect(missingIn(short).map(({ id }) => id)).toEqual(["alt-photo-a"]);
  });
});
