import type { Language } from "@/lib/wording/language.ts";

/** A page, or its metadata, made in Spanish: the pages under /es are those of the catalogue with another language. */
export const inSpanish =
  <Props extends { language?: Language }, Made>(make: (props: Props) => Made) =>
  (props: Omit<Props, "language">): Made =>
    make({ ...props, language: "es" } as Props);
