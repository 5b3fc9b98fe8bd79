import type { Metadata } from "next";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { BenchTabs } from "../../bench-tabs.tsx";
import { ItemFields } from "../item-fields.tsx";
import { createItem } from "./actions.ts";

export const metadata: Metadata = { title: "New item" };

export default function NewItemPage() {
  return (
    <>
      <PageHead title="New item">
        <p>
          Describe the object so that somebody holding another one can tell whether it is the same. Nothing is public
          until you publish.
        </p>
      </PageHead>
      <BenchTabs current={paths.benchNewItem()} />
      <ActionForm action={createItem} submit="Make the item">
        <ItemFields />
      </ActionForm>
    </>
  );
}
