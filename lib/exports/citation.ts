import { paths } from "../platform/paths.ts";
import { plainDate } from "../wording/formats.ts";
import { absoluteUrl, type PublishedRevision } from "./published-revision.ts";

export type Citation = {
  /** One line for a list of references. */
  text: string;
  bibtex: string;
  cslJson: {
    id: string;
    type: "dataset";
    title: string;
    author: { literal: string }[];
    issued: { "date-parts": [[year: number, month: number, day: number]] };
    version: string;
    publisher: string;
    URL: string;
    language: "en";
  };
  /** citation_* tags for the page's head; names repeat where there are several authors. */
  meta: { name: string; content: string }[];
};

/**
 * How to cite one revision, in four forms from the same words. Authors are the testers, else the registry. The address is the
 * revision's own, so that a citation never changes its meaning.
 *
 * The tags are those scholarly search engines ask for (title, at least one author, publication date as YYYY/MM/DD).
 */
export function citation({ snapshot, entry }: PublishedRevision, baseUrl: string): Citation {
  const authors = snapshot.testers.length > 0 ? snapshot.testers.map((t) => t.name) : [snapshot.registry.name];
  const title = `${snapshot.item.name}: measured content, revision ${snapshot.revision}`;
  const url = absoluteUrl(baseUrl, paths.revision(snapshot.slug, snapshot.revision));
  const publisher = snapshot.registry.name;
  const day = snapshot.publishedAt.slice(0, 10);
  const [year = 0, month = 0, date = 0] = day.split("-").map(Number);
  const id = `${snapshot.slug}-r${snapshot.revision}`;
  return {
    text: `${authors.join("; ")}. ${title}. ${publisher}, ${plainDate(day)}. ${url} (SHA-256 ${entry.snapshotSha256}).`,
    bibtex: bibtexEntry(id, {
      author: authors.map((name) => `{${latexText(name)}}`).join(" and "),
      title: `{${latexText(title)}}`,
      year: String(year),
      month: String(month),
      publisher: latexText(publisher),
      version: String(snapshot.revision),
      url,
      note: latexText(`SHA-256 ${entry.snapshotSha256}`),
    }),
    cslJson: {
      id,
      type: "dataset",
      title,
      author: authors.map((literal) => ({ literal })),
      issued: { "date-parts": [[year, month, date]] },
      version: String(snapshot.revision),
      publisher,
      URL: url,
      language: "en",
    },
    meta: [
      { name: "citation_title", content: title },
      ...authors.map((content) => ({ name: "citation_author", content })),
      { name: "citation_publication_date", content: day.replaceAll("-", "/") },
      { name: "citation_technical_report_institution", content: publisher },
      { name: "citation_technical_report_number", content: id },
      { name: "citation_public_url", content: url },
      { name: "citation_language", content: "en" },
    ],
  };
}

const latexMarks: Record<string, string> = {
  "\\": "\\textbackslash{}",
  "~": "\\textasciitilde{}",
  "^": "\\textasciicircum{}",
};
/** Text in which LaTeX finds no command: its ten special characters escaped. */
const latexText = (text: string): string => text.replace(/[\\~^&%$#_{}]/g, (mark) => latexMarks[mark] ?? `\\${mark}`);

const bibtexEntry = (id: string, fields: Record<string, string>): string =>
  `@misc{${id},\n${Object.entries(fields)
    .map(([name, value]) => `  ${name} = {${value}}`)
    .join(",\n")}\n}\n`;

/** The citation_* tags as a page's head takes them: by name, a name with several contents holding them all. */
export function citationTags(meta: Citation["meta"]): Record<string, string[]> {
  const tags: Record<string, string[]> = {};
  for (const { name, content } of meta) tags[name] = [...(tags[name] ?? []), content];
  return tags;
}
