// A thread starts as plain Node; this lets it read TypeScript before it simulates the blocks it is handed, until there are no more.
import { parentPort } from "node:worker_threads";
import { register } from "tsx/esm/api";

register();
const { simulateBlock } = await import("./cells.ts");
parentPort.on("message", (ask) => {
  if (ask === null) parentPort.close();
  else parentPort.postMessage({ ask, tally: simulateBlock(ask.cell, ask.block, ask.trials) });
});
