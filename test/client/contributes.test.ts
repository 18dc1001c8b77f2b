/** What package.json promises the editor about the language, and the rules by which it indents and folds. */
import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import manifest from "../../package.json" with { type: "json" };

const ROOT = new URL("../../", import.meta.url);
const { languages, grammars, snippets, yamlValidation } = manifest.contributes;
const language = languages[0]!;
const rules = JSON.parse(readFileSync(new URL(language.configuration, ROOT), "utf8"));

describe("what the package contributes", () => {
  const named = [
    language.configuration,
    language.icon.light,
    language.icon.dark,
    ...grammars.map(({ path }) => path),
    ...snippets.map(({ path }) => path),
    ...yamlValidation.map(({ url }) => url),
  ];

  it.each(named)("%s is there and goes into the package", (path) => {
    expect(existsSync(new URL(path, ROOT))).toBe(true);
    const carried = manifest.files.some((file) => path.startsWith(`./${file}/`));
    expect(carried).toBe(true);
  });

  it("keeps its snippets for the command that inserts one: completion offers the same entries itself", () => {
    expect(
      manifest.contributes.configurationDefaults["[bentwright-frame]"]["editor.snippetSuggestions"],
    ).toBe("none");
  });

  it("is for the one language, and its schema for the same files", () => {
    expect([...grammars, ...snippets].map((one) => one.language)).toEqual([language.id, language.id]);
    expect(yamlValidation.flatMap(({ fileMatch }) => fileMatch)).toEqual(language.filenamePatterns);
  });

  it("keeps out of the palette what only a code action can call", () =>
    expect(manifest.contributes.menus.commandPalette).toContainEqual({
      command: "bentwright.acceptFinding",
      when: "false",
    }));

  it("wakes us at other YAML files too, to offer them the language", () =>
    expect(manifest.activationEvents).toContain("onLanguage:yaml"));
});

describe("indentation", () => {
  const deeper = new RegExp(rules.indentationRules.increaseIndentPattern);
  const back = new RegExp(rules.indentationRules.decreaseIndentPattern);

  it.each(["members:", "  post: # eight of them", "  - ends:", "  post: {", "    logs: [ # in the yard"])(
    "goes deeper after %j",
    (line) => expect(deeper.test(line)).toBe(true),
  );

  it.each(["", "frame: Shed", "# note:", "  soil: sand # note:", "  pitch: 7:12", "  post: {kind: post}"])(
    "stays after %j",
    (line) => expect(deeper.test(line)).toBe(false),
  );

  it.each(["  }", "  ],", "    } # done"])("comes back at %j", (line) => expect(back.test(line)).toBe(true));

  it.each(["", "  post: {}", "members:", "  # }"])("does not come back at %j", (line) =>
    expect(back.test(line)).toBe(false),
  );
});

describe("folding and comments", () => {
  it("fold by indentation and by region comments", () => {
    expect(rules.folding.offSide).toBe(true);
    expect("  # region walls").toMatch(new RegExp(rules.folding.markers.start));
    expect("  # endregion").toMatch(new RegExp(rules.folding.markers.end));
    expect("  # the region").not.toMatch(new RegExp(rules.folding.markers.start));
    expect(rules.comments.lineComment).toBe("#");
  });
});
