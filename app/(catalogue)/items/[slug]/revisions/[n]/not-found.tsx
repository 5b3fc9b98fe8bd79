import { NoSuchRevision } from "../../../../_item/no-such-revision.tsx";

export default function NoSuchRevisionInEnglish() {
  return <NoSuchRevision language="en" />;
}
