/** A drawing as a picture in Markdown. */
import type { Drawing } from "../drawing/drawing.ts";
import { toSvg } from "../drawing/svg.ts";
import { escapeMarkdown } from "./hover/table.ts";

/** CSS pixels: its letters are read well, and most of it is seen before one scrolls. */
const WIDTH = 360;

/** @returns Markdown that holds the picture itself */
export function pictureOf(title: string, drawing: Drawing): string {
  const svg = toSvg(drawing, { standalone: true });
  return `![${escapeMarkdown(title)}](data:image/svg+xml;base64,${base64(svg)}|width=${WIDTH})`;
}

/** Of text in UTF-8. */
function base64(text: string): string {
  const bytes = new TextEncoder().encode(text);
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
}
