// Prints the element mass fractions of every listed material, for make-tables.py to check its values against ours.
import { elementFractions } from "../../lib/quantity/element-fractions.ts";
import { typicalMaterials } from "../../lib/quantity/typical-materials.ts";

const fractions = Object.entries(typicalMaterials).map(([material, { ingredients }]) => [
  material,
  elementFractions(ingredients),
]);
console.log(JSON.stringify(Object.fromEntries(fractions)));
