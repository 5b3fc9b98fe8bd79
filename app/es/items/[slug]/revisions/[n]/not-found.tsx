import { NoSuchRevision } from "@/app/(catalogue)/_item/no-such-revision.tsx";

export default function NoSuchRevisionInSpanish() {
  return <NoSuchRevision language="es" />;
}
