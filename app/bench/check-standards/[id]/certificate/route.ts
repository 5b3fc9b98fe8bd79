import { currentPerson } from "@/lib/access/current-person.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { requirePermission } from "@/lib/access/require-permission.ts";
import { largestCertificate } from "@/lib/files/certificate-file.ts";
import { readPrivate } from "@/lib/files/private-files.ts";
import { boundedForm } from "@/lib/platform/bounded-form.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { findCheckStandard } from "@/lib/store/check-standards.ts";
import { database } from "@/lib/store/database.ts";
import { problemSentence, problemSentences } from "@/lib/wording/problems.ts";
import { keepCertificateWorkflow } from "@/lib/workflows/keep-certificate.ts";

type Props = { params: Promise<{ id: string }> };
const plain = (text: string, status: number) =>
  new Response(`${text}\n`, { status, headers: { "content-type": "text/plain; charset=utf-8" } });

/** The certificate as it came, for people of the bench. Always a download: what a stranger wrote is not opened here. */
export async function GET(_: Request, { params }: Props): Promise<Response> {
  const { id } = await params;
  const permitted = requirePermission(await currentPerson(), "see-bench");
  if (!permitted.ok) return plain("Sign in to see this.", 403);
  const standard = await findCheckStandard(database(), { id });
  const bytes = standard?.certificateKey ? await readPrivate(environment().dataDir, standard.certificateKey) : null;
  if (!bytes) return plain("No such certificate.", 404);
  const name = encodeURIComponent(standard?.certificateName ?? "certificate");
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
  const { id } = await params;
  const context = await requestContext();
  // Asked before the body is read: nobody unknown gets to send megabytes.
  if (!requirePermission(context.person, "manage-instruments").ok) return plain("Sign in to do this.", 403);
  const data = await boundedForm(request, largestCertificate + 10_000);
  if (!data) return plain(problemSentence({ code: "too-large", found: "over 20 MB", allowed: "20 MB" }), 413);
  const file = data.get("file");
  const input =
    file instanceof File
      ? { id, name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) }
      : { id, name: "", bytes: new Uint8Array() };
  const outcome = await keepCertificateWorkflow(context, environment().dataDir, input);
  const problem = outcome.ok ? "" : `?problem=${encodeURIComponent(problemSentences(outcome.problems).join(" "))}`;
  return new Response(null, { status: 303, headers: { location: `${paths.benchCheckStandard(id)}${problem}` } });
}
