import { NotFoundPage } from "@/app/_site/not-found-page.tsx";

export default function NothingHere() {
  return <NotFoundPage language="en" />;
}
