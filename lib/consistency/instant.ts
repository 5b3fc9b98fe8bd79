import { DomainError } from "../quantity/domain-error.ts";

/**
 * A moment as milliseconds since 1970-01-01T00:00Z, so that times of different zones can be ordered.
 *
 * Refused (DomainError `no-zone`): a text that is no ISO 8601 date and time with an offset or Z. A time without zone is no moment.
 *
 * @example instantOf("2026-03-14T10:30:00+01:00") - instantOf("2026-03-14T09:00:00Z") // 1800000
 */
export function instantOf(text: string): number {
  const instant = /T.*(Z|[+-]\d\d:\d\d)$/.test(text) ? Date.parse(text) : Number.NaN;
  if (Number.isNaN(instant)) throw new DomainError("no-zone", "a time needs a date, a time of day and an offset", text);
  return instant;
}
