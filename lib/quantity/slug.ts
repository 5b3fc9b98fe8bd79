/** The address of an item's page: its name in plain letters. Example: "Mug, Größe 2" → "mug-grosse-2". */
export function slugOf(name: string): string {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/ß/g, "ss")
    .replace(/[^a-z0-9]+/g, "-");
  return plain.replace(/^-+|-+$/g, "").slice(0, 80) || "item";
}
