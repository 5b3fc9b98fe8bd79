import { Entry } from "@/app/_components/entry.tsx";
import { type AmountsState, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import type { CoatConversion } from "@/lib/amounts/coat-of-part.ts";
import { stateOfPart } from "@/lib/amounts/state-of-part.ts";
import type { AmountsResult } from "@/lib/amounts/types.ts";
import { referenceLoadings } from "@/lib/limits/reference-loadings.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { Outcome } from "@/lib/quantity/problem.ts";
import { amountPanel, cautionBeside, coatConversionSentence, loadingSentence } from "@/lib/wording/amount-figures.ts";
import {
  amountCautions,
  bracketsSentence,
  estimateText,
  massSentence,
  nearestSentence,
  referenceText,
} from "@/lib/wording/amounts.ts";
import { elementName } from "@/lib/wording/elements.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { AreaFigure, GrainFigure } from "../_amount/amount-figures.tsx";
import { loadAmounts, loadCoat } from "../_amount/load-amounts.ts";
import { partTitle } from "./part-title.ts";

type PartAmount = { placed: PlacedResult; state: AmountsState; result: AmountsResult };
const mostShown = 6;

/** The newest published loading of floors, which the drawing begins with; the reader may pick another. */
const firstLoading = () =>
  referenceLoadings()
    .filter((one) => one.surface === "floor")
    .at(-1);

/** What was found in parts whose weight (or area, for a coat) is known, lead first. Nothing that has no limit to be held against. */
export function amountsOfParts(placed: readonly PlacedResult[]): PartAmount[] {
  const loading = firstLoading();
  const found = placed.filter(
    ({ result }) =>
      ["quantified", "range-only", "not-quantified"].includes(result.state) &&
      (result.element === "Pb" || result.decisions.some((d) => d.applies !== "other-quantity")),
  );
  const leadFirst = [
    ...found.filter((one) => one.result.element === "Pb"),
    ...found.filter((one) => one.result.element !== "Pb"),
  ];
  return leadFirst
    .flatMap((one) => {
      const state = stateOfPart(one.part, one.result, loading === undefined ? {} : { loading: loading.value });
      return state === null ? [] : [{ placed: one, state }];
    })
    .slice(0, mostShown)
    .map(({ placed: one, state }) => ({ placed: one, state, result: loadAmounts(state) }));
}

type Given = { placed: readonly PlacedResult[]; several: boolean };

/** How much that is: amounts where the weight or the area of a part is known, and what a coat's result is in the other way to say it. */
export function AmountPanel({ placed, several }: Given) {
  const [first, ...others] = amountsOfParts(placed).filter(({ result }) => result.mass !== null);
  const coats = coatsOfParts(placed);
  if (first === undefined && coats.length === 0) return null;
  return (
    <Entry title={amountPanel.title} id="amount" aside={first ? partTitle(first.placed, several) : undefined}>
      {first ? <Amounts first={first} others={others} several={several} /> : null}
      {coats.length > 0 ? <Coats coats={coats} several={several} /> : null}
      <ul className="small">
        {amountCautions(first?.result.element ?? coats[0]?.placed.result.element ?? "")
          .slice(first ? 1 : 0)
          .map((caution) => (
            <li key={caution.code}>{caution.text}</li>
          ))}
      </ul>
    </Entry>
  );
}

type CoatOfPart = { placed: PlacedResult; coat: Outcome<CoatConversion> };

/** What was found in coats, by weight and on an area; those that lack a thickness or a density say so. */
const coatsOfParts = (placed: readonly PlacedResult[]): CoatOfPart[] =>
  placed
    .flatMap((one) => {
      if (!["quantified", "range-only", "not-quantified"].includes(one.result.state)) return [];
      const coat = loadCoat(one.part, one.result);
      return coat === null ? [] : [{ placed: one, coat }];
    })
    .slice(0, mostShown);

function Coats({ coats, several }: { coats: readonly CoatOfPart[]; several: boolean }) {
  return (
    <>
      <h3>{amountPanel.coats}</h3>
      <ul>
        {coats.map(({ placed: one, coat }) => (
          <li key={`${one.specimen.id} ${one.part.id} ${one.result.element} ${one.result.quantity}`}>
            {partTitle(one, several)}, {elementName(one.result.element)}:{" "}
            {coat.ok
              ? coatConversionSentence(coat.value, one.result.element)
              : coat.problems.map(problemSentence).join(" ")}
          </li>
        ))}
      </ul>
      <p className="soft small">{amountPanel.coatNote}</p>
    </>
  );
}

/** The first amount drawn to scale, the others each leading to the calculator. */
function Amounts({ first, others, several }: { first: PartAmount; others: PartAmount[]; several: boolean }) {
  if (!first.result.mass) return null;
  const { mass, amount, spread, nearestMass, element } = first.result;
  const [nearest] = nearestMass;
  const loading = firstLoading();
  const sure = amount === null || amount.interval[0] === amount.interval[1] || amount.atMost;
  return (
    <>
      <p className="answer">{massSentence(mass, element)}</p>
      <p>{cautionBeside}</p>
      {nearest && amount ? <p>{nearestSentence(nearest, { atMost: amount.atMost })}</p> : null}
      <GrainFigure result={first.result} folded />
      <AreaFigure result={first.result} folded />
      {spread && loading ? <p className="soft small">{loadingSentence(referenceText(loading))}</p> : null}
      <p className="soft small">
        {mass.by === "coat" ? amountPanel.leadCoat : amountPanel.lead} {sure ? null : bracketsSentence}
      </p>
      <p>
        <a href={paths.amounts(serialiseAmounts(first.state))}>{amountPanel.more}</a>
      </p>
      {others.length > 0 ? (
        <>
          <h3>{amountPanel.others}</h3>
          <ul>
            {others.map(({ placed: one, state, result }) => (
              <li key={`${one.specimen.id} ${one.part.id} ${one.result.element} ${one.result.quantity}`}>
                {partTitle(one, several)}:{" "}
                <a href={paths.amounts(serialiseAmounts(state))}>
                  {result.mass ? estimateText(result.mass.mass) : null} of {elementName(one.result.element)}
                </a>
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </>
  );
}
