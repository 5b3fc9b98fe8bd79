import { parseAmounts, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { drawingFile } from "./drawing-file.ts";
import { loadAmounts } from "./load-amounts.ts";

/** The drawings of the state in an address as a file; plain words and 404 where there is nothing to draw. */
export async function sendDrawing(
  request: Request,
  { type, name, make }: { type: string; name: string; make: (svg: string) => BodyInit | Promise<BodyInit> },
): Promise<Response> {
  const state = parseAmounts(new URL(request.url).searchParams);
  const address = `${environment().baseUrl}${paths.amounts(serialiseAmounts(state))}`;
  const svg = drawingFile(loadAmounts(state), address);
  if (svg === null)
    return new Response("There is no amount to draw in this address.\n", {
      status: 404,
      headers: { "content-type": "text/plain; charset=utf-8" },
    });
  return new Response(await make(svg), {
    headers: {
      "content-type": type,
      "content-disposition": `inline; filename="${name}"`,
      "cache-control": "public, max-age=3600",
      // A drawing runs nothing and asks for nothing.
      "content-security-policy": "default-src 'none'; style-src 'unsafe-inline'",
    },
  });
}
