// Serves the built product at PORT: the framework's own handler with readers' pages before it, and a
// page of its own for addresses at which there is nothing. `npm start`, `npm run demo`
// and the tests all run this file.
import { channel } from "node:diagnostics_channel";
import { createServer } from "node:http";
import { fileURLToPath } from "node:url";
import next from "next";
import { notHerePages, withNotHere } from "./not-here.mjs";
import { withReadersPages } from "./page-cache.mjs";

process.env.NODE_ENV = "production";
const port = Number(process.env.PORT ?? 3000);
const app = next({ dev: false, dir: fileURLToPath(new URL(".", import.meta.url)), port });
await app.prepare();
const nothing = notHerePages(`http://127.0.0.1:${port}`);
const answer = withNotHere(withReadersPages(app.getRequestHandler()), nothing.pageOf);
const server = createServer((req, res) => {
  answer(req, res).catch((error) => {
    console.error(error);
    if (!res.headersSent) res.statusCode = 500;
    res.end();
  });
});
// What cannot be read as a request never becomes one: answered here as Node does by itself, and told to who writes the log.
const unread = channel("cupboard-assay:request-unread");
const answers = {
  HPE_HEADER_OVERFLOW: "431 Request Header Fields Too Large",
  HPE_CHUNK_EXTENSIONS_OVERFLOW: "413 Payload Too Large",
  ERR_HTTP_REQUEST_TIMEOUT: "408 Request Timeout",
};
server.on("clientError", ({ code }, socket) => {
  if (code === "ECONNRESET" || !socket.writable) return socket.destroy();
  const status = answers[code] ?? "400 Bad Request";
  unread.publish({ code, status: Number.parseInt(status, 10) });
  socket.end(`HTTP/1.1 ${status}\r\nConnection: close\r\n\r\n`);
});
server.once("error", (error) => {
  console.error(error.message);
  process.exit(1);
});
server.listen(port, async () => {
  await nothing.ask().catch(console.error);
  console.log(`Ready at ${process.env.BASE_URL ?? `http://localhost:${port}`}`);
});

// What has been asked is answered before the process ends, within ten seconds.
for (const signal of ["SIGINT", "SIGTERM"])
  process.once(signal, () => {
    server.close(() => app.close().finally(() => process.exit(0)));
    server.closeIdleConnections();
    setTimeout(() => server.closeAllConnections(), 10_000).unref();
  });
