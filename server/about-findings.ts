/** Requests about single findings: the page that one links to, and the edit that accepts one. */

import type { Connection } from "vscode-languageserver";
import { makeSay, type Translate } from "./core/checks/speak.ts";
import { acceptWith } from "./language/accept.ts";
import { findingNameOf, linkedFinding, pageOf } from "./language/check-page.ts";
import type { Snapshot } from "./language/frame-service.ts";
import { ACCEPT_REQUEST, type AcceptResult, PAGE_REQUEST, type PageResult } from "./protocol.ts";

const NOTHING: AcceptResult = { uri: "", edits: [], refused: "" };

/**
 * @param snapshotOf the newest text of an open document, checked
 */
export function answerAboutFindings(
  connection: Connection,
  snapshotOf: (uri: string) => Snapshot | undefined,
  translate: Translate,
): void {
  /** where there is no file whose units would matter */
  const say = makeSay("inch", translate);
  connection.onRequest(PAGE_REQUEST, (params: unknown): PageResult => {
    const name = linkedFinding(textOf(params, "query"));
    if (!name) return { markdown: `${say.text("This link names no finding.")}\n`, uri: null };
    return { markdown: pageOf(name, snapshotOf(name.uri), say), uri: name.uri };
  });
  connection.onRequest(ACCEPT_REQUEST, (params: unknown): AcceptResult => {
    const name = findingNameOf(memberOf(params, "finding"));
    const snapshot = name && snapshotOf(name.uri);
    if (!name || !snapshot)
      return { ...NOTHING, refused: say.text("The file is closed; open it to accept a finding in it.") };
    return { ...NOTHING, uri: name.uri, ...acceptWith(snapshot, name, textOf(params, "because")) };
  });
}

function memberOf(value: unknown, name: string): unknown {
  return typeof value === "object" && value !== null ? Reflect.get(value, name) : undefined;
}

/** What is no text counts as an empty one, which no link and no reason is. */
function textOf(value: unknown, name: string): string {
  const text = memberOf(value, name);
  return typeof text === "string" ? text : "";
}
