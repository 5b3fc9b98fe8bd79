/** Control characters but tab and line ends, the two non-characters, and lone surrogates: XML 1.0 §2.2 has no room for them. */
const forbidden = /(?![\t\n\r])\p{Cc}|[\uFFFE\uFFFF]|\p{Cs}/gu;

/** Text for an XML element or a quoted attribute; what XML cannot carry becomes U+FFFD, so that nothing vanishes unseen. */
export const xmlText = (text: string): string =>
  text
    .replace(forbidden, "\uFFFD")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
