import { Fragment, type ReactNode } from "react";
import { type Language, recordLanguage } from "@/lib/wording/language.ts";

/**
 * What a tester, a maker or a rule wrote: shown as written, and marked with its language on a page of another. Null stays null,
 * so that a list of facts leaves it out.
 */
export function asWritten(text: string | null | undefined, language: Language): ReactNode {
  return !text || language === recordLanguage ? text : <span lang={recordLanguage}>{text}</span>;
}

/** A sentence of ours with words of the record in it, which are marked where they stand. */
export function Told({
  text,
  own,
  language,
}: {
  text: string;
  own: readonly (string | null | undefined)[];
  language: Language;
}) {
  const words = own.filter((word): word is string => Boolean(word)).sort((a, b) => b.length - a.length);
  if (language === recordLanguage || words.length === 0) return text;
  const pieces = text.split(new RegExp(`(${words.map(escaped).join("|")})`));
  // Every second piece is one that was split at.
  return pieces.map((piece, at) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a fixed list
    <Fragment key={at}>{at % 2 === 1 ? <span lang={recordLanguage}>{piece}</span> : piece}</Fragment>
  ));
}

const escaped = (word: string): string => word.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
