import { inSpanish } from "@/app/_site/in-spanish.tsx";
import Page, { generateMetadata as metadataOf } from "@/app/(catalogue)/scan/page.tsx";

export const generateMetadata = inSpanish(metadataOf);
export default inSpanish(Page);
