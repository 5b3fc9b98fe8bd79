import { defaultPolicy } from "../reconcile/types.ts";
import { methodPage as spanish } from "./es/method-page.ts";
import type { ByLanguage, Sentences } from "./language.ts";

const per100 = (share: number): string => String(Math.round(share * 100));

/** The method in plain words, step for step as `lib/reconcile` and the rooms after it do it; numbers come from the policy. */
export const methodPage = {
  title: "How results are made",
  lead: "From single shots to one published number, in steps anyone can follow. The same readings always give the same result.",
  version: "cupboard-assay-reconcile",
  step: (n: number): string => `Step ${n}`,
  notTold: "What no reading tells",
  sourcesTitle: "Sources",
  policy: `Numbers marked “policy” are our choice and can change with a reason; this page tells policy ${defaultPolicy.version}. Each published page names the method and the policy it was made by.`,
  steps: [
    {
      title: "Take the readings as they are",
      text: "Every value keeps the digits and the unit it was written with. Each is also turned into one unit, once. What the analyser's error figure means (one, two or three standard uncertainties) is asked of the tester and shown.",
    },
    {
      title: "Never make a number out of nothing",
      text: "“Not detected” is not zero, and not half of anything. It is kept as “below what the analyser could see”, with a third of that as its standard uncertainty, but never more than the largest error among the part’s detected readings. A blank means not measured.",
    },
    {
      title: "Set aside only by a person, with a reason",
      text: "The tool never drops a reading. A person may set one aside and must write down why. It stays in the table, and the page shows the result with it and without it.",
    },
    {
      title: "One value for each spot",
      text: "Readings at the same spot are put together so that surer ones count for more. If they differ by more than their errors explain, the spot's error grows to match.",
    },
    {
      title: "One value for the part",
      text: `With two spots or more, the range allows for the spots really being different (random effects, Paule–Mandel, with the interval of Hartung and Knapp, never made narrower than plain). If the spots differ by more than ${per100(defaultPolicy.unevenFrom)} % of the mean (policy), the part is called uneven: the page leads with the lowest and the highest spot, and the range reaches further up than down (lognormal, profile likelihood). From five spots or fewer such a range is made wider still (policy). Where the readings' own errors are over ${per100(defaultPolicy.evenSeenTo)} % of the mean (policy), nobody could see whether the part is even: its upper end then reaches further too.`,
    },
    {
      title: "Spots where nothing was seen",
      text: "If at least two spots and at least half of them were seen, the others count as “below that”, never as a number. If fewer, we say where it was seen and how much there can be at most. If none, we state the highest of the spots' detection limits: every spot was below it. Few spots can miss the places that hold more. So the most that the whole part may hold on average is worked out too, for a part whose places differ by as much as their mean (policy): with three spots it is 1.9 times that limit, with five 1.3 times, with eight the limit itself.",
    },
    {
      title: "The worst place matters",
      text: "The highest spot is always told beside the value of the part.",
    },
    {
      title: "Thick enough?",
      text: "X‑rays see only so deep. For lead it is a few hundredths of a millimetre in brass, about a millimetre in glaze, and centimetres in plain plastic. For each material and element we work out the depth that 99 in 100 parts of the signal come from, with a typical recipe and with X‑rays going in and out at 45°. A part thinner than that is flagged: its number can be too low or too high. The depth is about right and no measurement. It is not worked out where the material is “something else”.",
    },
    {
      title: "Add what the readings cannot show",
      text: "The spread of the readings is not all. The calibration of the analyser, the material and the shape of the part add to the doubt. Each is listed with its size, where it comes from and its share (law of propagation, Welch–Satterthwaite; JCGM 100).",
    },
    {
      title: "State the range",
      text: "The range is made so that it holds the true amount about 19 times out of 20. The digits printed are no finer than the doubt (two digits of the uncertainty). A content is never stated below zero.",
    },
    {
      title: "Look again in other ways",
      text: "The median, a robust mean and the results with one spot left out are shown beside the value. They check it. They never replace it.",
    },
    {
      title: "Compare with limits",
      text: `A result is only held against a limit of the same quantity. From the number and its doubt we work out how probable it is that the true amount is on the failing side. At ${per100(1 - defaultPolicy.decisionRisk)} in 100 or more: “above the limit”. At ${per100(defaultPolicy.decisionRisk)} in 100 or less: “below the limit”. Between: “too close to call” (policy). On an uneven part, “below the limit” also needs the upper end of the range to be below it. Where nothing was seen, “below the limit” needs the most that the part may hold to be below it, not just what the analyser could see; one spot alone speaks only for itself.`,
    },
    {
      title: "Publish for good",
      text: "A published page never changes. A correction is a new revision; the old one stays, with a note on top. The log chains every publication to the one before.",
    },
  ],
  sources:
    "Sources: JCGM 100, 101 and 106; ISO 13528; ISO 5725-2; Paule and Mandel (1982); Hartung and Knapp (2001); Currie (1968) and ISO 11843 for detection; Helsel on non-detects; Hubbell and Seltzer (NISTIR 5632) for how X‑rays fade, with coefficients from the open library xraylib.",
} as const;
export type MethodPage = Sentences<typeof methodPage>;
export const methodPageIn: ByLanguage<MethodPage> = { en: methodPage, es: spanish };
