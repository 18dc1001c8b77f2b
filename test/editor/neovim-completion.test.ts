/** Completion in the second client, as Neovim asks for it by itself: Ctrl-X Ctrl-O. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { ROOT } from "../../client/start/installed.ts";
import { need, skipped } from "./installed.ts";
import { missingForNeovim, Neovim } from "./neovim.ts";

const skip = skipped(missingForNeovim());

describe.skipIf(skip !== "")(`completion in Neovim${skip}`, () => {
  let neovim: Neovim | undefined;

  beforeAll(() => need(missingForNeovim()));
  afterEach(async () => {
    await neovim?.close();
    neovim = undefined;
  });

  it.each([
    ["a wood", "white-oak", "cE", "white-o", "white-oak"],
    ["a kind of timber", "brace, section", "ce", "bra", "brace"],
    ["a timber of this frame", "tie, into", "ce", "tie-k", "tie-knee"],
    ["a key", "overhang: 12", "ce", "overh", "overhang"],
  ])("offers %s and writes it", async (_, place, change, typed, word) => {
    const text = await readFile(join(ROOT, "samples/garden-arch.frame.yaml"), "utf8");
    neovim = await Neovim.open("mine.frame.yaml", text);
    const editor = neovim;
    await editor.until(() => editor.value<boolean>("#vim.lsp.get_active_clients() == 1"), "the server");
    await editor.run("vim.bo.omnifunc = 'v:lua.vim.lsp.omnifunc'");
    await editor.goTo(place);
    const before = (await editor.value<string>("vim.api.nvim_get_current_line()")).split(place)[0];
    await editor.type(`${change}${typed}<C-x><C-o>`);
    const words = await editor.until(async () => {
      const items = await editor.value<readonly { word: string }[]>(
        "vim.fn.complete_info({ 'items' }).items",
      );
      return items.length > 0 && items.map((item) => item.word.trim().replace(/:$/, ""));
    }, "a list to choose from");
    expect(words).toContain(word);
    await editor.type("<C-y><Esc>");
    const now = await editor.until(async () => {
      const line = await editor.value<string>("vim.api.nvim_get_current_line()");
      return line.startsWith(`${before}${word}`) && line;
    }, `${word} in the text`);
    expect(now).not.toContain("$");
  });
});
