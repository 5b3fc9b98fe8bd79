import { createHash } from "node:crypto";
import Papa from "papaparse";
import { beforeAll, describe, expect, it } from "vitest";
import { GET as correctionsFeed } from "@/app/corrections/feed.xml/route.ts";
import { GET as readPackage } from "@/app/data/datapackage.json/route.ts";
import { GET as readLogFile } from "@/app/data/log.json/route.ts";
import { GET as readAllReadings } from "@/app/data/readings.csv/route.ts";
import { GET as readAllResults } from "@/app/data/results.csv/route.ts";
import { GET as jsonFeed } from "@/app/feed.json/route.ts";
import { GET as atomFeed } from "@/app/feed.xml/route.ts";
import { GET as sitemap } from "@/app/sitemap.xml/route.ts";
import { paths } from "@/lib/platform/paths.ts";
import { asked, baseUrl, publishedRegistry } from "../support/published-database.ts";
import { readXml } from "../support/read-xml.ts";
import { sampleHistory } from "../support/sample-revisions.ts";

beforeAll(async () => {
  await publishedRegistry();
});

describe("the feeds", () => {
  it("Atom parses as XML and has an entry for each revision", async () => {
    const response = await atomFeed(asked("/feed.xml"));
    expect(response.headers.get("content-type")).toBe("application/atom+xml; charset=utf-8");
    const feed = readXml(await response.text());
    expect(feed.name).toBe("feed");
    expect(feed.attributes["xmlns"]).toBe("http://www.w3.org/2005/Atom");
    const entries = feed.children.filter((child) => child.name === "entry");
    expect(entries.map((entry) => entry.children.find((child) => child.name === "id")?.text)).toEqual(
      sampleHistory()
        .toReversed()
        .map(({ entry }) => `${baseUrl}/items/${entry.slug}/revisions/${entry.revision}`),
    );
  });
  it("corrections have a feed of their own", async () => {
    const feed = readXml(await (await correctionsFeed(asked("/corrections/feed.xml"))).text());
    expect(feed.children.filter((child) => child.name === "entry")).toHaveLength(2);
    expect(feed.children.find((child) => child.name === "id")?.text).toBe(`${baseUrl}/corrections/feed.xml`);
  });
  it("JSON Feed parses as JSON", async () => {
    const response = await jsonFeed(asked("/feed.json"));
    expect(response.headers.get("content-type")).toBe("application/feed+json; charset=utf-8");
    expect(await response.json()).toMatchObject({ version: "https://jsonfeed.org/version/1.1", items: { length: 5 } });
  });
});

describe("the sitemap", () => {
  it("lists items that stand", async () => {
    const map = readXml(await (await sitemap(asked("/sitemap.xml"))).text());
    const addresses = map.children.map((url) => url.children.find((child) => child.name === "loc")?.text);
    expect(addresses).toContain(`${baseUrl}/items/rattle`);
    expect(addresses).not.toContain(`${baseUrl}/items/bluebell-mug`); // withdrawn
    expect((await sitemap(asked("/sitemap.xml?page=2"))).status).toBe(404);
    expect((await sitemap(asked("/sitemap.xml?page=x"))).status).toBe(400);
  });
});

describe("the data package", () => {
  type Resource = { name: string; path: string; bytes: number; hash: string; schema?: { fields: { name: string }[] } };
  const handlers: Record<string, (request: Request) => Promise<Response>> = {
    "/data/results.csv": readAllResults,
    "/data/readings.csv": readAllReadings,
    "/data/log.json": readLogFile,
  };
  const fetched = async (path: string): Promise<Response> => {
    const address = new URL(path);
    expect(address.origin).toBe(baseUrl);
    return handlers[address.pathname]!(asked(address.pathname + address.search));
  };
  it("names files whose size and hash are those of what is sent, at every entry of the log", async () => {
    for (const seq of [undefined, 5, 3, 1]) {
      const made = (await (await readPackage(asked(paths.data.dataPackage(seq)))).json()) as {
        version: string;
        resources: Resource[];
      };
      expect(made.version).toBe(`1.0.${seq ?? 5}`);
      expect(made.resources.map((one) => one.name)).toEqual(["results", "readings", "log"]);
      for (const { path, bytes, hash, schema } of made.resources) {
        const response = await fetched(path);
        const body = Buffer.from(await response.arrayBuffer());
        expect(body.length, path).toBe(bytes);
        expect(`sha256:${createHash("sha256").update(body).digest("hex")}`).toBe(hash);
        expect(response.headers.get("content-location")).toBe(path.slice(baseUrl.length));
        if (schema)
          expect(Papa.parse<string[]>(body.toString(), { preview: 1 }).data[0]).toEqual(
            schema.fields.map((field) => field.name),
          );
      }
    }
  });
  it("holds the newest revision of each item as it stood then", async () => {
    const items = async (seq: number) => {
      const text = await (await readAllReadings(asked(paths.data.readings(seq)))).text();
      const { data } = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });
      return [...new Set(data.map((row) => `${row["item"]} ${row["revision"]}`))].sort();
    };
    expect(await items(1)).toEqual(["bluebell-mug 1"]);
    expect(await items(3)).toEqual(["bluebell-mug 2", "rattle 1"]);
    expect(await items(5)).toEqual(["rattle 2"]); // the mug was withdrawn
  });
  it("answers an entry that is not there, and 304 to whoever holds the file", async () => {
    const none = await readPackage(asked("/data/datapackage.json?seq=6"));
    expect(none.status).toBe(404);
    expect(await none.json()).toMatchObject({ code: "unknown-log-entry", allowed: "1 to 5" });
    expect((await readAllResults(asked("/data/results.csv?seq=0"))).status).toBe(400);
    const response = await readLogFile(asked("/data/log.json"));
    const etag = response.headers.get("etag")!;
    expect(etag).toMatch(/^W\/"log-[0-9a-f]{64}"$/);
    expect((await readLogFile(asked("/data/log.json", { "if-none-match": etag }))).status).toBe(304);
  });
});
