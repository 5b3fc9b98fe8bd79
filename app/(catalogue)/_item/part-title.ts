import type { PlacedResult } from "@/lib/publication/leading-decision.ts";

export const samePart = (one: PlacedResult, other: PlacedResult): boolean =>
  one.part.id === other.part.id && one.specimen.id === other.specimen.id;

/** "glaze, inside", and which specimen it is of where there are several. */
export const partTitle = ({ part, specimen }: PlacedResult, several: boolean): string =>
  several ? `${part.name} (${specimen.label})` : part.name;
