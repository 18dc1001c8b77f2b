/**
 * Completion: keys of the map that is typed in, values of the key that is typed behind. It needs the text alone, so it
 * answers before the check does; only single sticks come from the frame that was placed last.
 */

import type { TextDocument } from "vscode-languageserver-textdocument";
import {
  type CompletionItem,
  CompletionItemKind,
  InsertTextFormat,
  InsertTextMode,
  MarkupKind,
  type Position,
} from "vscode-languageserver-types";
import type { Say } from "../core/checks/say.ts";
import { makeSay, type Translate } from "../core/checks/speak.ts";
import type { Model } from "../core/model/model.ts";
import { keysOf, lineEnd, type Tree, valueAt } from "../document/tree.ts";
import { type TypedKey, type TypedValue, typingsAt } from "../document/typing.ts";
import type { Choice } from "./completion/choice.ts";
import { escaped } from "./completion/entries.ts";
import type { Hand } from "./completion/form.ts";
import { keyChoices } from "./completion/keys.ts";
import type { Naming } from "./completion/naming.ts";
import { valueChoices } from "./completion/values.ts";
import type { LocatedFinding } from "./frame-service.ts";

/** Characters that open the list by themselves: behind a colon, a comma, a dash or a number comes a blank. */
export const TRIGGERS: readonly string[] = [" ", "{", "[", "@"];

/** What the editor can do with an answer. */
export interface CompletionAbilities {
  /** the cursor may be put inside what is inserted */
  readonly snippets: boolean;
  readonly markdown: boolean;
  /** told to leave indentation as it comes */
  readonly asIs: boolean;
  /** its command that opens the list again behind a key, where it has one */
  readonly again?: string | undefined;
  /** words the explanations in the reader's language; left out: English */
  readonly translate?: Translate;
}

/** What is known of the document besides its text. */
export interface KnownFrame {
  /** the newest that could be placed */
  readonly model: Model;
  readonly say: Say;
  /** of the version that was checked last */
  readonly findings: readonly LocatedFinding[];
}

/**
 * @param trigger the character of {@link TRIGGERS} that opened the list; undefined where the user asked for it
 * @returns in the order in which they should be shown; nothing in comments, quotes and free words
 */
export function completionsAt(
  document: TextDocument,
  position: Position,
  able: CompletionAbilities,
  known?: KnownFrame,
  trigger?: string,
): CompletionItem[] {
  const text = document.getText();
  const offset = document.offsetAt(position);
  // Blanks that begin a line are indentation: nobody asks anything yet.
  const line = text.slice(document.offsetAt({ ...position, character: 0 }), offset);
  if (trigger === " " && line.trim() === "") return [];
  for (const typed of typingsAt(text, offset)) {
    const naming = namingOf(typed, known, able.translate);
    const choices =
      typed.role === "key" ? keyChoices(typed, naming, handOf(text)) : valueChoices(typed, naming);
    if (choices.length > 0) return choices.map((choice, i) => itemOf(document, typed, choice, i, able));
  }
  return [];
}

function namingOf(
  typed: TypedKey | TypedValue,
  known: KnownFrame | undefined,
  translate: Translate | undefined,
): Naming {
  const { root } = typed.index;
  const units = valueAt(root, "units");
  const metric = units?.kind === "scalar" && units.text === "mm";
  return {
    root,
    path: typed.path,
    map: mapAround(typed),
    begun: typed.role === "value" ? typed.begun : "@",
    model: known?.model,
    findings: known?.findings.map(({ finding }) => finding) ?? [],
    say: known?.say.metric === metric ? known.say : makeSay(metric ? "mm" : "inch", translate),
  };
}

/** The map whose key is typed, or the one that holds the value, also as an item of a list. */
function mapAround({ index, path, role }: TypedKey | TypedValue): Tree | undefined {
  if (role === "key") return index.node(path);
  const outer = path.slice(0, path.lastIndexOf("/"));
  const node = index.node(outer);
  const last = keysOf(path).at(-1) ?? "";
  return node?.kind === "list" && /^\d+$/.test(last)
    ? index.node(outer.slice(0, outer.lastIndexOf("/")))
    : node;
}

/** Its own indentation and line ends, two columns where it has none yet. */
function handOf(text: string): Hand {
  const indented = /(?:^|\n)( +)(?=[^\s#-])/.exec(text.slice(0, LOOKED_AT));
  return { step: indented?.[1]?.length ?? 2, lineBreak: text[lineEnd(text, 0)] === "\r" ? "\r\n" : "\n" };
}

const LOOKED_AT = 20_000;

const KINDS: Readonly<Record<Choice["sort"], CompletionItemKind>> = {
  key: CompletionItemKind.Property,
  value: CompletionItemKind.EnumMember,
  name: CompletionItemKind.Reference,
  unit: CompletionItemKind.Unit,
};

function itemOf(
  document: TextDocument,
  { range }: TypedKey | TypedValue,
  choice: Choice,
  order: number,
  able: CompletionAbilities,
): CompletionItem {
  const { label, detail, filter, head, tail } = choice;
  const snippet = able.snippets && (tail !== "" || choice.snippet !== undefined);
  const about = able.markdown ? { kind: MarkupKind.Markdown, value: choice.about } : choice.plain;
  const opens =
    choice.sort === "key" &&
    choice.snippet === undefined &&
    able.again !== undefined &&
    !/[\r\n]/.test(head) &&
    /[ {[]$/.test(head);
  return {
    label,
    kind: KINDS[choice.sort],
    ...(detail !== undefined && { detail }),
    ...((able.markdown ? choice.about : choice.plain) !== "" && { documentation: about }),
    sortText: String(order).padStart(4, "0"),
    // an editor that is given one may take it for the word that is typed: none where it says nothing new
    ...(filter !== label && { filterText: filter }),
    insertTextFormat: snippet ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
    ...(able.asIs && { insertTextMode: InsertTextMode.asIs }),
    textEdit: {
      range: { start: document.positionAt(range.start), end: document.positionAt(range.end) },
      newText: snippet ? (choice.snippet ?? `${escaped(head)}$0${escaped(tail)}`) : head + tail,
    },
    ...(opens && able.again !== undefined && { command: { title: label, command: able.again } }),
  };
}
