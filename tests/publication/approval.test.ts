import { describe, expect, it } from "vitest";
import { approvalDigest, approvalGate, approvalOf, type ReviewGiven } from "@/lib/publication/approval.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { sha256 } from "../support/sample-revisions.ts";
import { sampleSnapshot } from "../support/sample-snapshot.ts";

const digest = "a".repeat(64);
const given = (reviewerName: string, at: Partial<ReviewGiven> = {}): ReviewGiven => ({
  decision: "approved",
  inputsDigest: digest,
  reviewerId: reviewerName,
  reviewerName,
  interests: "",
  createdAt: new Date("2026-05-04T10:00:00Z"),
  ...at,
});

it("ties of several reviewers stand by their names, whoever came first", () => {
  const ties = (...names: string[]) =>
    approvalOf(
      names.map((name) => given(name, { interests: `${name} knows the potter.` })),
      digest,
    ).interests?.map((one) => one.name);
  expect(ties("Tam", "Ana", "Max")).toEqual(["Ana", "Max", "Tam"]);
  expect(ties("Ana", "Max", "Tam")).toEqual(["Ana", "Max", "Tam"]);
});
it("nobody else to ask: the approval that there is counts as enough, though two were wanted", () => {
  expect(approvalGate([given("Ana")], digest, { needed: 2, alone: true })).toEqual({
    ...{ state: "enough", given: 1, needed: 2, by: ["Ana"] },
  });
});

describe("approvalDigest", () => {
  const before = approvalDigest(sampleSnapshot(), sha256);
  const moved = (change: (draft: Snapshot) => void): boolean => {
    const draft = structuredClone(sampleSnapshot());
    change(draft);
    return approvalDigest(draft, sha256) !== before;
  };

  it.each<[string, (draft: Snapshot) => void]>([
    ["a word", (d) => (d.item.marks = "another mark")],
    ["who paid", (d) => (d.specimens[0]!.whoPaid = "the maker")],
    ["a part's material", (d) => (d.specimens[0]!.parts[0]!.material = "enamel")],
    ["the inputs of a result", (d) => (d.specimens[0]!.parts[0]!.results[0]!.inputsDigest = "b".repeat(64))],
    ["a result less", (d) => d.specimens[0]!.parts[0]!.results.pop()],
    ["a photo less", (d) => d.photos.pop()],
    ["what a photo shows", (d) => (d.photos[0]!.alt = "something else")],
    ["an instrument", (d) => (d.instruments[0]!.serial = "another")],
    ["the kind of revision", (d) => (d.kind = "correction")],
    ["its reason", (d) => (d.reason = "another reason")],
    ["the tester's ties", (d) => (d.interests = "My sister works there.")],
  ])("moves with %s", (_, change) => {
    expect(moved(change)).toBe(true);
  });

  it.each<[string, (draft: Snapshot) => void]>([
    ["the day's verdicts", (d) => (d.specimens[0]!.parts[0]!.results[0]!.decisions = [])],
    [
      "the time and number of publication",
      (d) => Object.assign(d, { publishedAt: "2027-01-01T00:00:00Z", revision: 7 }),
    ],
    ["the registry's terms", (d) => (d.registry.licence = "CC0-1.0")],
    ["the review itself", (d) => (d.review = approvalOf([given("Ritva")], digest))],
    ["a member that is there without a value", (d) => Object.assign(d, { interests: undefined })],
  ])("stays with %s", (_, change) => {
    expect(moved(change)).toBe(false);
  });
});

describe("approvalOf", () => {
  it("counts approvals of this very draft, once for each person, and states their ties", () => {
    const reviews = [
      given("Sanna", { interests: "None at all." }),
      given("Ritva", { createdAt: new Date("2026-05-03T10:00:00Z") }),
      given("Ritva", { createdAt: new Date("2026-05-02T10:00:00Z") }),
      given("Otto", { decision: "more-shots" }),
      given("Ada", { inputsDigest: "b".repeat(64) }),
    ];
    expect(approvalOf(reviews, digest)).toEqual({
      reviewed: true,
      reviewers: ["Ritva", "Sanna"],
      reviewedOn: "2026-05-04",
      inputsDigest: digest,
      interests: [{ name: "Sanna", statement: "None at all." }],
    });
    expect(approvalOf(reviews.slice(3), digest).reviewed).toBe(false);
  });
});

describe("approvalGate", () => {
  const one = { needed: 1, alone: false };
  const older = given("Ritva", { inputsDigest: "b".repeat(64) });
  it.each([
    ["nobody has looked", [], one, "lacking"],
    ["one has approved", [given("Ritva")], one, "enough"],
    ["the approval was of an earlier state", [older], one, "moved"],
    ["sent back after an earlier approval", [given("Ritva", { decision: "sent-back" }), older], one, "lacking"],
    ["one of two", [given("Ritva")], { needed: 2, alone: false }, "lacking"],
    ["one person twice of two", [given("Ritva"), given("Ritva")], { needed: 2, alone: false }, "lacking"],
    ["two of two", [given("Ritva"), given("Sanna")], { needed: 2, alone: false }, "enough"],
    ["none needed", [], { needed: 0, alone: false }, "unreviewed"],
    ["none needed, one given", [given("Ritva")], { needed: 0, alone: false }, "enough"],
    ["nobody else there", [], { needed: 1, alone: true }, "unreviewed"],
    ["nobody else there, moved since", [older], { needed: 1, alone: true }, "unreviewed"],
  ] as const)("%s", (_, reviews, asked, state) => {
    expect(approvalGate(reviews, digest, asked).state).toBe(state);
  });
});
