import { once } from "node:events";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { expect, it, onTestFinished } from "vitest";
import { addPerson } from "@/lib/access/add-person.ts";
import { makeAuth } from "@/lib/access/auth.ts";
import { watchRequests } from "@/lib/platform/watch-requests.ts";
import { freshDatabase } from "../support/test-context.ts";

const header = "strict-transport-security";

it("every answer tells browsers to keep to TLS for a year, where the registry's address is https, and else none does (RFC 6797)", async () => {
  const server = createServer((_, response) => response.end("there")).listen(0, "127.0.0.1");
  onTestFinished(() => void server.close());
  await once(server, "listening");
  const ask = async () => (await fetch(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`)).headers;
  watchRequests({ trustedProxies: 0, httpsOnly: false });
  expect((await ask()).get(header)).toBeNull();
  watchRequests({ trustedProxies: 0, httpsOnly: true });
  expect((await ask()).get(header)).toBe("max-age=31536000");
});

it("cookies of sign-in are sent over TLS alone there, and their names say so", async () => {
  const { db } = freshDatabase();
  const cookiesOf = async (baseUrl: string): Promise<string[]> => {
    const auth = makeAuth(db, { baseUrl, port: 3000, secret: "s".repeat(32), cookies: false });
    const body = { email: "t@example.org", password: "seven copper kettles" };
    if ((await db.user.count()) === 0) await addPerson(auth, { ...body, name: "Invented Tester", role: "tester" });
    return (await auth.api.signInEmail({ body, returnHeaders: true })).headers.getSetCookie();
  };
  for (const cookie of await cookiesOf("https://registry.example")) {
    expect(cookie).toMatch(/^__Secure-/);
    expect(cookie).toMatch(/; Secure/);
    expect(cookie).toMatch(/; HttpOnly/);
  }
  for (const cookie of await cookiesOf("http://localhost:3000")) expect(cookie).not.toMatch(/Secure/);
});
