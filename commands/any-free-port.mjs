import { createServer } from "node:net";

/** A port that nobody listens at just now: at `host`, or at every address of the machine where none is named. */
export const anyFreePort = (host) =>
  new Promise((resolve) => {
    const probe = createServer().listen(0, host, () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
