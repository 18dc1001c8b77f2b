/** A frame open in the editor, and waits on what the extension says of it. Every wait has an end. */
import { readFile } from "node:fs/promises";
import * as vscode from "vscode";
import type { BentwrightApi } from "../../../client/extension.ts";

const TIMEOUT = 15_000;

/** Resolves when `holds` does, asked at once and after each firing of the event; rejects in the end. */
export function until<T>(event: vscode.Event<T>, holds: () => boolean, what: string): Promise<void> {
  return new Promise((resolve, reject) => {
    if (holds()) {
      resolve();
      return;
    }
    const timer = setTimeout(() => {
      subscription.dispose();
      reject(new Error(`Waited ${TIMEOUT} ms in vain for ${what}.`));
    }, TIMEOUT);
    const subscription = event(() => {
      if (!holds()) return;
      clearTimeout(timer);
      subscription.dispose();
      resolve();
    });
  });
}

async function activate(): Promise<BentwrightApi> {
  const extension = vscode.extensions.getExtension<BentwrightApi>("bentwright.bentwright");
  if (extension === undefined) throw new Error("The extension is not there.");
  return extension.activate();
}

export class FrameEditor {
  readonly #editor: vscode.TextEditor;
  readonly #api: BentwrightApi;

  private constructor(editor: vscode.TextEditor, api: BentwrightApi) {
    this.#editor = editor;
    this.#api = api;
  }

  /** Opens a file of the folder that is open in the window. */
  static async open(name: string): Promise<FrameEditor> {
    const folder = vscode.workspace.workspaceFolders?.[0];
    if (folder === undefined) throw new Error("No folder is open.");
    const uri = vscode.Uri.joinPath(folder.uri, name);
    const editor = await vscode.window.showTextDocument(uri);
    return new FrameEditor(editor, await activate());
  }

  get document(): vscode.TextDocument {
    return this.#editor.document;
  }

  get uri(): vscode.Uri {
    return this.document.uri;
  }

  get findings(): vscode.Diagnostic[] {
    return vscode.languages.getDiagnostics(this.uri);
  }

  /** Resolves when the text as it stands has been checked. */
  async checked(): Promise<void> {
    const newest = () => (this.#api.lastCheck(this.uri)?.version ?? -1) >= this.document.version;
    await until(this.#api.onChecked, newest, `a check of version ${this.document.version}`);
  }

  /** Resolves when the findings are as told. */
  async findingsAre(hold: (findings: vscode.Diagnostic[]) => boolean, what: string): Promise<void> {
    await until(vscode.languages.onDidChangeDiagnostics, () => hold(this.findings), what).catch(
      (error: Error) => {
        const found = this.findings.map(({ code, message }) => `${codeOf(code)}: ${message}`);
        throw new Error(`${error.message} Found: ${found.join("; ") || "nothing"}`);
      },
    );
  }

  /** The range of the first group of a pattern's first match. */
  find(pattern: RegExp): vscode.Range {
    const match = new RegExp(pattern.source, `${pattern.flags}d`).exec(this.document.getText());
    const group = match?.indices?.[1];
    if (group === undefined) throw new Error(`${pattern} is not in the text.`);
    return new vscode.Range(this.document.positionAt(group[0]), this.document.positionAt(group[1]));
  }

  async replace(range: vscode.Range, text: string): Promise<void> {
    if (!(await this.#editor.edit((edit) => edit.replace(range, text))))
      throw new Error("The edit was refused.");
  }

  async undo(): Promise<void> {
    await vscode.window.showTextDocument(this.document, { preview: false });
    await vscode.commands.executeCommand("undo");
  }

  /** True when the text is again what stands on the disk. */
  async isAsSaved(): Promise<boolean> {
    return (await readFile(this.uri.fsPath, "utf8")) === this.document.getText();
  }
}

/** With their edits: those that are worked out when they are chosen too. */
export async function quickFixes(frame: FrameEditor, range: vscode.Range): Promise<vscode.CodeAction[]> {
  return vscode.commands.executeCommand<vscode.CodeAction[]>(
    "vscode.executeCodeActionProvider",
    frame.uri,
    range,
    vscode.CodeActionKind.QuickFix.value,
    10,
  );
}

export function codeOf(code: vscode.Diagnostic["code"]): string {
  return String(typeof code === "object" ? code.value : code);
}

/** What the tests change: files of the open folder, and untitled ones. The editor saves its own settings by itself. */
function isOurs({ uri }: vscode.TextDocument): boolean {
  return uri.scheme === "untitled" || vscode.workspace.getWorkspaceFolder(uri) !== undefined;
}

/** Leaves nothing open and nothing changed. */
export async function closeAll(): Promise<void> {
  for (const document of vscode.workspace.textDocuments) {
    if (!document.isDirty || !isOurs(document)) continue;
    await vscode.window.showTextDocument(document);
    await vscode.commands.executeCommand("workbench.action.files.revert");
  }
  await vscode.commands.executeCommand("workbench.action.closeAllEditors");
}
