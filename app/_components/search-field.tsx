"use client";

import { type KeyboardEvent, useEffect, useRef, useState } from "react";
import { paths } from "@/lib/platform/paths.ts";
import styles from "./search-form.module.css";
import { useScripted } from "./use-scripted.ts";

type Suggestion = { slug: string; name: string };

/**
 * The field of the search form. With scripts it lists items as one types (arrow keys choose, Enter opens, Escape
 * closes); without, it is a plain field. Typing on never takes away what was typed, and Enter without a choice searches.
 */
export function SearchField({
  id,
  query,
  placeholder,
  describedBy,
}: {
  id: string;
  query: string;
  placeholder?: string | undefined;
  describedBy?: string | undefined;
}) {
  const scripted = useScripted();
  const [typed, setTyped] = useState<string | null>(null);
  const [offered, setOffered] = useState<Suggestion[]>([]);
  const [chosen, setChosen] = useState(-1);
  const close = () => {
    setOffered([]);
    setChosen(-1);
  };
  useSuggestions(typed, (found) => {
    setOffered(found);
    setChosen(-1);
  });
  const open = (suggestion: Suggestion) => {
    window.location.href = paths.item(suggestion.slug);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (offered.length === 0) return;
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step) {
      // One place more than there are suggestions: the field itself.
      setChosen(((chosen + 1 + step + offered.length + 1) % (offered.length + 1)) - 1);
    } else if (event.key === "Escape") close();
    else if (event.key === "Enter" && offered[chosen]) open(offered[chosen]);
    else return;
    event.preventDefault();
  };
  const list = `${id}-suggestions`;
  return (
    <div className={styles.field}>
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
        onInput={(event) => setTyped(event.currentTarget.value)}
        onKeyDown={onKeyDown}
        onBlur={close}
        {...(scripted
          ? {
              role: "combobox",
              "aria-autocomplete": "list",
              "aria-expanded": offered.length > 0,
              "aria-controls": list,
              "aria-activedescendant": chosen < 0 ? undefined : `${list}-${chosen}`,
            }
          : {})}
      />
      {scripted ? (
        <div id={list} role="listbox" aria-label="Items" className={styles.suggestions} hidden={offered.length === 0}>
          {offered.map((suggestion, index) => (
            // biome-ignore lint/a11y/useKeyWithClickEvents: keys are heard by the field, which keeps the focus
            <div
              key={suggestion.slug}
              id={`${list}-${index}`}
              role="option"
              tabIndex={-1}
              aria-selected={index === chosen}
              className={styles.suggestion}
              // The field would lose its focus, and the list with it, before the click is done.
              onMouseDown={(event) => event.preventDefault()}
              onClick={() => open(suggestion)}
            >
              {suggestion.name}
            </div>
          ))}
        </div>
      ) : null}
      <span className="visually-hidden" role="status">
        {offered.length === 0 ? "" : `${offered.length} ${offered.length === 1 ? "item" : "items"} below the field`}
      </span>
    </div>
  );
}

/** Asks a moment after the last key; what was asked before and comes late is dropped. A failure shows nothing: the form still works. */
function useSuggestions(typed: string | null, found: (suggestions: Suggestion[]) => void): void {
  const tell = useRef(found);
  tell.current = found;
  useEffect(() => {
    if (typed === null) return;
    if (typed.trim().length < 2) {
      tell.current([]);
      return;
    }
    const stop = new AbortController();
    const timer = setTimeout(async () => {
      try {
        const answer = await fetch(paths.suggestions(typed), { signal: stop.signal });
        if (answer.ok) tell.current((await answer.json()) as Suggestion[]);
      } catch {
        // Offline or overtaken by the next key.
      }
    }, 150);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [typed]);
}
