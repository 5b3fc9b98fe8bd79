import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { connection } from "next/server";
import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { PageLink } from "@/app/_components/page-link.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { paths } from "@/lib/platform/paths.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { requestPageIn } from "@/lib/wording/test-requests.ts";
import { loadRequest } from "./load-request.ts";

type Props = { params: Promise<{ id: string }>; language?: Language };

export async function generateMetadata({ params, language = "en" }: Props): Promise<Metadata> {
  const { id } = await params;
  return {
    title: requestPageIn[language].title,
    robots: { index: false },
    alternates: {
      ...alternates(paths.request(id), language),
      types: { "application/atom+xml": pathsIn[language].requestFeed(id) },
    },
  };
}

/** What became of a request. Its address is all a reader needs to come back. */
export default async function RequestPage({ params, language = "en" }: Props) {
  const requestPage = requestPageIn[language];
  const searchPage = catalogueIn[language].search;
  await connection();
  const found = await loadRequest((await params).id);
  if (!found) notFound();
  const { request, published } = found;
  return (
    <>
      <PageHead title={request.description} kicker={requestPage.title} />
      {published ? (
        <>
          <p className="answer">
            <strong>
              <Told
                text={itemAnswer(published.snapshot, language).headline}
                own={published.snapshot.specimens.flatMap(({ parts }) => parts.map(({ name }) => name))}
                language={language}
              />
            </strong>
          </p>
          <p>
            <a href={pathsIn[language].item(published.entry.slug)}>
              {requestPage.read}: {asWritten(published.snapshot.item.name, language)}
            </a>
          </p>
        </>
      ) : (
        <p className="answer">
          <strong>{request.state === "tied" ? requestPage.notPublished : requestPage.states[request.state]}</strong>
        </p>
      )}
      <p>{requestPage.asked(request.count)}</p>
      <p>
        {requestPage.follow}{" "}
        <PageLink href={pathsIn[language].requestFeed(request.id)} language={language}>
          {requestPage.feed}
        </PageLink>
      </p>
      {published ? null : (
        <>
          <Warning language={language}>{requestPage.caution}</Warning>
          <ul>
            {searchPage.whatToDo.slice(2).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
