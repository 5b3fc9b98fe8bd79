/** Every URL of the product, once. Nobody types an address twice. */
const q = (value: string): string => encodeURIComponent(value);

export const paths = {
  home: () => "/",
  items: (query?: string) => (query === undefined ? "/items" : `/items?q=${q(query)}`),
  /** What goes on as typed; asked by the search field only. */
  suggestions: (query: string, language?: string) =>
    `/items/suggestions?${language === undefined ? "" : `language=${q(language)}&`}q=${q(query)}`,
  /** Two to four items side by side. */
  compare: (slugs: readonly string[] = []) =>
    `/items/compare${slugs.map((slug, i) => `${i ? "&" : "?"}item=${q(slug)}`).join("")}`,
  /** Where the camera reads a bar code. */
  scan: () => "/scan",
  item: (slug: string) => `/items/${q(slug)}`,
  revision: (slug: string, revision: number) => `/items/${q(slug)}/revisions/${revision}`,
  /** Where a reader's own browser makes a revision's figures again. */
  recompute: (slug: string, revision: number) => `/items/${q(slug)}/revisions/${revision}/recompute`,
  difference: (slug: string, revision: number) => `/items/${q(slug)}/revisions/${revision}/difference`,
  /** "Please test this"; `query` is what was looked for in vain. */
  requestTest: (query = "") => `/requests/new${query === "" ? "" : `?q=${q(query)}`}`,
  sendRequest: () => "/requests/send",
  request: (id: string) => `/requests/${q(id)}`,
  requestFeed: (id: string) => `/requests/${q(id)}/feed.xml`,
  benchRequests: () => "/bench/requests",
  benchRequestPhoto: (id: string) => `/bench/requests/${q(id)}/photo`,
  /** What is printed or shown elsewhere of a revision; the newest without a number. */
  report: (slug: string, revision?: number) => `/items/${q(slug)}/report${revision ? `?revision=${revision}` : ""}`,
  labels: (slug: string) => `/items/${q(slug)}/labels`,
  labelSvg: (slug: string) => `/items/${q(slug)}/label.svg`,
  cardSvg: (slug: string, revision?: number) => `/items/${q(slug)}/card.svg${revision ? `?revision=${revision}` : ""}`,
  limits: () => "/limits",
  limit: (id: string) => `/limits/${q(id)}`,
  methods: () => "/methods",
  /** The calculator; `query` is its state as `serialiseAmounts` writes it. */
  amounts: (query = "") => `/amounts${query === "" ? "" : `?${query}`}`,
  amountsSvg: (query = "") => `/amounts/drawing.svg${query === "" ? "" : `?${query}`}`,
  amountsPng: (query = "") => `/amounts/drawing.png${query === "" ? "" : `?${query}`}`,
  /** Revisions with a reason, the newest before entry `before` of the log first. */
  corrections: (before?: number) => `/corrections${before ? `?before=${before}` : ""}`,
  correctionsFeed: () => "/corrections/feed.xml",
  log: (before?: number) => `/log${before ? `?before=${before}` : ""}`,
  feedXml: () => "/feed.xml",
  feedJson: () => "/feed.json",
  sitemap: () => "/sitemap.xml",
  healthz: () => "/healthz",
  style: () => "/style",
  photo: (key: string) => `/photos/${q(key)}`,
  api: {
    openapi: () => "/api/v1/openapi.json",
    items: () => "/api/v1/items",
    item: (slug: string, revision?: number) => `/api/v1/items/${q(slug)}${revision ? `?revision=${revision}` : ""}`,
    readings: (slug: string, revision?: number) =>
      `/api/v1/items/${q(slug)}/readings.csv${revision ? `?revision=${revision}` : ""}`,
    limits: () => "/api/v1/limits",
    log: () => "/api/v1/log",
  },
  /** The whole registry as files; `seq` asks for it as it stood at that entry of the log. */
  data: {
    dataPackage: (seq?: number) => `/data/datapackage.json${seq ? `?seq=${seq}` : ""}`,
    results: (seq?: number) => `/data/results.csv${seq ? `?seq=${seq}` : ""}`,
    readings: (seq?: number) => `/data/readings.csv${seq ? `?seq=${seq}` : ""}`,
    log: (seq?: number) => `/data/log.json${seq ? `?seq=${seq}` : ""}`,
  },
  signIn: () => "/account/sign-in",
  /** The second step of a sign-in that goes on to `next`. */
  signInCode: (next: string) => `/account/sign-in/code?next=${q(next)}`,
  secondStep: () => "/account/second-step",
  setUp: () => "/account/set-up",
  account: () => "/account",
  people: () => "/account/people",
  /** An invitation's link: whoever holds it may join, once. */
  join: (token: string) => `/account/join/${q(token)}`,
  bench: () => "/bench",
  benchImport: () => "/bench/import",
  benchImportBatch: (id: string) => `/bench/imports/${q(id)}`,
  benchReadings: () => "/bench/readings",
  benchItemsFromReadings: () => "/bench/readings/new-items",
  benchHand: () => "/bench/by-hand",
  benchNewItem: () => "/bench/items/new",
  benchTestCertificate: (itemId: string, testId: string) => `/bench/items/${q(itemId)}/tests/${q(testId)}/certificate`,
  benchItem: (id: string) => `/bench/items/${q(id)}`,
  benchPhotos: (id: string) => `/bench/items/${q(id)}/photos`,
  benchPhotoUpload: (id: string) => `/bench/items/${q(id)}/photos/upload`,
  benchPhoto: (id: string, photoId: string) => `/bench/items/${q(id)}/photos/${q(photoId)}`,
  benchTable: () => "/bench/table",
  benchTableSend: () => "/bench/table/send",
  benchInstruments: () => "/bench/instruments",
  benchSessions: () => "/bench/sessions",
  benchNewSession: (query = "") => `/bench/sessions/new${query}`,
  benchSession: (id: string) => `/bench/sessions/${q(id)}`,
  benchEditSession: (id: string) => `/bench/sessions/${q(id)}/edit`,
  benchCheckStandards: () => "/bench/check-standards",
  benchNewCheckStandard: () => "/bench/check-standards/new",
  benchCheckStandard: (id: string) => `/bench/check-standards/${q(id)}`,
  benchEditCheckStandard: (id: string) => `/bench/check-standards/${q(id)}/edit`,
  benchCertificate: (id: string) => `/bench/check-standards/${q(id)}/certificate`,
  terms: () => "/account/terms",
  review: () => "/review",
  reviewItem: (id: string) => `/review/${q(id)}`,
  partConsistency: (id: string, query = "") => `/review/${q(id)}/consistency${query}`,
  itemHistory: (id: string) => `/review/${q(id)}/history`,
  registryConsistency: () => "/review/consistency",
  retests: () => "/review/retests",
} as const;
