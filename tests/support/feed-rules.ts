import { XMLParser, XMLValidator } from "fast-xml-parser";

/** RFC 3339 as RFC 4287 §3.3 asks for it: an upper-case T, and Z or an offset. */
const moment =
  /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d:([0-5]\d|60)(\.\d+)?(Z|[+-]\d\d:\d\d)$/;
const absolute = (text: unknown): boolean => typeof text === "string" && URL.canParse(text);

type Element = { name: string; attributes: Record<string, string>; children: Element[]; text: string };
// biome-ignore lint/suspicious/noExplicitAny: the parser's own untyped tree
type Raw = any;

function elementsOf(raw: Raw[]): Element[] {
  return raw.flatMap((node) => {
    const name = Object.keys(node).find((key) => key !== ":@");
    if (name === undefined || name === "#text" || name === "?xml") return [];
    const inner = node[name] as Raw[];
    const text = inner.map((one) => ("#text" in one ? String(one["#text"]) : "")).join("");
    return [{ name, attributes: node[":@"] ?? {}, children: elementsOf(inner), text }];
  });
}

/** How often each child may stand in its parent: [least, most]. Elements that are not listed may not stand there at all. */
type Counts = Record<string, readonly [number, number]>;
const many = Number.POSITIVE_INFINITY;
/** RFC 4287 §4.1.1. */
const feedCounts: Counts = {
  author: [0, many],
  category: [0, many],
  contributor: [0, many],
  generator: [0, 1],
  icon: [0, 1],
  id: [1, 1],
  link: [0, many],
  logo: [0, 1],
  rights: [0, 1],
  subtitle: [0, 1],
  title: [1, 1],
  updated: [1, 1],
  entry: [0, many],
};
/** RFC 4287 §4.1.2. */
const entryCounts: Counts = {
  author: [0, many],
  category: [0, many],
  content: [0, 1],
  contributor: [0, many],
  id: [1, 1],
  link: [0, many],
  published: [0, 1],
  rights: [0, 1],
  source: [0, 1],
  summary: [0, 1],
  title: [1, 1],
  updated: [1, 1],
};

const named = (element: Element, name: string): Element[] => element.children.filter((child) => child.name === name);

/** What of RFC 4287 an Atom feed does not keep to, element by element; empty where it keeps to all of it. */
export function atomFaults(xml: string): string[] {
  const whole = XMLValidator.validate(xml);
  if (whole !== true) return [`not XML: ${whole.err.msg}`];
  const parser = new XMLParser({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: "",
    trimValues: false,
  });
  const [feed, ...others] = elementsOf(parser.parse(xml) as Raw[]);
  if (feed?.name !== "feed" || others.length > 0) return ["§4.1.1: the document element is atom:feed"];
  const faults: string[] = [];
  if (feed.attributes["xmlns"] !== "http://www.w3.org/2005/Atom") faults.push("§2: the namespace");
  faults.push(...commonFaults(feed, feedCounts, "feed"));
  const entries = named(feed, "entry");
  for (const entry of entries) {
    faults.push(...commonFaults(entry, entryCounts, "entry"));
    const alternate = named(entry, "link").some(({ attributes }) => (attributes["rel"] ?? "alternate") === "alternate");
    if (named(entry, "content").length === 0 && !alternate)
      faults.push("§4.1.2: neither content nor an alternate link");
    if (named(entry, "author").length === 0 && named(feed, "author").length === 0) faults.push("§4.1.2: an author");
  }
  const ids = entries.map((entry) => `${named(entry, "id")[0]?.text} ${named(entry, "updated")[0]?.text}`);
  if (new Set(ids).size !== ids.length) faults.push("§4.1.1: two entries with the same id and updated");
  if (!named(feed, "link").some(({ attributes }) => attributes["rel"] === "self"))
    faults.push("§4.1.1: a link to itself (should)");
  return faults;
}

function commonFaults(element: Element, counts: Counts, where: string): string[] {
  const faults: string[] = [];
  for (const child of element.children)
    if (!counts[child.name]) faults.push(`${where}: ${child.name} has no place here`);
  for (const [name, [least, most]] of Object.entries(counts)) {
    const n = named(element, name).length;
    if (n < least || n > most) faults.push(`${where}: ${n} ${name}`);
  }
  for (const child of element.children) faults.push(...childFaults(child, where));
  const alternates = named(element, "link")
    .filter(({ attributes }) => (attributes["rel"] ?? "alternate") === "alternate")
    .map(({ attributes }) => `${attributes["type"]} ${attributes["hreflang"]}`);
  if (new Set(alternates).size !== alternates.length) faults.push(`${where}: two alternates of one type`);
  return faults;
}

