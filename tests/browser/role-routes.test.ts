import { join } from "node:path";
import Database from "better-sqlite3";
import { expect, it } from "vitest";
import { addPerson } from "@/lib/access/add-person.ts";
import { makeAuth } from "@/lib/access/auth.ts";
import { openDatabase } from "@/lib/store/database.ts";
import { callers, routeTable } from "../access/route-table.ts";
import { actionArguments, type Known } from "../support/action-arguments.ts";
import { askAction, askRoute, builtActions, type Caller, signedInCookie } from "../support/ask-door.ts";
import { type Door, doors } from "../support/route-doors.ts";
import { served } from "../support/served.ts";

const strangersPassword = "invented for the scan alone";

/** A tester who has made and measured nothing; and a request and a remark, so that their doors have something behind them. */
async function addStranger(): Promise<string> {
  const db = openDatabase(join(served().dataDir, "registry.db"));
  const auth = makeAuth(db, { baseUrl: served().base, port: 0, secret: "only hashes a password", cookies: false });
  const email = "stranger@example.org";
  await addPerson(auth, { name: "Stranger", email, password: strangersPassword, role: "tester" });
  const { itemId, createdById: authorId } = await db.photo.findFirstOrThrow();
  await db.testRequest.create({ data: { description: "Cup that the scan asks for" } });
  await db.reviewComment.create({ data: { itemId, authorId: authorId ?? "", about: "item", text: "A remark." } });
  await db.$disconnect();
  return `${email} ${strangersPassword}`;
}

function known(db: Database.Database): Known {
  const one = (sql: string): string => (db.prepare(sql).pluck().get() as string | undefined) ?? "none";
  const item = one(
    `SELECT i.id FROM "Item" i JOIN "Photo" p ON p.itemId = i.id JOIN "Publication" b ON b.itemId = i.id LIMIT 1`,
  );
  const of = `WHERE itemId = '${item}' LIMIT 1`;
  const specimen = one(`SELECT id FROM "Specimen" ${of}`);
  return {
    item,
    slug: one(`SELECT slug FROM "Item" WHERE id = '${item}'`),
    specimen,
    part: one(`SELECT id FROM "Component" WHERE specimenId = '${specimen}' LIMIT 1`),
    reading: one(`SELECT r.id FROM "Reading" r WHERE componentId IS NULL LIMIT 1`),
    spot: one(`SELECT id FROM "Spot" LIMIT 1`),
    photo: one(`SELECT id FROM "Photo" ${of}`),
    photoKey: one(
      `SELECT f.key FROM "PhotoFile" f JOIN "Photo" p ON p.id = f.photoId WHERE p.itemId NOT IN (SELECT itemId FROM "Publication") LIMIT 1`,
    ),
    batch: one(`SELECT id FROM "ImportBatch" WHERE source = 'file' LIMIT 1`),
    instrument: one(`SELECT id FROM "Instrument" LIMIT 1`),
    session: one(`SELECT id FROM "Session" LIMIT 1`),
    standard: one(`SELECT id FROM "CheckStandard" LIMIT 1`),
    test: one(`SELECT id FROM "OtherTest" LIMIT 1`),
    request: one(`SELECT id FROM "TestRequest" LIMIT 1`),
    retest: one(`SELECT id FROM "Retest" LIMIT 1`),
    comment: one(`SELECT id FROM "ReviewComment" LIMIT 1`),
    person: one(`SELECT id FROM "User" WHERE role = 'tester' LIMIT 1`),
  };
}

const weighed =
  "?from=shape&shape=sphere&diameter=2+to+3&densityFrom=alloy&rest=Sn&content=40+to+60&contentUnit=%25&loading=5&over=2808";
/** The address of a route with the scenario's own ids in it. */
function addressOf(at: string, k: Known): string {
  const id: [RegExp, string][] = [
    [/^(?:\/es|\/api\/v1)?\/items\/\[slug\]/, k.slug],
    [/^(?:\/es)?\/limits/, "FHSA-PAINT-1973"],
    [/^(?:\/es)?\/requests/, k.request],
    [/check-standards/, k.standard],
    [/imports/, k.batch],
    [/sessions/, k.session],
    [/./, k.item],
  ];
  const query =
    { "/items/suggestions": "?q=mug", "/amounts/drawing.svg": weighed, "/amounts/drawing.png": weighed }[at] ?? "";
  const first = id.find(([form]) => form.test(at))?.[1] ?? "";
  return `${at}${query}`
    .replace(/\[(id|slug)\]/, first)
    .replace("[n]", "1")
    .replace("[key]", k.photoKey)
    .replace("[photoId]", k.photo)
    .replace("[token]", "none")
    .replace("[testId]", k.test)
    .replace("[...rest]", "nothing/here");
}

