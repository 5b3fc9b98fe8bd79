import * as z from "zod";
import { paths } from "../platform/paths.ts";
import { resultsByWeight, verdictOf } from "../publication/leading-decision.ts";
import { snapshotDecision, snapshotResult, snapshotSchema } from "../publication/snapshot.ts";
import { itemAnswer } from "../wording/answers.ts";
import { resultText } from "../wording/formats.ts";
import { verdictText } from "../wording/verdicts.ts";
import { absoluteUrl, type PublishedRevision } from "./published-revision.ts";

const verdict = snapshotDecision.shape.verdict;

/** One part's element in a list entry: the stated digits, the line as pages print it, and the verdict it leads with. */
export const elementSummarySchema = z.object({
  specimen: z.string(),
  part: z.string(),
  element: z.string(),
  quantity: z.string(),
  unit: z.string(),
  state: snapshotResult.shape.state,
  stated: snapshotResult.shape.stated,
  text: z.string().describe("as pages print it: 412 ± 36 mg/kg"),
  verdict: verdict.nullable(),
  verdictText: z.string().nullable().describe("the verdict with its probability and its limit's name"),
  limit: z
    .object({
      id: z.string(),
      value: z.number().nullable(),
      unit: z.string(),
      applies: snapshotDecision.shape.applies,
      probabilityAbove: z.number().nullable(),
    })
    .nullable(),
});

/** An entry of /api/v1/items: enough to list and to filter by; the snapshot at `links.self` says the rest. */
export const itemSummarySchema = z.object({
  slug: z.string(),
  name: z.string(),
  aliases: z.array(z.string()),
  category: z.string(),
  ageGroup: z.string(),
  gtin: z.string().nullable(),
  revision: z.number().int().positive(),
  kind: snapshotSchema.shape.kind,
  publishedAt: z.string(),
  testedOn: z.string(),
  reviewed: z.boolean(),
  answer: z.string().describe("the page's first line"),
  verdict: verdict.nullable().describe("of the result that weighs most"),
  elements: z.array(elementSummarySchema),
  snapshotSha256: z.string(),
  links: z.object({ page: z.string(), revision: z.string(), self: z.string(), readings: z.string() }),
});
export type ItemSummary = z.infer<typeof itemSummarySchema>;

/** The list entry of a published item, made from its newest snapshot and log entry. */
export function itemSummary({ snapshot, entry }: PublishedRevision, baseUrl: string): ItemSummary {
  const { slug, revision, item } = snapshot;
  const answer = itemAnswer(snapshot);
  return {
    slug,
    name: item.name,
    aliases: item.aliases,
    category: item.category,
    ageGroup: item.ageGroup,
    gtin: item.gtin,
    revision,
    kind: snapshot.kind,
    publishedAt: snapshot.publishedAt,
    testedOn: snapshot.testedOn,
    reviewed: snapshot.review.reviewed,
    answer: answer.headline,
    verdict: answer.verdict,
    elements: resultsByWeight(snapshot).map(({ specimen, part, result, decision }) => ({
      specimen: specimen.label,
      part: part.name,
      element: result.element,
      quantity: result.quantity,
      unit: result.unit,
      state: result.state,
      stated: result.stated,
      text: resultText(result),
      verdict: verdictOf({ result, decision }),
      verdictText: decision === null ? null : verdictText(decision, result),
      limit: decision && {
        id: decision.limitId,
        value: decision.value,
        unit: decision.unit,
        applies: decision.applies,
        probabilityAbove: decision.probabilityAbove,
      },
    })),
    snapshotSha256: entry.snapshotSha256,
    links: {
      page: absoluteUrl(baseUrl, paths.item(slug)),
      revision: absoluteUrl(baseUrl, paths.revision(slug, revision)),
      self: absoluteUrl(baseUrl, paths.api.item(slug)),
      readings: absoluteUrl(baseUrl, paths.api.readings(slug)),
    },
  };
}
