/** Reads XML strictly enough to prove that a drawing is well formed; throws where it is not. */
export interface XmlNode {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: XmlNode[];
  text: string;
}

const TOKEN = /<\/([\w:-]+)>|<([\w:-]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;
const ENTITY = /&(?:amp|lt|gt|quot|#\d+);/g;
const NAMED: Readonly<Record<string, string>> = { "&amp;": "&", "&lt;": "<", "&gt;": ">", "&quot;": '"' };

function decode(text: string): string {
  if (text.replace(ENTITY, "").includes("&")) throw new Error(`bare & in: ${text}`);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: XML 1.0 forbids them
  if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/.test(text))
    throw new Error("forbidden character");
  if (/\p{Surrogate}/u.test(text)) throw new Error("half a surrogate pair");
  return text.replace(ENTITY, (entity) => NAMED[entity] ?? String.fromCodePoint(Number(entity.slice(2, -1))));
}

export function parseXml(xml: string): XmlNode {
  const top: XmlNode = { name: "", attributes: new Map(), children: [], text: "" };
  const open = [top];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < xml.length) {
    const at = TOKEN.lastIndex;
    const token = TOKEN.exec(xml);
    if (token === null) throw new Error(`not XML at ${at}: ${xml.slice(at, at + 60)}`);
    const [, closed, opened, attributes = "", empty, text] = token;
    const parent = open.at(-1)!;
    if (closed !== undefined) {
      if (open.pop()?.name !== closed) throw new Error(`</${closed}> closes nothing`);
    } else if (opened !== undefined) {
      const map = new Map<string, string>();
      for (const [, name, value] of attributes.matchAll(/([\w:-]+)="([^"]*)"/g)) {
        if (map.has(name!)) throw new Error(`${name} twice`);
        map.set(name!, decode(value!));
      }
      const node: XmlNode = { name: opened, attributes: map, children: [], text: "" };
      parent.children.push(node);
      if (empty !== "/") open.push(node);
    } else if (text !== undefined) parent.text += decode(text);
  }
  if (open.length !== 1 || top.children.length !== 1) throw new Error("not one closed root");
  return top.children[0]!;
}

export function* walk(node: XmlNode): Generator<XmlNode> {
  yield node;
  for (const child of node.children) yield* walk(child);
}

export const withId = (root: XmlNode, id: string): XmlNode[] =>
  [...walk(root)].filter((node) => node.attributes.get("data-id") === id);

export const hasClass = (node: XmlNode, name: string): boolean =>
  (node.attributes.get("class") ?? "").split(" ").includes(name);
