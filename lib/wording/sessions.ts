import type { Fitness, UncountedCheck } from "../consistency/session-fitness.ts";
import type { SnapshotSession } from "../publication/snapshot.ts";
import { failedCheckReason } from "../reconcile/part-inputs.ts";
import { elementName } from "./elements.ts";
import { sessionSentences as spanish } from "./es/sessions.ts";
import { amountText, counted, formatWordsIn, listed, numberText, plainDate, significant } from "./formats.ts";
import { labelOf, labelsIn } from "./labels.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";

/** Was the instrument fit that day? A state in one plain sentence, for what it is about ("lead", "lead in the mode “glaze”"). */
export const fitnessSentence: Record<Fitness, (about: string) => string> = {
  fit: (about) => `The analyser was fit for ${about}: it read the check standard within 20 % of its certified value.`,
  "fit-with-correction": (about) =>
    `The analyser was fit for ${about} after a correction: it read the check standard off by a steady share, and the readings are corrected for it.`,
  "not-fit": (about) =>
    `The analyser was not shown to be fit for ${about}: it read a check standard wrongly, and these readings lie between that check and the good ones about it.`,
  "not-shown": (about) =>
    `Whether the analyser was fit for ${about} is not shown: no check standard with a certified value was read for it that day.`,
};

/** In a table: a word or three. */
export const fitnessWord: Record<Fitness, string> = {
  fit: "fit",
  "fit-with-correction": "fit, with a correction",
  "not-fit": "not fit: a check failed",
  "not-shown": "not shown",
};
const dayWord: Record<Fitness, string> = { ...fitnessWord, "not-fit": "not fit" };

/** What readers are told of sessions; what only testers see stands below, in English. */
const english = {
  fitness: fitnessSentence,
  word: fitnessWord,
  day: dayWord,
  inMode: (mode: string) => `, in the mode “${mode}”`,
  noModeNamed: "no mode named",
  failedCheck:
    "Left out by the method: a check standard was read wrongly before or after it, and no good check lies between.",
  notEnded: (start: string) => `${start}, not ended yet`,
  startToEnd: (start: string, end: string) => `${start} to ${end}`,
  fromBeginning: "from the beginning, since no good check came before",
  afterCheck: (time: string) => `after the good check at ${time}`,
  toEnd: "to the end, since no good check came after",
  untilCheck: (time: string) => `until the good check at ${time}`,
  shifted: (by: string, earlier: boolean) =>
    `The analyser’s clock was wrong: every time it wrote is taken ${by} ${earlier ? "earlier" : "later"}. What it wrote is kept and shown.`,
  ofCertified: (range: string) => `${range} of the certified value`,
  missed: (n: number) => `${counted(n, "time", "times")} not detected`,
  saysNothing: "says nothing",
  good: "good",
  failed: "failed",
  untrained: "Nobody recorded that the operator was trained in radiation safety and in this analyser.",
  leftOut:
    "Readings in that stretch are left out of every number here. They are listed with the reason, and each result says what it would be with them.",
  usedAnyway: (reason: string) =>
    `They are used all the same, and every page that rests on them says so, with this reason: ${reason}`,
  inDoubt: (elements: string, mode: string, stretch: string) =>
    `A check failed for ${elements}${mode}: readings are in doubt ${stretch}.`,
  noStandard: "not shown: no check standard was read",
  noUncertainty: (elements: string) =>
    `The certificate states no uncertainty for ${elements}. Its checks show whether the analyser is fit, but nothing is corrected by it, and the analyser’s own stated calibration stays in the budget.`,
  uncertainty: (recovery: string, u: string) => `${recovery}, u ${u}`,
  notCorrected: "no",
  corrected: (factor: string, material: string) => `× ${factor}, parts of ${material}`,
  earlierSession: "an earlier one",
  thisSession: "this one",
};
export type SessionSentences = Sentences<typeof english>;
export const sessionsIn: ByLanguage<SessionSentences> = { en: english, es: spanish };

