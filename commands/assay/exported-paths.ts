/** Where an exported snapshot lies in its folder; null for a slug that no registry gives, so that no path leads out of it. */
export const snapshotPath = (slug: string, revision: number): string | null =>
  /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(slug) && Number.isSafeInteger(revision) && revision > 0
    ? `snapshots/${slug}/${revision}.json`
    : null;

/** The signed head in an exported folder. */
export const headName = "log-head.json";
