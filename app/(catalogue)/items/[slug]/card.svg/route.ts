import { cardSvg } from "@/app/_share/card-svg.ts";
import { pictureHandler } from "@/app/_share/picture-handler.ts";
import { preflight } from "@/app/api/v1/reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** A card of an item to show on another page. */
export const GET = pictureHandler(cardSvg, "en");
