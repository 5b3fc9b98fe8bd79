import {
  type AreaDrawing,
  areaDrawing,
  type DrawingSize,
  type GrainDrawing,
  grainDrawing,
} from "@/app/_components/scale-drawing-layout.ts";
import { massComparators } from "@/lib/amounts/comparators.ts";
import type { AmountsResult } from "@/lib/amounts/types.ts";
import { convert } from "@/lib/quantity/units.ts";
import { areaLabel, enlargedLabel, grainLabel, shortName } from "@/lib/wording/amount-figures.ts";
import type { Language } from "@/lib/wording/language.ts";

/** Coins most readers have at hand, in the order they are drawn. */
const coinIds = ["us-cent", "euro-cent", "us-quarter"];
export const drawnCoins = coinIds.flatMap((id) => {
  const found = massComparators.find((one) => one.id === id);
  return found?.coin ? [{ ...found, coin: found.coin }] : [];
});

/** The ball of a result beside coins; null where there is no ball to draw. */
export function grainOf(result: AmountsResult, size: DrawingSize, language: Language = "en"): GrainDrawing | null {
  const { amount, grain, element } = result;
  if (amount === null || grain === null) return null;
  return grainDrawing(
    {
      grain: { label: grainLabel(amount, grain, element, language), diameterMm: grain.diameterMm },
      coins: drawnCoins.map((one) => ({ id: one.id, label: shortName(one, language), diameterMm: one.coin.diameter })),
      enlarged: (times) => enlargedLabel(times, language),
    },
    size,
  );
}

/** The area of a result beside the things nearest to it; null where no loading was picked. */
export function areaOf(result: AmountsResult, size: DrawingSize, language: Language = "en"): AreaDrawing | null {
  const { spread, nearestArea } = result;
  if (spread === null) return null;
  const { area } = spread;
  const m2 = (ft2: number): number => convert(ft2, "ft²", "m²");
  const [low, high] = area.interval;
  return areaDrawing(
    {
      area: {
        label: areaLabel(spread, language),
        m2: m2(area.atMost ? high : area.value),
        interval: area.atMost || low === high ? null : [m2(low), m2(high)],
      },
      others: nearestArea.map(({ comparator }) => ({
        id: comparator.id,
        label: shortName(comparator, language),
        sides: comparator.sides,
      })),
    },
    size,
  );
}
