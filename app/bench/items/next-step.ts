import type { ItemState } from "@/lib/store/items.ts";
import type { NextStep } from "@/lib/wording/bench.ts";

/** What is known of an item at the bench, as far as the next step asks. */
export type Progress = {
  state: ItemState;
  objects: number;
  parts: number;
  partsWithoutResult: number;
  reviewed: boolean; // an approval for these very inputs
  published: boolean;
  changed: boolean; // the bench says other than the public page
};

/** The one thing to do next. Gaps come before reviews, and reviews before publishing. */
export function nextStep(progress: Progress): NextStep {
  const { state, objects, parts, partsWithoutResult, reviewed, published, changed } = progress;
  if (objects === 0) return "add-object";
  if (parts === 0) return "add-part";
  if (partsWithoutResult > 0) return "assign-readings";
  if (state === "withdrawn") return "withdrawn";
  if (state === "submitted") return "wait-for-review";
  if (reviewed && (changed || !published)) return "publish";
  if (state === "approved") return "review-again";
  if (published) return changed ? "publish-again" : "nothing-new";
  return "submit-or-publish";
}
