import { labelSvg } from "@/app/_share/label-svg.ts";
import { sendPicture } from "@/app/_share/send-picture.ts";
import { preflight } from "@/app/api/v1/reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

type Params = { params: Promise<{ slug: string }> };

/** A label with the QR code of an item's page. */
export const GET = async (request: Request, { params }: Params): Promise<Response> =>
  sendPicture(request, (await params).slug, (snapshot, { baseUrl }) => labelSvg(snapshot, baseUrl));
