import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import type { AmountsState } from "./amounts-form.ts";
import { type ArithmeticComparison, leachedInto, overDailyIntake } from "./arithmetic-comparisons.ts";
import { type Coat, contentOfCoat, loadingOfCoat } from "./coating.ts";
import { nearestAreas, nearestMasses } from "./comparators.ts";
import { halvingLadder } from "./halving.ts";
import { elementMass } from "./mass.ts";
import { metalDensities } from "./materials-table.ts";
import { prepareInput, type Rules } from "./prepare-input.ts";
import { asInput, propagateModel, scaleEstimate } from "./propagate-model.ts";
import { referencesOn } from "./references-on.ts";
import { areaAtLoading, loadingOnArea, massOnArea } from "./spread.ts";
import { basisOf, densityIn, type Field, filled, itemWeightOf, type Read, readerOf } from "./state-basis.ts";
import { grainDiameter } from "./to-scale.ts";
import type { AmountsResult, Estimate, IntakeBenchmark, ReferenceLoading, UncertainInput } from "./types.ts";

type Options = { seed: number; draws?: number };

/** The lowest floor loading published so far; the ladder stops there where nothing else is asked for. */
const lowestLoading = 5;

/**
 * Works out all that the calculator's state allows. Never throws on what a person typed: what is missing or cannot be is a Problem
 * whose `where.field` is the state's key and whose `found` is what was typed, and the part of the result that needed it is null. A form
 * nobody has touched has no problems.
 *
 * `references`, `benchmarks`: the published loadings and daily benchmarks (`referenceLoadings()`, `intakeBenchmarks(element)` of the
 * limits room). The same state and seed give the same result.
 *
 * @example computeAmounts(parseAmounts({ from: "amount", amount: "34.02", loading: "5" }), 1).spread?.area.value // 6804 ft²
 */
export function computeAmounts(
  state: AmountsState,
  seed: number,
  options: {
    references?: readonly ReferenceLoading[];
    benchmarks?: readonly IntakeBenchmark[];
    draws?: number;
  } = {},
): AmountsResult {
  const run: Options = { seed, ...(options.draws === undefined ? {} : { draws: options.draws }) };
  const problems: Problem[] = [];
  const take = <T>(outcome: Outcome<T> | null): T | null => {
    if (outcome === null) return null;
    if (outcome.ok) return outcome.value;
    problems.push(...outcome.problems.map((problem) => asTyped(problem, state)));
    return null;
  };
  const read = readerOf(state);

  const mass = take(massOf(state, read, run));
  const entered = state.from === "amount" ? take(enteredAmount(state, read, run)) : null;
  const amount = mass?.mass ?? entered;
  const loading = take(wanted("µg/ft²", read("loading", state.loadingUnit, "µg/ft²"), loadingRules, run));
  const over = take(wanted("ft²", read("over", state.overUnit, "ft²"), overRules, run));
  const chosen = take(referencesOn(options.references ?? [], state.day)) ?? [];

  const area = amount && loading ? take(spreadOver(amount, loading, run)) : null;
  const onArea = amount && over ? take(loadingOver(amount, over, run)) : null;
  const needed = over && loading ? take(massOnArea({ area: asInput(over), loading: asInput(loading) }, run)) : null;
  const shown = amount === null ? null : shownValue(amount);
  const areaShown = area === null ? null : shownValue(area);
  const benchmarks = (options.benchmarks ?? []).filter((one) => holdsOn(one, state.day.trim()));
  const leached = take(leachOf(state, read));
  return {
    element: state.element,
    mass,
    amount,
    spread: area && loading ? { loading, area } : null,
    references:
      amount === null
        ? []
        : chosen.map((reference) => ({ reference, area: scaleEstimate(amount, 1000 / reference.value, "ft²") })),
    onArea:
      amount && onArea && over ? { area: over, loading: onArea, ladder: ladderOf(amount, onArea, loading) } : null,
    needed: needed && over && loading ? { area: over, loading, mass: needed } : null,
    coating: take(coatingOf(state, read, run)),
    daily: shown === null ? [] : besides(shown, benchmarks),
    leach: leached && { drawn: leached, daily: besides(leached.value / 1000, benchmarks) },
    grain: shown === null ? null : grainOf(state.element, shown),
    nearestMass: shown === null ? [] : nearestMasses(shown),
    nearestArea: areaShown === null ? [] : nearestAreas(areaShown),
    problems: eachOnce(problems),
  };
}

