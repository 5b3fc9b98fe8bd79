import type { Subject } from "./types.ts";

type Described = {
  item: { category: string; ageGroup: string; foodContact: boolean; mouthable: boolean };
  specimen: { madeOn?: string | null | undefined; gotOn: string | null };
  part: { material: string; form: "bulk" | "coating"; accessible: boolean };
};

/**
 * What an item, one object of it and one of its parts are, as far as a limit's scope asks; working records and a published
 * snapshot both fit. What they do not say of the day of making is null.
 */
export const subjectOf = ({ item, specimen, part }: Described): Subject => ({
  category: item.category,
  ageGroup: item.ageGroup as Subject["ageGroup"],
  foodContact: item.foodContact,
  mouthable: item.mouthable,
  material: part.material,
  form: part.form,
  accessible: part.accessible,
  madeOn: specimen.madeOn ?? null,
  gotOn: specimen.gotOn,
});
