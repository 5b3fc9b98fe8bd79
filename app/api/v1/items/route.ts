import { z } from "zod";
import type { ItemsPage } from "@/lib/exports/api-schemas.ts";
import { itemSummary } from "@/lib/exports/item-summary.ts";
import { environment } from "@/lib/platform/environment.ts";
import { snapshotDecision } from "@/lib/publication/snapshot.ts";
import { itemCategories } from "@/lib/quantity/item-words.ts";
import { elements } from "@/lib/readings/elements.ts";
import { searchPublished } from "@/lib/store/search.ts";
import { readQuery } from "../read-query.ts";
import { answered, jsonReply, preflight, problemReply } from "../reply.ts";
import { openCursor, sealCursor } from "./cursor.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

const symbols = new Set(elements.map((element) => element.symbol));
const oneOf = (words: readonly string[]) =>
  z.string().refine((word) => word === "" || words.includes(word), { message: words.join(", ") });

/** A filter left empty is a filter not asked for, as in the address of the search page. */
const query = z.object({
  q: z
    .string()
    .max(200, "at most 200 characters")
    .default("")
    .transform((text) => text.normalize("NFC").trim()),
  element: z
    .string()
    .default("")
    .refine((symbol) => symbol === "" || symbols.has(symbol), {
      message: "the symbol of an element that X-rays can show, such as Pb",
    }),
  category: oneOf(itemCategories).default(""),
  verdict: oneOf(snapshotDecision.shape.verdict.options).default(""),
  cursor: z.string().default(""),
  limit: z
    .string()
    .regex(/^(?:[1-9]\d?|100|)$/, "a whole number from 1 to 100")
    .default("")
    .transform((text) => (text === "" ? 20 : Number(text))),
});

/** Published items by words and filters, page by page. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => {
    const asked = readQuery(request, query);
    if (!asked.ok) return problemReply(request, asked.problems);
    const { cursor, ...search } = asked.value;
    const from = cursor === "" ? undefined : openCursor(cursor, search);
    if (from === null) return problemReply(request, [{ code: "bad-cursor", found: cursor.slice(0, 200) }]);
    const page = await searchPublished({ ...search, cursor: from });
    const body: ItemsPage = {
      items: page.hits.map((hit) => itemSummary(hit, environment().baseUrl)),
      total: page.total,
      nextCursor: page.nextCursor === null ? null : sealCursor(page.nextCursor, search),
    };
    return jsonReply(request, body);
  });
