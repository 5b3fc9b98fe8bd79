import { describe, expect, it } from "vitest";
import { problemOf, problemParams } from "@/app/(catalogue)/requests/new/request-problem.ts";
import type { Problem } from "@/lib/quantity/problem.ts";
import { problemSentence } from "@/lib/wording/problems.ts";

const there = (problem: Problem, asked = ""): Problem | null =>
  problemOf(Object.fromEntries(new URLSearchParams(problemParams([problem]))), asked);

describe("what was wrong with a request, told by its address", () => {
  it.each(["photo-heic", "photo-other-kind", "photo-too-many-pixels", "photo-unreadable", "too-large"])(
    "%s is about the photo and has its sentence",
    (code) => {
      const problem = there({ code, found: "something of the sender's" });
      expect(problem).toMatchObject({ code, where: { field: "photo" } });
      expect(problemSentence(problem!)).not.toMatch(/undefined|something of the sender/);
    },
  );
  it("the minutes to wait go with it, and nothing else that is a number", () => {
    expect(there({ code: "rate-limited", found: "10 an hour", allowed: "43 minutes" })).toEqual({
      code: "rate-limited",
      allowed: "43 minutes",
    });
    expect(problemOf({ problem: "rate-limited", minutes: "9e9" }, "")).toEqual({ code: "rate-limited" });
  });
  it("an address made by hand says nothing of its own", () => {
    expect(problemOf({ problem: "<b>your computer is broken</b>" }, "")).toBeNull();
    expect(problemOf({ problem: ["too-large", "x"] }, "")).toBeNull();
    expect(problemOf({}, "")).toBeNull();
    expect(there({ code: "request-too-vague" }, "?!")).toMatchObject({ found: "?!", where: { field: "description" } });
  });
});
