import pg from "pg";

/**
 * PostgreSQL's client, with one thing more: a text of PostgreSQL cannot hold the sign of number 0, and one that does is
 * refused with an error. It goes in as U+FFFD, the sign for what could not be read: so an address somebody made up finds
 * nothing, as on SQLite, and a form is kept. Instrument files never bring it: a cell with it is set aside.
 */
export class TextClient extends pg.Client {
  // biome-ignore lint/suspicious/noExplicitAny: the driver's own method has a dozen forms, all passed on as they are
  override query(...args: any[]): any {
    const [config] = args as [{ values?: unknown[] } | string];
    if (typeof config === "object" && Array.isArray(config.values)) config.values = config.values.map(withoutNul);
    return (super.query as (...all: unknown[]) => unknown).apply(this, args);
  }
}

const withoutNul = (value: unknown): unknown =>
  typeof value === "string" && value.includes("\0") ? value.replaceAll("\0", "\ufffd") : value;
