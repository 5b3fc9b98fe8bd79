import { chanceOf } from "./chance.ts";
import { mutatedPicture } from "./mutate-picture.ts";
import { mutatedTable } from "./mutate-table.ts";
import { samplePictures, sampleTables } from "./samples.ts";

export type CaseKind = "files" | "images";

let pictures: ReturnType<typeof samplePictures> | undefined;

/** The bytes of one case, by its number and the run's seed. */
export async function caseBytes({ kind, seed }: { kind: CaseKind; seed: number }, n: number) {
  const chance = chanceOf(seed * 1_000_003 + n * 2 + (kind === "files" ? 0 : 1));
  if (kind === "files") return mutatedTable(sampleTables(), chance);
  pictures ??= samplePictures();
  return mutatedPicture(await pictures, chance);
}