const fileForm = (name: string): FormData => {
  const data = new FormData();
  data.set(name, new File(["no,such\nfile"], "scan.csv"));
  return data;
};
/** What is sent to handlers that take something. What it holds is wrong on purpose: nobody's scan leaves a file behind. */
const bodies: Record<string, () => BodyInit> = {
  "/bench/import/upload": () => fileForm("none"),
  "/bench/items/[id]/photos/upload": () => fileForm("photo"),
  "/bench/imports/[id]/load": () => fileForm("none"),
  "/bench/table/send": () => "{}",
};

const lineOf = ({ kind, at }: Door, words: readonly string[]): string =>
  `${kind.padEnd(6)} ${at.padEnd(58)} ${words.map((word) => word.padEnd(8)).join("")}`.trimEnd();

it("every page, handler and action answers each role as the table says, and writes nothing for whom it refuses", async () => {
  const { base, passwords, dataDir } = served();
  const own = (cookie: string): Caller => ({ cookie, origin: base });
  const actions = builtActions(join(import.meta.dirname, "..", ".."));
  const cookieOf = (credentials: string) => signedInCookie(base, actions, credentials);
  const owner = await cookieOf(passwords["owner"] ?? "");
  const whole: Record<(typeof callers)[number], Caller> = {
    nobody: own(""),
    forged: own(owner.replace(/\.[^;]{6}/, ".AAAAAA")),
    stranger: own(await cookieOf(await addStranger())),
    tester: own(await cookieOf(passwords["tester"] ?? "")),
    reviewer: own(await cookieOf(passwords["reviewer"] ?? "")),
    owner: own(owner),
    elsewhere: { cookie: owner, origin: "https://elsewhere.example" },
  };
  const db = new Database(join(dataDir, "registry.db"), { readonly: true });
  const k = known(db);
  const written = () => db.pragma("data_version", { simple: true });
  const args = actionArguments(k);
  const lines: string[] = [];
  const leaks: string[] = [];
  for (const door of doors()) {
    const words: string[] = [];
    for (const name of callers) {
      const caller = whole[name];
      if (name === "elsewhere" && (door.kind === "page" || door.kind === "GET")) {
        words.push("-");
        continue;
      }
      const before = written();
      let word: string;
      if (door.kind === "action") {
        const action = actions.get(door.at);
        const given = args[door.at.split(" ")[1] ?? ""];
        if (!action || !given) throw new Error(`${door.at}: ${action ? "no arguments for it" : "not in the build"}`);
        // Signing out ends the session that the rest of the scan needs.
        const who = door.at.endsWith(" signOut") ? { ...caller, cookie: "" } : caller;
        word = await askAction(base, action, given, who);
      } else {
        const method = door.kind === "POST" ? "POST" : "GET";
        const body = method === "POST" ? (bodies[door.at] ?? (() => fileForm("none")))() : undefined;
        const asked = { method, path: addressOf(door.at, k), ...(body ? { body } : {}) } as const;
        const answer = await askRoute(base, asked, caller);
        word = answer.word;
        if (
          /^\/(bench|review|account)/.test(door.at) &&
          /public|s-maxage/.test(answer.headers.get("cache-control") ?? "")
        )
          leaks.push(`${door.at}: ${answer.headers.get("cache-control")}`);
      }
      if (/^(sign in|role|403)$/.test(word) && written() !== before)
        leaks.push(`${door.at}: ${name} is refused, yet something was written`);
      words.push(word);
    }
    lines.push(lineOf(door, words));
  }
  db.close();
  console.log(`\n${lines.join("\n")}\n`);
  expect(leaks).toEqual([]);
  expect(lines).toEqual(routeTable.trim().split("\n"));
}, 400_000);