/** "lead, in the mode “glass and glaze”". */
export const aboutElement = (element: string, mode: string | null, language: Language = "en"): string =>
  `${elementName(element, language)}${mode === null ? "" : sessionsIn[language].inMode(mode)}`;

/** Why a reading was set aside: a person's own words, or the sentence for a failed check. */
export const asideReason = (reason: string, language: Language = "en"): string =>
  reason === failedCheckReason ? sessionsIn[language].failedCheck : reason;

/** "10:06" from a moment written with its offset. */
export const clockOf = (moment: string): string => moment.slice(11, 16);
/** "3 October 2026, 10:06". */
export const dayAndClock = (moment: string, language: Language = "en"): string =>
  `${plainDate(moment.slice(0, 10), language)}, ${clockOf(moment)}`;

/** "12 September 2026, 09:40 to 11:20", with the second day where it is another. */
export function sittingTime(
  { startedAt, endedAt }: { startedAt: string; endedAt: string | null },
  language: Language = "en",
): string {
  const say = sessionsIn[language];
  const start = dayAndClock(startedAt, language);
  if (endedAt === null) return say.notEnded(start);
  const sameDay = startedAt.slice(0, 10) === endedAt.slice(0, 10);
  return say.startToEnd(start, sameDay ? clockOf(endedAt) : dayAndClock(endedAt, language));
}

/** "from the good check at 09:51 to the good check at 10:19". */
export function doubtStretch(
  { after, before }: { after: string | null; before: string | null },
  language: Language = "en",
): string {
  const say = sessionsIn[language];
  const from = after === null ? say.fromBeginning : say.afterCheck(clockOf(after));
  return `${from}, ${before === null ? say.toEnd : say.untilCheck(clockOf(before))}`;
}

/** "+3 h", "−1 h 30 min". */
export function shiftText(minutes: number): string {
  const size = Math.abs(minutes);
  const [hours, rest] = [Math.floor(size / 60), size % 60];
  const parts = [hours > 0 ? `${hours} h` : "", rest > 0 ? `${rest} min` : ""].filter(Boolean).join(" ");
  return minutes === 0 ? "none" : `${minutes < 0 ? "−" : "+"}${parts}`;
}

/** `minutes`: not 0. */
export const shiftSentence = (minutes: number, language: Language = "en"): string =>
  sessionsIn[language].shifted(shiftText(Math.abs(minutes)).slice(1), minutes < 0);

/** What a check reading that counts for nothing is told. */
export function uncountedSentence(
  why: UncountedCheck["why"],
  about: { standard: string; mode: string | null; modes: readonly string[]; expiresOn: string | null },
): string {
  switch (why) {
    case "wrong-mode":
      return `${about.standard} was read in ${about.mode === null ? "no named mode" : `the mode “${about.mode}”`}, and is meant for ${listed(about.modes.map((m) => `“${m}”`))}. This reading shows nothing. Read it again in a mode it is meant for, or add the mode on its page.`;
    case "expired":
      return `The certificate of ${about.standard} ran out on ${about.expiresOn === null ? "an unknown day" : plainDate(about.expiresOn)}, before this reading. It shows nothing. Read a standard whose certificate is valid, or enter the new certificate.`;
    case "no-time":
      return `This reading of ${about.standard} carries no time, so nobody can say which readings it stands beside. It shows nothing.`;
    case "nothing-certified":
      return `${about.standard} has no certified value for anything that this reading reports in its unit. It shows nothing.`;
  }
}

/** "read 3 times: 0.98 to 1.02 of the certified value". */
export function recoveriesText(recoveries: readonly (number | null)[], language: Language = "en"): string {
  const say = sessionsIn[language];
  const read = recoveries.filter((r) => r !== null);
  const missed = recoveries.length - read.length;
  const [low, high] = [Math.min(...read), Math.max(...read)].map((r) =>
    Number.isFinite(r) ? numberText(r, 3, language) : "",
  );
  const range = low === high ? low : `${low} ${formatWordsIn[language].to} ${high}`;
  return [read.length === 0 ? "" : say.ofCertified(range!), missed > 0 ? say.missed(missed) : ""]
    .filter(Boolean)
    .join("; ");
}

