import type { BetterAuthPlugin } from "better-auth";
import { createAuthEndpoint } from "better-auth/api";

/**
 * Who has given their password and is asked for a code: better-auth keeps that in a signed cookie, which only it reads, so the question is put
 * as a piece of it. Not over HTTP.
 */
export const waitingForCode = () =>
  ({
    id: "waiting-for-code",
    endpoints: {
      whoWaitsForCode: createAuthEndpoint.serverOnly({ method: "GET", requireHeaders: true }, async (ctx) => {
        const { createAuthCookie, internalAdapter, secret } = ctx.context;
        const identifier = await ctx.getSignedCookie(createAuthCookie("two_factor").name, secret);
        const waiting = identifier ? await internalAdapter.findVerificationValue(identifier) : null;
        if (!waiting || waiting.expiresAt <= new Date()) return null;
        const user = await internalAdapter.findUserById(waiting.value);
        return user && { id: user.id, email: user.email };
      }),
    },
  }) satisfies BetterAuthPlugin;
