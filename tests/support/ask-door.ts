import { readFileSync } from "node:fs";
import { join } from "node:path";
import { problemSentence } from "../../lib/wording/problems.ts";
import type { Form } from "./action-arguments.ts";

/** Who knocks, and from a page of which site. */
export type Caller = { cookie: string; origin: string };

type Manifest = { node: Record<string, { filename: string; exportedName: string; workers: Record<string, unknown> }> };

/** Ids of the built product's server actions by "file name", and a page that carries each. */
export function builtActions(root: string): Map<string, { id: string; page: string }> {
  const file = join(root, ".next", "server", "server-reference-manifest.json");
  const { node } = JSON.parse(readFileSync(file, "utf8")) as Manifest;
  return new Map(
    Object.entries(node).map(([id, { filename, exportedName, workers }]) => {
      const page = (Object.keys(workers)[0] ?? "")
        .split("/")
        .filter((part) => !part.startsWith("("))
        .slice(1, -1);
      return [`${filename.replace(/^app\//, "")} ${exportedName}`, { id, page: `/${page.join("/")}` }];
    }),
  );
}

const isForm = (value: unknown): value is Form => typeof value === "object" && value !== null && "form" in value;

/** Arguments as React's own client writes them down: one part for the list, one for each field of the form in it. */
function encoded(args: readonly unknown[]): FormData {
  const body = new FormData();
  const list = args.map((arg, at) => {
    if (!isForm(arg)) return arg;
    for (const [name, value] of Object.entries(arg.form)) body.append(`_${at + 1}_${name}`, value);
    return `$K${at + 1}`;
  });
  body.append("0", JSON.stringify(list));
  return body;
}

const signInFirst = problemSentence({ code: "not-signed-in" });
const notYourRole = problemSentence({ code: "not-allowed" });

/** Sends a server action over HTTP, as a page of the product would. */
export const sendAction = (
  base: string,
  action: { id: string; page: string },
  args: readonly unknown[],
  { cookie, origin }: Caller,
): Promise<Response> =>
  fetch(base + action.page.replaceAll(/\[[^\]]+\]/g, "scan"), {
    method: "POST",
    redirect: "manual",
    headers: { "next-action": action.id, cookie, origin, accept: "text/x-component" },
    body: encoded(args),
  });

/** Asks a server action and answers in a word: "yes", "sign in" or "role" where it refuses by permission, else the status. */
export async function askAction(...asked: Parameters<typeof sendAction>): Promise<string> {
  const answer = await sendAction(...asked);
  const text = await answer.text();
  if (text.includes(signInFirst)) return "sign in";
  if (text.includes(notYourRole)) return "role";
  return answer.status < 400 ? "yes" : String(answer.status);
}

/** Signs in, without a browser; the cookies that came. `credentials` is "address password". */
export async function signedInCookie(base: string, actions: ReturnType<typeof builtActions>, credentials: string) {
  const at = credentials.indexOf(" ");
  const form = { email: credentials.slice(0, at), password: credentials.slice(at + 1), next: "/bench" };
  const signIn = actions.get("account/sign-in/actions.ts signIn");
  if (!signIn) throw new Error("The build has no action to sign in.");
  const answer = await sendAction(base, signIn, [{ errors: [] }, { form }], { cookie: "", origin: base });
  const cookies = answer.headers.getSetCookie().map((cookie) => cookie.split(";")[0] ?? "");
  if (cookies.length === 0) throw new Error(`Not signed in: ${answer.status} ${await answer.text()}`);
  return cookies.join("; ");
}

/** Asks a page or a handler; the answer's status, and for a redirect where to in a word. */
export async function askRoute(
  base: string,
  { method, path, body }: { method: "GET" | "POST"; path: string; body?: BodyInit },
  { cookie, origin }: Caller,
): Promise<{ word: string; headers: Headers }> {
  const answer = await fetch(base + path, {
    method,
    redirect: "manual",
    headers: {
      cookie,
      ...(method === "POST" ? { origin } : {}),
      accept: method === "POST" ? "application/json, application/x-ndjson" : "*/*",
    },
    ...(body ? { body } : {}),
  });
  await answer.arrayBuffer();
  const to = answer.headers.get("location") ?? "";
  if (to.includes("/account/sign-in") || to.includes("/account/set-up"))
    return { word: "sign in", headers: answer.headers };
  return { word: to.includes("refused=") ? "role" : String(answer.status), headers: answer.headers };
}