/** "0.961 ± 0.034". */
export const recoveryText = (recovery: { recovery: number; U: number | null } | null): string =>
  recovery === null
    ? "–"
    : `${significant(recovery.recovery, 3)}${recovery.U === null ? "" : ` ± ${significant(recovery.U, 2)}`}`;

/** Names of what the charts saw, for the table behind them. */
export const signalWords: Record<string, string> = {
  individuals: "outside the limits",
  ewma: "slow shift (moving average)",
  cusum: "slow shift (sums)",
  "1-3s": "one beyond three standard deviations",
  "2-2s": "two together beyond two, one side",
  "R-4s": "two together four apart",
  "4-1s": "four together beyond one, one side",
  "10-x": "ten together on one side",
};

export const withinWords = (within: boolean | null, language: Language = "en"): string => {
  const say = sessionsIn[language];
  return within === null ? say.saysNothing : within ? say.good : say.failed;
};

/** For testers, where a session is opened. */
export const trainingWords = {
  label: "The operator is trained in radiation safety and in this analyser",
  hint: "By ticking this, you record that the operator confirmed it. The registry gives no operating instructions.",
  missingOnPage: english.untrained,
  missing:
    "Nobody has confirmed that the operator is trained in radiation safety and in this analyser. The page will say so.",
};

export const doubtWords = {
  leftOut: (readings: number): string =>
    readings === 0
      ? "No reading of an item lies in it."
      : `${counted(readings, "reading")} of items ${readings === 1 ? "lies" : "lie"} in it, and ${readings === 1 ? "feeds" : "feed"} no number. ${readings === 1 ? "It is" : "They are"} listed with the reason, and the result is shown with and without.`,
  leftOutOnPage: english.leftOut,
  usedAnyway: english.usedAnyway,
};

/** Why a correction is or is not made, for one standard and element. */
export function correctionText(verdict: {
  uCertified: number | null;
  factor: number | null;
  asked: boolean;
  differs: boolean | null;
  material: string;
}): string {
  if (verdict.uCertified === null) return "none can be made: the certificate states no uncertainty";
  if (verdict.factor !== null)
    return `× ${significant(verdict.factor, 4)}, for parts of ${verdict.material.toLowerCase()}`;
  if (verdict.differs === true)
    return verdict.asked ? "not made: a check failed" : "can be asked for: the difference is more than chance";
  if (verdict.differs === null) return "none: how sure the recovery is, is not known";
  return verdict.asked ? "not made: the difference is within its uncertainty" : "not called for";
}

/** A day in one line, from what every element and mode showed: "fit: lead and tin (Metall); not fit: cadmium (Kunststoff)". */
export function dayStates(
  elements: readonly { element: string; mode: string | null; state: Fitness }[],
  language: Language = "en",
): string {
  const say = sessionsIn[language];
  if (elements.length === 0) return say.noStandard;
  const order: Fitness[] = ["not-fit", "fit-with-correction", "fit", "not-shown"];
  const modes = [...new Set(elements.map((e) => e.mode))];
  const namesIn = (state: Fitness, mode: string | null): string => {
    const names = elements
      .filter((e) => e.state === state && e.mode === mode)
      .map((e) => elementName(e.element, language));
    if (names.length === 0) return "";
    return `${listed(names, language)}${modes.length > 1 ? ` (${mode ?? say.noModeNamed})` : ""}`;
  };
  return order
    .flatMap((state) => {
      const names = modes.map((mode) => namesIn(state, mode)).filter(Boolean);
      return names.length > 0 ? [`${say.day[state]}: ${names.join(", ")}`] : [];
    })
    .join("; ");
}

