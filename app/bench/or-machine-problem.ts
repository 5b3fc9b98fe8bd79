import { errorFacts, log } from "@/lib/platform/log.ts";
import { machineProblem } from "@/lib/platform/machine-problem.ts";
import type { Problem } from "@/lib/quantity/problem.ts";

/** Answers, or says which part of the machine is in the way (503) where that is what broke; a bug stays an exception. */
export async function orMachineProblem(
  work: () => Promise<Response>,
  refuse: (status: number, problems: Problem[]) => Response,
): Promise<Response> {
  try {
    return await work();
  } catch (error) {
    const problem = machineProblem(error);
    if (!problem) throw error;
    log().error({ trouble: problem.code, ...errorFacts(error) }, "the machine is in the way");
    return refuse(503, [problem]);
  }
}
