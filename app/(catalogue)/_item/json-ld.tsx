import { jsonForScript } from "@/lib/exports/json-ld.ts";

/** Data for machines inside a page, escaped so that no text of an item can end the script and begin another. */
export function JsonLd({ data }: { data: unknown }) {
  return (
    // biome-ignore lint/security/noDangerouslySetInnerHtml: escaped by jsonForScript
    <script type="application/ld+json" dangerouslySetInnerHTML={{ __html: jsonForScript(data) }} />
  );
}
