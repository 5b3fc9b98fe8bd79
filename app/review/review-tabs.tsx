import { Tabs } from "@/app/_components/tabs.tsx";
import type { Person } from "@/lib/access/permissions.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { openRetestsFor } from "@/lib/store/retests.ts";

/** The review desk's own way about; re-tests that wait for this person are counted on every screen. */
export async function ReviewTabs({ current, person }: { current: string; person: Person | null }) {
  const waiting = person ? (await openRetestsFor(database(), person.id)).length : 0;
  return (
    <Tabs
      label="Review"
      current={current}
      tabs={[
        { href: paths.review(), text: "Waiting" },
        { href: paths.retests(), text: "Re-tests", ...(waiting > 0 ? { count: waiting } : {}) },
        { href: paths.registryConsistency(), text: "Consistency" },
      ]}
    />
  );
}
