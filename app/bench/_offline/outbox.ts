import { paths } from "@/lib/platform/paths.ts";
import { tableWords } from "@/lib/wording/table-sheets.ts";
import { type Post, sendSheet } from "./send-sheet.ts";
import { dropPhotoBlob, findSheet, keepSheet, photoBlob, sheetsOf } from "./sheet-store.ts";

/** Sends what was handed in on this phone, one sheet after the other, in one tab at a time; tells others by a channel. */
export async function emptyOutbox(personId: string): Promise<void> {
  await navigator.locks.request("cupboard-assay-outbox", { ifAvailable: true }, async (lock) => {
    if (!lock) return;
    for (const { id, state } of await sheetsOf(personId)) {
      // Read again under the lock: another tab may just have sent it.
      const sheet = state === "waiting" ? await findSheet(id) : undefined;
      if (sheet?.state !== "waiting") continue;
      const sent = await sendSheet(sheet, { post, keep: keepSheet, photo: photoBlob });
      if (sent.state === "sent") for (const photo of sent.photos) await dropPhotoBlob(photo.id);
      announce();
    }
  });
}

const channelName = "cupboard-assay-table";
const announce = (): void => {
  const channel = new BroadcastChannel(channelName);
  channel.postMessage("changed");
  channel.close();
};

/** Calls `told` whenever any tab has sent something; answers with how to stop. */
export function onSent(told: () => void): () => void {
  const channel = new BroadcastChannel(channelName);
  channel.onmessage = told;
  return () => channel.close();
}

const post: Post = async (step, body) => {
  const [kind, itemId] = step.split(" ");
  const isForm = body instanceof FormData;
  try {
    const response = await fetch(kind === "photo" ? paths.benchPhotoUpload(itemId ?? "") : paths.benchTableSend(), {
      method: "POST",
      headers: { accept: "application/json", ...(isForm ? {} : { "content-type": "application/json" }) },
      body: isForm ? body : JSON.stringify(body),
    });
    // A gateway or a server that starts anew is no answer: it stays and is tried again.
    if (response.status >= 500) return "offline";
    const answer = (await response.json()) as Record<string, string> & { problems?: string[] };
    if (response.ok) return { ok: true, value: answer };
    return { ok: false, problems: answer.problems ?? [tableWords.notUnderstood(response.status)] };
  } catch {
    return "offline";
  }
};
