import { Ajv } from "ajv";
import addFormats from "ajv-formats";
import Papa from "papaparse";
import { beforeAll, describe, expect, it } from "vitest";
import { GET as readPackage } from "@/app/data/datapackage.json/route.ts";
import { GET as readAllReadings } from "@/app/data/readings.csv/route.ts";
import { GET as readAllResults } from "@/app/data/results.csv/route.ts";
import { dataPackageProfile } from "../support/data-package-profile.ts";
import { asked, publishedRegistry } from "../support/published-database.ts";
import { chained, sampleHistory } from "../support/sample-revisions.ts";
import { measuredParts, snapshotOfPart } from "../support/scenario-parts.ts";

type Field = { name: string; type: string };
type Resource = { name: string; schema?: { fields: Field[]; primaryKey: string[]; missingValues: string[] } };
type Descriptor = { resources: Resource[] };

beforeAll(async () => {
  const items = measuredParts
    .slice(0, 12)
    .map(({ inputs, part }, i) =>
      snapshotOfPart(inputs, part, { slug: `thing-${i}`, publishedAt: "2026-12-01T10:00:00Z" }),
    );
  await publishedRegistry(chained([...sampleHistory().map((one) => one.snapshot), ...items]));
}, 120_000);

const ajv = new Ajv({ allErrors: true, strict: false });
(addFormats as unknown as (ajv: Ajv) => void)(ajv);
const validate = ajv.compile(dataPackageProfile);
const faults = (descriptor: unknown): string[] =>
  validate(descriptor) ? [] : (validate.errors ?? []).map((e) => `${e.instancePath} ${e.message}`);
const descriptor = async (): Promise<Descriptor> =>
  (await (await readPackage(asked("/data/datapackage.json"))).json()) as Descriptor;

/** How a cell of a type is written, by Table Schema version 2 (datapackage.org; the default formats). */
const forms: Record<string, RegExp> = {
  string: /^[\s\S]*$/,
  number: /^[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d+)?$/,
  integer: /^[+-]?\d+$/,
  boolean: /^(true|True|TRUE|1|false|False|FALSE|0)$/,
  date: /^\d{4}-\d\d-\d\d$/,
  datetime: /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)?$/,
};

describe("the data package of the whole registry", () => {
  it("validates against the profile of version 2", async () => {
    expect(faults(await descriptor())).toEqual([]);
  });
  it("which does find what is wrong", async () => {
    const made = await descriptor();
    const [first, ...others] = made.resources as [Resource, ...Resource[]];
    expect(faults({ ...made, resources: [] })).not.toEqual([]);
    expect(faults({ ...made, created: "yesterday" })).not.toEqual([]);
    expect(faults({ ...made, licenses: [{ title: "ours" }] })).not.toEqual([]);
    expect(faults({ ...made, resources: [{ ...first, path: "../results.csv" }, ...others] })).not.toEqual([]);
    expect(faults({ ...made, resources: [{ ...first, name: undefined }, ...others] })).not.toEqual([]);
    expect(
      faults({ ...made, resources: [{ ...first, schema: { fields: [{ name: "a", type: "word" }] } }] }),
    ).not.toEqual([]);
  });
  it.each([
    ["results", readAllResults],
    ["readings", readAllReadings],
  ] as const)("whose table %s holds in every cell what its field says, and no key twice", async (name, read) => {
    const { schema } = (await descriptor()).resources.find((one) => one.name === name)!;
    const text = await (await read(asked(`/data/${name}.csv`))).text();
    const { data, errors } = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });
    expect(errors).toEqual([]);
    expect(data.length).toBeGreaterThan(50);
    const wrong = data.flatMap((row, i) =>
      schema!.fields
        .filter(
          ({ name: column, type }) => !schema!.missingValues.includes(row[column]!) && !forms[type]!.test(row[column]!),
        )
        .map(({ name: column, type }) => `row ${i + 1}, ${column}: ${row[column]} is no ${type}`),
    );
    expect(wrong).toEqual([]);
    const keys = data.map((row) => JSON.stringify(schema!.primaryKey.map((column) => row[column])));
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
    for (const column of schema!.primaryKey)
      expect(
        data.filter((row) => row[column] === ""),
        `${column} is part of the key`,
      ).toEqual([]);
  });
});
