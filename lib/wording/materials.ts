import { readingDepth } from "../attenuation/reading-depth.ts";
import { type Material, materials } from "../quantity/item-words.ts";
import { densityRangeOf } from "../quantity/material-densities.ts";
import { roughly } from "./depth.ts";
import { withUnit } from "./formats.ts";
import { materialLabels } from "./labels.ts";

/** What a part's material means for a reading of it, in a sentence: for the tester who describes the part. */
export const materialNotes: Record<Material, string> = {
  glaze: "A fused layer: the analyser may see the body under it, and decoration in or under it is a part of its own.",
  enamel: "A fused layer on metal: the analyser may see the metal under it.",
  paint: "Thinner than the analyser sees: the number mixes coat and ground, so it is for screening only.",
  brass:
    "Seen only to a fraction of a hair's width: plating hides what lies under it. Lead gathers in droplets; shoot several spots.",
  "zinc-alloy": "Often plated or lacquered: scrape a hidden place, or read it as a layer.",
  solder:
    "Lead in per cents. A joint is often smaller than the window: shoot through the small window, and look for what lies beside it.",
  steel: "Stainless steel is seldom leaded; a lacquer, a plating or a rivet on it is another part.",
  aluminium: "Lets X‑rays through further than heavier metals: a thin sheet shows what lies behind it.",
  copper: "Often lined with tin: the lining is a part of its own, and tin may hold lead.",
  pvc: "Chlorine stops X‑rays: seen about a millimetre deep. Thin film shows what lies behind it; fold it, and give the thickness.",
  abs: "Seen centimetres deep: a thin wall reads low and shows what lies behind it. Give its thickness, and leave nothing behind it.",
  "other-plastic":
    "Seen centimetres deep: a thin wall reads low and shows what lies behind it. Give its thickness, and leave nothing behind it.",
  glass: "Outside decoration is a coat of its own; shoot a plain place as well.",
  crystal: "Lead is a part of the recipe. The number says little about what comes out; a leach test does.",
  "ceramic-body": "Shoot an unglazed foot; through a glaze the analyser sees mostly the glaze.",
  wood: "Light: the analyser sees through it. Paint on it is a part of its own.",
  textile: "Light and full of air: fold it several times, and say how thick it then was.",
  "textile-print": "A thin layer on cloth: the number mixes print and cloth, so it is for screening only.",
  other:
    "Say in the part's name what it is. How deep it is seen is not known, so a thin one cannot be told from a thick one.",
};

/** What a part's form means for the number. */
export const formNotes: Record<"bulk" | "coating", string> = {
  bulk: "The same material all through. The number holds for it where it is thicker than the analyser sees.",
  coating:
    "A layer on something else. A content read through it mixes the two and is for screening only; an amount on each cm², or a scraped-off sample, is not.",
};

export type MaterialGuideRow = {
  material: Material;
  label: string;
  /** "1.2 to 4 g/cm³"; null where nothing is known. */
  density: string | null;
  /** How deep lead is seen in it, "about 1 mm". */
  depth: string | null;
  note: string;
};

/**
 * Every listed material with its density, how deep lead is seen in it, and what that means for a reading.
 *
 * @example materialGuide().find((row) => row.material === "paint")?.density // "1.2 to 4 g/cm³"
 */
export const materialGuide = (): MaterialGuideRow[] =>
  materials.map((material) => {
    const range = densityRangeOf(material);
    const depth = readingDepth(material, "Pb");
    return {
      material,
      label: materialLabels[material],
      density: range && withUnit(`${range.min} to ${range.max}`, "g/cm³"),
      depth: depth && `about ${withUnit(roughly(depth.mm), "mm")}`,
      note: materialNotes[material],
    };
  });

export const materialGuideWords = {
  summary: "What each material means for the reading",
  caption: "Materials: density, and how deep lead is seen",
  caution:
    "Densities and depths are those of typical recipes, most of them from memory, and say about where yours lies. A depth is that from which 99 % of the signal comes.",
} as const;
