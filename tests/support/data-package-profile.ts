/**
 * What the profiles of Data Package version 2 demand (datapackage.org, profiles 2.0: datapackage.json, dataresource.json,
 * tableschema.json, draft-07), written down again in our own words and only as far as our descriptor goes: members required, their types
 * and patterns. Stricter than the profile in one thing: members that it does not know are refused but for those named `extra`.
 */
const text = { type: "string" } as const;
const uri = { type: "string", format: "uri" } as const;
/** A URL, or a path below the descriptor: no leading slash, dot or tilde, no way up. */
const path = {
  type: "string",
  pattern: "^(https?|ftps?)://.+$|^(?![./~])(?!.*/\\.\\./)(?!.*\\\\)(?!.*://)[^:]+$",
} as const;
const closed = <T extends object>(required: readonly string[], properties: T) =>
  ({ type: "object", required, properties, additionalProperties: false }) as const;

const licence = {
  ...closed([], { name: { type: "string", pattern: "^[-a-zA-Z0-9._]+$" }, path, title: text }),
  anyOf: [{ required: ["name"] }, { required: ["path"] }],
};

const constraints = closed([], { required: { type: "boolean" }, unique: { type: "boolean" }, enum: { type: "array" } });
const field = closed(["name", "type"], {
  name: text,
  type: { enum: ["string", "number", "integer", "boolean", "date", "datetime"] },
  title: text,
  description: text,
  format: text,
  constraints,
  unit: text, // extra: a UCUM code
});
const tableSchema = closed(["fields"], {
  $schema: { const: "https://datapackage.org/profiles/2.0/tableschema.json" },
  fields: { type: "array", minItems: 1, items: field },
  missingValues: { type: "array", items: text },
  primaryKey: { type: "array", minItems: 1, uniqueItems: true, items: text },
});

const resource = closed(["name", "path"], {
  name: { type: "string", pattern: "^[a-z0-9._-]+$" },
  path,
  type: { const: "table" },
  title: text,
  description: text,
  format: text,
  mediatype: { type: "string", pattern: "^.+/.+$" },
  encoding: text,
  bytes: { type: "integer", minimum: 0 },
  hash: { type: "string", pattern: "^[^:]+:[a-fA-F0-9]+$" },
  schema: tableSchema,
});

export const dataPackageProfile = {
  $schema: "http://json-schema.org/draft-07/schema#",
  ...closed(["$schema", "resources"], {
    $schema: { const: "https://datapackage.org/profiles/2.0/datapackage.json" },
    name: { type: "string", pattern: "^[a-z0-9._-]+$" },
    id: text,
    title: text,
    description: text,
    homepage: uri,
    version: text,
    created: { type: "string", format: "date-time" },
    keywords: { type: "array", minItems: 1, items: text },
    licenses: { type: "array", minItems: 1, items: licence },
    contributors: {
      type: "array",
      minItems: 1,
      items: {
        ...closed([], {
          title: text,
          path,
          email: { type: "string", format: "email" },
          givenName: text,
          familyName: text,
          organization: text,
          roles: { type: "array", minItems: 1, items: text },
        }),
        minProperties: 1,
      },
    },
    sources: {
      type: "array",
      items: {
        ...closed([], { title: text, path, email: { type: "string", format: "email" }, version: text }),
        minProperties: 1,
      },
    },
    resources: { type: "array", minItems: 1, items: resource },
  }),
} as const;
