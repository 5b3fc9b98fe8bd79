import { notFound } from "next/navigation";

/** An address under /es at which there is nothing: without this page it would fall to the English one. */
export default function NothingHere(): never {
  notFound();
}
