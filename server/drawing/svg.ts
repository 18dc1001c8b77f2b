/**
 * Writes a drawing as SVG. For paper it carries its own plain style and size; for a page it carries classes only, and
 * the page gives them color and line: `timber` (with `kind-…`, `section`, `edge`, `hatch`), `joint`, `tenon`,
 * `housing`, `wedge`, `peg`, `pier`, `anchor`, `ground`, `earth`, `roof`, `grid-line`, `grid-bubble`, `centre-line`, `dimension`,
 * `label`, `force` (with its layer; in it `positive`, `negative`, `strokes`), `slack`, `value`, `legend`; `with-layer` on the
 * drawing itself says that forces lie over it; `dashed` marks what lies out of sight.
 */
import type { Anchor, Drawing, DrawingElement, PolyElement, Shown, Vertex } from "./drawing.ts";

export interface SvgOptions {
  /** true: with style and size, to be opened or printed by itself */
  readonly standalone: boolean;
}

/** @returns the text with XML's own characters as entities, and what XML cannot hold replaced */
function escaped(text: string): string {
  return (
    text
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that XML 1.0 forbids
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, "\ufffd")
      .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, "\ufffd")
      .replaceAll("&", "&amp;")
      .replaceAll("<", "&lt;")
      .replaceAll(">", "&gt;")
      .replaceAll('"', "&quot;")
      .replace(/[\t\n\r]/g, (space) => `&#${space.charCodeAt(0)};`)
  );
}

/** At most three decimals, without a minus on zero. */
const number = (value: number): string => String(Math.round(value * 1000) / 1000 || 0);
const flip = (y: number): string => number(-y);

type Attributes = readonly (readonly [string, string])[];

function shownAttributes(shown: Shown): Attributes {
  const attributes: [string, string][] = [];
  if (shown.classes !== undefined && shown.classes.length > 0)
    attributes.push(["class", shown.classes.join(" ")]);
  if (shown.id !== undefined) attributes.push(["data-id", shown.id]);
  if (shown.path !== undefined) attributes.push(["data-path", shown.path]);
  if (shown.id !== undefined || shown.path !== undefined) {
    if (shown.covered !== true) attributes.push(["tabindex", "0"]);
    attributes.push(["role", "img"], ["aria-label", shown.title ?? shown.id ?? shown.path ?? ""]);
  }
  return attributes;
}

function tag(name: string, shown: Shown, own: Attributes, content = ""): string {
  const attributes = [...shownAttributes(shown), ...own]
    .map(([key, value]) => ` ${key}="${escaped(value)}"`)
    .join("");
  const title = shown.title === undefined ? "" : `<title>${escaped(shown.title)}</title>`;
  const inner = title + content;
  return inner === "" ? `<${name}${attributes}/>` : `<${name}${attributes}>${inner}</${name}>`;
}

const point = ([x, y]: Vertex): string => `${number(x)},${flip(y)}`;

/**
 * One stretch of a path. The radius of an arc with bulge b over chord c is c (1 + b²) / (4 |b|).
 */
function stretch(from: Vertex, to: Vertex): string {
  const bulge = from[2] ?? 0;
  if (Math.abs(bulge) < 1e-6) return `L${point(to)}`;
  const chord = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const radius = number((chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge)));
  // turning counter-clockwise stays so on the page: SVG's flag 0
  return `A${radius},${radius} 0 ${Math.abs(bulge) > 1 ? 1 : 0} ${bulge > 0 ? 0 : 1} ${point(to)}`;
}

function poly(element: PolyElement): string {
  const { points, closed } = element;
  if (points.every((vertex) => (vertex[2] ?? 0) === 0)) {
    return tag(closed ? "polygon" : "polyline", element, [["points", points.map(point).join(" ")]]);
  }
  const stretches = points.slice(1).map((to, i) => stretch(points[i] ?? to, to));
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return "";
  const back = closed ? (last[2] === undefined ? "Z" : `${stretch(last, first)}Z`) : "";
  return tag("path", element, [["d", `M${point(first)}${stretches.join("")}${back}`]]);
}

const ANCHORS: Readonly<Record<Anchor, string>> = { start: "start", middle: "middle", end: "end" };

function write(element: DrawingElement): string {
  switch (element.type) {
    case "line":
      return tag("line", element, [
        ["x1", number(element.from[0])],
        ["y1", flip(element.from[1])],
        ["x2", number(element.to[0])],
        ["y2", flip(element.to[1])],
      ]);
    case "poly":
      return poly(element);
    case "circle":
      return tag("circle", element, [
        ["cx", number(element.center[0])],
        ["cy", flip(element.center[1])],
        ["r", number(element.radius)],
      ]);
    case "text":
      return tag(
        "text",
        element,
        [
          ["x", number(element.at[0])],
          ["y", flip(element.at[1])],
          ["font-size", number(element.size)],
          ["text-anchor", ANCHORS[element.anchor]],
        ],
        escaped(element.text),
      );
    case "group":
      return tag("g", element, [], element.children.map(write).join(""));
  }
}

