"use client";

import { useEffect, useRef, useState } from "react";
import { Button } from "@/app/_components/button.tsx";
import { useScripted } from "@/app/_components/use-scripted.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { scanWordsIn } from "@/lib/wording/scan.ts";
import styles from "./scan.module.css";
import { scanCode } from "./scan-code.ts";

/** Milliseconds after which a hint says what else can be done. */
const patience = 12_000;

type Failure = "refused" | "noCamera" | "trouble";
const failureOf: Record<string, Failure> = { NotAllowedError: "refused", NotFoundError: "noCamera" };

/** Looks for a bar code from the moment it is shown, and goes on to what is known of it. */
export function Camera({ language }: { language: Language }) {
  const words = scanWordsIn[language];
  const scripted = useScripted();
  const video = useRef<HTMLVideoElement>(null);
  const [said, setSaid] = useState<string>(words.starting);
  const [failed, setFailed] = useState(false);
  const [attempt, setAttempt] = useState(1);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a further attempt is the same once more
  useEffect(() => {
    const seen = video.current;
    if (!seen) return;
    setFailed(false);
    setSaid(words.starting);
    const leave = new AbortController();
    const slow = setTimeout(() => setSaid(words.slow), patience);
    seen.onplaying = () => setSaid(words.looking);
    scanCode(seen, leave.signal)
      .then((code) => {
        if (code === null) return;
        setSaid(words.found(code));
        // In place of this page: whoever goes back wants the search, not the camera again.
        window.location.replace(pathsIn[language].items(code));
      })
      .catch((error) => {
        if (leave.signal.aborted) return;
        setSaid(words[failureOf[(error as Error).name] ?? "trouble"]);
        setFailed(true);
      })
      .finally(() => clearTimeout(slow));
    return () => leave.abort();
  }, [attempt, words, language]);

  return (
    <div className="flow">
      <div className={styles.frame}>
        <video ref={video} playsInline muted hidden={failed || !scripted} aria-label={words.picture} />
        {failed ? <Button onClick={() => setAttempt(attempt + 1)}>{words.again}</Button> : null}
        <noscript>
          <p>{words.unscripted}</p>
        </noscript>
      </div>
      <p role="status" className={styles.said}>
        <strong>{scripted ? said : null}</strong>
      </p>
    </div>
  );
}
