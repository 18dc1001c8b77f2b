/** What a completion makes of a text, as an editor carries it out. */

import { TextDocument } from "vscode-languageserver-textdocument";
import type { CompletionItem } from "vscode-languageserver-types";
import { type CompletionAbilities, completionsAt } from "../../server/language/completion.ts";

export const SNIPPETS: CompletionAbilities = { snippets: true, markdown: true, asIs: true };
export const PLAIN: CompletionAbilities = { snippets: false, markdown: false, asIs: false };

interface Completed {
  readonly items: readonly CompletionItem[];
  /** the text once the item has been chosen, and where the cursor is then */
  choose(item: CompletionItem): { readonly text: string; readonly cursor: number };
}

export function completed(text: string, offset: number, able = SNIPPETS, trigger?: string): Completed {
  const document = TextDocument.create("file:///c.frame.yaml", "yaml", 1, text);
  return {
    items: completionsAt(document, document.positionAt(offset), able, undefined, trigger),
    choose(item) {
      if (!item.textEdit || !("range" in item.textEdit)) throw new Error("no edit");
      const { range, newText } = item.textEdit;
      const [start, end] = [document.offsetAt(range.start), document.offsetAt(range.end)];
      const { written, cursor } = expanded(newText, item.insertTextFormat === 2);
      return { text: text.slice(0, start) + written + text.slice(end), cursor: start + cursor };
    },
  };
}

function expanded(newText: string, snippet: boolean): { written: string; cursor: number } {
  if (!snippet) return { written: newText, cursor: newText.length };
  let written = "";
  let cursor: number | undefined;
  // `\\$`, `${1:what may be typed over}`, `${1|the first,of a choice|}`, `$2`, `$0`, and any other character
  for (const [part, kept, typedOver, first, gap] of newText.matchAll(
    /\\([\\$}])|\$\{\d+:((?:\\.|[^\\}])*)\}|\$\{\d+\|([^,|]*)[^|]*\|\}|\$(\d+)|./gsu,
  )) {
    if (gap === "0") cursor = written.length;
    if (gap !== undefined) continue;
    written += kept ?? typedOver?.replace(/\\([\\$}])/g, "$1") ?? first ?? part;
  }
  return { written, cursor: cursor ?? written.length };
}

interface At {
  readonly text: string;
  readonly offset: number;
}

/** The fixture with LF, CRLF, a byte order mark and an emoji in the line above. */
export function variantsOf(written: string): readonly At[] {
  const whole = (text: string): At => ({ text: text.replace("$0", ""), offset: text.indexOf("$0") });
  return [
    whole(written),
    whole(written.replaceAll("\n", "\r\n")),
    whole(`\uFEFF${written}`),
    whole(`# 🪵 🪓\n${written}`),
  ];
}
