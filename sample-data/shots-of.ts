import type { FileName, SampleReadings } from "./scenario-types.ts";

/** Which shots of a file belong to a part: "abc" stands for spots a, b and c, "123" for 1, 2 and 3. */
export const shotsOf = (file: FileName, sample: string, spots: string): SampleReadings => ({
  file,
  sample,
  spots: [...spots],
});
