import { ActionForm } from "@/app/_components/action-form.tsx";
import { Actions, ButtonLink } from "@/app/_components/button.tsx";
import { RadioGroup } from "@/app/_components/choice-field.tsx";
import { Entry } from "@/app/_components/entry.tsx";
import { SelectField } from "@/app/_components/field.tsx";
import type { Gap, Joined } from "@/lib/consistency/join-sessions.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Instrument } from "@/lib/store/instruments.ts";
import type { Session } from "@/lib/store/sessions.ts";
import { counted } from "@/lib/wording/formats.ts";
import { clockOf, dayAndClock, shiftText, sittingTime } from "@/lib/wording/sessions.ts";
import { pickSession, shiftClock } from "./actions.ts";

type Known = { sessions: Session[]; instruments: Instrument[] };

/** Readings without a session, and those that two of them claim: each with its answer. Nothing where all have theirs. */
export function LeftOver({ joined, ...known }: Known & { joined: Joined }) {
  const overlaps = groupsOf(joined.overlaps);
  return (
    <>
      {joined.gaps.length > 0 ? (
        <Entry title="Outside any session" id="outside" aside={counted(joined.gaps.length, "stretch", "stretches")}>
          {joined.gaps.map((gap) => (
            <GapAnswer key={`${gap.instrumentId} ${gap.from}`} gap={gap} {...known} />
          ))}
        </Entry>
      ) : null}
      {overlaps.length > 0 ? (
        <Entry title="Claimed twice" id="claimed-twice">
          {overlaps.map((claim) => (
            <ClaimAnswer key={`${claim.sessionIds.join()} ${claim.keptIn}`} {...claim} {...known} />
          ))}
        </Entry>
      ) : null}
      {joined.unplaced.length > 0 ? (
        <Entry title="Without a time" id="without-time" aside={counted(joined.unplaced.length, "reading")}>
          <p>
            These readings carry no time, or no analyser that is known here. Say in which session they were taken, if
            you know it; otherwise their pages say that no check standard shows whether the analyser was fit.
          </p>
          {known.sessions.length > 0 ? (
            <ActionForm action={pickSession} submit="Put them into this session" submitKind="secondary">
              {joined.unplaced.map((id) => (
                <input key={id} type="hidden" name="readingIds" value={id} />
              ))}
              <SelectField
                name="sessionId"
                id="unplaced-session"
                label="Session"
                empty="Choose"
                required
                choices={known.sessions.map((s) => ({ value: s.id, label: `${s.instrument.name}, ${sittingTime(s)}` }))}
              />
            </ActionForm>
          ) : null}
        </Entry>
      ) : null}
    </>
  );
}

function GapAnswer({ gap, sessions, instruments }: Known & { gap: Gap }) {
  const instrument = instruments.find((i) => i.id === gap.instrumentId);
  const shifted = sessions.find((s) => s.id === gap.shift?.sessionId);
  const query = new URLSearchParams({ instrument: gap.instrumentId, from: gap.from, to: gap.to });
  return (
    <section className="flow">
      <p>
        {counted(gap.readingIds.length, "reading")} of {instrument?.name ?? "an analyser"}, written as{" "}
        {dayAndClock(gap.from)} to{" "}
        {gap.from.slice(0, 10) === gap.to.slice(0, 10) ? clockOf(gap.to) : dayAndClock(gap.to)},{" "}
        {gap.readingIds.length === 1 ? "belongs" : "belong"} to no session.
      </p>
      {shifted && gap.shift ? (
        <ActionForm
          action={shiftClock}
          submit={`Put the clock right by ${shiftText(gap.shift.minutes)}`}
          submitKind="secondary"
          compact
        >
          <input type="hidden" name="id" value={shifted.id} />
          <input type="hidden" name="minutes" value={gap.shift.minutes} />
          <p>
            They would all lie in the session of {sittingTime(shifted)} if the analyser’s clock was wrong. What it wrote
            is kept and shown beside.
          </p>
        </ActionForm>
      ) : null}
      <Actions>
        <ButtonLink href={paths.benchNewSession(`?${query}`)}>Open a session from these times</ButtonLink>
      </Actions>
    </section>
  );
}

type Claim = { sessionIds: string[]; keptIn: string | null; ids: string[] };

function ClaimAnswer({ sessionIds, keptIn, ids, sessions }: Known & Claim) {
  const claims = sessions.filter((s) => sessionIds.includes(s.id));
  const choices = claims.map((s) => ({ value: s.id, label: `${s.instrument.name}, ${sittingTime(s)}` }));
  const kept = claims.find((s) => s.id === keptIn);
  return (
    <section className="flow">
      <p>
        {counted(ids.length, "reading lies", "readings lie")} in the time of {counted(claims.length, "session")}, and{" "}
        {ids.length === 1 ? "is" : "are"} in {kept ? `that of ${sittingTime(kept)} for now` : "none of them"}. Choose
        one here, or change the start or end of one, so that only one claims {ids.length === 1 ? "it" : "them"}:{" "}
        {claims.map((s, at) => (
          <span key={s.id}>
            {at > 0 ? "; " : ""}
            <a href={paths.benchEditSession(s.id)}>{sittingTime(s)}</a>
          </span>
        ))}
        .
      </p>
      <ActionForm action={pickSession} submit="Put them into this session" submitKind="secondary">
        {ids.map((id) => (
          <input key={id} type="hidden" name="readingIds" value={id} />
        ))}
        <RadioGroup name="sessionId" legend="Session" choices={choices} defaultValue={keptIn ?? ""} />
      </ActionForm>
    </section>
  );
}

function groupsOf(overlaps: Joined["overlaps"]): Claim[] {
  const groups = new Map<string, Claim>();
  for (const { id, sessionIds, keptIn } of overlaps) {
    const key = `${sessionIds.join()} ${keptIn}`;
    groups.set(key, { sessionIds, keptIn, ids: [...(groups.get(key)?.ids ?? []), id] });
  }
  return [...groups.values()];
}
