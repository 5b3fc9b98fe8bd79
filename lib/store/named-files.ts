import { readSnapshot } from "../publication/read-snapshot.ts";
import type { Db } from "./database.ts";

/** A stored file that a record names. `hashBegins` is what its SHA-256 has to begin with: all of it where it is known. */
export type NamedFile = { place: "photos" | "private"; key: string; hashBegins: string; by: string };

/** Every file that a record of the working tables or a published snapshot names. */
export async function namedFiles(db: Db): Promise<NamedFile[]> {
  const named: NamedFile[] = [];
  const original = (key: string | null, by: string) => {
    if (key !== null) named.push({ place: "private", key, hashBegins: key, by });
  };
  const photos = await db.photo.findMany({ include: { files: true, item: { select: { name: true } } } });
  for (const photo of photos) {
    const by = `photo ${photo.id} of “${photo.item.name}”`;
    named.push({ place: "photos", key: photo.fileKey, hashBegins: photo.sha256, by });
    for (const { key, sha256 } of photo.files) named.push({ place: "photos", key, hashBegins: sha256, by });
    original(photo.originalKey, by);
  }
  for (const { name, certificateKey } of await db.checkStandard.findMany())
    original(certificateKey, `certificate of “${name}”`);
  for (const { id, certificateKey } of await db.otherTest.findMany())
    original(certificateKey, `certificate of test ${id}`);
  for (const { id, photoKey: key } of await db.testRequest.findMany({ where: { photoKey: { not: null } } }))
    if (key !== null)
      named.push({ place: "photos", key, hashBegins: key.split(".")[0] ?? key, by: `test request ${id}` });
  named.push(...(await publishedFiles(db)));
  return named;
}

async function publishedFiles(db: Db): Promise<NamedFile[]> {
  const named: NamedFile[] = [];
  const seqs = await db.publication.findMany({ select: { seq: true }, orderBy: { seq: "asc" } });
  for (const { seq } of seqs) {
    const row = await db.publication.findUniqueOrThrow({
      where: { seq },
      select: { snapshot: true, slug: true, revision: true },
    });
    const read = readSnapshot(row.snapshot);
    // A text that cannot be read is for verify-log to tell.
    if (!read.ok) continue;
    const by = `revision ${row.revision} of ${row.slug}`;
    for (const photo of read.value.photos)
      for (const { key, sha256 } of [photo, ...(photo.sizes ?? [])])
        named.push({ place: "photos", key, hashBegins: sha256, by });
  }
  return named;
}

/** Instrument files, which lie in the database itself, one at a time. */
export async function* rawFiles(db: Db): AsyncGenerator<{ name: string; sha256: string; bytes: Uint8Array }> {
  for (const { id } of await db.rawFile.findMany({ select: { id: true } })) {
    const { name, sha256, bytes } = await db.rawFile.findUniqueOrThrow({ where: { id } });
    yield { name, sha256, bytes };
  }
}
