import { ActionForm } from "@/app/_components/action-form.tsx";
import { Checkbox } from "@/app/_components/choice-field.tsx";
import { DateZoneField } from "@/app/_components/date-zone-field.tsx";
import { NumberField, SelectField, TextAreaField, TextField } from "@/app/_components/field.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import type { Person } from "@/lib/access/permissions.ts";
import type { Instrument } from "@/lib/store/instruments.ts";
import type { SessionFields } from "@/lib/store/sessions.ts";
import { radiationCaution } from "@/lib/wording/cautions.ts";
import { trainingWords } from "@/lib/wording/sessions.ts";
import { saveSession } from "./actions.ts";

const zones = ["UTC", ...Intl.supportedValuesOf("timeZone")];

/** One sitting with an instrument: where, who, when, in what circumstances. Empty for a new one, or filled in from a file's times. */
export function SessionForm({
  id,
  session,
  instruments,
  people,
}: {
  id?: string;
  session: Partial<SessionFields>;
  instruments: Instrument[];
  people: Person[];
}) {
  const zone = session.timeZone ?? instruments.find((i) => i.id === session.instrumentId)?.timeZone ?? "";
  return (
    <ActionForm action={saveSession} submit={id ? "Save the changes" : "Open the session"}>
      {id ? <input type="hidden" name="id" value={id} /> : null}
      {(session.corrections ?? []).map((element) => (
        <input key={element} type="hidden" name="corrections" value={element} />
      ))}
      {session.inDoubtReason ? <input type="hidden" name="inDoubtReason" value={session.inDoubtReason} /> : null}
      <SelectField
        name="instrumentId"
        label="Analyser"
        empty="Choose"
        required
        choices={instruments.map((i) => ({ value: i.id, label: `${i.name} (${i.serial})` }))}
        defaultValue={session.instrumentId ?? (instruments.length === 1 ? instruments[0]?.id : "")}
        width={30}
      />
      <DateZoneField
        name="startedAt"
        legend="Start"
        hint="True time, even where the analyser’s own clock is wrong"
        zones={zones}
        {...dateAndTime(session.startedAt)}
        defaultZone={zone}
      />
      <DateZoneField
        name="endedAt"
        legend="End"
        hint="Leave the day empty while it goes on"
        zones={zones}
        {...dateAndTime(session.endedAt)}
        defaultZone={zone}
      />
      <SelectField
        name="operatorId"
        label="Operator"
        empty="somebody who has no account"
        choices={people.map((p) => ({ value: p.id, label: p.name }))}
        defaultValue={session.operatorId ?? ""}
        width={26}
      />
      <TextField
        name="operatorName"
        label="Or their name"
        optional
        width={26}
        defaultValue={session.operatorName ?? ""}
      />
      <Warning>
        <p>{radiationCaution.text}</p>
      </Warning>
      <Checkbox
        name="trained"
        label={trainingWords.label}
        hint={trainingWords.hint}
        defaultChecked={session.trained ?? false}
      />
      <TextField name="place" label="Place" optional width={36} defaultValue={session.place ?? ""} />
      <TextField
        name="conditions"
        label="Conditions"
        hint="Temperature, stand or hand, anything that happened"
        optional
        width={50}
        defaultValue={session.conditions ?? ""}
      />
      <NumberField
        name="clockShiftMinutes"
        label="Its clock is put right by"
        hint="Added to every time it wrote; 0 where its clock was right. A minus where it ran ahead."
        unit="minutes"
        defaultValue={session.clockShiftMinutes ?? 0}
      />
      <TextAreaField name="note" label="Note" optional rows={2} defaultValue={session.note ?? ""} />
    </ActionForm>
  );
}

const dateAndTime = (moment: string | null | undefined) =>
  moment ? { defaultDate: moment.slice(0, 10), defaultTime: moment.slice(11, 16) } : {};