const loadingRules: Rules = { field: "loading", zeroCode: "loading-zero", divisor: true };
const overRules: Rules = { field: "over", zeroCode: "area-zero", divisor: true };

/** What to draw and compare: the value, or the bound of an "at most". */
const shownValue = (estimate: Estimate): number => (estimate.atMost ? estimate.interval[1] : estimate.value);

/** A quantity with nothing done to it yet, or null where none was written. */
function wanted<U extends string>(
  unit: U,
  given: Outcome<UncertainInput | null>,
  rules: Rules,
  run: Options,
): Outcome<Estimate<U>> | null {
  if (!given.ok) return given;
  if (given.value === null) return null;
  const prepared = prepareInput(given.value, rules);
  if (!prepared.ok) return prepared;
  return done(propagateModel(unit, { it: prepared.value }, (v) => v.it, run).estimate);
}

/** The mass by the source chosen; null where that source is untouched. */
function massOf(state: AmountsState, read: Read, run: Options): ReturnType<typeof elementMass> | null {
  const basis = basisOf(state, read);
  if (basis === null) return null;
  const weight = itemWeightOf(read);
  if (!basis.ok || !weight.ok)
    return refused(...(basis.ok ? [] : basis.problems), ...(weight.ok ? [] : weight.problems));
  return elementMass(basis.value, {
    ...run,
    sealed: state.sealed === "yes",
    ...(weight.value === null ? {} : { itemWeight: weight.value }),
  });
}

function enteredAmount(state: AmountsState, read: Read, run: Options): Outcome<Estimate<"mg">> | null {
  const amount = wanted("mg", read("amount", state.amountUnit, "mg"), { field: "amount", boundAllowed: true }, run);
  const weight = itemWeightOf(read);
  if (amount === null || !amount.ok || (weight.ok && weight.value === null)) return amount;
  if (!weight.ok) return weight;
  return weight.value !== null && amount.value.value > weight.value * 1000
    ? refused({ code: "heavier-than-item", where: { field: "amount" }, allowed: `at most ${weight.value} g` })
    : amount;
}

/** In force on the day asked about; where none is, whatever is in force now. */
const holdsOn = ({ from, until }: IntakeBenchmark, day: string): boolean =>
  day === "" ? until === null : from <= day && (until === null || day <= until);

const besides = (massMg: number, benchmarks: readonly IntakeBenchmark[]): AmountsResult["daily"] =>
  benchmarks.flatMap((benchmark) => {
    const days = overDailyIntake(massMg, benchmark.value);
    return days.ok ? [{ benchmark, days: days.value }] : [];
  });

/** What a leach test drew out in all; null where neither of its two figures was written. */
function leachOf(state: AmountsState, read: Read): Outcome<ArithmeticComparison> | null {
  if (!filled(state, "leached", "volume")) return null;
  const given = { leached: read("leached"), volume: read("volume") };
  const problems = Object.entries(given).flatMap(([field, one]) =>
    !one.ok ? one.problems : one.value === null ? [{ code: "amount-field-needed", where: { field } }] : [],
  );
  if (problems.length > 0 || !given.leached.ok || !given.volume.ok) return refused(...problems);
  const best = (field: Field, input: UncertainInput | null): number => {
    const prepared = input && prepareInput(input, { field, boundAllowed: true });
    return prepared?.ok ? prepared.value.best : Number.NaN;
  };
  return leachedInto(best("leached", given.leached.value), best("volume", given.volume.value));
}

