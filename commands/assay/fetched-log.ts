import { z } from "zod";
import { paths } from "../../lib/platform/paths.ts";
import { logEntrySchema } from "../../lib/publication/snapshot.ts";
import { UsageError } from "./usage-error.ts";
import type { OpenLog } from "./verify-log.ts";

/** The answer of /api/v1/log, its entries and its head not trusted yet. */
export const logAnswerSchema = z.object({ entries: z.array(z.unknown()), head: z.unknown().optional() });
const atOnce = 4;
const longestWait = 30_000;

/**
 * The log of a registry on the network, from its public interface alone: /api/v1/log and the bytes of every revision. The
 * address is the registry's own, or that of its log.
 */
export async function fetchedLog(address: string): Promise<OpenLog> {
  const base = registryAddress(address);
  const answer = await ask(`${base}${paths.api.log()}`);
  if (answer === null) throw new UsageError(`There is no publication log at ${base}${paths.api.log()}.`);
  const { entries, head } = parsedLog(answer, base);
  const texts: (Uint8Array | undefined)[] = new Array(entries.length);
  let next = 0;
  const worker = async (): Promise<void> => {
    while (next < entries.length) {
      const index = next;
      next += 1;
      const entry = logEntrySchema.pick({ slug: true, revision: true }).safeParse(entries[index]);
      if (!entry.success) continue;
      texts[index] = (await ask(`${base}${paths.api.item(entry.data.slug, entry.data.revision)}`)) ?? undefined;
    }
  };
  await Promise.all(Array.from({ length: atOnce }, worker));
  const heads = head === undefined || head === null ? [] : [head];
  return { log: { entries, snapshot: (seq) => texts[seq - 1] }, heads, close: () => undefined };
}

/** The registry's own address, from it or from that of its log. */
export function registryAddress(address: string): string {
  if (!URL.canParse(address)) throw new UsageError(`"${address}" is not an address.`);
  const { origin, pathname } = new URL(address);
  const log = paths.api.log();
  const rest = pathname.endsWith(log) ? pathname.slice(0, -log.length) : pathname;
  return `${origin}${rest.replace(/\/+$/, "")}`;
}

/** The bytes at an address; null where the registry says that nothing is there. */
export async function ask(url: string): Promise<Uint8Array<ArrayBuffer> | null> {
  let response: Response;
  let body: ArrayBuffer;
  try {
    response = await fetch(url, { signal: AbortSignal.timeout(longestWait) });
    body = await response.arrayBuffer();
  } catch (error) {
    const { cause, message } = error as Error & { cause?: { code?: string; message?: string } };
    throw new UsageError(`${url} did not answer: ${cause?.code ?? cause?.message ?? message}.`);
  }
  if (response.ok) return new Uint8Array(body);
  if (response.status === 404) return null;
  throw new UsageError(`${url} answered with status ${response.status}.`);
}

function parsedLog(bytes: Uint8Array, base: string): z.infer<typeof logAnswerSchema> {
  try {
    return logAnswerSchema.parse(JSON.parse(new TextDecoder().decode(bytes)));
  } catch {
    throw new UsageError(`${base}${paths.api.log()} did not answer with a publication log.`);
  }
}
