import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { connection } from "next/server";
import { PageHead } from "@/app/_components/entry.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { searchPage } from "@/lib/wording/catalogue.ts";
import { requestPage } from "@/lib/wording/test-requests.ts";
import { loadRequest } from "./load-request.ts";

type Props = { params: Promise<{ id: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { id } = await params;
  return {
    title: requestPage.title,
    robots: { index: false },
    alternates: { types: { "application/atom+xml": paths.requestFeed(id) } },
  };
}

/** What became of a request. Its address is all a reader needs to come back. */
export default async function RequestPage({ params }: Props) {
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
            <strong>{itemAnswer(published.snapshot).headline}</strong>
          </p>
          <p>
            <a href={paths.item(published.entry.slug)}>
              {requestPage.read}: {published.snapshot.item.name}
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
        {requestPage.follow} <a href={paths.requestFeed(request.id)}>{requestPage.feed}</a>
      </p>
      {published ? null : (
        <>
          <Warning>{requestPage.caution}</Warning>
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
