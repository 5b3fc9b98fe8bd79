"use client";

import { type ReactNode, useEffect, useRef, useState } from "react";
import { ActionForm, type FormAction } from "@/app/_components/action-form.tsx";
import { Actions, Button, ButtonLink } from "@/app/_components/button.tsx";
import { Entry, Ledger } from "@/app/_components/entry.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { TextField } from "@/app/_components/field.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { secondStepWords as words } from "@/lib/wording/account.ts";
import { CodeField } from "../code-field.tsx";
import {
  type KeyState,
  makeSecondStepKey,
  renewRecoveryCodes,
  turnOffSecondStep,
  turnOnSecondStep,
} from "./actions.ts";
import styles from "./second-step.module.css";

type Codes = { codes: string[]; lead: string };

/**
 * All that somebody does about their second step. Kept in one piece, since the page is made anew beneath it when the step is turned on, and
 * the recovery codes, which are told once, must still stand there.
 */
export function SecondStepForms({ on, left, codesFor }: { on: boolean; left: number; codesFor: string }) {
  const [key, setKey] = useState<KeyState["key"] | null>(null);
  const [told, setTold] = useState<Codes | null>(null);
  const [gone, setGone] = useState("");

  const make: FormAction = async (state, data) => {
    const answer = await makeSecondStepKey(state, data);
    if (answer.key) setKey(answer.key);
    setGone("");
    return answer;
  };
  const turnOn: FormAction = async (state, data) => {
    const { codes, ...answer } = await turnOnSecondStep(state, data);
    if (codes) {
      setTold({ codes, lead: words.codesOn });
      setKey(null);
    }
    return answer;
  };
  const renew: FormAction = async (state, data) => {
    const { codes, ...answer } = await renewRecoveryCodes(state, data);
    if (codes) setTold({ codes, lead: words.codesRenewed });
    return answer;
  };
  const turnOff: FormAction = async (state, data) => {
    const answer = await turnOffSecondStep(state, data);
    setGone(answer.notice ?? "");
    return answer;
  };

  if (told)
    return (
      <Ledger>
        <RecoveryCodes {...told} title={codesFor} />
      </Ledger>
    );
  return (
    <>
      <p role="status" className={styles.gone}>
        {gone}
      </p>
      <Ledger>
        {on ? (
          <Entry title={words.renewTitle} id="recovery">
            <p>{words.left(left)}</p>
            <ActionForm action={renew} submit={words.renew} submitKind="secondary">
              <OwnPassword name="renew-password" />
            </ActionForm>
          </Entry>
        ) : key ? (
          <Entry title={<Heard>{words.keyTitle}</Heard>} id="key">
            <p>{words.keyLead}</p>
            <div className={styles.key}>
              <svg
                className={styles.picture}
                role="img"
                aria-label={words.keyPicture}
                viewBox={`0 0 ${key.picture.size} ${key.picture.size}`}
              >
                <rect width="100%" height="100%" fill="#fff" />
                <path d={key.picture.path} fill="#000" />
              </svg>
              <Facts
                facts={[
                  { name: words.keyName, value: <code>{key.spelt}</code> },
                  { name: words.keyKind, value: words.keyKindText },
                ]}
              />
            </div>
            <ActionForm action={turnOn} submit={words.confirm}>
              <CodeField label={words.firstCode} hint={words.firstCodeHint} />
            </ActionForm>
            <p>{words.again}</p>
          </Entry>
        ) : (
          <Entry title={words.onTitle} id="turn-on">
            <p>{words.onLead}</p>
            <ActionForm action={make} submit={words.makeKey}>
              <OwnPassword name="key-password" />
            </ActionForm>
          </Entry>
        )}
        {on ? (
          <Entry title={words.offTitle} id="turn-off">
            <p>{words.offLead}</p>
            <ActionForm action={turnOff} submit={words.offSubmit} submitKind="secondary">
              <OwnPassword name="off-password" />
            </ActionForm>
          </Entry>
        ) : null}
      </Ledger>
    </>
  );
}

function OwnPassword({ name }: { name: string }) {
  return (
    <TextField name={name} label={words.password} type="password" autoComplete="current-password" required width={32} />
  );
}

/** What has come in the place of a form that was sent takes the focus, so that it is read out. */
function Heard({ children }: { children: ReactNode }) {
  const here = useRef<HTMLSpanElement>(null);
  useEffect(() => here.current?.focus(), []);
  return (
    <span ref={here} tabIndex={-1} className={styles.heard}>
      {children}
    </span>
  );
}

function RecoveryCodes({ codes, lead, title }: Codes & { title: string }) {
  return (
    <Entry title={<Heard>{words.codesTitle}</Heard>} id="codes">
      <p className="no-print">{lead}</p>
      <p className="no-print">{words.codesLead}</p>
      <p className="print-only">{title}</p>
      <ol className={styles.codes}>
        {codes.map((code) => (
          <li key={code}>
            <code>{code}</code>
          </li>
        ))}
      </ol>
      <Actions>
        <Button kind="primary" onClick={() => window.print()}>
          {words.print}
        </Button>
        <ButtonLink href={paths.account()}>{words.kept}</ButtonLink>
      </Actions>
    </Entry>
  );
}