/** Areal loading and content of a coat, one from the other. Null where no conversion is asked for. */
function coatingOf(
  state: AmountsState,
  read: Read,
  run: Options,
): Outcome<NonNullable<AmountsResult["coating"]>> | null {
  if (state.from !== "coat") return null;
  const densityGiven = filled(state, state.densityFrom === "entered" ? "density" : "material");
  // A loading alone, or a content alone, asks for nothing; the mass has said what it lacks.
  if (!filled(state, "coatThickness") && !densityGiven) return null;
  const byLoading = filled(state, "coatLoading");
  const given = byLoading
    ? read("coatLoading", state.coatLoadingUnit, "mg/cm²")
    : read("content", state.contentUnit, "mg/kg");
  const thickness = read("coatThickness");
  const density = densityGiven && state.densityFrom !== "alloy" ? densityIn(state, read) : null;
  if (!given.ok || !thickness.ok || (density !== null && !density.ok))
    return refused(...[given, thickness, density].flatMap((one) => (one === null || one.ok ? [] : one.problems)));
  if (given.value === null) return null;
  const coat: Coat = { thickness: thickness.value, density: (density?.value ?? null) as Coat["density"] };
  const worked = byLoading ? contentOfCoat(given.value, coat, run) : loadingOfCoat(given.value, coat, run);
  if (!worked.ok) return worked;
  const loading = byLoading ? identity("mg/cm²", given.value, run) : (worked.value as Estimate<"mg/cm²">);
  const content = byLoading ? (worked.value as Estimate<"mg/kg">) : identity("mg/kg", given.value, run);
  return done({ loading, content });
}

/** An input already accepted, as an estimate of itself. */
function identity<U extends string>(unit: U, input: UncertainInput, run: Options): Estimate<U> {
  const prepared = prepareInput(input, { field: unit, boundAllowed: true });
  if (!prepared.ok) throw new Error("an accepted input was refused");
  return propagateModel(unit, { it: prepared.value }, (v) => v.it, run).estimate;
}

const isExact = (estimate: Estimate): boolean => estimate.interval[0] === estimate.interval[1];

const spreadOver = (amount: Estimate, loading: Estimate, run: Options): Outcome<Estimate<"ft²">> =>
  isExact(loading)
    ? done(scaleEstimate(amount, 1000 / loading.value, "ft²"))
    : areaAtLoading({ mass: asInput(amount), loading: asInput(loading) }, run);

const loadingOver = (amount: Estimate, over: Estimate, run: Options): Outcome<Estimate<"µg/ft²">> =>
  isExact(over)
    ? done(scaleEstimate(amount, 1000 / over.value, "µg/ft²"))
    : loadingOnArea({ mass: asInput(amount), area: asInput(over) }, run);

const ladderOf = (amount: Estimate, onArea: Estimate, asked: Estimate | null) =>
  halvingLadder({ mass: shownValue(amount), loading: shownValue(onArea) }, asked?.value ?? lowestLoading);

function grainOf(element: string, massMg: number): AmountsResult["grain"] {
  const density = metalDensities[element];
  return density === undefined ? null : { massMg, density, diameterMm: grainDiameter(massMg, density) };
}

/** The problem with what the person typed in place of the converted number. */
function asTyped(problem: Problem, state: AmountsState): Problem {
  const field = problem.where?.field;
  const typed = field !== undefined && Object.hasOwn(state, field) ? state[field as Field] : "";
  return typed === "" || problem.code === "heavier-than-item" ? problem : { ...problem, found: typed };
}

const eachOnce = (problems: Problem[]): Problem[] =>
  problems.filter(
    (one, at) => problems.findIndex((p) => p.code === one.code && p.where?.field === one.where?.field) === at,
  );
