import { asWritten } from "@/app/_components/as-written.tsx";
import { Entry } from "@/app/_components/entry.tsx";
import { PageLink } from "@/app/_components/page-link.tsx";
import { type AmountsState, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import type { CoatConversion } from "@/lib/amounts/coat-of-part.ts";
import { stateOfPart } from "@/lib/amounts/state-of-part.ts";
import type { AmountsResult } from "@/lib/amounts/types.ts";
import { referenceLoadings } from "@/lib/limits/reference-loadings.ts";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { Outcome } from "@/lib/quantity/problem.ts";
import { amountFiguresIn, coatConversionSentence, loadingSentence } from "@/lib/wording/amount-figures.ts";
import {
  amountCautions,
  amountsIn,
  estimateText,
  massSentence,
  nearestSentence,
  referenceText,
} from "@/lib/wording/amounts.ts";
import { stateIn } from "@/lib/wording/amounts-state.ts";
import { elementName } from "@/lib/wording/elements.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { problemSentenceIn } from "@/lib/wording/problems.ts";
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

type Given = { placed: readonly PlacedResult[]; several: boolean; language: Language };

/** How much that is: amounts where the weight or the area of a part is known, and what a coat's result is in the other way to say it. */
export function AmountPanel({ placed, several, language = "en" }: Omit<Given, "language"> & { language?: Language }) {
  const { panel: amountPanel } = amountFiguresIn[language];
  const [first, ...others] = amountsOfParts(placed).filter(({ result }) => result.mass !== null);
  const coats = coatsOfParts(placed);
  if (first === undefined && coats.length === 0) return null;
  return (
    <Entry
      title={amountPanel.title}
      id="amount"
      aside={first ? asWritten(partTitle(first.placed, several), language) : undefined}
    >
      {first ? <Amounts first={first} others={others} several={several} language={language} /> : null}
      {coats.length > 0 ? <Coats coats={coats} several={several} language={language} /> : null}
      <ul className="small">
        {amountCautions(first?.result.element ?? coats[0]?.placed.result.element ?? "", language)
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

function Coats({ coats, several, language }: { coats: readonly CoatOfPart[]; several: boolean; language: Language }) {
  const { panel: amountPanel } = amountFiguresIn[language];
  return (
    <>
      <h3>{amountPanel.coats}</h3>
      <ul>
        {coats.map(({ placed: one, coat }) => (
          <li key={`${one.specimen.id} ${one.part.id} ${one.result.element} ${one.result.quantity}`}>
            {asWritten(partTitle(one, several), language)}, {elementName(one.result.element, language)}:{" "}
            {coat.ok
              ? coatConversionSentence(coat.value, one.result.element, language)
              : coat.problems.map((problem) => problemSentenceIn(problem, language)).join(" ")}
          </li>
        ))}
      </ul>
      <p className="soft small">{amountPanel.coatNote}</p>
    </>
  );
}

/** The first amount drawn to scale, the others each leading to the calculator. */
function Amounts({
  first,
  others,
  several,
  language,
}: {
  first: PartAmount;
  others: PartAmount[];
  several: boolean;
  language: Language;
}) {
  const { panel: amountPanel, figures } = amountFiguresIn[language];
  const paths = pathsIn[language];
  if (!first.result.mass) return null;
  const { mass, amount, spread, nearestMass, element } = first.result;
  const [nearest] = nearestMass;
  const loading = firstLoading();
  const sure = amount === null || amount.interval[0] === amount.interval[1] || amount.atMost;
  return (
    <>
      <p className="answer">{massSentence(mass, element, language)}</p>
      <p>{figures.beside}</p>
      {nearest && amount ? <p>{nearestSentence(nearest, { atMost: amount.atMost }, language)}</p> : null}
      <GrainFigure result={first.result} folded language={language} />
      <AreaFigure result={first.result} folded language={language} />
      {spread && loading ? (
        <p className="soft small">{loadingSentence(referenceText(loading, language), language)}</p>
      ) : null}
      <p className="soft small">
        {mass.by === "coat" ? amountPanel.leadCoat : amountPanel.lead} {sure ? null : amountsIn[language].brackets}
      </p>
      <p>
        <PageLink href={paths.amounts(serialiseAmounts(stateIn(first.state, language)))} language={language}>
          {amountPanel.more}
        </PageLink>
      </p>
      {others.length > 0 ? (
        <>
          <h3>{amountPanel.others}</h3>
          <ul>
            {others.map(({ placed: one, state, result }) => (
              <li key={`${one.specimen.id} ${one.part.id} ${one.result.element} ${one.result.quantity}`}>
                {asWritten(partTitle(one, several), language)}:{" "}
                <PageLink href={paths.amounts(serialiseAmounts(stateIn(state, language)))} language={language}>
                  {result.mass
                    ? figures.of(estimateText(result.mass.mass, language), elementName(one.result.element, language))
                    : null}
                </PageLink>
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </>
  );
}
