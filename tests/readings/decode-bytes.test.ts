import { describe, expect, it } from "vitest";
import { decodeBytes } from "@/lib/readings/decode-bytes.ts";

const text = "Probe;µg\nBecher „blau“;12,5\n";
const bytesOf = (...numbers: number[]) => Uint8Array.from(numbers);
const utf16be = (content: string) => Buffer.from(content, "utf16le").swap16();
/** Invented text in Windows-1252; the code points are from the WHATWG Encoding Standard, index windows-1252. */
const windows1252 = Buffer.from([...text].map((c) => ({ "„": 0x84, "“": 0x93 })[c] ?? c.codePointAt(0)!));

describe("decodeBytes reads", () => {
  it.each([
    ["UTF-8", Buffer.from(text), "utf-8"],
    ["UTF-8 with mark", Buffer.from(`\ufeff${text}`), "utf-8-bom"],
    ["UTF-16 LE with mark", Buffer.from(`\ufeff${text}`, "utf16le"), "utf-16le"],
    ["UTF-16 LE without mark", Buffer.from(text.replace(/[„“]/g, '"'), "utf16le"), "utf-16le"],
    ["UTF-16 BE with mark", utf16be(`\ufeff${text}`), "utf-16be"],
    ["UTF-16 BE without mark", utf16be(text.replace(/[„“]/g, '"')), "utf-16be"],
    ["Windows-1252", windows1252, "windows-1252"],
  ])("%s", (_, bytes, encoding) => {
    const decoded = decodeBytes(bytes);
    expect(decoded).toMatchObject({ ok: true, value: { encoding } });
    if (decoded.ok) expect(decoded.value.text.replace(/[„“"]/g, "")).toBe(text.replace(/[„“]/g, ""));
  });

  it("every line end as \\n", () => {
    expect(decodeBytes(Buffer.from("a\r\nb\rc\n"))).toMatchObject({ value: { text: "a\nb\nc\n" } });
  });

  it("a file cut inside its last character, and marks the place", () => {
    const cut = Buffer.from("é;é").subarray(0, -1);
    expect(decodeBytes(cut)).toMatchObject({ value: { text: "é;\ufffd", encoding: "utf-8" } });
  });
});

describe("decodeBytes refuses, and says what it is", () => {
  it.each([
    ["nothing", bytesOf(), "file-empty", undefined],
    ["white space", Buffer.from(" \n\t\n"), "file-blank", undefined],
    ["a mark alone", bytesOf(0xef, 0xbb, 0xbf), "file-blank", undefined],
    ["a PNG", bytesOf(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a), "file-not-text", "a PNG image"],
    ["a JPEG", bytesOf(0xff, 0xd8, 0xff, 0xe0, 0, 16), "file-not-text", "a JPEG image"],
    ["a PDF", Buffer.from("%PDF-1.7\n"), "file-not-text", "a PDF document"],
    ["a workbook", Buffer.from("PK\u0003\u0004....xl/workbook.xml"), "file-not-text", "a spreadsheet workbook (xlsx)"],
    ["an old workbook", bytesOf(0xd0, 0xcf, 0x11, 0xe0), "file-not-text", "an older office document (such as xls)"],
    ["a web page", Buffer.from("<!DOCTYPE html><table>"), "file-not-text", "a web page (HTML)"],
    ["a NUL byte", Buffer.from("Pb;Cd\r\n1;2\r\n3;\0\n"), "nul-bytes", "line 3"],
    ["bytes of no encoding", bytesOf(0x41, 0x81, 0xff, 0x8d), "encoding-unknown", undefined],
  ])("%s", (_, bytes, code, found) => {
    const decoded = decodeBytes(bytes);
    expect(decoded).toMatchObject({ ok: false, problems: [{ code, ...(found ? { found } : {}) }] });
  });

  it("a file of 60 MB, with both sizes", () => {
    const decoded = decodeBytes(new Uint8Array(60 * 1024 * 1024).fill(0x31));
    expect(decoded).toMatchObject({ problems: [{ code: "file-too-large", found: "60.0 MB", allowed: "50.0 MB" }] });
  });
});
