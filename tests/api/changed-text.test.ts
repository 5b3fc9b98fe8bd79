import { expect, it, vi } from "vitest";
import { GET as readReadings } from "@/app/api/v1/items/[slug]/readings.csv/route.ts";
import { GET as readItem } from "@/app/api/v1/items/[slug]/route.ts";
import { log } from "@/lib/platform/log.ts";
import { asked, publishedRegistry } from "../support/published-database.ts";
import { dropTriggers } from "../support/test-context.ts";

it("a stored text that was changed is sent as it is, so that whoever checks it sees it; what is made of it is refused", async () => {
  const { db } = await publishedRegistry();
  await dropTriggers(db, "Publication");
  await db.$executeRaw`UPDATE "Publication" SET snapshot = replace(snapshot, '"format":1', '"format":3') WHERE seq = 4`;
  const params = { params: Promise.resolve({ slug: "rattle" }) };
  const response = await readItem(asked("/api/v1/items/rattle"), params);
  expect(response.status).toBe(200);
  expect(await response.text()).toContain('"format":3');
  const written = vi.spyOn(log(), "error").mockImplementation(() => undefined);
  const refused = await readReadings(asked("/api/v1/items/rattle/readings.csv"), params);
  expect(refused.status).toBe(500);
  expect(await refused.json()).toMatchObject({
    code: "read-failed",
    detail: "The server could not answer just now. Please try again in a minute.",
  });
  expect(written).toHaveBeenCalledOnce();
  expect(written.mock.calls[0]?.[0]).toMatchObject({ path: "/api/v1/items/rattle/readings.csv", kind: "Error" });
  written.mockRestore();
});
