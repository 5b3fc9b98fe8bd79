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

/** The processor time a process has used so far, in ms (Linux counts it in hundredths of a second); NaN where the system does not tell it. */
export function processorTimeOf(pid: number | undefined): number {
  try {
    const [user, system] = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ").at(-1)?.split(" ").slice(11, 13) ?? [];
    return (Number(user) + Number(system)) * 10;
  } catch {
    return Number.NaN;
  }
}
