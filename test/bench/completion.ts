/** Measures how long the list of a completion takes, warm, as an editor asks for it: with the frame that was checked last. */
import { TextDocument } from "vscode-languageserver-textdocument";
import { readYaml, walkTree } from "../../server/document/read-yaml.ts";
import { lineEnd } from "../../server/document/tree.ts";
import { completionsAt } from "../../server/language/completion.ts";
import { createFrameService } from "../../server/language/frame-service.ts";

interface Asked {
  readonly text: string;
  readonly offset: number;
}

/** Every value of the text taken away, and a blank line under every line, at its own indentation and at column 0. */
function places(text: string): readonly Asked[] {
  const values = [...walkTree(readYaml(text).root)].flatMap(({ node }): Asked[] =>
    node.kind === "scalar" && !node.quoted
      ? [{ text: text.slice(0, node.range.start) + text.slice(node.range.end), offset: node.range.start }]
      : [],
  );
  const blanks: Asked[] = [];
  for (let end = lineEnd(text, 0); end < text.length; end = lineEnd(text, end + 1)) {
    const line = text.slice(0, end);
    const indent = /(?:^|\n)( *)[^\n]*$/.exec(line)?.[1] ?? "";
    for (const own of new Set([indent, ""]))
      blanks.push({ text: `${line}\n${own}${text.slice(end)}`, offset: end + 1 + own.length });
  }
  return [...values, ...blanks];
}

const WARM = 2;
const COUNT = 5;

/** @returns ms: the middle of all places, and the slowest of them; for each place the median of its runs */
export function completionTimes(
  name: string,
  text: string,
): { readonly middle: number; readonly most: number } {
  const uri = `file:///${name}`;
  const service = createFrameService();
  service.open(uri, 1, text);
  const times = places(text).map(({ text: typed, offset }) => {
    const document = TextDocument.create(uri, "yaml", 2, typed);
    const position = document.positionAt(offset);
    const runs: number[] = [];
    for (let run = 0; run < WARM + COUNT; run++) {
      const start = performance.now();
      completionsAt(
        document,
        position,
        { snippets: true, markdown: true, asIs: true },
        service.drawable(uri),
      );
      if (run >= WARM) runs.push(performance.now() - start);
    }
    return median(runs);
  });
  return { middle: median(times), most: Math.max(...times) };
}

function median(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;
}