/** Stretches in doubt as sentences, elements of one mode and stretch together. */
export function doubtLines(
  elements: readonly { element: string; mode: string | null; inDoubt: readonly Stretch[] }[],
  language: Language = "en",
): string[] {
  const say = sessionsIn[language];
  const lines = new Map<string, { names: string[]; mode: string | null; span: Stretch }>();
  for (const { element, mode, inDoubt } of elements)
    for (const span of inDoubt) {
      const key = JSON.stringify([mode, span.after, span.before]);
      const line = lines.get(key) ?? { names: [], mode, span };
      lines.set(key, { ...line, names: [...new Set([...line.names, elementName(element, language)])] });
    }
  return [...lines.values()].map(({ names, mode, span }) =>
    say.inDoubt(listed(names, language), mode === null ? "" : say.inMode(mode), doubtStretch(span, language)),
  );
}
type Stretch = { after: string | null; before: string | null };

/** Whether a standard can be used today: "in use", "ran out on 30 June 2026", "out of use". */
export function standardStanding(
  standard: { expiresOn: string | null; retiredAt: Date | null },
  today: string,
): string {
  if (standard.retiredAt !== null) return "out of use";
  if (standard.expiresOn !== null && standard.expiresOn < today)
    return `its certificate ran out on ${plainDate(standard.expiresOn)}`;
  return "in use";
}

export const withoutUncertainty = (elements: readonly string[], language: Language = "en"): string =>
  sessionsIn[language].noUncertainty(
    listed(
      elements.map((element) => elementName(element, language)),
      language,
    ),
  );

type PublishedElement = SnapshotSession["fitness"][number];
type PublishedStandard = PublishedElement["standards"][number];

/** "0.961, standard uncertainty 0.017". */
export const recoveryOnPage = ({ recovery, uRecovery }: PublishedStandard, language: Language = "en"): string => {
  if (recovery === null) return "–";
  const text = numberText(recovery, 3, language);
  return uRecovery === null ? text : sessionsIn[language].uncertainty(text, numberText(uRecovery, 2, language));
};

export const correctionOnPage = ({ factor, material }: PublishedStandard, language: Language = "en"): string => {
  const say = sessionsIn[language];
  if (factor === null) return say.notCorrected;
  return say.corrected(numberText(factor, 4, language), labelOf(labelsIn[language].material, material).toLowerCase());
};

/** Every check of one element and standard as rows of a table: those of earlier sessions first. */
export function checkRows(element: PublishedElement, standard: PublishedStandard, language: Language = "en") {
  const say = sessionsIn[language];
  const shared = { about: aboutElement(element.element, element.mode, language), standard: standard.name };
  const row = (check: PublishedStandard["history"][number], value: number | null, session: string) => ({
    ...shared,
    key: `${shared.about} ${standard.name} ${check.takenAt}`,
    when: dayAndClock(check.takenAt, language),
    read: value === null ? "–" : amountText(value, standard.unit, language),
    recovery: check.recovery === null ? "–" : numberText(check.recovery, 3, language),
    judged: withinWords(check.within, language),
    session,
  });
  return [
    ...standard.history.map((check) => row(check, null, say.earlierSession)),
    ...standard.checks.map((check) => row(check, check.value, say.thisSession)),
  ];
}

/** What a page says of one of its instruments: by its sessions where it has them, else by the word it was published with. */
export function instrumentDay(
  sessions: readonly SnapshotSession[] | undefined,
  serial: string,
  published: string,
  language: Language = "en",
): string {
  const own = (sessions ?? []).filter((s) => s.instrument.serial === serial);
  if (own.length === 0) return published;
  const days = own.map((s) => dayStates(s.fitness, language));
  // What every sitting showed alike is said once; else each is told by its day.
  return new Set(days).size === 1
    ? days[0]!
    : own.map((s, at) => `${plainDate(s.startedAt.slice(0, 10), language)}: ${days[at]}`).join(". ");
}
