import { sha256 } from "@/lib/platform/sha256.ts";
import type { SearchQuery } from "@/lib/store/search.ts";

type Asked = Omit<SearchQuery, "cursor" | "limit">;

/** What ties a cursor to its query: a short digest of everything that decides which items come, and in which order. */
const markOf = ({
  q,
  element = "",
  category = "",
  verdict = "",
  material = "",
  age = "",
  year = "",
  sort,
}: Asked): string =>
  sha256(JSON.stringify([q, element, category, verdict, material, age, year, sort ?? ""])).slice(0, 12);

/** The store's cursor bound to its query: "2s.0f3c…". */
export const sealCursor = (cursor: string, query: Asked): string => `${cursor}.${markOf(query)}`;

/** The store's cursor again, or null where the text is none or belongs to another query. */
export function openCursor(text: string, query: Asked): string | null {
  const [, cursor, mark] = /^([0-9a-z]{1,24})\.([0-9a-f]{12})$/.exec(text) ?? [];
  return cursor !== undefined && mark === markOf(query) ? cursor : null;
}
