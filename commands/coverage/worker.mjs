// A thread starts as plain Node; this lets it read TypeScript before it simulates its cells.
import { parentPort, workerData } from "node:worker_threads";
import { register } from "tsx/esm/api";

register();
const { simulateCell } = await import("./cells.ts");
for (const { index, cell } of workerData.cells)
  parentPort.postMessage({ index, result: simulateCell(cell, workerData.trials) });
