import {
  DeleteObjectCommand,
  GetObjectCommand,
  HeadObjectCommand,
  ListObjectsV2Command,
  PutObjectCommand,
  S3Client,
} from "@aws-sdk/client-s3";
import type { S3Settings } from "../platform/s3-settings.ts";
import type { FileStore } from "./file-store.ts";

/**
 * Files in a bucket of any store that speaks S3, each as PLACE/NAME. The bucket has to be private: originals lie in it
 * beside what is shown, and everything is served by us. An object appears whole or not at all; that is S3's own promise.
 */
export function bucketStore({ endpoint, region, bucket, accessKeyId, secretAccessKey }: S3Settings): FileStore {
  const client = new S3Client({
    endpoint,
    region,
    forcePathStyle: true,
    credentials: { accessKeyId, secretAccessKey },
    // Checksums of the newer protocol only where a store asks for them: names are digests already.
    requestChecksumCalculation: "WHEN_REQUIRED",
    responseChecksumValidation: "WHEN_REQUIRED",
    requestHandler: { connectionTimeout: 5_000, requestTimeout: 30_000 },
  });
  const at = (place: string, name: string) => ({ Bucket: bucket, Key: `${place}/${name}` });
  return {
    where: `the bucket "${bucket}"`,
    write: async (place, name, bytes) => {
      const there = await orNull(client.send(new HeadObjectCommand(at(place, name))));
      if (there?.ContentLength === bytes.length) return;
      await client.send(new PutObjectCommand({ ...at(place, name), Body: bytes, ContentLength: bytes.length }));
    },
    read: async (place, name) => {
      const found = await orNull(client.send(new GetObjectCommand(at(place, name))));
      return found?.Body ? new Uint8Array(await found.Body.transformToByteArray()) : null;
    },
    remove: async (place, name) => {
      await client.send(new DeleteObjectCommand(at(place, name)));
    },
    names: async (place) => {
      const names: string[] = [];
      let next: string | undefined;
      do {
        const page = await client.send(
          new ListObjectsV2Command({ Bucket: bucket, Prefix: `${place}/`, ContinuationToken: next }),
        );
        for (const { Key } of page.Contents ?? []) if (Key) names.push(Key.slice(place.length + 1));
        next = page.NextContinuationToken;
      } while (next !== undefined);
      return names.sort();
    },
  };
}

/** Null where the store says that there is no such object; anything else it says is trouble. */
async function orNull<T>(asked: Promise<T>): Promise<T | null> {
  try {
    return await asked;
  } catch (error) {
    const status = (error as { $metadata?: { httpStatusCode?: number } }).$metadata?.httpStatusCode;
    if (status === 404 && (error as Error).name !== "NoSuchBucket") return null;
    throw error;
  }
}
