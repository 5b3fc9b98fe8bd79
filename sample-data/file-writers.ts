import type { Shot, ShotResult } from "./simulate-shots.ts";

/** Four ways of writing the same thing, each our own invention in trade words. Nothing here follows a maker's export. */
export type Written = { text: string; header: number; blank: number };
export type WriterOptions = { serial: string; operator: string; k: number };

const two = (n: number): string => String(n).padStart(2, "0");
const clock = (d: Date): string => `${two(d.getUTCHours())}:${two(d.getUTCMinutes())}:${two(d.getUTCSeconds())}`;
const isoDay = (d: Date): string => `${d.getUTCFullYear()}-${two(d.getUTCMonth() + 1)}-${two(d.getUTCDate())}`;
const dayFirst = (d: Date, mark: string): string =>
  [two(d.getUTCDate()), two(d.getUTCMonth() + 1), d.getUTCFullYear()].join(mark);
const comma = (text: string): string => text.replace(".", ",");
const decimals = (value: number, oneUpTo: number): number => (value < oneUpTo ? 1 : 0);
const columnsOf = (shots: Shot[], order: string[]): string[] =>
  order.filter((e) => shots.some((s) => s.results.some((r) => r.element === e)));
const resultFor = (shot: Shot, element: string): ShotResult | undefined =>
  shot.results.find((r) => r.element === element);

/** (a) Comma separated, decimal point, a row per shot, the limit of a non-detect in the error column. UTF-8, LF. */
export function writeWideCsv(shots: Shot[], { serial, operator, k }: WriterOptions): Written {
  const elements = columnsOf(shots, ["Pb", "Cd", "As", "Sb", "Cr", "Hg", "Br"]);
  const quoted = (text: string): string => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  const pair = (r: ShotResult | undefined): string[] => {
    if (!r) return ["", ""];
    const n = decimals(r.value, 1000);
    return r.detected ? [r.value.toFixed(n), (k * r.u).toFixed(n)] : ["<LOD", r.limit.toFixed(1)];
  };
  const preamble = [
    "Shelf analyser A, shot list",
    "Invented demonstration data: no real object was measured",
    `Serial,${serial}`,
    `Shot by,${operator}`,
    "Results in ppm",
  ];
  const header = ["Shot", "Clock", "Count time", "Mode", "Part", "Spot"];
  const rows = shots.map((s) =>
    [
      String(s.number),
      `${isoDay(s.at)} ${clock(s.at)}`,
      String(s.seconds),
      s.mode,
      s.sample,
      s.spot,
      ...elements.flatMap((e) => pair(resultFor(s, e))),
      s.remark,
    ]
      .map(quoted)
      .join(","),
  );
  const head = [...header, ...elements.flatMap((e) => [e, `${e} +/-`]), "Remark"].join(",");
  return { text: `${[...preamble, head, ...rows].join("\n")}\n`, header: preamble.length + 1, blank: 0 };
}

const germanElements = ["Pb", "Cd", "As", "Cr", "Sn", "Cu"];
/** Copper is written in per cent, everything else in mg/kg. */
function germanPair(r: ShotResult | undefined, k: number, percent: boolean): string[] {
  if (!r) return ["", ""];
  const scale = percent ? 1e-4 : 1;
  const n = percent ? 2 : decimals(r.value, 1000);
  if (!r.detected) return [`<${comma((r.limit * scale).toFixed(percent ? 3 : 1))}`, ""];
  return [comma((r.value * scale).toFixed(n)), comma((k * r.u * scale).toFixed(n))];
}

/** (b) Semicolons, decimal comma, German, units row, "<12,4", blank line, summary rows at the foot. CRLF. */
export function writeGermanCsv(shots: Shot[], { serial, operator, k }: WriterOptions): Written {
  const elements = columnsOf(shots, germanElements);
  const preamble = [
    "Tauschregal – Prüfbuch des Analysators B",
    "Erfundene Übungsdaten: kein wirklicher Gegenstand wurde gemessen",
    `Prüfer: ${operator}`,
  ];
  const lead = ["Nr.", "Datum", "Uhrzeit", "Gerät", "Gegenstand", "Messstelle", "Modus", "Zählzeit"];
  const header = [...lead, ...elements.flatMap((e) => [e, `${e} Fehler`]), "Bemerkung"];
  const unit = (e: string): string => (e === "Cu" ? "%" : "mg/kg");
  const units = ["", "", "", "", "", "", "", "s", ...elements.flatMap((e) => [unit(e), unit(e)]), ""];
  const rows = shots.map((s) => [
    String(s.number).padStart(4, "0"),
    dayFirst(s.at, "."),
    clock(s.at),
    serial,
    s.sample,
    s.spot,
    s.mode,
    String(s.seconds),
    ...elements.flatMap((e) => germanPair(resultFor(s, e), k, e === "Cu")),
    s.remark,
  ]);
  const found = (e: string): number[] =>
    shots.flatMap((s) => {
      const r = resultFor(s, e);
      return r?.detected ? [r.value * (e === "Cu" ? 1e-4 : 1)] : [];
    });
  const summary = (name: string, of: (x: number[]) => number): string[] => [
    name,
    ...Array.from({ length: lead.length - 1 }, () => ""),
    ...elements.flatMap((e) => [comma(of(found(e)).toFixed(1)), ""]),
    "",
  ];
  const mean = (x: number[]): number => x.reduce((a, b) => a + b, 0) / Math.max(1, x.length);
  const spread = (x: number[]): number =>
    Math.sqrt(x.reduce((a, b) => a + (b - mean(x)) ** 2, 0) / Math.max(1, x.length - 1));
  const foot = [summary("Mittelwert", mean), summary("Standardabweichung", spread)];
  const blankRow = header.map(() => "");
  const lines = [...[header, units, ...rows, blankRow, ...foot].map((r) => r.join(";"))];
  return { text: `${[...preamble, ...lines].join("\r\n")}\r\n`, header: preamble.length + 2, blank: 1 };
}

