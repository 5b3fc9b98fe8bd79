import { limitsPage as spanish } from "./es/limits-page.ts";
import { counted } from "./formats.ts";
import type { ByLanguage, Sentences } from "./language.ts";

/** The words of the list of limits and of one limit's page. */
export const limitsPage = {
  title: "Limits",
  lead: "The numbers we hold results against: what each is about, since when it holds, and how far we checked it against the rule itself. A number is only ever compared with a limit of the same kind.",
  caution: "Rules differ from place to place and change. This list is not advice on what the law asks of you.",
  none: "No limit fits these choices",
  count: (limits: number): string => counted(limits, "limit"),
  shown: (limits: number, ofAnyDate: boolean): string =>
    `${counted(limits, "limit")} ${ofAnyDate ? "of any date" : "in force today"}.`,
  asJson: "The whole list as JSON",
  caption: (place: string): string => `Limits: ${place}`,
  columns: {
    limit: "Limit",
    element: "For",
    value: "Number",
    quantity: "What it is about",
    period: "In force",
    checked: "Checked",
  },
  filters: {
    place: "Place",
    everyPlace: "Every place",
    element: "Element",
    everyElement: "Every element",
    when: "When",
    today: "In force today",
    anyDate: "Of any date",
    show: "Show these",
  },
  facts: {
    quantity: "What the number is about",
    sum: "Sum of these elements",
    fails: "A result fails",
    rule: "The rule",
    statistic: "What must be held against it",
    scope: "What it covers",
    period: "In force",
    nature: "Kind of rule",
    source: "Source",
    checked: "How far we checked it",
    note: "Note",
    id: "Name in the data",
  },
};
export type LimitsPage = Sentences<typeof limitsPage>;
export const limitsPageIn: ByLanguage<LimitsPage> = { en: limitsPage, es: spanish };
