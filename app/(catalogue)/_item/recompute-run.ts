import { readingsAgree } from "@/lib/exports/readings-agree.ts";
import { paths } from "@/lib/platform/paths.ts";
import { type CheckSignature, changedInputs, checkRevision, type Digest } from "@/lib/publication/check-revision.ts";
import { readSnapshot } from "@/lib/publication/read-snapshot.ts";
import { recomputeSnapshot } from "@/lib/publication/recompute.ts";
import type { Language } from "@/lib/wording/language.ts";
import { type RecomputeReport, type RecomputeSentences, recomputeIn } from "@/lib/wording/recompute.ts";

/** What a reader can be told went wrong, in a sentence. */
export class RecomputeTrouble extends Error {}

async function fetched(path: string, say: RecomputeSentences): Promise<Uint8Array<ArrayBuffer>> {
  // "no-cache": asked anew, so that what is checked is what the registry says now.
  const answer = await fetch(path, { cache: "no-cache" }).catch(() => null);
  if (answer === null) throw new RecomputeTrouble(say.noAnswer);
  if (!answer.ok) throw new RecomputeTrouble(say.notThere(path, answer.status));
  return new Uint8Array(await answer.arrayBuffer());
}

/** SHA-256 in the browser; null where it hands out no crypto (a page over plain http). */
function digestHere(): Digest | null {
  const { subtle } = globalThis.crypto ?? {};
  if (!subtle) return null;
  return async (data) => {
    const bytes = typeof data === "string" ? new TextEncoder().encode(data) : data;
    const hash = new Uint8Array(await subtle.digest("SHA-256", bytes));
    return Array.from(hash, (byte) => byte.toString(16).padStart(2, "0")).join("");
  };
}

const fromBase64 = (text: string): Uint8Array<ArrayBuffer> => Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));

/** Ed25519 by WebCrypto; null in a browser that does not know it. */
const checkSignature: CheckSignature = async (publicKey, text, signature) => {
  let key: CryptoKey;
  try {
    key = await crypto.subtle.importKey("spki", fromBase64(publicKey), "Ed25519", false, ["verify"]);
  } catch (error) {
    if ((error as DOMException).name === "NotSupportedError") return null;
    return false;
  }
  return crypto.subtle.verify("Ed25519", key, fromBase64(signature), new TextEncoder().encode(text));
};

/** Fetches a revision's public files and makes everything again; the pure rooms it needs come with this module only. */
export async function recomputeHere(slug: string, revision: number, language: Language): Promise<RecomputeReport> {
  const say = recomputeIn[language];
  const [bytes, csv, logBytes] = await Promise.all([
    fetched(paths.api.item(slug, revision), say),
    fetched(paths.api.readings(slug, revision), say),
    fetched(paths.api.log(), say),
  ]);
  const text = (from: Uint8Array): string => new TextDecoder().decode(from);
  const snapshot = readSnapshot(text(bytes));
  if (!snapshot.ok) throw new RecomputeTrouble(say.unreadable(paths.api.item(slug, revision)));
  const results = recomputeSnapshot(snapshot.value);
  const digest = digestHere();
  return {
    results,
    readings: readingsAgree(text(csv), snapshot.value),
    changedInputs: digest && (await changedInputs(results, digest)),
    log:
      digest &&
      (await checkRevision({ bytes, slug, revision, log: parsedLog(text(logBytes), say) }, digest, checkSignature)),
  };
}

function parsedLog(text: string, say: RecomputeSentences): { entries: unknown[]; head?: unknown } {
  try {
    const log = JSON.parse(text) as { entries?: unknown; head?: unknown };
    if (Array.isArray(log.entries)) return { entries: log.entries, head: log.head };
  } catch {
    // Told below, as anything else that is no log.
  }
  throw new RecomputeTrouble(say.unreadable(paths.api.log()));
}