/** No-break space between thousands, decimal comma. */
const french = (value: number, n: number): string => {
  const [whole = "", part] = value.toFixed(n).split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, "\u00a0");
  return part === undefined ? grouped : `${grouped},${part}`;
};

/** (c) Tabs, a row per shot and element, French, several spellings of "not detected", header again midway. CRLF. */
export function writeLongTsv(shots: Shot[], { serial, operator, k }: WriterOptions): Written {
  const preamble = [
    "Étagère de prêt, carnet de l'analyseur C",
    "Données inventées : aucun objet réel n'a été mesuré",
    `Opérateur : ${operator}`,
  ];
  const header = [
    "Mesure",
    "Date et heure",
    "Appareil",
    "Objet",
    "Point",
    "Programme",
    "Durée (s)",
    "Élément",
    "Teneur",
    "Incertitude (2σ)",
    "Limite de détection",
    "Unité",
    "Remarque",
  ].join("\t");
  const spellings = ["ND", "n.d.", "< LD", "ND", "nd"];
  let missing = 0;
  const rows = shots.map((s) =>
    s.results
      .map((r) => {
        const film = s.mode === "film";
        const n = film ? 2 : decimals(r.value, 1000);
        const limit = french(r.limit, film ? 2 : 1);
        const cells = r.detected
          ? [french(r.value, n), french(k * r.u, n), ""]
          : missing++ % 7 === 5
            ? [`< ${limit}`, "", ""]
            : [spellings[missing % spellings.length], "", limit];
        const lead = [`C-${String(s.number).padStart(4, "0")}`, `${dayFirst(s.at, "/")} ${clock(s.at)}`, serial];
        const place = [s.sample, s.spot, s.mode, String(s.seconds), r.element];
        return [...lead, ...place, ...cells, film ? "µg/cm²" : "mg/kg", s.remark].join("\t");
      })
      .join("\r\n"),
  );
  const middle = Math.ceil(rows.length / 2);
  const lines = [...preamble, header, ...rows.slice(0, middle), header, ...rows.slice(middle)];
  return { text: `${lines.join("\r\n")}\r\n`, header: preamble.length + 2, blank: 0 };
}

/** What went wrong while the file lay open in a spreadsheet: by place among the shots, the cell that was spoilt. */
export const spoilt: { shot: number; column: string; text: string }[] = [
  { shot: 5, column: "Pb", text: "8712,4,1" },
  { shot: 9, column: "Pb", text: "#REF!" },
  { shot: 17, column: "When", text: "31.02.2026 14:41:07" },
  { shot: 24, column: "Pb", text: "sixty?" },
];

/** The ugly day: see README. Semicolons, decimal comma, two header blocks, blanks, spoilt cells, summary rows. CRLF. */
export function writeUglyCsv(shots: Shot[], { k }: WriterOptions): Written {
  const elements = columnsOf(shots, ["Pb", "Cd", "As", "Cr", "Sn"]);
  const lead = ["No.", "When", "Object", "Place on it", "Mode", "Counted"];
  const header = [...lead, ...elements.flatMap((e) => [e, `${e} err`]), "Remark"];
  const units = ["", "", "", "", "", "s", ...elements.flatMap(() => ["mg/kg", "mg/kg"]), ""];
  const blankRow = header.map(() => "");
  const rows = shots.map((s, i) => {
    const cells = [
      String(s.number).padStart(4, "0"),
      `${dayFirst(s.at, ".")} ${clock(s.at)}`,
      s.sample,
      s.spot,
      s.mode,
      String(s.seconds),
      ...elements.flatMap((e) => germanPair(resultFor(s, e), k, false)),
      s.remark,
    ];
    for (const { shot, column, text } of spoilt) if (shot === i) cells[header.indexOf(column)] = text;
    return cells;
  });
  const mean = ["Mean", "", "", "", "", "", "4113,8", "", "1022,5", "", "", "", "", "", "", "", ""];
  const highest = ["Max", "", "", "", "", "", "9518", "", "2071", "", "", "", "1381", "", "", "", ""];
  const second = 12; // the bowls change here: header and units stand again
  const table = [header, units, ...rows.slice(0, second), blankRow, header, units, ...rows.slice(second)];
  const preamble = [
    "Bowls, Saturday",
    "Invented demonstration data: no real object was measured",
    "analyser B, ask T. Q.",
  ];
  const body = [...table, blankRow, blankRow, mean, highest].map((r) => r.join(";"));
  return { text: `${[...preamble, ...body].join("\r\n")}\r\n`, header: preamble.length + 4, blank: 3 };
}
