import { readFileSync } from "node:fs";

export type Memory = { now: number; highest: number };

/** A process's memory now and at its highest, in MB; null where the system does not tell it. */
export function memoryOf(pid: number | undefined): Memory | null {
  try {
    const status = readFileSync(`/proc/${pid}/status`, "utf8");
    const kilobytes = (name: string) => Number(new RegExp(`${name}:\\s+(\\d+) kB`).exec(status)?.[1] ?? Number.NaN);
    return { now: kilobytes("VmRSS") / 1000, highest: kilobytes("VmHWM") / 1000 };
  } catch {
    return null;
  }
}
