// Readers' pages as they are sent: read, not worked with, so they go out without the framework's scripts and without the second
// copy of all they say that those would wake them from. Plain JavaScript before the framework (server.mjs).
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { ServerResponse } from "node:http";
import { promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";

/**
 * Every page of the catalogue but the two that are worked with: where a reader's browser makes figures again, and where its
 * camera looks for a bar code.
 */
const pages = [
  "amounts|corrections|items|limits|log|methods|not-here",
  "items/compare|items/(?!compare$|suggestions$)[^/]+(?:/report|/labels|/revisions/\\d+(?:/difference)?)?",
  "limits/[^/]+|requests/(?!send$)[^/]+",
].join("|");
const readPath = new RegExp(`^(?:/(?:es)?|(?:/es)?/(?:${pages}))$`);

/** Whether what stands at a path is read and not worked with. */
export const isOnlyRead = (path) => readPath.test(path);

/** What works on such a page: items are offered under a search field as one types. */
const suggestions = readFileSync(new URL("./app/_components/search-suggestions.js", import.meta.url), "utf8")
  .replace(/^\s*(?:\/\/.*|\/\*\*.*\*\/|\/\*\*\n(?:\s*\*.*\n)+?\s*\*\/)\n/gm, "")
  .replace(/^\s+/gm, "");

/** A page without the framework's scripts and what they would wake it from. Data for machines stays. */
export const onlyRead = (html) =>
  html
    .replace(/<script\b(?![^>]*"application\/ld\+json")[^>]*>.*?<\/script>/gs, "")
    .replace(/<link\b[^>]*\bas="script"[^>]*>/g, "")
    .replace(
      "</body>",
      () =>
        `<script type="module">${suggestions}for(const frame of document.querySelectorAll("[data-suggestions]"))offerSuggestions(frame)</script></body>`,
    );

/** Takes an answer down instead of sending it. */
class Held extends ServerResponse {
  chunks = [];
  write(chunk, encoding, done) {
    this.chunks.push(typeof chunk === "string" ? Buffer.from(chunk, "utf8") : Buffer.from(chunk));
    (typeof encoding === "function" ? encoding : done)?.();
    return true;
  }
  end(chunk, encoding, done) {
    if (chunk && typeof chunk !== "function") this.write(chunk);
    this.finished = true;
    process.nextTick(() => {
      this.emit("finish");
      this.emit("close");
      [chunk, encoding, done].find((each) => typeof each === "function")?.();
    });
    return this;
  }
  writeHead(status, ...rest) {
    this.statusCode = status;
    for (const [name, value] of Object.entries(rest.at(-1) ?? {})) this.setHeader(name, value);
    return this;
  }
  flushHeaders() {}
}

/** Lines of an answer that are about how it was sent, or told what the framework kept. */
const ofTheWay = /^(?:content-length|content-encoding|transfer-encoding|connection|keep-alive|date|etag|x-nextjs-.*)$/;

/**
 * The page at an address as the framework makes it for nobody in particular: neither cookies nor anything else of the asker's is
 * shown to it. A page that failed keeps the scripts that say so.
 */
export async function made(render, req, address) {
  const { method, url, headers } = req;
  const held = new Held(req);
  Object.assign(req, { method: "GET", url: address });
  req.headers = {
    host: headers.host,
    "user-agent": "page-cache",
    "x-request-id": headers["x-request-id"],
    "x-forwarded-for": headers["x-forwarded-for"],
  };
  try {
    await render(req, held);
  } finally {
    Object.assign(req, { method, url, headers });
  }
  const text = Buffer.concat(held.chunks).toString("utf8");
  const whole = held.statusCode === 200 && text.endsWith("</html>");
  const body = Buffer.from(whole ? onlyRead(text) : text, "utf8");
  const etag = whole ? `W/"${createHash("sha256").update(body).digest("base64url").slice(0, 27)}"` : null;
  const sent = Object.entries(held.getHeaders()).filter(([name]) => !ofTheWay.test(name));
  const vary = new Set(`${held.getHeader("vary") ?? ""}, Accept-Encoding`.split(/\s*,\s*/).filter(Boolean));
  // Half as much again for what is kept compressed beside it.
  return {
    ...{
      status: held.statusCode,
      headers: [...sent.filter(([name]) => name !== "vary"), ["vary", [...vary].join(", ")]],
    },
    ...{ body, etag, whole, compressed: new Map(), size: body.length * 1.5 + 2000 },
  };
}

/** Ways of sending less, smallest first; `thorough` for what is compressed once and sent many times. */
const compressors = {
  br: (body, thorough) =>
    promisify(brotliCompress)(body, {
      params: { [constants.BROTLI_PARAM_QUALITY]: thorough ? 9 : 4, [constants.BROTLI_PARAM_SIZE_HINT]: body.length },
    }),
  gzip: (body, thorough) => promisify(gzip)(body, { level: thorough ? 9 : 6 }),
};

/** The smallest way of sending that a reader takes. */
const encodingFor = (accepted = "") =>
  Object.keys(compressors).find((one) =>
    new RegExp(`(?:^|,)\\s*${one}\\s*(?:,|$|;(?!\\s*q=0(?:\\.0*)?\\s*(?:,|$)))`).test(accepted),
  );

const knows = (ifNoneMatch, etag) =>
  ifNoneMatch !== undefined &&
  (ifNoneMatch.trim() === "*" ||
    ifNoneMatch.split(",").some((one) => one.trim().replace(/^W\//, "") === etag.replace(/^W\//, "")));

/** Answers with a page, or with less where the reader has it already; `thorough` where it will be sent again. */
export async function send(req, res, page, thorough = false) {
  res.statusCode = page.status;
  for (const [name, value] of page.headers) res.setHeader(name, value);
  if (page.etag !== null) {
    res.setHeader("etag", page.etag);
    if (knows(req.headers["if-none-match"], page.etag)) {
      res.statusCode = 304;
      return res.end();
    }
  }
  const encoding = page.body.length > 1000 ? encodingFor(req.headers["accept-encoding"]) : undefined;
  let body = page.body;
  if (encoding !== undefined) {
    if (!page.compressed.has(encoding)) page.compressed.set(encoding, compressors[encoding](page.body, thorough));
    body = await page.compressed.get(encoding);
    res.setHeader("content-encoding", encoding);
  }
  res.setHeader("content-length", body.length);
  res.end(req.method === "HEAD" ? undefined : body);
}
