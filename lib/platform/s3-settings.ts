import { z } from "zod";

/** Where files lie instead of the disk: any store that speaks S3. */
export type S3Settings = {
  endpoint: string;
  bucket: string;
  region: string;
  accessKeyId: string;
  secretAccessKey: string;
};

const schema = z.object({
  S3_ENDPOINT: z.url({ protocol: /^https?$/, error: "an address such as https://s3.example.org" }),
  S3_BUCKET: z.string().regex(/^[a-z0-9][a-z0-9.-]{1,61}[a-z0-9]$/, "a bucket's name: 3 to 63 of a–z, 0–9, . and -"),
  S3_REGION: z.string().min(1).default("us-east-1"),
  S3_ACCESS_KEY_ID: z.string({ error: "the key's id" }).min(1),
  S3_SECRET_ACCESS_KEY: z.string({ error: "the key's secret" }).min(1),
});

/**
 * The settings of the environment, checked; null where none of them is set, and then files lie on the disk. Some without
 * the others, or a wrong one, stops the start with a sentence that names it; a secret is never repeated.
 */
export function readS3Settings(source: Record<string, string | undefined>): S3Settings | null {
  const given = Object.fromEntries(
    Object.keys(schema.shape).map((name) => [name, source[name] === "" ? undefined : source[name]]),
  );
  if (Object.values(given).every((value) => value === undefined)) return null;
  const parsed = schema.safeParse(given);
  if (!parsed.success) {
    const lines = parsed.error.issues.map((issue) => `  ${issue.path.join(".")}: expected ${issue.message}`);
    throw new Error(`The settings of the S3 store are not usable:\n${lines.join("\n")}`);
  }
  const e = parsed.data;
  return {
    endpoint: e.S3_ENDPOINT,
    bucket: e.S3_BUCKET,
    region: e.S3_REGION,
    accessKeyId: e.S3_ACCESS_KEY_ID,
    secretAccessKey: e.S3_SECRET_ACCESS_KEY,
  };
}

let cached: S3Settings | null | undefined;
export function s3Settings(): S3Settings | null {
  if (cached === undefined) cached = readS3Settings(process.env);
  return cached;
}
