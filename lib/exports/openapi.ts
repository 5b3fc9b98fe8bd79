import * as z from "zod";
import { paths } from "../platform/paths.ts";
import { logHeadSchema } from "../publication/log-head.ts";
import { logEntrySchema, snapshotDecision, snapshotSchema } from "../publication/snapshot.ts";
import { itemCategories } from "../quantity/item-words.ts";
import { apiLimitSchema, itemsPageSchema, limitsSchema, logSchema } from "./api-schemas.ts";
import { itemSummarySchema } from "./item-summary.ts";
import { licenceOf } from "./licence.ts";
import { problemJsonSchema, problemJsonType, problemTypes } from "./problem-json.ts";
import { absoluteUrl } from "./published-revision.ts";

type Json = { [key: string]: unknown };

const schemas = {
  Snapshot: snapshotSchema,
  LogEntry: logEntrySchema,
  LogHead: logHeadSchema,
  Log: logSchema,
  ItemSummary: itemSummarySchema,
  ItemsPage: itemsPageSchema,
  Limit: apiLimitSchema,
  Limits: limitsSchema,
  Problem: problemJsonSchema,
} as const;

/** The zod schemas that serialise the answers, as JSON Schema 2020-12 (what OpenAPI 3.1 uses), referring to each other. */
function componentSchemas(): Json {
  const registry = z.registry<{ id: string }>();
  for (const [id, schema] of Object.entries(schemas)) registry.add(schema, { id });
  const made = z.toJSONSchema(registry, {
    target: "draft-2020-12",
    io: "input", // as a reader may meet it: members may be added, so none is forbidden
    uri: (id) => `#/components/schemas/${id}`,
    // A list of fixed length, said in the words that every version of OpenAPI has too: here all members are alike.
    override: ({ jsonSchema: made }) => {
      const [first] = made.prefixItems ?? [];
      if (!made.prefixItems || !first) return;
      Object.assign(made, { items: first, minItems: made.prefixItems.length, maxItems: made.prefixItems.length });
      delete made.prefixItems;
    },
  }).schemas as Record<string, Json>;
  return Object.fromEntries(
    Object.entries(made).map(([id, { $schema: _schema, $id: _id, ...schema }]) => [id, schema]),
  );
}

const ref = (name: keyof typeof schemas): Json => ({ $ref: `#/components/schemas/${name}` });
const json = (name: keyof typeof schemas, description: string, headers: Json): Json => ({
  description,
  headers,
  content: { "application/json": { schema: ref(name) } },
});
const anyJson = (type: string, description: string): Json => ({
  description,
  headers: bodyTag,
  content: { [type]: { schema: { type: "object" } } },
});
const text = (type: string, description: string): Json => ({
  description,
  headers: bodyTag,
  content: { [type]: { schema: { type: "string" } } },
});
const problem = (description: string): Json => ({
  description,
  content: { [problemJsonType]: { schema: ref("Problem") } },
});

const etag: Json = {
  ETag: { description: "The snapshot's SHA-256 in quotation marks", schema: { type: "string" } },
};
const bodyTag: Json = { ETag: { description: "Changes when the body does", schema: { type: "string" } } };
const unchanged: Json = { description: "Not changed since the ETag sent in If-None-Match" };
const tooMany = problem("Too many requests");

const inQuery = (name: string, description: string, schema: Json): Json => ({ name, in: "query", description, schema });
const slugParameter: Json = {
  name: "slug",
  in: "path",
  required: true,
  description: "The item's address, as in /items/{slug}",
  schema: { type: "string" },
};
const revisionParameter = inQuery("revision", "A revision's number; without it, the newest", {
  type: "integer",
  minimum: 1,
});

const atEntry = inQuery("seq", "The registry as it stood at this entry of the log; without it, as it stands now", {
  type: "integer",
  minimum: 1,
});
const badParameter = problem("A parameter is not understood");
const noEntry = problem("The log has no such entry");

const forAll =
  "Open to everyone and to every origin, without a key. Whoever sends the ETag back in If-None-Match is told 304 where nothing changed. Trouble is answered as application/problem+json (RFC 9457), with a code and a sentence.";

const get = (operationId: string, summary: string, responses: Json, parameters: Json[] = []): Json => ({
  get: {
    operationId,
    summary,
    description: `${summary}. ${forAll}`,
    tags: ["read"],
    ...(parameters.length > 0 ? { parameters } : {}),
    responses,
  },
});

