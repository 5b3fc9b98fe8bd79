import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { addPerson } from "@/lib/access/add-person.ts";
import { type AuthOptions, makeAuth } from "@/lib/access/auth.ts";
import { readCode } from "@/lib/access/recovery-codes.ts";
import { enterCode, makeKey, recoveryCodes } from "@/lib/access/second-step.ts";
import { signedIn, takeSignInTurn } from "@/lib/access/sign-in-turns.ts";
import type { Db } from "@/lib/store/database.ts";
import { hasSecondStep } from "@/lib/store/second-steps.ts";
import { removeSecondStepAtMachine, removeSecondStepWorkflow } from "@/lib/workflows/remove-second-step.ts";
import { renewRecoveryCodesWorkflow } from "@/lib/workflows/renew-recovery-codes.ts";
import { turnOffSecondStepWorkflow } from "@/lib/workflows/turn-off-second-step.ts";
import { turnOnSecondStepWorkflow } from "@/lib/workflows/turn-on-second-step.ts";
import { must } from "../support/bench-item.ts";
import { contextAs } from "../support/test-context.ts";
import { base32Bytes, totp } from "../support/totp.ts";

const password = "seven copper kettles";
const options: AuthOptions = { baseUrl: "http://localhost:3000", port: 3000, secret: "s".repeat(32), cookies: false };
const authIn = (tx: Db) => makeAuth(tx, options);

// The library reads the machine's clock; only it is held, so that timers of the database go on.
const start = new Date("2026-05-04T10:00:00Z");
beforeEach(() => vi.useFakeTimers({ now: start, toFake: ["Date"] }));
afterEach(() => vi.useRealTimers());
const halfMinutesLater = (n: number) => vi.setSystemTime(new Date(Date.now() + n * 30_000));

