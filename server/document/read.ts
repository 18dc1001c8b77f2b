/**
 * The way from a file's text to a frame: `readFrame`. Everything else in this folder serves it, or leads back from the
 * frame to the text (`source-index.ts`, `edits.ts`).
 */
import type { SourceFact, SourceFacts } from "../core/checks/source-facts.ts";
import type { Frame } from "../core/frame/frame.ts";
import { readYaml } from "./read-yaml.ts";
import { indexOf, type SourceIndex } from "./source-index.ts";
import { toFrame } from "./to-frame.ts";
import type { Tree } from "./tree.ts";
import { validateTree } from "./validate.ts";

export interface Reading {
  readonly text: string;
  readonly frame: Frame;
  /** what was noticed about the writing; `checks/file` words it */
  readonly source: SourceFacts;
  readonly index: SourceIndex;
}

/**
 * Reads a frame file. Never throws, whatever the text; takes time in proportion to it.
 * @param text the whole file as the user wrote it, with its line ends and byte order mark
 * @returns the frame as far as it can be read, the facts about the rest, and the index from places of the frame to
 *   UTF-16 offsets of `text`
 */
export function readFrame(text: string): Reading {
  const { root, facts, incomplete, names } = readYaml(text);
  const about = factsAbout(root, facts, incomplete);
  const { frame, facts: unreadable } = toFrame(root, { names, incomplete, facts: [...facts, ...about] });
  return {
    text,
    frame,
    source: { facts: [...facts, ...about, ...unreadable] },
    index: indexOf(text, root),
  };
}

function factsAbout(
  root: Tree,
  facts: readonly SourceFact[],
  incomplete: ReadonlySet<Tree>,
): readonly SourceFact[] {
  switch (root.kind) {
    case "map":
      return validateTree(root, incomplete);
    case "blank":
      // Where nothing is left because of a fault, the fault is the finding.
      return facts.length > 0 ? [] : [{ kind: "empty" }];
    default:
      return facts.length > 0 ? [] : [{ kind: "not-a-frame", got: root.kind === "list" ? "list" : "text" }];
  }
}
