"use client";

import { usePathname } from "next/navigation";
import { Button } from "@/app/_components/button.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { tableWords } from "@/lib/wording/table-sheets.ts";
import styles from "./outbox-notice.module.css";
import { useOutbox } from "./use-outbox.ts";

/** On every bench page: what was handed in on this phone and is not with the registry yet. It is sent from here too. */
export function OutboxNotice({ personId }: { personId: string }) {
  const here = usePathname();
  return here === paths.benchTable() ? null : <Waiting personId={personId} />;
}

function Waiting({ personId }: { personId: string }) {
  const { sheets, send } = useOutbox(personId);
  const waiting = sheets?.filter((sheet) => sheet.state === "waiting").length ?? 0;
  return (
    <div role="status">
      {waiting > 0 ? (
        <div className={styles.notice}>
          <p>
            <a href={paths.benchTable()}>{tableWords.waiting(waiting)}</a>
          </p>
          <Button onClick={() => void send()}>{tableWords.sendNow}</Button>
        </div>
      ) : null}
    </div>
  );
}
