/** One window of the editor as a user has it before them: keys, clicks, and what is to be seen. */
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Browser, FrameLocator, Locator, Page } from "playwright-core";
import type { TestEditor } from "./code-server.ts";

const TIMEOUT = 20_000;

/** What a window needs to know of its editor. */
type Shown = Pick<TestEditor, "folder" | "settingsFile" | "windowUrl">;

export class EditorWindow {
  readonly page: Page;
  /** that is open, or the user's own where none is */
  readonly folder: string;
  readonly #settings: string;

  private constructor(page: Page, { folder, settingsFile }: Shown) {
    this.page = page;
    this.folder = folder;
    this.#settings = settingsFile;
  }

  static async open(server: Shown, browser: Browser): Promise<EditorWindow> {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    page.setDefaultTimeout(TIMEOUT);
    const window = new EditorWindow(page, server);
    await page.goto(server.windowUrl);
    await window.#untilStarted();
    return window;
  }

  /** Reloads the window by the editor's own command, which lets it keep its state first. */
  async reload(): Promise<void> {
    await this.#focusEditor();
    const loaded = this.page.waitForEvent("load");
    await this.choose("Developer: Reload Window");
    await loaded;
    await this.#untilStarted();
  }

  /** The line of the list or box that the editor asks by. */
  get input(): Locator {
    return this.page.locator(".quick-input-widget input[type=text]").filter({ visible: true });
  }

  /** Chooses a command from the palette; `title` as it stands there. */
  async choose(title: string): Promise<void> {
    // a list that was open before an extension was loaded does not get its commands
    await this.#pick(["F1"], `>${title}`, title);
  }

  /** Chooses a colour theme as a user does; `name` as the list shows it. */
  async chooseTheme(name: string): Promise<void> {
    await this.#pick(["Control+k", "Control+t"], name, name);
    await this.page.locator(".quick-input-widget").waitFor({ state: "hidden" });
  }

  /** Takes what a list has first, opened again where it did not have it or a page that was still opening closed it. */
  async #pick(keys: readonly string[], typed: string, text: string): Promise<void> {
    const row = this.page.locator(".quick-input-widget .monaco-list-row.focused").filter({ hasText: text });
    await until(async () => {
      for (const key of keys) await this.page.keyboard.press(key);
      const found = await this.#offers(typed, row).catch(() => false);
      if (!found) await this.page.keyboard.press("Escape");
      return found;
    }, `${text} in its list`);
    await this.input.press("Enter");
  }

  /** Whether a list, once it is open, has something first; rejects where it does not open. */
  async #offers(typed: string, row: Locator): Promise<boolean> {
    const timeout = 1500;
    await this.input.fill(typed, { timeout });
    await row.waitFor({ timeout });
    return true;
  }

  /** The text of a file as it stands on the disk. */
  read(file: string): Promise<string> {
    return readFile(join(this.folder, file), "utf8");
  }

  /** Puts a file into the folder that is open. */
  write(file: string, text: string): Promise<void> {
    return writeFile(join(this.folder, file), text);
  }

  /** Adds to the user's settings; the editor reads them when its window is loaded. */
  async setForUser(settings: Readonly<Record<string, unknown>>): Promise<void> {
    const before = JSON.parse(await readFile(this.#settings, "utf8")) as object;
    await writeFile(this.#settings, JSON.stringify({ ...before, ...settings }, null, 2));
  }

  /** Writes the settings of the folder, which count at once. */
  async setForFolder(settings: Readonly<Record<string, unknown>>): Promise<void> {
    await mkdir(join(this.folder, ".vscode"), { recursive: true });
    await this.write(".vscode/settings.json", JSON.stringify(settings));
  }

  async openFile(file: string): Promise<void> {
    await this.page.getByRole("treeitem", { name: file }).dblclick();
    // its own tab, not that of its elevation
    await this.page.getByRole("tab", { name: new RegExp(`^${file}`) }).waitFor();
    await this.page.locator(`.monaco-editor[data-uri$="/${file}"]`).first().waitFor();
  }

  get editor(): Locator {
    return this.page.locator('.monaco-editor[data-uri$=".frame.yaml"]').first();
  }

  /** Puts the cursor on a place of the text: line and column from 1. */
  async goTo(line: number, column: number): Promise<void> {
    await this.#focusEditor();
    await this.page.keyboard.press("Control+g");
    const input = this.page.locator(".quick-input-widget input");
    await input.waitFor();
    await input.fill(`:${line}:${column}`);
    await input.press("Enter");
    await this.cursorIsAt(line, column);
  }

  /** Types over the next characters. */
  async typeOver(count: number, text: string): Promise<void> {
    for (let i = 0; i < count; i += 1) await this.page.keyboard.press("Shift+ArrowRight");
    await this.page.keyboard.type(text);
    await this.page.keyboard.press("Escape");
  }

  /** Undoes until the text is as it was saved; typing is undone word by word. */
  async undoAll(): Promise<void> {
    const dirty = this.page.locator(".tab.active.dirty");
    await this.#focusEditor();
    await until(async () => {
      if ((await dirty.count()) === 0) return true;
      await this.page.keyboard.press("Control+z");
      return false;
    }, "the saved text");
  }

  cursorIsAt(line: number, column: number): Promise<void> {
    return this.statusSays(`Ln ${line}, Col ${column}`);
  }

  async cursorIsOnLine(line: number): Promise<void> {
    await this.page
      .locator(".statusbar-item")
      .filter({ hasText: new RegExp(`Ln ${line}, Col`) })
      .waitFor();
  }

  async statusSays(text: string | RegExp): Promise<void> {
    await this.page.locator(".statusbar-item").filter({ hasText: text }).first().waitFor();
  }

  /** The page inside the preview's webview. */
  get preview(): FrameLocator {
    return this.page.frameLocator("iframe.webview").frameLocator("iframe");
  }

  /** What is drawn with this id. */
  drawn(id: string): Locator {
    return this.preview.locator(`[data-id="${id}"]`).first();
  }

  async viewBox(): Promise<string> {
    return (await this.preview.locator("#sheet").getAttribute("viewBox")) ?? "";
  }

  /** Gives the keys to the first group of editors, where the text is. */
  async #focusEditor(): Promise<void> {
    await this.page.keyboard.press("Control+1");
    await this.page.locator(".monaco-editor.focused").waitFor();
  }

  async #untilStarted(): Promise<void> {
    await this.page.locator(".monaco-workbench").waitFor();
    await this.page.locator(".statusbar-item").first().waitFor();
  }
}

/** Asks again and again, as a person who watches would, until it holds. */
export async function until(holds: () => Promise<boolean>, what: string): Promise<void> {
  const end = Date.now() + TIMEOUT;
  while (!(await holds())) {
    if (Date.now() > end) throw new Error(`Waited ${TIMEOUT} ms in vain for ${what}.`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
