"use client";

import { useEffect, useRef } from "react";
import { paths } from "@/lib/platform/paths.ts";
import type { Language } from "@/lib/wording/language.ts";
import styles from "./search-form.module.css";
import { offerSuggestions } from "./search-suggestions.js";

/** The field of the search form. With scripts it lists items as one types; without, it is a plain field. */
export function SearchField({
  id,
  query,
  placeholder,
  describedBy,
  words,
}: {
  id: string;
  query: string;
  placeholder?: string | undefined;
  describedBy?: string | undefined;
  words: { suggestions: string; oneSuggestion: string; suggestionsBelow: string; language: Language };
}) {
  const frame = useRef<HTMLDivElement>(null);
  useEffect(() => (frame.current ? offerSuggestions(frame.current) : undefined), []);
  return (
    <div
      ref={frame}
      className={styles.field}
      data-suggestions
      data-address={paths.suggestions("", words.language === "en" ? undefined : words.language)}
      data-list-label={words.suggestions}
      data-one={words.oneSuggestion}
      data-many={words.suggestionsBelow}
      data-option-class={styles.suggestion}
    >
      <input
        id={id}
        name="q"
        type="search"
        defaultValue={query}
        placeholder={placeholder}
        maxLength={200}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        enterKeyHint="search"
        aria-describedby={describedBy}
      />
      <div id={`${id}-suggestions`} data-list className={styles.suggestions} hidden />
      <span className="visually-hidden" role="status" />
    </div>
  );
}
