import type { ReactNode } from "react";
import { asWritten } from "@/app/_components/as-written.tsx";
import type { Language } from "@/lib/wording/language.ts";
import { reasonTold } from "@/lib/wording/reasons.ts";

/** Why a limit applies or does not, in the reader's language where this version can tell it, else as it was published. */
export const reasonShown = (why: string, language: Language): ReactNode =>
  reasonTold(why, language) ?? asWritten(why, language);
