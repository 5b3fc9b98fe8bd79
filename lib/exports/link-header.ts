import { paths } from "../platform/paths.ts";
import type { Snapshot } from "../publication/snapshot.ts";
import { absoluteUrl } from "./published-revision.ts";

/**
 * The Link header (RFC 8288) of an item's page at one revision: `latest-version` and `predecessor-version` (RFC 5829),
 * `cite-as` (RFC 8574), `canonical` (RFC 6596) and the machine-readable twins.
 */
export function linkHeader(snapshot: Pick<Snapshot, "slug" | "revision">, baseUrl: string): string {
  const { slug, revision } = snapshot;
  const to = (path: string, parameters: string) => `<${absoluteUrl(baseUrl, path)}>; ${parameters}`;
  return [
    to(paths.item(slug), 'rel="canonical"'),
    to(paths.item(slug), 'rel="latest-version"'),
    to(paths.revision(slug, revision), 'rel="cite-as"'),
    ...(revision > 1 ? [to(paths.revision(slug, revision - 1), 'rel="predecessor-version"')] : []),
    to(paths.api.item(slug, revision), 'rel="alternate"; type="application/json"'),
    to(paths.api.readings(slug, revision), 'rel="alternate"; type="text/csv"'),
  ].join(", ");
}