/** Forces on paper: blue and brown, hatched apart; the frame under them steps back. */
function forceStyle(wide: (share: number) => string): string[] {
  return [
    `.with-layer .timber{stroke:#999;stroke-width:${wide(0.06)}}`,
    `.with-layer .joint,.with-layer .edge,.with-layer .hatch{stroke:#ccc}`,
    `.with-layer circle.peg{fill:#ccc}`,
    `.positive{fill:#2266aa;fill-opacity:.16;stroke:#15508c;stroke-width:${wide(0.08)}}`,
    `.negative{fill:#b3541e;fill-opacity:.16;stroke:#8c3a0c;stroke-width:${wide(0.08)}}`,
    `.strokes{fill:none;stroke-width:${wide(0.04)}}`,
    `.deflected{stroke:#15508c;stroke-width:${wide(0.14)}}`,
    `.slack{stroke:#000;stroke-width:${wide(0.1)};stroke-dasharray:${wide(0.6)} ${wide(0.45)}}`,
    `.value{stroke:#fff;stroke-width:${wide(0.2)};paint-order:stroke}`,
    `.legend{stroke-width:${wide(0.06)}}`,
    `.legend-box{fill:#fff}`,
  ];
}

/** The sheet of a joint: tinted wood on a paper of its own, so that it is read in dark and light editors alike. */
function jointStyle(wide: (share: number) => string): string[] {
  return [
    `.joint-sheet{background:#fffdf8}`,
    `.wood{fill:#f3dfbd;stroke:none}`,
    `.inner-wood{fill:#b9853f;fill-opacity:.3;stroke:none}`,
    `.inner-wedge{fill:#8a5a1c;fill-opacity:.5;stroke:none}`,
    `.joint-sheet text{stroke:#fffdf8;stroke-width:${wide(0.25)};paint-order:stroke}`,
    `.air{fill:#fffdf8;stroke:none}`,
    `.gone{fill:#fff;fill-opacity:.75;stroke:none}`,
    `.seen,.break{stroke:#2b2012;stroke-width:${wide(0.11)};stroke-linecap:round}`,
    `.break{stroke-width:${wide(0.07)}}`,
    `.hidden{stroke:#5b4a34;stroke-width:${wide(0.07)};stroke-dasharray:${wide(0.35)} ${wide(0.25)}}`,
    `.peg-hole{fill:#fff;stroke:#2b2012;stroke-width:${wide(0.09)}}`,
    `.reference-mark{fill:#2b2012;stroke:none}`,
  ];
}

/** Black on white for paper: heavy outlines, fine dimensions, dashes for what is hidden. Widths follow the text. */
function style(size: number): string {
  const wide = (share: number): string => number(share * size);
  const dash = `${wide(0.5)} ${wide(0.3)}`;
  return [
    `svg{background:#fff;fill:none;stroke:#000;stroke-width:${wide(0.06)};stroke-linejoin:round;font-family:Arial,Helvetica,sans-serif}`,
    `text{fill:#000;stroke:none}`,
    `.timber{fill:#fff;stroke-width:${wide(0.12)}}`,
    `.edge,.hatch,.joint{stroke-width:${wide(0.05)}}`,
    `.section{stroke-width:${wide(0.18)}}`,
    `.joint,.roof{fill:none}`,
    `.tenon,.housing,.dashed{stroke-dasharray:${dash}}`,
    `.wedge{fill:#bbb}`,
    `circle.peg{fill:#000;stroke:none}`,
    `.pier{fill:#eee}`,
    `.ground{stroke-width:${wide(0.14)}}`,
    `.ground .dashed{stroke-width:${wide(0.05)}}`,
    `.earth{stroke-width:${wide(0.05)}}`,
    `.grid-line,.centre-line{stroke:#666;stroke-width:${wide(0.05)};stroke-dasharray:${wide(1.4)} ${wide(0.3)} ${wide(0.2)} ${wide(0.3)}}`,
    `.grid-bubble{fill:#fff}`,
    `.dimension{stroke:#333;stroke-width:${wide(0.05)}}`,
    `text.dimension{stroke:none}`,
    `.title{font-weight:bold}`,
    ...forceStyle(wide),
    ...jointStyle(wide),
  ].join("");
}

/**
 * @returns SVG text without scripts and outside references; the same drawing always gives the same text
 */
export function toSvg(drawing: Drawing, options: SvgOptions): string {
  const { left, right, bottom, top } = drawing.viewBox;
  const [width, height] = [right - left, top - bottom];
  const own: [string, string][] = [
    ["xmlns", "http://www.w3.org/2000/svg"],
    ["viewBox", `${number(left)} ${flip(top)} ${number(width)} ${number(height)}`],
    ["role", "group"],
    ["aria-label", drawing.title],
  ];
  if (options.standalone) {
    own.push(
      ["width", `${number(width * drawing.scale)}in`],
      ["height", `${number(height * drawing.scale)}in`],
    );
  }
  const head = options.standalone ? `<style>${style(drawing.textSize)}</style>` : "";
  const body = drawing.elements.map(write).join("\n");
  return `${tag("svg", { ...(drawing.classes ? { classes: drawing.classes } : {}), title: drawing.title }, own, `${head}\n${body}\n`)}\n`;
}
