import { z } from "zod";
import type { SearchQuery } from "@/lib/store/search.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";

export type ItemSearch = SearchQuery;

const word = z
  .string()
  .trim()
  .max(60)
  .regex(/^[\w-]+$/)
  .optional()
  .catch(undefined);
const schema = z.object({
  q: z
    .string()
    .catch("")
    .transform((text) => text.normalize("NFC").trim().slice(0, 200)),
  category: word,
  element: word,
  verdict: word,
  material: word,
  age: word,
  year: word,
  sort: z.enum(["best", "newest", "name"]).optional().catch(undefined),
  cursor: word,
});

/** What the address asks for; anything odd in it is left out, never an error: people share and shorten addresses. */
export function readItemSearch(params: Record<string, string | string[] | undefined>): ItemSearch {
  const first = Object.fromEntries(
    Object.entries(params).map(([key, value]) => [key, (Array.isArray(value) ? value[0] : value) || undefined]),
  );
  return schema.parse({ ...first, q: first["q"] ?? "" });
}

/** The address of the same search with something changed. */
export function itemSearchHref(search: ItemSearch, language: Language = "en"): string {
  const items = pathsIn[language].items();
  const params = new URLSearchParams();
  for (const key of ["q", "category", "element", "verdict", "material", "age", "year", "sort", "cursor"] as const)
    if (search[key]) params.set(key, search[key]);
  const text = params.toString();
  return text === "" ? items : `${items}?${text}`;
}
