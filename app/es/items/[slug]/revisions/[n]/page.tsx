import { inSpanish } from "@/app/_site/in-spanish.tsx";
import Page, { generateMetadata as metadataOf } from "@/app/(catalogue)/items/[slug]/revisions/[n]/page.tsx";

export const generateMetadata = inSpanish(metadataOf);
export default inSpanish(Page);
