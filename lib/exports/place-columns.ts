import type { Snapshot, SnapshotPart, SnapshotResult } from "../publication/snapshot.ts";
import type { Column } from "./csv-table.ts";

/** Where a figure stands: which revision, object, part and result it is of. */
export type Placed = {
  snapshot: Snapshot;
  specimen: Snapshot["specimens"][number];
  part: SnapshotPart;
  result: SnapshotResult;
};

/** The columns of which page: first in every table. */
export const pageColumns: readonly Column<Placed>[] = [
  { name: "item", type: "string", description: "Item, by its address", cell: (r) => r.snapshot.slug },
  {
    name: "revision",
    type: "integer",
    description: "Revision of the published page",
    cell: (r) => r.snapshot.revision,
  },
];

/** The columns of which part, and which element in it. */
export const partColumns: readonly Column<Placed>[] = [
  { name: "specimen", type: "string", description: "The very object tested", cell: (r) => r.specimen.label },
  { name: "part", type: "string", description: "Part of the object", cell: (r) => r.part.name },
  { name: "material", type: "string", description: "Material of the part", cell: (r) => r.part.material },
  { name: "form", type: "string", description: "bulk or coating", cell: (r) => r.part.form },
  { name: "element", type: "string", description: "Chemical symbol", cell: (r) => r.result.element },
  { name: "quantity", type: "string", description: "Kind of quantity", cell: (r) => r.result.quantity },
];
