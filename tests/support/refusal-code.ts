import { DomainError } from "@/lib/quantity/domain-error.ts";

/** The code a function refuses with; throws where it does not refuse, or refuses by accident. */
export function refusalCode(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (error instanceof DomainError) return error.code;
    throw error;
  }
  throw new Error("nothing was refused");
}
