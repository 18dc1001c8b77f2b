/** Takes from an SVG only what draws: text of a file reaches the drawing, so nothing in it may run or load. */

const ELEMENTS = new Set([
  ...["svg", "g", "defs", "title", "desc", "marker", "pattern", "clipPath", "use", "symbol"],
  ...["path", "line", "polyline", "polygon", "rect", "circle", "ellipse", "text", "tspan"],
]);

/** True for an element that only draws or groups. */
export function drawsOnly(element: string): boolean {
  return ELEMENTS.has(element);
}

/** True for an attribute that neither runs a script, nor carries a style, nor refers outside the drawing. */
export function isHarmless(attribute: string, value: string): boolean {
  const name = attribute.toLowerCase();
  if (name.startsWith("on") || name === "style") return false;
  if (name === "href" || name.endsWith(":href")) return value.trim().startsWith("#");
  return !/url\((?!\s*['"]?#)/i.test(value);
}

/**
 * The root of an SVG text, cleaned; undefined where the text is not an SVG.
 * @param parse makes a document of SVG text, as the page's `DOMParser` does
 */
export function safeSvg(text: string, parse: (text: string) => Document): Element | undefined {
  const root = parse(text).documentElement;
  if (root.localName !== "svg" || root.querySelector("parsererror") !== null) return undefined;
  for (const element of [root, ...root.querySelectorAll("*")]) {
    if (!drawsOnly(element.localName)) {
      element.remove();
      continue;
    }
    for (const { name, value } of [...element.attributes]) {
      if (!isHarmless(name, value)) element.removeAttribute(name);
    }
  }
  return root;
}
