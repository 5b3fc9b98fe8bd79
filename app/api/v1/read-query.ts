import { z } from "zod";
import { done, type Outcome, type Problem, refused } from "@/lib/quantity/problem.ts";

/**
 * The parameters of an address, read through a schema. Refused, each with its name: a parameter that is not known (a
 * misspelt filter would otherwise answer with everything), one given twice, and one that does not fit.
 */
export function readQuery<Shape extends z.ZodRawShape>(
  request: Request,
  schema: z.ZodObject<Shape>,
): Outcome<z.infer<z.ZodObject<Shape>>> {
  const params = new URL(request.url).searchParams;
  const names = Object.keys(schema.shape);
  const problems: Problem[] = [];
  for (const name of new Set(params.keys())) {
    if (!names.includes(name)) problems.push(problemAt(name, params.get(name), names.join(", ")));
    else if (params.getAll(name).length > 1)
      problems.push(problemAt(name, params.getAll(name).join(" and "), "one value"));
  }
  if (problems.length > 0) return refused(...problems);
  const parsed = schema.safeParse(Object.fromEntries(params));
  if (parsed.success) return done(parsed.data);
  return refused(
    ...parsed.error.issues.map((issue) => {
      const name = String(issue.path[0] ?? "");
      return problemAt(name, params.get(name), issue.message);
    }),
  );
}

const problemAt = (field: string, found: string | null, allowed: string): Problem => ({
  code: "invalid-form",
  where: { field },
  found: found === null || found === "" ? "nothing" : found.slice(0, 200),
  allowed,
});

/** A whole number from 1 as addresses write it: digits only, no sign, no leading zero. */
export const wholeNumber = (message = "a whole number from 1"): z.ZodType<number> =>
  z
    .string()
    .regex(/^[1-9]\d{0,8}$/, message)
    .transform(Number);
