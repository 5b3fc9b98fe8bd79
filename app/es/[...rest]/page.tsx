import { notFound } from "next/navigation";

/** Whatever else is asked for under the language's address gets its own page of "not here". */
export default function NothingHere() {
  notFound();
}
