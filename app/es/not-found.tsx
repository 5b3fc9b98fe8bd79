import { NotFoundPage } from "@/app/_site/not-found-page.tsx";

export default function NotFoundInSpanish() {
  return <NotFoundPage language="es" />;
}