/** Every public route that a machine would read, by its path. Routes for people and for signed-in work are not listed. */
const routes = (): Json => ({
  "/api/v1/items": get(
    "listItems",
    "Published items, filtered, page by page",
    {
      200: json("ItemsPage", "One page of items", bodyTag),
      304: unchanged,
      400: problem("A parameter or the cursor is not understood"),
      429: tooMany,
    },
    [
      inQuery("q", "Words of a name, another name, a maker's mark, or a product code", { type: "string" }),
      inQuery("element", "Chemical symbol that was looked for", { type: "string", examples: ["Pb"] }),
      inQuery("category", "Category of the item", { type: "string", enum: [...itemCategories] }),
      inQuery("verdict", "Verdict of at least one result", {
        type: "string",
        enum: [...snapshotDecision.shape.verdict.options],
      }),
      inQuery("cursor", "`nextCursor` of the page before, with the same other parameters", { type: "string" }),
      inQuery("limit", "Items on a page", { type: "integer", minimum: 1, maximum: 100, default: 20 }),
    ],
  ),
  "/api/v1/items/{slug}": get(
    "readItem",
    "The snapshot of an item, byte for byte the canonical JSON whose SHA-256 the log holds",
    {
      200: json("Snapshot", "The snapshot", etag),
      304: unchanged,
      400: badParameter,
      404: problem("No such item or revision"),
      429: tooMany,
    },
    [slugParameter, revisionParameter],
  ),
  "/api/v1/items/{slug}/readings.csv": get(
    "readReadings",
    "Every reading of an item, one row for each reading and element",
    {
      200: text("text/csv", "The readings"),
      304: unchanged,
      400: badParameter,
      404: problem("No such item or revision"),
      429: tooMany,
    },
    [slugParameter, revisionParameter],
  ),
  "/api/v1/limits": get("listLimits", "The limits that results are held beside, with their dates", {
    200: json("Limits", "All limits, past and present", bodyTag),
    304: unchanged,
    429: tooMany,
  }),
  "/api/v1/log": get("readLog", "The publication log: a hash chain over every revision, its newest entry signed", {
    200: json("Log", "All entries, in order", bodyTag),
    304: unchanged,
    429: tooMany,
  }),
  "/api/v1/openapi.json": get("readOpenApi", "This document", {
    200: anyJson("application/json", "OpenAPI 3.1"),
    304: unchanged,
  }),
  "/items/{slug}/card.svg": get("readCard", "A card of an item to show on another page", picture("The card"), [
    slugParameter,
    revisionParameter,
  ]),
  "/items/{slug}/label.svg": get("readLabel", "A label with the QR code of an item's page", picture("The label"), [
    slugParameter,
    revisionParameter,
  ]),
  ...dataRoutes(),
  ...feedRoutes(),
  "/photos/{key}": get(
    "readPhoto",
    "A photo that a snapshot names by its key",
    {
      200: { description: "The photo", content: { "image/webp": {} } },
      404: { description: "No such photo", content: { "text/plain": { schema: { type: "string" } } } },
    },
    [{ ...slugParameter, name: "key", description: "`key` of a photo in a snapshot" }],
  ),
});

const picture = (description: string): Json => ({
  200: text("image/svg+xml", description),
  304: unchanged,
  400: badParameter,
  404: problem("No such item or revision"),
  429: tooMany,
});

const dataRoutes = (): Json => {
  const file = (operationId: string, summary: string, ok: Json): Json =>
    get(operationId, summary, { 200: ok, 304: unchanged, 400: badParameter, 404: noEntry, 429: tooMany }, [atEntry]);
  return {
    "/data/datapackage.json": file(
      "readDataPackage",
      "Descriptor of the whole registry as a Data Package, version 2",
      anyJson("application/json", "The descriptor"),
    ),
    "/data/results.csv": file(
      "readAllResults",
      "Every item's newest results, one row for each part and element",
      text("text/csv", "The results"),
    ),
    "/data/readings.csv": file(
      "readAllReadings",
      "Every item's newest readings, one row for each reading and element",
      text("text/csv", "The readings"),
    ),
    "/data/log.json": file(
      "readLogFile",
      "The publication log up to an entry",
      json("Log", "The entries, in order", bodyTag),
    ),
  };
};

const feedRoutes = (): Json => ({
  "/feed.xml": get("readAtomFeed", "The newest revisions as an Atom feed", {
    200: text("application/atom+xml", "The feed"),
    304: unchanged,
  }),
  "/feed.json": get("readJsonFeed", "The newest revisions as a JSON Feed 1.1", {
    200: anyJson("application/feed+json", "The feed"),
    304: unchanged,
  }),
  "/requests/{id}/feed.xml": get(
    "readRequestFeed",
    "What became of one request to test something, as an Atom feed",
    { 200: text("application/atom+xml", "The feed"), 304: unchanged, 404: problem("No such request") },
    [{ ...slugParameter, name: "id", description: "The request, as in /requests/{id}" }],
  ),
  "/corrections/feed.xml": get("readCorrectionsFeed", "Corrections and withdrawals as an Atom feed", {
    200: text("application/atom+xml", "The feed"),
    304: unchanged,
  }),
});

/**
 * The public read interface as OpenAPI 3.1, its schemas made from the zod schemas that serialise the answers, so that the
 * document cannot promise what is not sent. `x-problem-types` describes each problem that an answer's `type` points to.
 */
export function openApiDocument(about: {
  baseUrl: string;
  title: string;
  licence: string;
  contact: string | null;
}): Json {
  const licence = licenceOf(about.licence);
  return {
    openapi: "3.1.0",
    info: {
      title: `${about.title}: read interface`,
      version: "1.0.0",
      summary: "Measured content of parts of household goods, from published snapshots only",
      description:
        "Stability: within version 1, members and columns are only ever added, never renamed, removed or given another meaning. Read what you know and skip what you do not. A cursor is opaque and lasts for its own query. Every published revision keeps its address and its bytes for ever.",
      license: { name: licence.title, ...(licence.path ? { url: licence.path } : {}) },
      contact: {
        name: about.title,
        url: absoluteUrl(about.baseUrl, paths.home()),
        ...(about.contact?.includes("@") ? { email: about.contact } : {}),
      },
    },
    servers: [{ url: absoluteUrl(about.baseUrl, "") }],
    tags: [{ name: "read", description: "Open to everyone, without a key" }],
    security: [],
    paths: routes(),
    components: { schemas: componentSchemas() },
    "x-problem-types": problemTypes,
  };
}
