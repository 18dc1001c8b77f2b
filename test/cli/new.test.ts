import { describe, expect, test } from "vitest";
import { run } from "../../server/cli/run.ts";
import { makeSay } from "../../server/core/checks/speak.ts";
import { RANGES } from "../../server/language/new-frame/answers.ts";
import { newFrameQuestions } from "../../server/language/new-frame/questions.ts";

interface Terminal {
  readonly files?: Readonly<Record<string, string>>;
  /** what is typed, line by line; undefined for no terminal */
  readonly typed?: readonly string[];
}

function call(args: readonly string[], { files = {}, typed }: Terminal = {}) {
  const [out, err]: [string[], string[]] = [[], []];
  const written: Record<string, string> = {};
  const lines = typed && [...typed];
  const code = run(["new", ...args], {
    read: () => new Uint8Array(),
    write: (file, text, fresh) => {
      if (fresh && file in files) throw Object.assign(new Error("there"), { code: "EEXIST" });
      if (file.startsWith("/nowhere/")) throw Object.assign(new Error("not there"), { code: "ENOENT" });
      written[file] = text;
    },
    out: (text) => out.push(text),
    err: (text) => err.push(text),
    color: false,
    ...(lines && {
      ask: (question: string) => {
        err.push(question);
        return lines.shift();
      },
    }),
  });
  return { code, out: out.join(""), err: err.join(""), written };
}

const ALL = {
  roof: "shed",
  pitch: "2:12",
  width: "10 ft",
  length: "12 ft",
  bays: "1",
  eave: "8 ft",
  snow: "30 psf",
  wind: "unknown",
  frost: "30 in",
  species: "hem-fir",
  mill: "20 ft",
};
const flags = (given: Readonly<Record<string, string>>) =>
  Object.entries(given).flatMap(([name, value]) => [`--${name}`, value]);

describe("bentwright new", () => {
  test("takes every answer as a flag, and asks nothing", () => {
    const { code, out, err } = call(flags(ALL), { typed: [] });
    expect({ code, err }).toEqual({ code: 0, err: "" });
    for (const text of ["kind: shed", "B: 10 ft", "ground: 30 psf", "frost-depth: 30 in", "species: hem-fir"])
      expect(out).toContain(text);
    expect(out).not.toContain("speed:");
  });

  test("asks in a terminal until an answer can be taken; an empty line takes the usual one, ? none", () => {
    const typed = ["tent", "shed", "9:12", "", "abc", "-3 ft", "", "", "", "", "?", "100 mph", "", "", ""];
    const asked = call([], { typed });
    expect(asked.code, asked.err).toBe(0);
    expect(asked.err).toContain("Which kind of roof");
    expect(asked.err).toContain("“tent”");
    expect(asked.err.match(/width \[12 ft\]: /g)).toHaveLength(3);
    expect(asked.out).toContain("kind: shed");
    expect(asked.out).not.toContain("ground:");
    expect(asked.err).toContain("9:12 is outside what this proposes: it must be between 1:12 and 6:12");
    // the wind was answered, the snow is open: of the site's values only the frost depth is a usual one
    expect(asked.out.replace(/\n +# /g, " ")).toContain(
      "Ask the building department for: frost depth (instead of 36 in).",
    );
  });

  test("leaves nothing when the asking is broken off", () => {
    const { code, out, err, written } = call(["--out", "a.frame.yaml"], { typed: ["gable", "12 ft"] });
    expect({ code, out, written }).toEqual({ code: 2, out: "", written: {} });
    expect(err).toContain("nothing was written");
  });

  test("says what it took as usual where nobody can be asked", () => {
    const { code, err } = call(flags({ roof: "shed", width: "10 ft" }));
    expect(code).toBe(0);
    expect(err).toMatch(
      /taken as usual: pitch 3:12; length 16 ft; bays 2; .*snow 40 psf; wind 105 mph; frost 36 in; /,
    );
    expect(err).toContain("not those of your site: ask the building department");
  });

  test("its help says of every answer what it takes, what is usual, and where unknown is one", () => {
    const { code, out } = call(["--help"]);
    expect(code).toBe(0);
    const flat = out.replace(/\s+/g, " ");
    for (const units of ["inch", "mm"] as const)
      for (const { id, sentence, default: usual, choices } of newFrameQuestions(units)) {
        expect(flat).toContain(`--${id} ${sentence}`);
        expect(flat).toMatch(new RegExp(`Usual: [^.]*${usual}`));
        for (const { value } of choices ?? []) expect(flat).toContain(`${value}: `);
      }
    for (const { least, most } of [RANGES.width, RANGES.eave, RANGES.frost])
      expect(flat).toContain(`${makeSay("inch").length(least)} to ${makeSay("inch").length(most)}`);
    expect(flat).toContain("gable 4:12 to 12:12, shed 1:12 to 6:12");
    expect(flat).toContain("A bare number is inches, or millimetres with --units mm");
    expect(flat).toContain("For snow, wind, frost, species, mill you may write unknown, as --snow unknown");
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(88);
  });

  test("a pitch changes the roof, in the file's own words", () => {
    expect(call(flags({ pitch: "9 : 12" })).out).toContain("pitch: 9:12\n");
    expect(call(flags(ALL)).out).toContain("high: 9 ft 8 in");
  });

  test.each([
    [["--pitch", "steep"], "--pitch: “steep” cannot be read as a pitch"],
    [["--roof", "shed", "--pitch", "7:12"], "--pitch: 7:12 is outside"],
    [["--width", "abc"], "--width: "],
    [["--width", "-3 ft"], "--width: -3 ft"],
    [["--snow", "-5 psf"], "--snow: "],
    [["--eave", "1e9"], "--eave: "],
    [["--units", "cubits"], "neither inch nor mm"],
    [["--length", "40 ft", "--bays", "1"], "--bays: "],
    [["shed"], "as flags"],
    [["--colour", "red"], "colour"],
  ])("%j is refused in words", (args, words) => {
    const { code, out, err } = call(args);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain(words);
  });

  test("names the answer that no frame can be made for, and one that would do", () => {
    const { code, out, err } = call(flags({ ...ALL, mill: "8 ft" }));
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toMatch(/^--(mill|length|width|eave): .*the mill cuts at most 8'-0"/);
    expect(err).toMatch(/can be made/);
  });

  test("writes a file, never over one that is there, and says when its folder is missing", () => {
    const fine = call([...flags(ALL), "--out", "my.frame.yaml"]);
    expect(Object.keys(fine.written)).toEqual(["my.frame.yaml"]);
    expect(fine.err).toContain("bentwright check my.frame.yaml");
    expect(call([...flags(ALL), "--out", "my.yaml"]).err).toContain(".frame.yaml");
    const there = call([...flags(ALL), "--out", "my.frame.yaml"], { files: { "my.frame.yaml": "mine" } });
    expect(there).toMatchObject({ code: 2, written: {} });
    expect(there.err).toContain("is there already");
    expect(call([...flags(ALL), "--out", "/nowhere/a.frame.yaml"]).err).toContain("folder is not there");
  });
});
