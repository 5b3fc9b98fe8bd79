/**
 * The form data of a request, read no further than `mostBytes`, whatever its head announced; null where it is longer. The
 * body passes through a counter as it arrives, so that an endless one costs no more than the limit.
 */
export async function boundedForm(request: Request, mostBytes: number): Promise<FormData | null> {
  if (Number(request.headers.get("content-length") ?? 0) > mostBytes || !request.body) return null;
  let passed = 0;
  const counter = new TransformStream<Uint8Array, Uint8Array>({
    transform(chunk, controller) {
      passed += chunk.byteLength;
      if (passed > mostBytes) controller.error(new TypeError("longer than allowed"));
      else controller.enqueue(chunk);
    },
  });
  const type = request.headers.get("content-type") ?? "";
  try {
    return await new Response(request.body.pipeThrough(counter), { headers: { "content-type": type } }).formData();
  } catch (error) {
    if (passed > mostBytes) return null;
    throw error;
  }
}
