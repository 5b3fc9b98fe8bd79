import { paths } from "../platform/paths.ts";
import { resultsByWeight } from "../publication/leading-decision.ts";
import type { SnapshotResult } from "../publication/snapshot.ts";
import { itemAnswer } from "../wording/answers.ts";
import { elementTitle } from "../wording/elements.ts";
import { resultText } from "../wording/formats.ts";
import { labelOf, labelsIn } from "../wording/labels.ts";
import type { Language } from "../wording/language.ts";
import { pathsIn } from "../wording/localized-paths.ts";
import { methodName } from "../wording/models.ts";
import { shareIn } from "../wording/share.ts";
import { licenceOf } from "./licence.ts";
import { absoluteUrl, type PublishedRevision } from "./published-revision.ts";
import { ucumCode } from "./ucum.ts";

type JsonLd = { [key: string]: string | number | boolean | JsonLd | JsonLd[] | string[] };

/**
 * An item's page for machines: a schema.org Dataset about a Product, one PropertyValue for each part and element. Never an
 * Offer, a rating or a Certification: a measurement is none of these. `minValue` and `maxValue` are the ends of the
 * 95 % interval; of what was not detected only `maxValue` is given, the level it lies below.
 *
 * Source of the vocabulary: schema.org Dataset, Product, PropertyValue, DataDownload, CorrectionComment.
 */
export function itemJsonLd({ snapshot, entry }: PublishedRevision, baseUrl: string, language: Language = "en"): JsonLd {
  const { item, registry, slug, revision } = snapshot;
  const here = pathsIn[language];
  const page = absoluteUrl(baseUrl, here.item(slug));
  const permanent = absoluteUrl(baseUrl, paths.revision(slug, revision));
  const licence = licenceOf(registry.licence);
  const answer = itemAnswer(snapshot, language);
  return {
    "@context": "https://schema.org",
    "@type": "Dataset",
    "@id": permanent,
    name: shareIn[language].dataset(item.name),
    description: [answer.headline, ...answer.sentences].join(" "),
    url: page,
    identifier: [permanent, `sha256:${entry.snapshotSha256}`],
    version: String(revision),
    inLanguage: language,
    isAccessibleForFree: true,
    license: licence.path ?? { "@type": "CreativeWork", name: licence.title },
    creator: snapshot.testers.map(({ name }) => ({ "@type": "Person", name })),
    publisher: {
      "@type": "Organization",
      name: registry.name,
      url: absoluteUrl(baseUrl, paths.home()),
      correctionsPolicy: absoluteUrl(baseUrl, here.corrections()),
      ...(registry.contact ? { email: registry.contact } : {}),
    },
    datePublished: snapshot.publishedAt,
    dateModified: snapshot.publishedAt,
    temporalCoverage: snapshot.testedOn,
    measurementTechnique: absoluteUrl(baseUrl, here.methods()),
    about: productOf({ snapshot, entry }, absoluteUrl(baseUrl, paths.item(slug)), language),
    variableMeasured: resultsByWeight(snapshot).map(({ part, result }) =>
      propertyOf(part.name, result, baseUrl, language),
    ),
    distribution: [
      download("application/json", absoluteUrl(baseUrl, paths.api.item(slug, revision)), entry.snapshotSha256),
      download("text/csv", absoluteUrl(baseUrl, paths.api.readings(slug, revision)), null),
    ],
    ...(revision > 1 ? { isBasedOn: absoluteUrl(baseUrl, paths.revision(slug, revision - 1)) } : {}),
    ...(snapshot.kind === "correction" || snapshot.kind === "withdrawal"
      ? {
          correction: {
            "@type": "CorrectionComment",
            text: snapshot.reason ?? "",
            datePublished: snapshot.publishedAt,
          },
        }
      : {}),
  };
}

function productOf({ snapshot }: PublishedRevision, page: string, language: Language): JsonLd {
  const { item } = snapshot;
  return {
    "@type": "Product",
    "@id": `${page}#product`,
    name: item.name,
    category: labelOf(labelsIn[language].category, item.category),
    ...(item.aliases.length > 0 ? { alternateName: item.aliases } : {}),
    ...(item.description ? { description: item.description } : {}),
    ...(item.maker ? { brand: { "@type": "Brand", name: item.maker } } : {}),
    ...(item.gtin ? { gtin14: item.gtin } : {}),
  };
}

function propertyOf(part: string, result: SnapshotResult, baseUrl: string, language: Language): JsonLd {
  const code = ucumCode(result.unit);
  const [low, high] = result.interval ?? [null, result.below ?? result.upperBound];
  return {
    "@type": "PropertyValue",
    name: `${elementTitle(result.element, language)}, ${part}`,
    propertyID: `${result.element} ${result.quantity}`,
    description: resultText(result, language),
    ...(result.value === null ? {} : { value: result.value }),
    ...(low === null ? {} : { minValue: low }),
    ...(high === null ? {} : { maxValue: high }),
    unitText: result.unit,
    ...(code === null ? {} : { unitCode: `UCUM:${code}` }),
    measurementTechnique: absoluteUrl(baseUrl, pathsIn[language].methods()),
    measurementMethod: methodName(result, language),
  };
}

const download = (encodingFormat: string, contentUrl: string, sha256: string | null): JsonLd => ({
  "@type": "DataDownload",
  encodingFormat,
  contentUrl,
  ...(sha256 === null ? {} : { sha256 }),
});

/**
 * JSON for the inside of a script tag: `<` becomes \u003c, so that no text of an item can end the tag; the two line
 * separators that older scripts end a line at are escaped too. It parses to the same value.
 */
export const jsonForScript = (value: unknown): string =>
  JSON.stringify(value).replaceAll("<", "\\u003c").replaceAll("\u2028", "\\u2028").replaceAll("\u2029", "\\u2029");
