import { inSpanish } from "@/app/_site/in-spanish.tsx";
import Page, { generateMetadata as metadataOf } from "@/app/(catalogue)/items/[slug]/revisions/[n]/page.tsx";

// Rendered once and kept until something published changes (page-cache.mjs).
export const dynamic = "force-static";
export const generateStaticParams = () => [];

export const generateMetadata = inSpanish(metadataOf);
export default inSpanish(Page);
