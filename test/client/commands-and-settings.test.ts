/** What package.json offers a user to do and to set, and that it promises no more than there is. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { ROOT } from "../../client/start/installed.ts";
import manifest from "../../package.json" with { type: "json" };

interface Command {
  readonly command: string;
  readonly title: string;
  readonly category: string;
  readonly enablement?: string;
}

interface Setting {
  readonly type: string;
  readonly default: unknown;
  readonly order: number;
  readonly markdownDescription: string;
  readonly enum?: readonly string[];
  readonly enumDescriptions?: readonly string[];
}

const commands: readonly Command[] = manifest.contributes.commands;
const groups = manifest.contributes.configuration;
const settings = groups.flatMap(({ properties }) => Object.entries<Setting>(properties));
const SOURCES = readdirSync(join(ROOT, "client"), { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.startsWith("start/"))
  .map((file) => readFileSync(join(ROOT, "client", file), "utf8"))
  .join("\n");

/** Those that help whatever is open. */
const ALWAYS: ReadonlySet<string> = new Set([
  "bentwright.restartServer",
  "bentwright.newFrame",
  "bentwright.openFirstSteps",
]);

describe("commands", () => {
  it("are at most ten, each once", () => {
    expect(commands.length).toBeLessThanOrEqual(10);
    expect(new Set(commands.map(({ command }) => command)).size).toBe(commands.length);
  });

  it.each(commands)(
    "$command is ours, in our category, and can be chosen only where it does something",
    (one) => {
      expect(one.command).toMatch(/^bentwright\.[a-z][a-zA-Z]*$/);
      expect(one.category).toBe("Bentwright");
      expect(SOURCES).toContain(`"${one.command}"`);
      if (ALWAYS.has(one.command)) expect(one.enablement).toBeUndefined();
      else expect(one.enablement).toMatch(/\S/);
    },
  );

  it("in menus and on keys are those of the list", () => {
    const { menus, keybindings } = manifest.contributes;
    const named = [...Object.values(menus).flat(), ...keybindings].map(({ command }) => command);
    expect(commands.map(({ command }) => command)).toEqual(expect.arrayContaining([...new Set(named)]));
  });
});

describe("settings", () => {
  it("are at most eight", () => expect(settings.length).toBeLessThanOrEqual(8));

  it("stand in groups, both in an order that is given", () => {
    const places = groups.map(({ order, properties }) => [
      order,
      Object.values<Setting>(properties).map((one) => one.order),
    ]);
    expect(places).toEqual(
      groups.map(({ properties }, i) => [i + 1, Object.keys(properties).map((_, j) => j + 1)]),
    );
  });

  it.each(settings)("%s is described, has a value to begin with, and is read", (name, setting) => {
    expect(setting.markdownDescription).toMatch(/^%.+%$/);
    expect(typeof setting.default).toBe(setting.type);
    expect(setting.enumDescriptions?.length).toBe(setting.enum?.length);
    if (setting.enum) expect(setting.enum).toContain(setting.default);
    const ours = name.replace(/^bentwright\./, "");
    // the language client reads this one by itself, under the name that it is given
    if (ours === "trace.server") expect(SOURCES).toContain('new LanguageClient("bentwright"');
    else expect(SOURCES).toMatch(new RegExp(`isOn\\("${ours.replace(".", "\\.")}"\\)`));
  });

  it("that the program reads are those of the list", () => {
    const read = [...SOURCES.matchAll(/\b(?:isOn|onSwitch)\(\s*"([^"]+)"/g)].map(
      ([, name]) => `bentwright.${name}`,
    );
    expect(settings.map(([name]) => name)).toEqual(expect.arrayContaining([...new Set(read)]));
  });
});

it("all of it works in a folder that is not trusted", () =>
  expect(manifest.capabilities.untrustedWorkspaces).toEqual({ supported: true }));
