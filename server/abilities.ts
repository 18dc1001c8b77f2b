/** What the editor can do, from what it says of itself when it starts the server. */
import { type ClientCapabilities, InsertTextMode, MarkupKind } from "vscode-languageserver";
import type { Translate } from "./core/checks/speak.ts";
import type { AcceptAbilities } from "./language/accept.ts";
import type { CompletionAbilities } from "./language/completion.ts";
import type { LinkOf } from "./language/diagnostics.ts";
import type { HoverAbilities } from "./language/hover.ts";
import { linksFor } from "./language/page-links.ts";
import { translatorOf } from "./language/words.ts";

export interface Abilities {
  /** undefined for an editor that only knows commands */
  readonly able: AcceptAbilities | undefined;
  readonly showing: HoverAbilities;
  readonly linkOf: LinkOf | undefined;
  readonly completing: CompletionAbilities;
  readonly translate: Translate;
}

/**
 * @param options `StartOptions` of our own client; anything from another
 * @param reference address of the check reference, where it is installed
 */
export function abilitiesOf(
  { workspace, textDocument }: ClientCapabilities,
  options: unknown,
  reference: string | undefined,
): Abilities {
  const option = (name: string): unknown =>
    typeof options === "object" && options !== null ? Reflect.get(options, name) : undefined;
  const says = (name: string): boolean => option(name) === true;
  const links = textDocument?.publishDiagnostics?.codeDescriptionSupport === true;
  const linkOf = linksFor({ links, pages: says("pages") }, reference);
  const actions = textDocument?.codeAction;
  const able = actions?.codeActionLiteralSupport && {
    versioned: workspace?.workspaceEdit?.documentChanges === true,
    lazy: actions.dataSupport === true && actions.resolveSupport?.properties.includes("edit") === true,
    disabled: actions.disabledSupport === true,
    asks: says("accepts"),
    linkOf,
  };
  const item = textDocument?.completion?.completionItem;
  const again = option("suggestAgain");
  const completing = {
    snippets: item?.snippetSupport === true,
    markdown: item?.documentationFormat?.includes(MarkupKind.Markdown) === true,
    asIs: item?.insertTextModeSupport?.valueSet.includes(InsertTextMode.asIs) === true,
    ...(typeof again === "string" && { again }),
  };
  const translate = translatorOf(option("words"));
  return { able, showing: { pictures: says("pictures") }, linkOf, completing, translate };
}
