import type { Metadata } from "next";
import { PageHead } from "@/app/_components/entry.tsx";
import { systemClock } from "@/lib/platform/clock.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listInstruments } from "@/lib/store/instruments.ts";
import { BenchTabs } from "../bench-tabs.tsx";
import { HandSheet } from "./hand-sheet.tsx";

export const metadata: Metadata = { title: "Write down by hand" };

export default async function ByHandPage() {
  const instruments = await listInstruments(database());
  return (
    <>
      <PageHead title="Write down by hand">
        <p>
          For an analyser that only has a screen, or a page of a notebook. What you type is kept as a file, like every
          other, and each figure stays as you wrote it.
        </p>
      </PageHead>
      <BenchTabs current={paths.benchHand()} />
      <noscript>
        <p>
          This sheet needs scripts. Without them, type the readings into a table of your own and{" "}
          <a href={paths.benchImport()}>load it as a file</a>.
        </p>
      </noscript>
      <HandSheet
        today={systemClock().toISOString().slice(0, 10)}
        zones={["UTC", ...Intl.supportedValuesOf("timeZone")]}
        instruments={instruments.map(({ id, name, errorK, timeZone }) => ({ id, name, errorK, timeZone }))}
      />
    </>
  );
}
