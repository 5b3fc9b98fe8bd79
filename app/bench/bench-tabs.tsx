import { Tabs } from "@/app/_components/tabs.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { countReadings } from "@/lib/store/readings.ts";
import { requestQueue } from "@/lib/wording/test-requests.ts";

/** The bench's own way about; readings that belong nowhere yet are counted on every screen. */
export async function BenchTabs({ current }: { current: string }) {
  const unassigned = await countReadings(database(), { unassigned: true });
  return (
    <Tabs
      label="Bench"
      current={current}
      tabs={[
        { href: paths.bench(), text: "Items" },
        { href: paths.benchImport(), text: "Load a file" },
        { href: paths.benchHand(), text: "By hand" },
        { href: paths.benchTable(), text: "At the table" },
        { href: paths.benchReadings(), text: "Unassigned", count: unassigned },
        { href: paths.benchSessions(), text: "Sessions" },
        { href: paths.benchCheckStandards(), text: "Check standards" },
        { href: paths.benchInstruments(), text: "Instruments" },
        { href: paths.benchRequests(), text: requestQueue.tab },
      ]}
    />
  );
}
