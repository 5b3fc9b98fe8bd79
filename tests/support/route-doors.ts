import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const app = join(import.meta.dirname, "..", "..", "app");

/** A way in: a page, a method of a route handler, or a server action, found in the tree of `app/` and nowhere else. */
export type Door = { kind: "page" | "GET" | "POST" | "action"; at: string };

const files = (): string[] =>
  readdirSync(app, { recursive: true, encoding: "utf8" })
    .map((file) => file.replaceAll("\\", "/"))
    .sort();

const addressOf = (file: string): string =>
  `/${file
    .split("/")
    .slice(0, -1)
    .filter((segment) => !segment.startsWith("("))
    .join("/")}`;

const exported = /^export (?:(?:async )?function|const) (\w+)/gm;
const preflights = new Set(["OPTIONS"]);

/**
 * Every door of the product. A page answers GET; a handler each method that it exports, but for OPTIONS, which tells nothing of anybody; an
 * action is named by its file and its name, "account/people/actions.ts addMember".
 */
export function doors(): Door[] {
  return files().flatMap((file): Door[] => {
    if (/(^|\/)page\.tsx$/.test(file)) return [{ kind: "page", at: addressOf(file) }];
    if (/^(robots|sitemap|manifest)\.ts$/.test(file))
      return [{ kind: "GET", at: `/${file.replace(/\.ts$/, file.startsWith("robots") ? ".txt" : "")}` }];
    if (!/\.tsx?$/.test(file)) return [];
    const text = readFileSync(join(app, file), "utf8");
    const names = [...text.matchAll(exported)].map(([, name = ""]) => name);
    if (/(^|\/)route\.ts$/.test(file))
      return names
        .filter((name) => /^[A-Z]+$/.test(name) && !preflights.has(name))
        .map((name) => ({ kind: name as Door["kind"], at: addressOf(file) }));
    // An action is also a function inside another file that says so; there are none, and a test holds that.
    if (/^"use server"/m.test(text)) return names.map((name) => ({ kind: "action", at: `${file} ${name}` }));
    return [];
  });
}

/** Files in which "use server" stands inside a function: an action that no list of exports would show. */
export const hiddenActions = (): string[] =>
  files().filter((file) => /\.tsx?$/.test(file) && /^\s+"use server"/m.test(readFileSync(join(app, file), "utf8")));
