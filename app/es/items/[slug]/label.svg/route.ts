import { labelSvg } from "@/app/_share/label-svg.ts";
import { pictureHandler } from "@/app/_share/picture-handler.ts";
import { preflight } from "@/app/api/v1/reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** A label in Spanish. */
export const GET = pictureHandler(labelSvg, "es");
