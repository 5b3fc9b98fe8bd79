import type { Problem } from "../quantity/problem.ts";
import { amountFieldName } from "./amount-labels.ts";
import { plainDate } from "./formats.ts";
import { allowedText, foundText, type ProblemWords, quoted } from "./problem-sentence.ts";

/** "the diameter", or "this figure" where the problem names no field. */
const name = ({ where }: Problem): string => (where?.field ? amountFieldName(where.field) : "this figure");
const start = (problem: Problem): string => {
  const words = name(problem);
  return words.charAt(0).toUpperCase() + words.slice(1);
};

/** What can be wrong with the figures of the calculator: what, where, what was found, what to do. */
export const amountProblems: ProblemWords = {
  "quantity-unreadable": (p) =>
    `${start(p)} cannot be read as a number.${foundText(p)} Write it as 12, or 12 ± 0.5, or 10 to 14, or < 5.`,
  "quantity-ambiguous": (p) =>
    `${start(p)} can be read in two ways.${foundText(p)} Write a point for decimals, and no marks between thousands.`,
  "quantity-out-of-range": (p) =>
    `${start(p)} is far larger or far smaller than it can be.${foundText(p)} Check the number and its unit.`,
  "amount-field-needed": (p) => `Please give ${name(p)}.`,
  "missing-dimension": (p) => `This shape cannot be worked out without ${name(p)}. Please give it.`,
  "not-above-zero": (p) => `${start(p)} must be more than zero.${foundText(p)}`,
  "loading-zero": (p) =>
    `${start(p)} must be more than zero: no amount, however small, comes to nothing when it is spread.${foundText(p)}`,
  "area-zero": (p) => `${start(p)} must be more than zero: nothing can be spread over no area.${foundText(p)}`,
  "content-over-100": (p) =>
    p.where?.field === "coatThickness"
      ? `So much cannot lie in so thin a coat: the content would be over 100 %.${foundText(p)} Check the loading and the thickness.`
      : `${start(p)} cannot be over 100 %.${foundText(p)} Check the number and its unit: 1 % is 10,000 ppm.`,
  "range-upside-down": (p) => `The range for ${name(p)} is upside down. Write the smaller number first.${foundText(p)}`,
  "range-from-zero": (p) =>
    `The range for ${name(p)} begins at zero, which a lognormal range cannot.${foundText(p)} Give a lower end above zero, or leave out “lognormal”.`,
  "uncertainty-negative": (p) => `The number after ± for ${name(p)} must be zero or more.${foundText(p)}`,
  "value-outside-interval": (p) =>
    `The value for ${name(p)} must lie between the two numbers in brackets.${foundText(p)}${allowedText(p)}`,
  "below-not-usable": (p) =>
    `${start(p)} must be a number or a range here: “below” would leave the answer without an end.${foundText(p)}`,
  "unknown-material": (p) => `The list has no material ${quoted(p.found)}. Choose one from the list.`,
  "density-needed": () =>
    "A density is needed here. Choose a material, or enter a density. A size alone, or a thickness alone, does not give a weight.",
  "thickness-needed": () =>
    "The thickness of the coat is needed here. Without thickness and density, an amount on an area cannot be turned into a content, nor the other way round.",
  "unknown-metal": (p) =>
    `We have no density for ${quoted(p.found)} as a metal of an alloy.${p.allowed ? ` We have ${p.allowed}.` : ""} Choose a material or enter a density.`,
  "same-metal-twice": (p) => `An alloy is made of two metals. ${quoted(p.found)} stands there twice.`,
  "ring-without-rim": () => "The hole is as wide as the ring or wider. Check the inner and the outer diameter.",
  "wall-too-thick": () => "The wall is so thick that it fills the tube. Check the wall and the outer diameter.",
  "heavier-than-item": (p) =>
    `This part would be heavier than the whole object.${foundText(p)}${allowedText(p)} Check the sizes, the density and the weight.`,
  "date-before-any-limit": (p) =>
    `On ${dayText(p.found)} none of these dust limits was in force yet.${p.allowed ? ` Choose ${p.allowed.replace(/\d{4}-\d{2}-\d{2}/, dayText)}.` : ""}`,
  "bad-date": (p) => `There is no such day.${foundText(p)} Write it as year, month and day, such as 2026-11-24.`,
  "no-content": () => "There is no result to work the amount out from.",
  "content-of-another-kind": (p) =>
    `An amount cannot be worked out from a result of this kind.${foundText(p)} It takes a content or an amount on an area of coating.`,
};

const dayText = (text: string | undefined): string =>
  text !== undefined && /^\d{4}-\d{2}-\d{2}$/.test(text) ? plainDate(text) : quoted(text);
