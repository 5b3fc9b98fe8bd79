import { dropWords } from "@/lib/wording/typed-words.ts";
import styles from "./file-drop.module.css";

/** One file on its way up. `share` runs from 0 to 1. */
export type FileState = { id: string; name: string } & (
  | { state: "waiting" }
  | { state: "sending"; share: number }
  | { state: "taken"; next: string }
  | { state: "refused"; problems: readonly string[] }
);

const words = (file: FileState): string => {
  if (file.state !== "sending") return dropWords[file.state];
  return file.share < 1 ? dropWords.sending(Math.floor(file.share * 100)) : dropWords.reading;
};

/** Each file with how far it is, then where to go on with it or why it was not taken. */
export function FileList({ files, nextText }: { files: readonly FileState[]; nextText: string }) {
  if (files.length === 0) return null;
  const finished = files.filter((f) => f.state === "taken" || f.state === "refused").length;
  return (
    <>
      <ol className={styles.list} aria-label="Files">
        {files.map((file) => {
          const share = file.state === "sending" ? file.share : file.state === "waiting" ? 0 : 1;
          return (
            <li key={file.id} className={styles.file}>
              <span className={styles.name}>{file.name}</span>
              <span className={styles.state}>{words(file)}</span>
              <span
                className={styles.bar}
                role="progressbar"
                aria-label={`Sending ${file.name}`}
                aria-valuemin={0}
                aria-valuemax={100}
                aria-valuenow={Math.floor(share * 100)}
              >
                <span style={{ inlineSize: `${share * 100}%` }} />
              </span>
              {file.state === "taken" ? (
                <a className={styles.wide} href={file.next}>
                  {nextText}
                </a>
              ) : null}
              {file.state === "refused" ? <span className={styles.wide}>{file.problems.join(" ")}</span> : null}
            </li>
          );
        })}
      </ol>
      <p role="status" className="small soft">
        {dropWords.tally(finished, files.length)}
      </p>
    </>
  );
}
