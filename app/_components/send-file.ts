import { dropWords } from "@/lib/wording/typed-words.ts";

/** What became of one file: where to go on with it, or why it was not taken. */
export type Sent = { ok: true; next: string } | { ok: false; problems: string[] };

/**
 * Sends one file as the form would and tells how far it is. XMLHttpRequest, since fetch says nothing of what has gone up.
 * `onShare` is told 0 to 1.
 */
export const sendFile = (action: string, field: string, file: File, onShare: (share: number) => void): Promise<Sent> =>
  new Promise((resolve) => {
    const data = new FormData();
    data.set(field, file);
    const request = new XMLHttpRequest();
    request.open("POST", action);
    request.setRequestHeader("accept", "application/json");
    request.upload.onprogress = (event) => event.lengthComputable && onShare(event.loaded / event.total);
    request.onerror = () => resolve({ ok: false, problems: [dropWords.broke(file.name)] });
    request.onload = () => {
      const reply = readReply(request.responseText);
      resolve(
        reply.next
          ? { ok: true, next: reply.next }
          : { ok: false, problems: reply.problems ?? [dropWords.noAnswer(file.name, request.status)] },
      );
    };
    request.send(data);
  });

function readReply(text: string): { next?: string; problems?: string[] } {
  try {
    return JSON.parse(text) as { next?: string; problems?: string[] };
  } catch {
    return {};
  }
}
