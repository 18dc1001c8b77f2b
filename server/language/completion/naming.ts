/** What names are looked for, and what is known where one is typed. */
import type { Finding } from "../../core/checks/check.ts";
import type { Say } from "../../core/checks/say.ts";
import type { Model } from "../../core/model/model.ts";
import { type Tree, valueAt } from "../../document/tree.ts";

/** A name that can be put in. */
export interface Name {
  readonly text: string;
  /** in a few words, what it stands for */
  readonly detail: string | undefined;
}

export interface Naming {
  readonly root: Tree;
  /** place of the value, or of the map whose key is typed */
  readonly path: string;
  /** the map that the value belongs to */
  readonly map: Tree | undefined;
  /** what is written so far */
  readonly begun: string;
  /** the newest that could be placed */
  readonly model: Model | undefined;
  /** of the version that was checked last */
  readonly findings: readonly Finding[];
  readonly say: Say;
}

/** The word under a key. */
export function textAt(map: Tree | undefined, key: string): string | undefined {
  return textOf(valueAt(map, key));
}

export function textOf(node: Tree | undefined): string | undefined {
  return node?.kind === "scalar" ? node.text : undefined;
}
