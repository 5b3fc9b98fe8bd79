import type { LimitRow } from "../types.ts";
import { canadaAndOthers } from "./canada-and-others.ts";
import { europeanUnion } from "./european-union.ts";
import { usFoodAndWater } from "./us-food-and-water.ts";
import { usGoods } from "./us-goods.ts";
import { usHousing } from "./us-housing.ts";
import { usStates } from "./us-states.ts";

/** Every limit the registry knows, in the order of the data files. Dates and numbers were compiled on 24 November 2026. */
export const allLimits: readonly LimitRow[] = [
  ...usHousing,
  ...usGoods,
  ...usFoodAndWater,
  ...usStates,
  ...europeanUnion,
  ...canadaAndOthers,
];