function childFaults({ name, attributes, children, text }: Element, where: string): string[] {
  switch (name) {
    case "id": // §4.2.6
      return absolute(text) ? [] : [`${where}, id: ${text}`];
    case "updated": // §4.2.15, §3.3
    case "published":
      return moment.test(text) ? [] : [`${where}, ${name}: ${text}`];
    case "title": // §4.2.14, §3.1
    case "summary":
    case "subtitle":
    case "rights":
      return ["text", "html", "xhtml"].includes(attributes["type"] ?? "text") &&
        children.length === 0 &&
        text.trim() !== ""
        ? []
        : [`${where}, ${name}: a text`];
    case "link": // §4.2.7
      return absolute(attributes["href"]) && (attributes["type"] === undefined || /^.+\/.+$/.test(attributes["type"]))
        ? []
        : [`${where}, link: ${JSON.stringify(attributes)}`];
    case "category": // §4.2.2
      return attributes["term"] ? [] : [`${where}, category: a term`];
    case "author": // §3.2
    case "contributor": {
      const names = children.filter((child) => child.name === "name");
      const known = children.every((child) => ["name", "uri", "email"].includes(child.name));
      return names.length === 1 && names[0]!.text !== "" && known ? [] : [`${where}, ${name}: one name`];
    }
    default:
      return [];
  }
}

type Json = Record<string, unknown>;
const isText = (value: unknown): boolean => typeof value === "string" && value !== "";
const isTextList = (value: unknown): boolean => Array.isArray(value) && value.every(isText);
const isAuthors = (value: unknown): boolean =>
  Array.isArray(value) &&
  value.every(
    (one: Json) =>
      ["name", "url", "avatar"].some((key) => isText(one[key])) && (one["url"] === undefined || absolute(one["url"])),
  );
const isMoment = (value: unknown): boolean => typeof value === "string" && moment.test(value);

/** Members of JSON Feed 1.1 (jsonfeed.org/version/1.1) and what each must be. */
const feedMembers: Record<string, (value: unknown) => boolean> = {
  version: (value) => value === "https://jsonfeed.org/version/1.1",
  title: isText,
  home_page_url: absolute,
  feed_url: absolute,
  description: isText,
  user_comment: isText,
  next_url: absolute,
  icon: absolute,
  favicon: absolute,
  authors: isAuthors,
  language: (value) => typeof value === "string" && /^[a-z]{2,3}(-[A-Za-z0-9]+)*$/.test(value),
  expired: (value) => typeof value === "boolean",
  hubs: Array.isArray,
  items: Array.isArray,
};
const itemMembers: Record<string, (value: unknown) => boolean> = {
  id: isText,
  url: absolute,
  external_url: absolute,
  title: isText,
  content_html: isText,
  content_text: isText,
  summary: isText,
  image: absolute,
  banner_image: absolute,
  date_published: isMoment,
  date_modified: isMoment,
  authors: isAuthors,
  tags: isTextList,
  language: isText,
  attachments: Array.isArray,
};

/** What of JSON Feed 1.1 a feed does not keep to; empty where it keeps to all of it. */
export function jsonFeedFaults(feed: Json): string[] {
  const faults = memberFaults(feed, feedMembers, ["version", "title", "items"], "feed");
  const items = (Array.isArray(feed["items"]) ? feed["items"] : []) as Json[];
  for (const item of items) {
    faults.push(...memberFaults(item, itemMembers, ["id"], "item"));
    if (item["content_html"] === undefined && item["content_text"] === undefined) faults.push("item: no content");
  }
  const ids = items.map((item) => item["id"]);
  if (new Set(ids).size !== ids.length) faults.push("two items with one id");
  return faults;
}

function memberFaults(
  object: Json,
  members: Record<string, (value: unknown) => boolean>,
  required: readonly string[],
  where: string,
): string[] {
  return [
    ...required.filter((key) => object[key] === undefined).map((key) => `${where}: no ${key}`),
    ...Object.entries(object).flatMap(([key, value]) => {
      // An extension's name begins with an underscore, has no dot, and holds an object.
      if (key.startsWith("_"))
        return /^_[A-Za-z][^.]*$/.test(key) && typeof value === "object" ? [] : [`${where}: ${key}`];
      return members[key]?.(value) ? [] : [`${where}: ${key} is not as it should be`];
    }),
  ];
}
