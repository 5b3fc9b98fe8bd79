import { randomUUID } from "node:crypto";
import sharp from "sharp";
import { type builtActions, type Caller, sendAction } from "./ask-door.ts";
import { sheetSettings } from "./sheet-settings.ts";

/** What the server said it had kept, by what it is. Only what was answered counts. */
export type Acknowledged = {
  photos: string[];
  sheets: string[]; // imports of readings written at the table
  files: string[]; // imports of uploaded files
  publications: { itemId: string; revision: number }[];
};

type Answer = Record<string, string>;

/** A served registry under a mixed load: every sender sends until the server dies under it. */
export type CrashLoad = {
  base: string;
  actions: ReturnType<typeof builtActions>;
  cookie: string;
  itemId: string;
  partId: string;
  /** An item that is published already, so that revision follows revision. */
  publishedItemId: string;
};

export const rowsOfAFile = 40;

async function post(
  load: Pick<CrashLoad, "base" | "cookie">,
  path: string,
  body: BodyInit,
  type?: string,
): Promise<Answer | null> {
  const headers = { accept: "application/json", cookie: load.cookie, origin: load.base };
  const answer = await fetch(load.base + path, {
    method: "POST",
    headers: { ...headers, ...(type ? { "content-type": type } : {}) },
    body,
    signal: AbortSignal.timeout(30_000),
  }).catch(() => null);
  return answer?.ok ? ((await answer.json().catch(() => null)) as Answer | null) : null;
}

const sheetOf = (partId: string) => ({
  step: "readings",
  partId,
  instrumentId: null,
  settings: sheetSettings,
  elements: ["Pb"],
  show: { error: true, limit: false },
  rows: [1, 2, 3, 4, 5].map((n) => ({
    sample: "killed",
    number: `${randomUUID()}-${n}`,
    spot: "1",
    "Pb value": String(100 + n),
    "Pb error": "9",
  })),
});

/** Photos like no other, large enough to keep the server busy for a moment. */
export async function noisyPhotos(count: number): Promise<Buffer[]> {
  const noise = { type: "gaussian" as const, mean: 128, sigma: 40 };
  const base = await sharp({ create: { width: 1200, height: 900, channels: 3, background: "#888", noise } })
    .jpeg()
    .toBuffer();
  const edge = (n: number) => ({ left: n % 100, top: Math.floor(n / 100), width: 1100, height: 800 });
  return Promise.all(Array.from({ length: count }, (_, n) => sharp(base).extract(edge(n)).jpeg().toBuffer()));
}

const sheet = async (load: CrashLoad, done: Acknowledged) => {
  const answer = await post(load, "/bench/table/send", JSON.stringify(sheetOf(load.partId)), "application/json");
  if (answer?.["batchId"]) done.sheets.push(answer["batchId"]);
  return answer !== null;
};

const photo = async (load: CrashLoad, done: Acknowledged, bytes: Buffer) => {
  const form = new FormData();
  form.set("photo", new File([new Uint8Array(bytes)], "noisy.jpg", { type: "image/jpeg" }));
  const answer = await post(load, `/bench/items/${load.itemId}/photos/upload`, form);
  if (answer?.["id"]) done.photos.push(answer["id"]);
  return answer !== null;
};

/**
 * An instrument's file like no other, received and loaded in two requests, as its page does. Its import, what was said instead, or
 * null where nobody answered.
 */
export async function importFile(
  load: Pick<CrashLoad, "base" | "cookie">,
  count: number,
): Promise<{ batchId: string } | { refused: string } | null> {
  const rows = Array.from({ length: count }, (_, n) => `${n + 1},crash,a,40,${100 + n}.5,9,${randomUUID()}`);
  const form = new FormData();
  form.set("file", new File([`Reading No,Sample,Spot,Seconds,Pb (ppm),Pb 2σ,Note\n${rows.join("\n")}\n`], "crash.csv"));
  const received = await post(load, "/bench/import/upload", form);
  const batchId = /imports\/([^?]+)/.exec(received?.["next"] ?? "")?.[1];
  if (!batchId) return received && { refused: JSON.stringify(received) };
  const answers = new FormData();
  for (const [name, value] of Object.entries(mappingAnswers)) answers.set(name, value);
  const loaded = await fetch(`${load.base}/bench/imports/${batchId}/load`, {
    method: "POST",
    headers: { accept: "application/x-ndjson", cookie: load.cookie, origin: load.base },
    body: answers,
  })
    .then((answer) => answer.text())
    .catch(() => null);
  if (loaded === null) return null;
  return loaded.includes('"next"') ? { batchId } : { refused: loaded };
}

const file = async (load: CrashLoad, done: Acknowledged) => {
  const answer = await importFile(load, rowsOfAFile);
  if (answer === null) return false;
  if ("batchId" in answer) done.files.push(answer.batchId);
  else if (answer.refused.includes('"problems"') && !/import-broke|taken as a whole/.test(answer.refused))
    throw new Error(`not loaded: ${answer.refused}`);
  return true;
};

/** What the form of such a file says: what each column is, and the answer to the one question it leaves open. */
const mappingAnswers = {
  intent: "load",
  quantity: "bulk-mass-fraction",
  "use-0": "number",
  "use-1": "sample",
  "use-2": "spot",
  "use-3": "seconds",
  "use-4": "value",
  "element-4": "Pb",
  "unit-4": "ppm",
  "use-5": "error",
  "element-5": "Pb",
  "use-6": "note",
};

const publication = async (load: CrashLoad, done: Acknowledged) => {
  const caller: Caller = { cookie: load.cookie, origin: load.base };
  const send = async (name: string, form: Record<string, string>) => {
    const action = load.actions.get(name);
    if (!action) throw new Error(`${name} is not in the build`);
    const answer = await sendAction(load.base, action, [load.publishedItemId, { errors: [] }, { form }], caller).catch(
      () => null,
    );
    const text = await answer?.text().catch(() => null);
    return answer && typeof text === "string" ? { to: answer.headers.get("x-action-redirect") ?? "", text } : null;
  };
  const started = await send("_draft/actions.ts startRevision", { kind: "update", reason: "A revision under load." });
  if (!started) return false;
  const answer = await send("bench/items/[id]/actions.ts publishItem", {});
  const revision = /published=(\d+)/.exec(answer?.to ?? "")?.[1];
  if (revision) done.publications.push({ itemId: load.publishedItemId, revision: Number(revision) });
  else if (answer && /"errors":\[\{/.test(answer.text)) throw new Error(`not published: ${answer.text.slice(0, 600)}`);
  return answer !== null;
};

/** All senders at once; the promise is settled when the server no longer answers any of them. */
export async function untilItDies(load: CrashLoad, done: Acknowledged, photos: readonly Buffer[]): Promise<void> {
  let next = Math.floor(Math.random() * photos.length);
  const nextPhoto = () => photos[next++ % photos.length] ?? Buffer.alloc(0);
  const on = async (send: () => Promise<boolean>) => {
    while (await send());
  };
  await Promise.all([
    on(() => photo(load, done, nextPhoto())),
    on(() => sheet(load, done)),
    on(() => file(load, done)),
    on(() => publication(load, done)),
  ]);
}
