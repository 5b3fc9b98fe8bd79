import { currentPerson } from "@/lib/access/current-person.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { requirePermission } from "@/lib/access/require-permission.ts";
import { largestCertificate } from "@/lib/files/certificate-file.ts";
import { readPrivate } from "@/lib/files/private-files.ts";
import { boundedForm } from "@/lib/platform/bounded-form.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { findOtherTest } from "@/lib/store/other-tests.ts";
import { problemSentence, problemSentences } from "@/lib/wording/problems.ts";
import { keepTestCertificateWorkflow } from "@/lib/workflows/add-other-test.ts";

type Props = { params: Promise<{ id: string; testId: string }> };
const plain = (text: string, status: number) =>
  new Response(`${text}\n`, { status, headers: { "content-type": "text/plain; charset=utf-8" } });

/** The laboratory's certificate as it came, for people of the bench. Always a download: what a stranger wrote is not opened here. */
export async function GET(_: Request, { params }: Props): Promise<Response> {
  const { testId } = await params;
  if (!requirePermission(await currentPerson(), "see-bench").ok) return plain("Sign in to see this.", 403);
  const test = await findOtherTest(database(), testId);
  const bytes = test?.certificateKey ? await readPrivate(environment().dataDir, test.certificateKey) : null;
  if (!bytes) return plain("No such certificate.", 404);
  const name = encodeURIComponent(test?.certificateName ?? "certificate");
  return new Response(bytes, {
    headers: {
      "content-type": "application/octet-stream",
      "content-disposition": `attachment; filename*=UTF-8''${name}`,
      "cache-control": "private, no-store",
      "x-content-type-options": "nosniff",
    },
  });
}

export async function POST(request: Request, { params }: Props): Promise<Response> {
  const { id, testId } = await params;
  const context = await requestContext();
  // Asked before the body is read: nobody unknown gets to send megabytes.
  if (!requirePermission(context.person, "edit-item").ok) return plain("Sign in to do this.", 403);
  const data = await boundedForm(request, largestCertificate + 10_000);
  if (!data) return plain(problemSentence({ code: "too-large", found: "over 20 MB", allowed: "20 MB" }), 413);
  const file = data.get("file");
  const input =
    file instanceof File
      ? { id: testId, name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) }
      : { id: testId, name: "", bytes: new Uint8Array() };
  const outcome = await keepTestCertificateWorkflow(context, environment().dataDir, input);
  const problem = outcome.ok ? "" : `?test=${encodeURIComponent(problemSentences(outcome.problems).join(" "))}`;
  return new Response(null, { status: 303, headers: { location: `${paths.benchItem(id)}${problem}#tests` } });
}
