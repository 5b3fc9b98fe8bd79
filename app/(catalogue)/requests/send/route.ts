import { z } from "zod";
import { requestContext } from "@/lib/access/request-context.ts";
import { askingPlace } from "@/lib/platform/asking-place.ts";
import { boundedForm } from "@/lib/platform/bounded-form.ts";
import { environment } from "@/lib/platform/environment.ts";
import { formText, parseForm } from "@/lib/platform/form-values.ts";
import { log } from "@/lib/platform/log.ts";
import type { Problem } from "@/lib/quantity/problem.ts";
import { type Language, languages } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { largestRequestPhoto, requestTestWorkflow, testRequestInput } from "@/lib/workflows/request-test.ts";
import { problemParams } from "../new/request-problem.ts";

/** What goes with the photo in a form: its words, names of fields, boundaries. */
const around = 10_000;

/** Takes a reader's request, with or without a photo, and sends the browser on: to the request, or back to the form. */
export async function POST(request: Request): Promise<Response> {
  const back = (description: string, problems: Problem[], language: Language): Response => {
    const refused = problems.map(({ code }) => code);
    log().info({ requestId: request.headers.get("x-request-id"), refused }, "request for a test refused");
    return backTo(description, problems, language);
  };
  const data = await boundedForm(request, largestRequestPhoto + around);
  if (!data) return back("", [{ code: "too-large" }], languageOf(request.headers.get("referer")));
  const description = formText(data, "description");
  const language = z.enum(languages).catch("en").parse(formText(data, "language"));
  const form = parseForm(testRequestInput, { description });
  if (!form.ok) return back(description, form.problems, language);
  const file = data.get("photo");
  const { dataDir } = environment();
  const photo =
    file instanceof File && file.size > 0 ? { bytes: new Uint8Array(await file.arrayBuffer()), dataDir } : null;
  const context = await requestContext();
  const place = askingPlace(request.headers, dataDir, context.clock());
  const outcome = await requestTestWorkflow(context, form.value, place, photo);
  return outcome.ok ? to(pathsIn[language].request(outcome.value.id)) : back(description, outcome.problems, language);
}

/** A body too large to read names no language; the page that it came from does. */
const languageOf = (referer: string | null): Language =>
  referer !== null && URL.canParse(referer) && new URL(referer).pathname.startsWith("/es/") ? "es" : "en";

const backTo = (description: string, problems: Problem[], language: Language): Response =>
  to(
    `${pathsIn[language].requestTest(description.slice(0, 300))}${description === "" ? "?" : "&"}${problemParams(problems)}`,
  );

const to = (location: string): Response => new Response(null, { status: 303, headers: { location } });
