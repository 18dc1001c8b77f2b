/**
 * Texts whose names are marked: `⟪post⟫` where it is defined, `«post»` where it is used, `$0` at the cursor. The marked
 * ones are all that the name at the cursor has.
 */
import type { Position, Range } from "vscode-languageserver-types";
import { createFrameService, type ReadText } from "../../server/language/frame-service.ts";
import { dedent, VARIANTS } from "../fixtures.ts";

export interface Marked {
  readonly text: ReadText;
  readonly cursor: Position;
  readonly definitions: readonly Range[];
  readonly uses: readonly Range[];
  /** definitions and uses, in the order of the text */
  readonly names: readonly Range[];
}

export function readText(text: string): ReadText {
  return createFrameService().read("file:///moving.frame.yaml", 1, text);
}

/** The same text in every way in which it can reach us. */
export function inEveryWriting(written: string): readonly (Marked & { readonly writing: string })[] {
  const spans: { readonly start: number; readonly end: number; readonly defines: boolean }[] = [];
  let plain = "";
  let start = 0;
  let cursor: number | undefined;
  for (const token of dedent(written).split(/([«»⟪⟫]|\$0)/)) {
    if (token === "«" || token === "⟪") start = plain.length;
    else if (token === "»" || token === "⟫") spans.push({ start, end: plain.length, defines: token === "⟫" });
    else if (token === "$0") cursor = plain.length;
    else plain += token;
  }
  if (cursor === undefined) throw new Error("no cursor in the fixture");
  const at = cursor;
  return VARIANTS.map((variant) => {
    const text = readText(variant.text(plain));
    const position = (offset: number): Position =>
      text.document.positionAt(variant.text(plain.slice(0, offset)).length);
    const ranges = (wanted: typeof spans): Range[] =>
      wanted.map((span) => ({ start: position(span.start), end: position(span.end) }));
    return {
      writing: variant.name,
      text,
      cursor: position(at),
      definitions: ranges(spans.filter((span) => span.defines)),
      uses: ranges(spans.filter((span) => !span.defines)),
      names: ranges(spans),
    };
  });
}
