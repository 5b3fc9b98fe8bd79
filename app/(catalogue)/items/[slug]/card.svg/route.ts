import { cardSvg } from "@/app/_share/card-svg.ts";
import { sendPicture } from "@/app/_share/send-picture.ts";
import { preflight } from "@/app/api/v1/reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

type Params = { params: Promise<{ slug: string }> };

/** A card of an item to show on another page. */
export const GET = async (request: Request, { params }: Params): Promise<Response> =>
  sendPicture(request, (await params).slug, cardSvg);
