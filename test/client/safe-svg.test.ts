import { describe, expect, it } from "vitest";
import { drawsOnly, isHarmless } from "../../client/preview/safe-svg.ts";

describe("what the preview takes from an SVG", () => {
  it.each(["g", "path", "text", "title", "line"])("takes %s", (element) =>
    expect(drawsOnly(element)).toBe(true),
  );

  it.each(["script", "foreignObject", "iframe", "image", "style", "a", "animate", "set", "SCRIPT"])(
    "drops %s",
    (element) => expect(drawsOnly(element)).toBe(false),
  );

  it.each([
    ["d", "M 0 0 L 1 1"],
    ["data-id", "post@A1"],
    ["href", "#arrow"],
    ["xlink:href", " #arrow"],
    ["marker-end", "url(#arrow)"],
    ["clip-path", 'url( "#bay" )'],
  ])('keeps %s="%s"', (name, value) => expect(isHarmless(name, value)).toBe(true));

  it.each([
    ["onclick", "steal()"],
    ["ONLOAD", "steal()"],
    ["style", "fill: red"],
    ["href", "javascript:steal()"],
    ["xlink:href", "https://example.com/x.svg#y"],
    ["fill", "url(https://example.com/x.svg#y)"],
    ["fill", 'URL( "https://example.com/x" )'],
  ])('drops %s="%s"', (name, value) => expect(isHarmless(name, value)).toBe(false));
});
