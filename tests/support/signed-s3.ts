import { createHash, createHmac } from "node:crypto";
import { mkdtempSync } from "node:fs";
import { request as ask, createServer, type IncomingMessage, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { S3Settings } from "@/lib/platform/s3-settings.ts";

type S3Server = { run: () => Promise<{ port: number }>; close: () => Promise<void> };

/**
 * An S3-compatible server on loopback that lets nothing through whose signature does not hold. The server behind it takes any
 * version-4 signature unseen, so a door of our own stands before it and works each one out again (AWS Signature Version 4, "Authenticating
 * Requests: Using the Authorization Header"; from memory).
 */
export async function signedS3(bucket: string): Promise<{ settings: S3Settings; close: () => Promise<void> }> {
  const { default: S3rver } = (await import("s3rver" as string)) as { default: new (options: object) => S3Server };
  const directory = mkdtempSync(join(tmpdir(), "assay-s3-"));
  const configureBuckets = [{ name: bucket, configs: [] }];
  const behind = new S3rver({ port: 0, address: "127.0.0.1", silent: true, directory, configureBuckets });
  const { port } = await behind.run();
  // The one key that the server behind knows.
  const key = { accessKeyId: "S3RVER", secretAccessKey: "S3RVER" };
  const door = createServer(async (incoming, outgoing) => {
    const chunks: Buffer[] = [];
    for await (const chunk of incoming) chunks.push(chunk as Buffer);
    const body = Buffer.concat(chunks);
    if (!signatureHolds(incoming, body, key)) {
      const sorry = `<?xml version="1.0"?><Error><Code>SignatureDoesNotMatch</Code><Message>no</Message></Error>`;
      outgoing.writeHead(403, { "content-type": "application/xml" }).end(sorry);
      return;
    }
    const { method, url: path, headers } = incoming;
    const through = ask({ host: "127.0.0.1", port, method, path, headers }, (answer) => {
      outgoing.writeHead(answer.statusCode ?? 500, answer.headers);
      answer.pipe(outgoing);
    });
    through.end(body);
  });
  const open = await listening(door);
  const settings = { endpoint: `http://127.0.0.1:${open}`, bucket, region: "us-east-1", ...key };
  const close = async () => {
    door.closeAllConnections();
    door.close();
    await behind.close();
  };
  return { settings, close };
}

const listening = (server: Server): Promise<number> =>
  new Promise((ready) => server.listen(0, "127.0.0.1", () => ready((server.address() as AddressInfo).port)));

const sha256 = (data: string | Buffer): string => createHash("sha256").update(data).digest("hex");
const hmac = (key: string | Buffer, text: string): Buffer => createHmac("sha256", key).update(text).digest();

function signatureHolds(
  { method, url = "/", headers }: IncomingMessage,
  body: Buffer,
  key: { accessKeyId: string; secretAccessKey: string },
): boolean {
  const form =
    /^AWS4-HMAC-SHA256 Credential=([^/]+)\/(\d{8})\/([^/]+)\/s3\/aws4_request, ?SignedHeaders=([^,]+), ?Signature=([0-9a-f]{64})$/;
  const [, id, day, region, signed, signature] = form.exec(headers.authorization ?? "") ?? [];
  if (!id || !day || !region || !signed || id !== key.accessKeyId) return false;
  const names = signed.split(";");
  const digest = String(headers["x-amz-content-sha256"]);
  if (!names.includes("host") || digest !== sha256(body)) return false;
  const [path = "/", query = ""] = url.split("?");
  const ordered =
    query === ""
      ? ""
      : query
          .split("&")
          .map((pair) => (pair.includes("=") ? pair : `${pair}=`))
          .sort()
          .join("&");
  const lines = names
    .map(
      (name) =>
        `${name}:${String(headers[name] ?? "")
          .trim()
          .replace(/ +/g, " ")}\n`,
    )
    .join("");
  const canonical = [method, path, ordered, lines, signed, digest].join("\n");
  const scope = `${day}/${region}/s3/aws4_request`;
  const toSign = ["AWS4-HMAC-SHA256", String(headers["x-amz-date"]), scope, sha256(canonical)].join("\n");
  const signing = hmac(hmac(hmac(hmac(`AWS4${key.secretAccessKey}`, day), region), "s3"), "aws4_request");
  return hmac(signing, toSign).toString("hex") === signature;
}
