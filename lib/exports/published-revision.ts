import type { LogEntry, Snapshot } from "../publication/snapshot.ts";

/** One published revision: what it says, and the log entry that seals it. The only thing exports are made from. */
export type PublishedRevision = { snapshot: Snapshot; entry: LogEntry };

/** A path of the product as an absolute address. `baseUrl` may end in a slash or not. */
export const absoluteUrl = (baseUrl: string, path: string): string => `${baseUrl.replace(/\/+$/, "")}${path}`;

/** The time that files state which were made before anything was published: they must state one, and never change. */
export const beforeAnything = "1970-01-01T00:00:00Z";
