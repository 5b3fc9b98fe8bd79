import { readdir, readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { s3Settings } from "../platform/s3-settings.ts";
import { bucketStore } from "./bucket-store.ts";
import { writeWhole } from "./write-whole.ts";

/** What is shown to everybody, and files as they came, which are never served to the public. */
export type FilePlace = "photos" | "originals";
/**
 * Where files lie, by place and name. Names are made of the content, so a file is never changed: it is written whole or
 * not at all, and writing it again leaves it. Reading answers null where there is none.
 */
export type FileStore = {
  write: (place: FilePlace, name: string, bytes: Uint8Array) => Promise<void>;
  read: (place: FilePlace, name: string) => Promise<Uint8Array<ArrayBuffer> | null>;
  /** What is not there is left so. */
  remove: (place: FilePlace, name: string) => Promise<void>;
  names: (place: FilePlace) => Promise<string[]>;
  /** "the folder …" or "the bucket …", for messages */
  where: string;
};

let bucket: FileStore | undefined;
/** The registry's store: the bucket that the environment names, else the folder. One client of the bucket serves the process. */
export function fileStore(dataDir: string): FileStore {
  const settings = s3Settings();
  if (settings === null) return folderStore(dataDir);
  bucket ??= bucketStore(settings);
  return bucket;
}

/** Files on disk under one folder; originals for its owner only. */
export function folderStore(dataDir: string): FileStore {
  const folder = (place: FilePlace) => join(/* turbopackIgnore: true */ dataDir, place);
  return {
    where: `the folder "${dataDir}"`,
    write: (place, name, bytes) => writeWhole(folder(place), name, bytes, place === "originals" ? 0o600 : 0o644),
    read: async (place, name) => {
      try {
        return new Uint8Array(await readFile(join(folder(place), name)));
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
        throw error;
      }
    },
    remove: (place, name) => rm(join(folder(place), name), { force: true }),
    names: async (place) => {
      try {
        const entries = await readdir(folder(place), { recursive: true, withFileTypes: true });
        const files = entries.filter((entry) => entry.isFile());
        return files.map((entry) => join(entry.parentPath, entry.name).slice(folder(place).length + 1)).sort();
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code === "ENOENT") return [];
        throw error;
      }
    },
  };
}
