import { formList, formText, formTextOrNull, formTicked } from "@/lib/platform/form-values.ts";

/** What the item form holds, in the shape that the workflow's schema checks. */
export const itemFormValues = (data: FormData) => ({
  name: formText(data, "name"),
  aliases: formText(data, "aliases")
    .split("\n")
    .map((a) => a.trim())
    .filter(Boolean),
  marks: formText(data, "marks"),
  maker: formTextOrNull(data, "maker"),
  gtin: formTextOrNull(data, "gtin"),
  category: formText(data, "category"),
  ageGroup: formText(data, "ageGroup"),
  foodContact: formTicked(data, "foodContact"),
  mouthable: formTicked(data, "mouthable"),
  description: formText(data, "description"),
});

export const readingIdsOf = (data: FormData): string[] => formList(data, "readingId");
