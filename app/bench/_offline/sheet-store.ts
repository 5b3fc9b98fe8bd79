import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { TableSheet } from "./sheet.ts";

/** Sheets as they lie on this phone, in the browser's own database; photos apart, so that a word typed rewrites no photo. */
interface Schema extends DBSchema {
  sheets: { key: string; value: TableSheet };
  photos: { key: string; value: Blob };
}

let opened: Promise<IDBPDatabase<Schema>> | undefined;
const database = (): Promise<IDBPDatabase<Schema>> => {
  opened ??= openDB<Schema>("cupboard-assay-table", 1, {
    upgrade: (db) => {
      db.createObjectStore("sheets", { keyPath: "id" });
      db.createObjectStore("photos");
    },
  });
  return opened;
};

export const keepSheet = async (sheet: TableSheet): Promise<void> => {
  await (await database()).put("sheets", sheet);
};
export const keepPhotoBlob = async (id: string, blob: Blob): Promise<void> => {
  await (await database()).put("photos", blob, id);
};
export const photoBlob = async (id: string): Promise<Blob | undefined> => (await database()).get("photos", id);
export const dropPhotoBlob = async (id: string): Promise<void> => (await database()).delete("photos", id);

/** Forgets a sheet on this phone, with its photos. */
export async function dropSheet({ id, photos }: TableSheet): Promise<void> {
  const transaction = (await database()).transaction(["sheets", "photos"], "readwrite");
  for (const photo of photos) await transaction.objectStore("photos").delete(photo.id);
  await transaction.objectStore("sheets").delete(id);
  await transaction.done;
}
export const findSheet = async (id: string): Promise<TableSheet | undefined> => (await database()).get("sheets", id);

/** The sheets of one person, the newest first. */
export async function sheetsOf(personId: string): Promise<TableSheet[]> {
  const all = await (await database()).getAll("sheets");
  return all.filter((sheet) => sheet.personId === personId).sort((a, b) => (a.changedAt < b.changedAt ? 1 : -1));
}
