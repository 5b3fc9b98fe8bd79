// What is answered for an address at which there is nothing. The framework sends a document that only its scripts fill, blank
// without them (github.com/vercel/next.js/issues/62228); a page of the same words stands in its place, in the language of the
// address. Signed-in pages need scripts anyway and keep the framework's answer.

const paths = { en: "/not-here", es: "/es/not-here" };
const goodFor = 60_000;

/** The pages as the server at `base` makes them, asked for again when they are used and a minute old: their foot names the registry. */
export function notHerePages(base) {
  const pages = {};
  let asked = 0;
  const ask = async () => {
    asked = Date.now();
    for (const [language, path] of Object.entries(paths)) {
      const answer = await fetch(base + path);
      if (answer.ok) pages[language] = Buffer.from(await answer.arrayBuffer());
    }
  };
  const pageOf = (language) => {
    // A server that cannot answer itself answers nobody: the page as it was does until then.
    if (Date.now() > asked + goodFor) ask().catch(() => {});
    return pages[language];
  };
  return { ask, pageOf };
}

const signedIn = /^\/(bench|review|account)(\/|$)/;

/**
 * The handler of a server whose answers 404 in HTML carry the page itself, where there is one. What stands between the two, as
 * compression, may write whatever it likes: its body is let go and its headers about the body with it.
 */
export const withNotHere = (answer, pageOf) => (req, res) => {
  const path = (req.url ?? "/").split("?")[0];
  if ((req.method === "GET" || req.method === "HEAD") && !signedIn.test(path))
    standIn(res, () => pageOf(/^\/es(\/|$)/.test(path) ? "es" : "en"));
  return answer(req, res);
};

function standIn(res, pageHere) {
  const { writeHead, write, end } = res;
  let page;
  res.writeHead = (status, ...rest) => {
    if (status === 404 && String(res.getHeader("content-type")).startsWith("text/html")) page = pageHere();
    if (page) {
      for (const name of ["content-encoding", "etag", "transfer-encoding"]) res.removeHeader(name);
      res.setHeader("content-length", page.length);
    }
    return writeHead.call(res, status, ...rest);
  };
  res.write = (chunk, ...rest) => {
    if (!res.headersSent) res.writeHead(res.statusCode);
    if (!page) return write.call(res, chunk, ...rest);
    rest.find((each) => typeof each === "function")?.();
    return true;
  };
  res.end = (...args) => {
    if (!res.headersSent) res.writeHead(res.statusCode);
    return page ? end.call(res, page, ...args.filter((each) => typeof each === "function")) : end.apply(res, args);
  };
}
