import { describe, expect, it } from "vitest";
import { boundedForm } from "@/lib/platform/bounded-form.ts";

const form = (bytes: number): FormData => {
  const data = new FormData();
  data.set("photo", new File([new Uint8Array(bytes)], "a.jpg"));
  return data;
};
const post = (body: BodyInit, headers: Record<string, string> = {}) =>
  new Request("http://localhost/", { method: "POST", body, headers, duplex: "half" } as RequestInit);

describe("boundedForm", () => {
  it("reads a form within the limit", async () => {
    const file = (await boundedForm(post(form(1000)), 5000))?.get("photo");
    expect(file instanceof File && file.size).toBe(1000);
  });

  it("is null for one that announces too much", async () => {
    expect(await boundedForm(post("x", { "content-length": "9000", "content-type": "text/plain" }), 5000)).toBeNull();
  });

  it("stops an endless body at the limit, though it announces nothing", async () => {
    let sent = 0;
    const endless = new ReadableStream<Uint8Array>({
      pull(controller) {
        sent += 1000;
        controller.enqueue(new Uint8Array(1000));
      },
    });
    const request = post(endless, { "content-type": "multipart/form-data; boundary=b" });
    expect(await boundedForm(request, 5000)).toBeNull();
    expect(sent).toBeLessThan(20_000);
  });
});
