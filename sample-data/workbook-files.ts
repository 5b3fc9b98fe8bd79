import { type ZipPart, zipFile } from "./zip-file.ts";

/**
 * Workbooks written by hand from the open standards (ECMA-376 for XLSX, OASIS OpenDocument 1.3 for ODS), so that what is read back is
 * not what the reading library itself would have written.
 */
export type Cell = string | number | { xml: string };
export type SheetPlan = { name: string; rows: Cell[][]; hidden?: boolean; merges?: string[]; hiddenRows?: number[] };

const escaped = (text: string): string => text.replace(/[&<>"]/g, (letter) => `&#${letter.charCodeAt(0)};`);
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const packages = "http://schemas.openxmlformats.org/package/2006";
const types = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** The cell formats of `xlsxFile`: 0 general, 1 date by region, 2 "dd/mm/yyyy hh:mm", 3 "0.00", 4 "#,##0.0". */
const styles = `${head}<styleSheet xmlns="${main}"><numFmts count="1"><numFmt numFmtId="164" formatCode="dd/mm/yyyy hh:mm"/></numFmts><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="5"><xf numFmtId="0"/><xf numFmtId="14" applyNumberFormat="1"/><xf numFmtId="164" applyNumberFormat="1"/><xf numFmtId="2" applyNumberFormat="1"/><xf numFmtId="4" applyNumberFormat="1"/></cellXfs></styleSheet>`;

const columnName = (at: number): string => String.fromCharCode(65 + at);
const xlsxCell = (cell: Cell, ref: string): string =>
  typeof cell === "number"
    ? `<c r="${ref}"><v>${cell}</v></c>`
    : typeof cell === "string"
      ? cell === ""
        ? ""
        : `<c r="${ref}" t="inlineStr"><is><t xml:space="preserve">${escaped(cell)}</t></is></c>`
      : cell.xml.replace("REF", ref);

const xlsxSheet = ({ rows, merges = [], hiddenRows = [] }: SheetPlan): string => {
  const lines = rows.map((cells, r) => {
    const inner = cells.map((cell, c) => xlsxCell(cell, `${columnName(c)}${r + 1}`)).join("");
    return `<row r="${r + 1}"${hiddenRows.includes(r + 1) ? ' hidden="1"' : ""}>${inner}</row>`;
  });
  const merged = merges.length
    ? `<mergeCells count="${merges.length}">${merges.map((ref) => `<mergeCell ref="${ref}"/>`).join("")}</mergeCells>`
    : "";
  return `${head}<worksheet xmlns="${main}"><sheetData>${lines.join("")}</sheetData>${merged}</worksheet>`;
};

/** An XLSX workbook. A cell given as `{ xml }` is put in as it is, with REF for its place. */
export function xlsxFile(sheets: SheetPlan[], options: { from1904?: boolean; more?: ZipPart[] } = {}): Uint8Array {
  const each = (make: (sheet: SheetPlan, n: number) => string): string =>
    sheets.map((s, at) => make(s, at + 1)).join("");
  return zipFile([
    {
      name: "[Content_Types].xml",
      data: `${head}<Types xmlns="${packages}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${types}.sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="${types}.styles+xml"/>${each((_, n) => `<Override PartName="/xl/worksheets/sheet${n}.xml" ContentType="${types}.worksheet+xml"/>`)}</Types>`,
    },
    {
      name: "_rels/.rels",
      data: `${head}<Relationships xmlns="${packages}/relationships"><Relationship Id="rId1" Type="${office}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    },
    {
      name: "xl/workbook.xml",
      data: `${head}<workbook xmlns="${main}" xmlns:r="${office}">${options.from1904 ? '<workbookPr date1904="1"/>' : ""}<sheets>${each((s, n) => `<sheet name="${escaped(s.name)}" sheetId="${n}"${s.hidden ? ' state="hidden"' : ""} r:id="rId${n}"/>`)}</sheets></workbook>`,
    },
    {
      name: "xl/_rels/workbook.xml.rels",
      data: `${head}<Relationships xmlns="${packages}/relationships">${each((_, n) => `<Relationship Id="rId${n}" Type="${office}/worksheet" Target="worksheets/sheet${n}.xml"/>`)}<Relationship Id="rId${sheets.length + 1}" Type="${office}/styles" Target="styles.xml"/></Relationships>`,
    },
    { name: "xl/styles.xml", data: styles },
    ...sheets.map((sheet, at) => ({ name: `xl/worksheets/sheet${at + 1}.xml`, data: xlsxSheet(sheet) })),
    ...(options.more ?? []),
  ]);
}

const odf = "urn:oasis:names:tc:opendocument:xmlns";
const odsCell = (cell: Cell): string =>
  typeof cell === "object"
    ? cell.xml
    : cell === ""
      ? "<table:table-cell/>"
      : typeof cell === "number"
        ? `<table:table-cell office:value-type="float" office:value="${cell}"><text:p>${cell}</text:p></table:table-cell>`
        : `<table:table-cell office:value-type="string"><text:p>${escaped(cell)}</text:p></table:table-cell>`;

/** An ODS workbook. A cell given as `{ xml }` is put in as it is. */
export function odsFile(sheets: SheetPlan[], options: { manifest?: string } = {}): Uint8Array {
  const tables = sheets.map(
    ({ name, rows, hiddenRows = [] }) =>
      `<table:table table:name="${escaped(name)}">${rows
        .map(
          (cells, r) =>
            `<table:table-row${hiddenRows.includes(r + 1) ? ' table:visibility="collapse"' : ""}>${cells.map(odsCell).join("")}</table:table-row>`,
        )
        .join("")}</table:table>`,
  );
  return zipFile([
    { name: "mimetype", data: "application/vnd.oasis.opendocument.spreadsheet", stored: true },
    {
      name: "content.xml",
      data: `${head}<office:document-content xmlns:office="${odf}:office:1.0" xmlns:table="${odf}:table:1.0" xmlns:text="${odf}:text:1.0" office:version="1.3"><office:body><office:spreadsheet>${tables.join("")}</office:spreadsheet></office:body></office:document-content>`,
    },
    {
      name: "styles.xml",
      data: `${head}<office:document-styles xmlns:office="${odf}:office:1.0" office:version="1.3"/>`,
    },
    {
      name: "META-INF/manifest.xml",
      data: `${head}<manifest:manifest xmlns:manifest="${odf}:manifest:1.0" manifest:version="1.3"><manifest:file-entry manifest:full-path="/" manifest:media-type="application/vnd.oasis.opendocument.spreadsheet"/>${options.manifest ?? ""}<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/></manifest:manifest>`,
    },
  ]);
}
