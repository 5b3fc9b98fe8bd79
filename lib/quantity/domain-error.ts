/** A number outside a function's domain: NaN, an infinity, a negative uncertainty, lists of different length, … */
export class DomainError extends Error {
  readonly code: string;
  readonly found: unknown;
  constructor(code: string, message: string, found: unknown) {
    super(message);
    this.name = "DomainError";
    this.code = code;
    this.found = found;
  }
}
