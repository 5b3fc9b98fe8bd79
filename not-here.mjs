// What is answered for an address at which there is nothing. The framework sends a document that only its scripts fill, blank
// without them (github.com/vercel/next.js/issues/62228); the page it made of the same words when the product was built stands in
// its place, in the language of the address. Signed-in pages need scripts anyway and keep the framework's answer.
import { readFileSync } from "node:fs";
import { onlyRead } from "./page-cache.mjs";

const builtPage = (name) =>
  Buffer.from(onlyRead(readFileSync(new URL(`.next/server/app/${name}.html`, import.meta.url), "utf8")));

/** The pages of a built product. */
export const builtPages = () => ({ en: builtPage("_not-found"), es: builtPage("es/not-here") });

const signedIn = /^\/(bench|review|account)(\/|$)/;

/**
 * The handler of a server whose answers 404 in HTML carry the page itself. What stands between the two, as compression, may
 * write whatever it likes: its body is let go and its headers about the body with it.
 */
export const withNotHere = (answer, pages) => (req, res) => {
  const path = (req.url ?? "/").split("?")[0];
  if ((req.method === "GET" || req.method === "HEAD") && !signedIn.test(path))
    standIn(res, pages[/^\/es(\/|$)/.test(path) ? "es" : "en"]);
  return answer(req, res);
};

function standIn(res, page) {
  const { writeHead, write, end } = res;
  let nothingHere = false;
  res.writeHead = (status, ...rest) => {
    nothingHere = status === 404 && String(res.getHeader("content-type")).startsWith("text/html");
    if (nothingHere) {
      for (const name of ["content-encoding", "etag", "transfer-encoding"]) res.removeHeader(name);
      res.setHeader("content-length", page.length);
    }
    return writeHead.call(res, status, ...rest);
  };
  res.write = (chunk, ...rest) => {
    if (!res.headersSent) res.writeHead(res.statusCode);
    if (!nothingHere) return write.call(res, chunk, ...rest);
    rest.find((each) => typeof each === "function")?.();
    return true;
  };
  res.end = (...args) => {
    if (!res.headersSent) res.writeHead(res.statusCode);
    return nothingHere
      ? end.call(res, page, ...args.filter((each) => typeof each === "function"))
      : end.apply(res, args);
  };
}
