import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import type { Unit } from "../quantity/units.ts";
import type { AmountsState } from "./amounts-form.ts";
import { geometries } from "./geometry.ts";
import { prepareInput, type Rules } from "./prepare-input.ts";
import { readQuantity } from "./read-quantity.ts";
import type { DensitySource, MassBasis, UncertainInput } from "./types.ts";

export type Field = keyof AmountsState;

/** Reads one field of the state as a quantity that can be. */
export type Read = (field: Field, unit?: Unit, into?: Unit) => Outcome<UncertainInput | null>;

/** What a field must keep to wherever it is used, so that every flaw is named at once and not only the first that stops the sum. */
const rulesOf: Partial<Record<Field, Omit<Rules, "field">>> = {
  content: { most: { value: 1e6, code: "content-over-100" } },
  coatLoading: { zeroCode: "loading-zero" },
  loading: { zeroCode: "loading-zero" },
  area: { zeroCode: "area-zero" },
  over: { zeroCode: "area-zero" },
};

export const readerOf =
  (state: AmountsState): Read =>
  (field, unit, into) => {
    const given = readQuantity(state[field], {
      field,
      ...(unit === undefined ? {} : { unit }),
      ...(into === undefined ? {} : { into }),
    });
    if (!given.ok || given.value === null) return given;
    const fits = prepareInput(given.value, { field, boundAllowed: true, ...rulesOf[field] });
    return fits.ok ? given : fits;
  };

/** Whether any of the fields was touched. */
export const filled = (state: AmountsState, ...fields: Field[]): boolean =>
  fields.some((field) => state[field].trim() !== "");

/** The object can weigh no more than the upper end of what was written, g. */
export function itemWeightOf(read: Read): Outcome<number | null> {
  const given = read("itemWeight");
  if (!given.ok || given.value === null) return given as Outcome<null>;
  const prepared = prepareInput(given.value, { field: "itemWeight", boundAllowed: true });
  if (!prepared.ok) return prepared;
  const most = "max" in given.value ? given.value.max : prepared.value.best + 2 * prepared.value.u;
  return done(most);
}

/** What the mass is to be worked out from, by the source chosen; null where that source is untouched. */
export function basisOf(state: AmountsState, read: Read): Outcome<MassBasis> | null {
  const content = () => read("content", state.contentUnit, "mg/kg");
  switch (state.from) {
    case "shape": {
      const sizes = geometries[state.shape].dimensions;
      const names = Object.keys(sizes) as Field[];
      if (!filled(state, ...names, "content", "density")) return null;
      const dimensions = all(
        Object.fromEntries(
          names.map((name) => [
            name,
            sizes[name] === "area" ? read(name, state.areaUnit, "cm²") : read(name, state.lengthUnit, "mm"),
          ]),
        ),
      );
      return together(dimensions, all({ content: content() }), densityIn(state, read), (d, c, density) => ({
        by: "geometry",
        shape: state.shape,
        dimensions: d,
        density,
        content: c.content,
      }));
    }
    case "weight": {
      if (!filled(state, "weight", "content")) return null;
      const given = all({ weight: read("weight", state.weightUnit, "g"), content: content() });
      return given.ok ? done({ by: "weighed", ...given.value }) : given;
    }
    case "coat":
      return coatBasis(state, read, content());
    default:
      return null;
  }
}

/** A coat by its areal loading, or by thickness, density and content where no loading is written. */
function coatBasis(
  state: AmountsState,
  read: Read,
  content: Outcome<UncertainInput | null>,
): Outcome<MassBasis> | null {
  if (!filled(state, "area", "coatLoading", "coatThickness", "content")) return null;
  const area = read("area", state.areaUnit, "cm²");
  if (filled(state, "coatLoading") || !filled(state, "content")) {
    const given = all({ area, coatLoading: read("coatLoading", state.coatLoadingUnit, "mg/cm²") });
    return given.ok ? done({ by: "coat", area: given.value.area, loading: given.value.coatLoading }) : given;
  }
  const thickness = read("coatThickness");
  const missing = thickness.ok && thickness.value === null;
  const given = all({ area, content });
  const layer: Outcome<{ thickness: UncertainInput }> = missing
    ? refused({ code: "thickness-needed", where: { field: "coatThickness" } })
    : all({ thickness }, () => "coatThickness");
  return together(given, layer, densityIn(state, read), (g, l, density) => ({
    by: "coat-content",
    ...g,
    ...l,
    density,
  }));
}

function together<A, B, C>(
  a: Outcome<A>,
  b: Outcome<B>,
  c: Outcome<C>,
  make: (a: A, b: B, c: C) => MassBasis,
): Outcome<MassBasis> {
  if (a.ok && b.ok && c.ok) return done(make(a.value, b.value, c.value));
  return refused(...[a, b, c].flatMap((one) => (one.ok ? [] : one.problems)));
}

/** The density by the way chosen. */
export function densityIn(state: AmountsState, read: Read): Outcome<DensitySource> {
  if (state.densityFrom === "alloy")
    return state.rest.trim() === ""
      ? refused({ code: "amount-field-needed", where: { field: "rest" } })
      : done({ from: "alloy", element: state.element, rest: state.rest.trim() });
  if (state.densityFrom === "material")
    return state.material === ""
      ? refused({ code: "density-needed", where: { field: "material" } })
      : done({ from: "material", id: state.material });
  const density = read("density");
  if (!density.ok) return density;
  return density.value === null
    ? refused({ code: "density-needed", where: { field: "density" } })
    : done({ from: "entered", density: density.value });
}

/** Every field there, or a problem for each that is not. */
function all<Name extends string>(
  fields: Record<Name, Outcome<UncertainInput | null>>,
  fieldOf: (name: Name) => string = (name) => name,
): Outcome<Record<Name, UncertainInput>> {
  const found = {} as Record<Name, UncertainInput>;
  const problems: Problem[] = [];
  for (const [name, given] of Object.entries(fields) as [Name, Outcome<UncertainInput | null>][]) {
    if (!given.ok) problems.push(...given.problems);
    else if (given.value === null) problems.push({ code: "amount-field-needed", where: { field: fieldOf(name) } });
    else found[name] = given.value;
  }
  return problems.length > 0 ? refused(...problems) : done(found);
}
