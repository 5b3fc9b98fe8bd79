import { mkdtempSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { bucketStore } from "@/lib/files/bucket-store.ts";
import { folderStore } from "@/lib/files/file-store.ts";
import { readS3Settings, type S3Settings } from "@/lib/platform/s3-settings.ts";
import { signedS3 } from "../support/signed-s3.ts";

let server: Awaited<ReturnType<typeof signedS3>>;
let settings: S3Settings;
beforeAll(async () => {
  server = await signedS3("assay");
  settings = server.settings;
});
afterAll(() => server.close());

const bytes = new TextEncoder().encode("a certificate, invented");

describe("a store of files, on disk and in a bucket alike", () => {
  it.each([
    ["folder", () => folderStore(mkdtempSync(join(tmpdir(), "assay-files-")))],
    ["bucket", () => bucketStore(settings)],
  ])("%s: keeps bytes, answers null for what is not there, lists names", async (_, open) => {
    const store = open();
    expect(await store.read("originals", "a".repeat(64))).toBeNull();
    await store.write("originals", "a".repeat(64), bytes);
    await store.write("originals", "a".repeat(64), bytes);
    await store.write("photos", `${"b".repeat(32)}.webp`, new Uint8Array([1, 2, 3]));
    expect(await store.read("originals", "a".repeat(64))).toEqual(new Uint8Array(bytes));
    expect(await store.names("originals")).toEqual(["a".repeat(64)]);
    expect(await store.names("photos")).toEqual([`${"b".repeat(32)}.webp`]);
    await store.remove("photos", `${"b".repeat(32)}.webp`);
    await store.remove("photos", `${"b".repeat(32)}.webp`);
    expect(await store.names("photos")).toEqual([]);
  });
});

describe("a bucket", () => {
  it("refuses a key that is not the right one: its signature does not hold", async () => {
    const stranger = bucketStore({ ...settings, secretAccessKey: "guessed" });
    // The refusal of a HEAD carries no name.
    await expect(stranger.write("photos", "c.webp", bytes)).rejects.toMatchObject({
      $metadata: { httpStatusCode: 403 },
    });
    await expect(stranger.read("originals", "a".repeat(64))).rejects.toMatchObject({ name: "SignatureDoesNotMatch" });
    expect(await bucketStore(settings).read("photos", "c.webp")).toBeNull();
  });
  it("is trouble, not an absent file, where it does not exist or nobody answers", async () => {
    await expect(bucketStore({ ...settings, bucket: "no-such" }).read("photos", "x")).rejects.toThrow();
    const nobody = { ...settings, endpoint: "http://127.0.0.1:9" };
    await expect(bucketStore(nobody).read("photos", "x")).rejects.toThrow();
  });
  it("lists more names than one answer of the store holds", async () => {
    // The server behind cannot answer in pages on a current OpenSSL (it wants DES), so two pages are answered by hand.
    const asked: (string | null)[] = [];
    const pages = createServer((request, response) => {
      const token = new URL(request.url ?? "/", "http://any").searchParams.get("continuation-token");
      asked.push(token);
      const page =
        token === null
          ? "<IsTruncated>true</IsTruncated><NextContinuationToken>on</NextContinuationToken><Contents><Key>photos/b</Key></Contents>"
          : "<IsTruncated>false</IsTruncated><Contents><Key>photos/a</Key></Contents>";
      response.writeHead(200, { "content-type": "application/xml" });
      response.end(`<?xml version="1.0"?><ListBucketResult>${page}</ListBucketResult>`);
    });
    await new Promise<void>((ready) => pages.listen(0, "127.0.0.1", ready));
    const endpoint = `http://127.0.0.1:${(pages.address() as AddressInfo).port}`;
    expect(await bucketStore({ ...settings, endpoint }).names("photos")).toEqual(["a", "b"]);
    expect(asked).toEqual([null, "on"]);
    pages.closeAllConnections();
    pages.close();
  });
  it("holds photos and their originals where the environment names it, and none lie on the disk", async () => {
    vi.resetModules();
    Object.assign(process.env, {
      S3_ENDPOINT: settings.endpoint,
      S3_BUCKET: "assay",
      S3_ACCESS_KEY_ID: "S3RVER",
      S3_SECRET_ACCESS_KEY: "S3RVER",
    });
    const { keepPhoto, readPhoto } = await import("@/lib/files/photo-store.ts");
    const { readPrivate } = await import("@/lib/files/private-files.ts");
    const dataDir = mkdtempSync(join(tmpdir(), "assay-files-"));
    const picture = await sharp({ create: { width: 600, height: 400, channels: 3, background: "#357" } })
      .jpeg()
      .toBuffer();
    const kept = await keepPhoto(dataDir, new Uint8Array(picture));
    if (!kept.ok) throw new Error("the photo was not kept");
    expect(await readPhoto(dataDir, kept.value.fileKey)).not.toBeNull();
    expect(await readPrivate(dataDir, kept.value.originalKey)).toEqual(new Uint8Array(picture));
    expect(await folderStore(dataDir).names("photos")).toEqual([]);
    expect(await bucketStore(settings).names("originals")).toContain(kept.value.originalKey);
  });
});

describe("its settings", () => {
  const whole = {
    S3_ENDPOINT: "https://s3.example.org",
    S3_BUCKET: "assay",
    S3_ACCESS_KEY_ID: "id",
    S3_SECRET_ACCESS_KEY: "a secret",
  };
  it("are all there or none", () => {
    expect(readS3Settings({})).toBeNull();
    expect(readS3Settings({ ...whole, S3_REGION: "" })).toMatchObject({ region: "us-east-1", bucket: "assay" });
    expect(() => readS3Settings({ S3_BUCKET: "assay" })).toThrow("S3_ENDPOINT");
  });
  it("are named where they are wrong, a secret without its text", () => {
    const wrong = () => readS3Settings({ ...whole, S3_BUCKET: "Not A Bucket", S3_ENDPOINT: "s3.example.org" });
    expect(wrong).toThrow(/S3_ENDPOINT: expected an address[\s\S]*S3_BUCKET: expected a bucket's name/);
    expect(wrong).not.toThrow("a secret");
  });
});
