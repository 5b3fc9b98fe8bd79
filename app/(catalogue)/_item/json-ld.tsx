/** Data for machines inside a page. "<" is escaped, so that no text of an item can end the script and begin another. */
export const escapedJson = (data: unknown): string =>
  JSON.stringify(data)
    .replaceAll("<", "\\u003c")
    .replaceAll(">", "\\u003e")
    .replaceAll("&", "\\u0026")
    .replaceAll("\u2028", "\\u2028")
    .replaceAll("\u2029", "\\u2029");

export function JsonLd({ data }: { data: unknown }) {
  return (
    // biome-ignore lint/security/noDangerouslySetInnerHtml: escaped above
    <script type="application/ld+json" dangerouslySetInnerHTML={{ __html: escapedJson(data) }} />
  );
}
