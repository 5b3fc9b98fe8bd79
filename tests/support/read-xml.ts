export type XmlNode = { name: string; attributes: Record<string, string>; children: XmlNode[]; text: string };

const token = /<\?xml[^?]*\?>|<(\/?)([A-Za-z][\w:.-]*)((?:\s+[\w:.-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;
const entities: Record<string, string> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };
const plain = (text: string): string =>
  text.replace(/&(\w*)(;?)/g, (all, name: string, end: string) => {
    if (end === "" || entities[name] === undefined) throw new Error(`not an entity: ${all}`);
    return entities[name];
  });

/**
 * Reads the small part of XML 1.0 that feeds and sitemaps use (elements, quoted attributes, text, the five entities) and
 * throws on anything else, so that a tag left open or a stray "&" fails a test.
 */
export function readXml(xml: string): XmlNode {
  const top: XmlNode = { name: "", attributes: {}, children: [], text: "" };
  const open: XmlNode[] = [top];
  token.lastIndex = 0;
  while (token.lastIndex < xml.length) {
    const at = token.lastIndex;
    const found = token.exec(xml);
    if (!found) throw new Error(`not XML at ${at}: ${xml.slice(at, at + 40)}`);
    const [, closing, name, attributes = "", self, text] = found;
    const parent = open.at(-1)!;
    if (text !== undefined) parent.text += plain(text);
    else if (name !== undefined && closing) {
      if (open.pop()?.name !== name) throw new Error(`</${name}> closes nothing`);
    } else if (name !== undefined) {
      const pairs = [...attributes.matchAll(/([\w:.-]+)="([^"]*)"/g)].map((pair) => [pair[1]!, plain(pair[2]!)]);
      const node: XmlNode = { name, attributes: Object.fromEntries(pairs), children: [], text: "" };
      parent.children.push(node);
      if (!self) open.push(node);
    }
  }
  const [root] = top.children;
  if (open.length !== 1 || top.children.length !== 1 || root === undefined) throw new Error("not one closed element");
  return root;
}
