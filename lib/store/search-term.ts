/**
 * What the index is asked, without any database's syntax. Words are folded letters and digits, so that nothing typed is
 * ever syntax; a `beginning` is met by every word that goes on from it.
 */
export type SearchColumn = "name" | "marks" | "words" | "codes" | "facets";
export type SearchTerm =
  | { word: string; beginning?: boolean }
  | { phrase: string[] }
  | { all: SearchTerm[] }
  | { any: SearchTerm[] }
  | { columns: SearchColumn[]; hold: SearchTerm };

/**
 * The term for SQLite's FTS5.
 *
 * @example ftsExpression({ all: [{ word: "red", beginning: true }, { columns: ["name"], hold: { word: "mug" } }] })
 * // '("red"* AND {name} : ("mug"))'
 */
export function ftsExpression(term: SearchTerm): string {
  if ("word" in term) return `"${term.word}"${term.beginning ? "*" : ""}`;
  if ("phrase" in term) return `"${term.phrase.join(" ")}"`;
  if ("all" in term) return `(${term.all.map(ftsExpression).join(" AND ")})`;
  if ("any" in term) return `(${term.any.map(ftsExpression).join(" OR ")})`;
  return `{${term.columns.join(" ")}} : (${ftsExpression(term.hold)})`;
}

/** PostgreSQL's four weights, by column; facets are told apart by their sign instead. */
const weights: Record<Exclude<SearchColumn, "facets">, string> = { name: "A", codes: "B", marks: "C", words: "D" };
const facetSign = "=";

/**
 * The term for PostgreSQL's tsquery.
 *
 * @example tsQuery({ all: [{ word: "red", beginning: true }, { columns: ["name"], hold: { word: "mug" } }] })
 * // "('red':* & ('mug':A))"
 */
export function tsQuery(term: SearchTerm, columns: readonly SearchColumn[] = []): string {
  const weighted = columns.map((column) => (column === "facets" ? "" : weights[column])).join("");
  const sign = columns.includes("facets") ? facetSign : "";
  const lexeme = (word: string, star: string): string => {
    const marks = `${star}${weighted}`;
    return `'${sign}${word}'${marks === "" ? "" : `:${marks}`}`;
  };
  if ("word" in term) return lexeme(term.word, term.beginning ? "*" : "");
  if ("phrase" in term) return `(${term.phrase.map((word) => lexeme(word, "")).join(" <-> ")})`;
  if ("all" in term) return `(${term.all.map((one) => tsQuery(one, columns)).join(" & ")})`;
  if ("any" in term) return `(${term.any.map((one) => tsQuery(one, columns)).join(" | ")})`;
  return `(${tsQuery(term.hold, term.columns)})`;
}

/**
 * The texts of an item as PostgreSQL's tsvector: every word with its place and its column's weight, with a gap between
 * columns so that no phrase runs from one into the next.
 *
 * @example tsVector({ name: "red mug", marks: "", words: "", codes: "", facets: "agexadult" })
 * // "'red':1A 'mug':2A '=agexadult'"
 */
export function tsVector(texts: Record<SearchColumn, string>): string {
  const lexemes: string[] = [];
  let place = 1;
  for (const column of ["name", "codes", "marks", "words"] as const) {
    for (const word of wordsOf(texts[column])) lexemes.push(`'${word}':${Math.min(place++, 16_383)}${weights[column]}`);
    place += 10;
  }
  for (const word of wordsOf(texts.facets)) lexemes.push(`'${facetSign}${word}'`);
  return lexemes.join(" ");
}

const wordsOf = (text: string): string[] =>
  (text.match(/[\p{L}\p{N}]+/gu) ?? []).map((word) => [...word].slice(0, 200).join(""));
