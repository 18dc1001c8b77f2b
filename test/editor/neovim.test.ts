/** A second client, which knows nothing of us but four lines of README.md: findings, hover, quick fixes. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { ROOT } from "../../client/start/installed.ts";
import { readFixture } from "../fixtures.ts";
import { need, skipped } from "./installed.ts";
import { type Finding, missingForNeovim, Neovim, setUpInReadme } from "./neovim.ts";

const sample = (name: string) => readFile(join(ROOT, `samples/${name}.frame.yaml`), "utf8");
const codes = (findings: readonly Finding[]) => findings.map(({ code }) => code);

it("is set up by four lines", async () => expect((await setUpInReadme()).trim().split("\n")).toHaveLength(4));

const skip = skipped(missingForNeovim());

describe.skipIf(skip !== "")(`in Neovim${skip}`, () => {
  let neovim: Neovim | undefined;

  beforeAll(() => need(missingForNeovim()));
  afterEach(async () => {
    await neovim?.close();
    neovim = undefined;
  });

  async function open(text: string, name = "mine.frame.yaml"): Promise<Neovim> {
    neovim = await Neovim.open(name, text);
    return neovim;
  }

  /** Lets the next list of quick fixes be answered with the one whose title begins so. */
  const choose = (editor: Neovim, title: string) =>
    editor.run(
      `vim.ui.select = function(items, _, take) for _, item in ipairs(items) do if vim.startswith(item[2].title, '${title}') then take(item) end end end`,
    );

  it.each([
    ["as it is", (text: string) => text, 0],
    [
      "with a byte order mark, CRLF and an emoji above",
      (text: string) => `\uFEFF# 🪵\n${text}`.replaceAll("\n", "\r\n"),
      1,
    ],
  ])("findings stand at the values that are wrong, %s", async (_, written, moved) => {
    const { text, markers } = readFixture(await sample("wrong-on-purpose"));
    const editor = await open(written(text));
    const found = await editor.findings((findings) => findings.length > 0, "findings");
    const place = (code: string, line: number, from: number, to: number) => `${line}:${from}-${to} ${code}`;
    expect(found.map(({ code, lnum, col, end_col }) => place(code, lnum, col, end_col)).sort()).toEqual(
      markers.map(({ check, line, from, to }) => place(check, line + moved, from, to)).sort(),
    );
  });

  it("typing brings new findings, in their place behind an emoji too, and an undo takes them away", async () => {
    const editor = await open(await sample("garden-arch"));
    await editor.goTo("white-oak");
    await editor.type('cE"🪵 oak", colour: red}<Esc>');
    const found = await editor.findings((all) => codes(all).includes("unknown-key"), "unknown-key");
    const line = (await editor.lines()).find((one) => one.includes("🪵")) ?? "";
    const { col, end_col } = found.find(({ code }) => code === "unknown-key")!;
    expect(Buffer.from(line).subarray(col, end_col).toString()).toBe("colour");
    await editor.type("u");
    await editor.findings((all) => !codes(all).includes("unknown-key"), "no unknown-key");
  });

  it("a joint tells its cut sizes when it is hovered", async () => {
    const editor = await open(await sample("garden-arch"));
    await editor.until(() => editor.value<boolean>("#vim.lsp.get_active_clients() == 1"), "the server");
    await editor.goTo("post-head:");
    await editor.type(":lua vim.lsp.buf.hover()<CR>");
    const hover = (await editor.floating()).join("\n");
    expect(hover).toMatch(/tenon thickness *\| 1 1\/2 in/);
    expect(hover).toMatch(/mortise/);
  });

  it("a quick fix puts a slip right", async () => {
    const text = await sample("garden-arch");
    const editor = await open(text.replace("overhang:", "overhnag:"));
    await editor.findings((all) => codes(all).includes("unknown-key"), "unknown-key");
    await choose(editor, "");
    await editor.goTo("overhnag:");
    await editor.type(":lua vim.lsp.buf.code_action()<CR>");
    await editor.findings((all) => !codes(all).includes("unknown-key"), "no unknown-key");
    expect((await editor.lines()).join("\n")).toBe(text.trimEnd());
  });

  it("a tie that is too small is made the smallest that passes", async () => {
    const text = await sample("cider-press-pavilion");
    const editor = await open(text.replace(/(?<=kind: tie, section: )[^,]+/, "6x6"));
    await editor.findings((all) => codes(all).includes("timber-overstressed"), "timber-overstressed");
    await choose(editor, "Size this timber");
    await editor.goTo("6x6, bents");
    await editor.type(":lua vim.lsp.buf.code_action()<CR>");
    await editor.findings((all) => !codes(all).includes("timber-overstressed"), "no timber-overstressed");
  });

  it("other YAML is left alone", async () => {
    const editor = await open("frame: Shed\nmembers: 3\n", "mine.yaml");
    expect(await editor.value("bentwright == nil")).toBe(true);
  });
});