/** The cookies a browser holds: what was set, and what was taken away again. */
class Jar {
  #held = new Map<string, string>();
  take(answer: Headers): this {
    for (const line of answer.getSetCookie()) {
      const [pair = ""] = line.split(";");
      const at = pair.indexOf("=");
      if (/max-age=0/i.test(line)) this.#held.delete(pair.slice(0, at));
      else this.#held.set(pair.slice(0, at), pair.slice(at + 1));
    }
    return this;
  }
  get headers(): Headers {
    return new Headers({ cookie: [...this.#held].map(([name, value]) => `${name}=${value}`).join("; ") });
  }
}

async function registry() {
  const owner = await contextAs("owner");
  const { db } = owner;
  const auth = makeAuth(db, options);
  const tester = await addPerson(auth, { name: "Invented Tester", email: "t@example.org", password, role: "tester" });
  const clock = () => new Date();
  const signIn = async (jar = new Jar()) => {
    const answer = await auth.api.signInEmail({
      body: { email: tester.email, password },
      headers: jar.headers,
      returnHeaders: true,
    });
    const half = "twoFactorRedirect" in answer.response;
    return { jar: jar.take(answer.headers), half, cookies: answer.headers.getSetCookie() };
  };
  const who = async (jar: Jar) => (await auth.api.getSession({ headers: jar.headers }))?.user.id ?? null;
  /** Signed in, with a key whose secret is known. */
  const withKey = async () => {
    const { jar } = await signIn();
    const key = must(await makeKey(auth, jar.headers, password));
    return {
      jar,
      secret: key.spelt.replaceAll(" ", ""),
      as: { db, person: tester, clock, authIn, headers: jar.headers },
    };
  };
  const turnedOn = async () => {
    const { jar, secret, as } = await withKey();
    const codes = must(await turnOnSecondStepWorkflow(as, { code: totp(secret) }));
    halfMinutesLater(4);
    return { jar, secret, as, codes };
  };
  const enter = (jar: Jar, typed: string) =>
    enterCode(auth, jar.headers, { db, userId: tester.id, typed, now: clock() });
  const sessions = () => db.authSession.count({ where: { userId: tester.id } });
  return { owner, db, auth, tester, clock, signIn, who, withKey, turnedOn, enter, sessions };
}
const problem = (code: string) => ({ ok: false, problems: [{ code }] });

describe("turning the second step on", () => {
  it("asks for the password, counts from the first right code, ends other sign-ins and tells ten recovery codes", async () => {
    const { auth, db, tester, signIn, who, sessions, withKey } = await registry();
    const elsewhere = (await signIn()).jar;
    expect(await makeKey(auth, elsewhere.headers, "not theirs")).toMatchObject(problem("wrong-password"));
    const { jar, secret, as } = await withKey();
    // A key alone changes nothing.
    expect((await signIn()).half).toBe(false);
    const wrong = totp(secret, Date.now() + 3_600_000);
    expect(await turnOnSecondStepWorkflow(as, { code: wrong })).toMatchObject(problem("wrong-code"));
    expect(await hasSecondStep(db, tester.id)).toBe(false);
    const codes = must(await turnOnSecondStepWorkflow(as, { code: totp(secret) }));
    expect(codes).toHaveLength(10);
    for (const code of codes) expect(readCode(code)).toEqual({ kind: "recovery", code });
    expect(new Set(codes).size).toBe(10);
    expect([await hasSecondStep(db, tester.id), await who(jar), await who(elsewhere)]).toEqual([true, null, null]);
    // The one session that is left is new; its cookie goes to the browser that did it (tests/browser/second-step).
    expect(await sessions()).toBe(1);
    expect(await db.auditEntry.findMany({ where: { action: "turn-on-second-step" } })).toMatchObject([
      { actorId: tester.id, recordId: tester.id },
    ]);
  });

  it("keeps neither key nor recovery codes readable", async () => {
    const { db, turnedOn } = await registry();
    const { secret, codes } = await turnedOn();
    const kept = JSON.stringify(await db.authTwoFactor.findMany());
    const plain = base32Bytes(secret).toString("utf8");
    for (const told of [secret, plain, ...codes]) expect(kept).not.toContain(told);
  });

  it("happens whole or not at all", async () => {
    const { db, tester, withKey, sessions } = await registry();
    const { secret, as } = await withKey();
    const before = await sessions();
    const noAct = { ...as, clock: () => new Date(Number.NaN) };
    await expect(
      turnOnSecondStepWorkflow({ ...noAct, clock: once(as.clock, noAct.clock) }, { code: totp(secret) }),
    ).rejects.toThrow();
    expect([await hasSecondStep(db, tester.id), await sessions()]).toEqual([false, before]);
  });

  it("is not done twice: a code would show the recovery codes again", async () => {
    const { turnedOn, signIn, enter } = await registry();
    const { secret, as } = await turnedOn();
    const { jar } = await signIn();
    must(await enter(jar, totp(secret)));
    halfMinutesLater(4);
    expect(await turnOnSecondStepWorkflow({ ...as, headers: jar.headers }, { code: totp(secret) })).toMatchObject(
      problem("second-step-is-on"),
    );
    expect(await turnOnSecondStepWorkflow({ ...as, person: null }, { code: "123456" })).toMatchObject(
      problem("not-signed-in"),
    );
    expect(await turnOnSecondStepWorkflow(as, { code: "12345-67890" })).toMatchObject(problem("no-first-code"));
  });
});

describe("signing in with a second step", () => {
  it("opens nothing after the password alone, and a new session after the code", async () => {
    const { auth, db, tester, turnedOn, signIn, who, sessions } = await registry();
    const { secret } = await turnedOn();
    const before = await sessions();
    const { jar, half, cookies } = await signIn();
    // What stands for the password that was right: for no script and no other site, ten minutes long.
    expect(cookies.find((cookie) => cookie.includes("two_factor"))).toMatch(/Max-Age=600;.*HttpOnly; SameSite=Lax/);
    expect([half, await who(jar), await sessions()]).toEqual([true, null, before]);
    expect(await auth.api.whoWaitsForCode({ headers: jar.headers })).toEqual({ id: tester.id, email: tester.email });
    expect(await auth.api.whoWaitsForCode({ headers: new Headers() })).toBeNull();
    const entered = await auth.api.verifyTOTP({
      body: { code: totp(secret) },
      headers: jar.headers,
      returnHeaders: true,
    });
    expect(await who(jar.take(entered.headers))).toBe(tester.id);
    expect(await sessions()).toBe(before + 1);
    // The wait is over; nothing is left to enter a code for.
    expect(await auth.api.whoWaitsForCode({ headers: jar.headers })).toBeNull();
    expect(await db.authVerification.count({ where: { value: tester.id } })).toBe(0);
  });

  it("takes a code once, even in two sign-ins at once (RFC 6238 §5.2)", async () => {
    const { turnedOn, signIn, enter, sessions } = await registry();
    const { secret } = await turnedOn();
    const [a, b] = [(await signIn()).jar, (await signIn()).jar];
    const before = await sessions();
    const code = totp(secret);
    const both = await Promise.all([enter(a, code), enter(b, code)]);
    expect(both.filter((o) => o.ok)).toHaveLength(1);
    expect(both.find((o) => !o.ok)).toMatchObject(problem("code-used"));
    halfMinutesLater(1);
    expect(await enter((await signIn()).jar, code)).toMatchObject(problem("code-used"));
    halfMinutesLater(2);
    expect(await enter((await signIn()).jar, code)).toMatchObject(problem("wrong-code"));
    must(await enter((await signIn()).jar, totp(secret)));
    expect(await sessions()).toBe(before + 2);
  });

  it("takes the half minute before and after the right one, and no further (RFC 6238 §5.2)", async () => {
    const { turnedOn, signIn, enter } = await registry();
    const { secret } = await turnedOn();
    const { jar } = await signIn();
    for (const off of [-2, 2])
      expect(await enter(jar, totp(secret, Date.now() + off * 30_000))).toMatchObject(problem("wrong-code"));
    must(await enter(jar, totp(secret, Date.now() - 30_000)));
    must(await enter((await signIn()).jar, totp(secret, Date.now() + 30_000)));
  });

  it("takes a recovery code once, as people write it", async () => {
    const { auth, tester, turnedOn, signIn, enter, sessions } = await registry();
    const [code = "", second = ""] = (await turnedOn()).codes;
    const before = await sessions();
    must(await enter((await signIn()).jar, code.replace("-", " ")));
    expect(await sessions()).toBe(before + 1);
    expect(await recoveryCodes(auth, tester.id)).toHaveLength(9);
    const { jar } = await signIn();
    expect(await enter(jar, code)).toMatchObject(problem("wrong-code"));
    expect(await enter(jar, "12345")).toMatchObject(problem("no-code"));
    const twice = await Promise.allSettled([enter((await signIn()).jar, second), enter((await signIn()).jar, second)]);
    expect(twice.filter((o) => o.status === "fulfilled" && o.value.ok)).toHaveLength(1);
  });

  it("ends the wait after five wrong codes and after ten minutes, and locks after ten wrong ones in a row", async () => {
    const { turnedOn, signIn, enter } = await registry();
    const { secret } = await turnedOn();
    const slow = (await signIn()).jar;
    halfMinutesLater(21);
    expect(await enter(slow, totp(secret))).toMatchObject(problem("code-wait-over"));
    for (let round = 0; round < 2; round += 1) {
      const { jar } = await signIn();
      for (let n = 0; n < 5; n += 1)
        expect(await enter(jar, String(100_000 + round * 10 + n))).toMatchObject(problem("wrong-code"));
      halfMinutesLater(2);
      if (round === 0) expect(await enter(jar, totp(secret))).toMatchObject(problem("code-wait-over"));
    }
    halfMinutesLater(2);
    expect(await enter((await signIn()).jar, totp(secret))).toMatchObject(problem("rate-limited"));
    halfMinutesLater(31);
    must(await enter((await signIn()).jar, totp(secret)));
  });

  it("counts tries of both steps together, and starts anew only after the last", async () => {
    const { db, clock, tester } = await registry();
    const turn = () => takeSignInTurn(db, tester.email, "here", clock());
    for (let n = 0; n < 10; n += 1) expect(await turn()).toBeNull();
    expect(await turn()).toMatchObject({ code: "rate-limited" });
    await signedIn(db, tester.email, "here");
    expect(await turn()).toBeNull();
  });
});

describe("the second step afterwards", () => {
  it("gives new recovery codes and turns off for whoever knows the password; both are written down", async () => {
    const { db, tester, turnedOn, signIn, enter } = await registry();
    const { secret, as, codes: old } = await turnedOn();
    const { jar } = await signIn();
    const entered = await makeAuth(db, options).api.verifyTOTP({
      body: { code: totp(secret) },
      headers: jar.headers,
      returnHeaders: true,
    });
    const inside = { ...as, headers: jar.take(entered.headers).headers };
    expect(await renewRecoveryCodesWorkflow(inside, { current: "not theirs" })).toMatchObject(
      problem("wrong-password"),
    );
    const codes = must(await renewRecoveryCodesWorkflow(inside, { current: password }));
    expect(codes.filter((code) => old.includes(code))).toEqual([]);
    expect(await enter((await signIn()).jar, old[0] ?? "")).toMatchObject(problem("wrong-code"));
    must(await enter((await signIn()).jar, codes[0] ?? ""));
    expect(await turnOffSecondStepWorkflow(inside, { current: "not theirs" })).toMatchObject(problem("wrong-password"));
    must(await turnOffSecondStepWorkflow(inside, { current: password }));
    expect([await hasSecondStep(db, tester.id), await db.authTwoFactor.count(), (await signIn()).half]).toEqual([
      false,
      0,
      false,
    ]);
    const acts = await db.auditEntry.findMany({ orderBy: { id: "asc" } });
    expect(acts.map((act) => act.action)).toEqual([
      "turn-on-second-step",
      "renew-recovery-codes",
      "turn-off-second-step",
    ]);
    for (const refusal of [renewRecoveryCodesWorkflow, turnOffSecondStepWorkflow])
      expect(await refusal({ ...inside, person: null }, { current: password })).toMatchObject(problem("not-signed-in"));
  });

  it("of another is the owner's to take away, is written down, and ends their sign-ins", async () => {
    const { owner, db, tester, turnedOn, signIn, sessions } = await registry();
    await turnedOn();
    expect(await removeSecondStepWorkflow({ ...owner, person: tester }, tester.id)).toMatchObject(
      problem("not-allowed"),
    );
    expect(await removeSecondStepWorkflow(owner, owner.person.id)).toMatchObject(problem("own-second-step"));
    must(await removeSecondStepWorkflow(owner, tester.id));
    expect(await sessions()).toBe(0);
    expect((await signIn()).half).toBe(false);
    expect(await removeSecondStepWorkflow(owner, tester.id)).toMatchObject(problem("second-step-is-off"));
    expect(await db.auditEntry.findMany({ where: { action: "remove-second-step" } })).toMatchObject([
      { actorId: owner.person.id, recordId: tester.id, detail: JSON.stringify({ name: tester.name }) },
    ]);
  });

  it("of an owner who is alone is taken away at the machine, which is written down as done by no person", async () => {
    const { db, tester, turnedOn, clock } = await registry();
    await turnedOn();
    expect(await removeSecondStepAtMachine(db, "nobody@example.org", clock)).toMatchObject(
      problem("second-step-is-off"),
    );
    must(await removeSecondStepAtMachine(db, tester.email.toUpperCase(), clock));
    expect(await hasSecondStep(db, tester.id)).toBe(false);
    expect(await db.auditEntry.findMany({ where: { action: "remove-second-step" } })).toMatchObject([
      { actorId: null, recordId: tester.id },
    ]);
  });
});

/** The first call answers as `first`, every later one as `then`. */
const once = <T>(first: () => T, then: () => T): (() => T) => {
  let called = false;
  return () => {
    const answer = called ? then() : first();
    called = true;
    return answer;
  };
};
