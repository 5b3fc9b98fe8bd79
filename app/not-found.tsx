import { SiteDocument } from "./_site/document.tsx";
import { NotFoundPage } from "./_site/not-found-page.tsx";

export default function NotFound() {
  return (
    <SiteDocument language="en">
      <NotFoundPage language="en" />
    </SiteDocument>
  );
}
