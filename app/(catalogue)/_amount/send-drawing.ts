import { z } from "zod";
import { parseAmounts, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import { environment } from "@/lib/platform/environment.ts";
import { amountFiguresIn } from "@/lib/wording/amount-figures.ts";
import { languages } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { drawingFile } from "./drawing-file.ts";
import { loadAmounts } from "./load-amounts.ts";

/** The drawings of the state in an address as a file; plain words and 404 where there is nothing to draw. */
export async function sendDrawing(
  request: Request,
  { type, name, make }: { type: string; name: string; make: (svg: string) => BodyInit | Promise<BodyInit> },
): Promise<Response> {
  const asked = new URL(request.url).searchParams;
  const state = parseAmounts(asked);
  const language = z.enum(languages).catch("en").parse(asked.get("language"));
  const address = `${environment().baseUrl}${pathsIn[language].amounts(serialiseAmounts(state))}`;
  const svg = drawingFile(loadAmounts(state), address, language);
  if (svg === null)
    return new Response(`${amountFiguresIn[language].page.noDrawing}\n`, {
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
