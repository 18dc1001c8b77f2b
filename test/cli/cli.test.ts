import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import reportSchema from "../../schemas/report.schema.json" with { type: "json" };
import { run } from "../../server/cli/run.ts";
import { SHED } from "../shed.ts";

const BROKEN = SHED.replace("section: 8x10", "section: 8x");
const ACCEPTING = SHED.replace("grade: no-1, ", "").concat(
  'accept: [{check: grade-assumed, because: "sawn and looked over by the builder"}]\n',
);

const FILES: Readonly<Record<string, string>> = {
  "shed.frame.yaml": SHED,
  "broken.frame.yaml": BROKEN,
  "accepting.frame.yaml": ACCEPTING,
  "empty.frame.yaml": "",
  "noise.frame.yaml": "\u0000\u0001\ufffd",
  "bom.frame.yaml": `\ufeff${BROKEN}`,
};

interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly written: Readonly<Record<string, string>>;
}

function call(args: readonly string[], more: { stdin?: string; color?: boolean } = {}): Outcome {
  let [out, err] = ["", ""];
  const written: Record<string, string> = {};
  const code = run(args, {
    read: (file) => {
      const text = file === "-" ? more.stdin : FILES[file];
      if (text === undefined)
        throw Object.assign(new Error("raw"), { code: file.endsWith("/") ? "EISDIR" : "ENOENT" });
      return new TextEncoder().encode(text);
    },
    write: (file, text) => {
      if (file.startsWith("locked")) throw Object.assign(new Error("raw"), { code: "EACCES" });
      written[file] = text;
    },
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    color: more.color ?? false,
  });
  return { code, out, err, written };
}

const validate = new Ajv2020({ strict: false, allErrors: true }).compile(reportSchema);

interface Report {
  readonly findings: readonly Record<string, unknown>[];
  readonly accepted: readonly Record<string, unknown>[];
  readonly counts: Readonly<Record<string, number>>;
}

function report(...args: readonly string[]): Report {
  const { out } = call(["check", "--format", "json", ...args]);
  const value: unknown = JSON.parse(out);
  expect(validate(value), JSON.stringify(validate.errors)).toBe(true);
  return value as Report;
}

describe("check", () => {
  test("a sound frame: no error, a count, the caution once", () => {
    const { code, out, err } = call(["check", "shed.frame.yaml"]);
    expect(code).toBe(0);
    expect(err).toBe("");
    expect(out).toMatch(/^0 errors, \d+ warnings?, \d+ notes? in 1 file\.$/m);
    expect(out.match(/licensed engineer/g)).toHaveLength(1);
  });

  test("an error, with its place, level and name", () => {
    const { code, out } = call(["check", "broken.frame.yaml"]);
    const line = BROKEN.split("\n").findIndex((one) => one.includes("8x,")) + 1;
    const column = (BROKEN.split("\n")[line - 1] ?? "").indexOf("8x,") + 1;
    expect(code).toBe(1);
    const found = out.split("\n").find((one) => one.includes("unreadable-quantity")) ?? "";
    const place = /^broken\.frame\.yaml:(\d+):(\d+) error unreadable-quantity \S/.exec(found);
    expect(place, out).not.toBeNull();
    expect(Number(place?.[1])).toBe(line);
    expect(Number(place?.[2])).toBeGreaterThanOrEqual(column);
  });

  test("several files, each once, counted together", () => {
    const { code, out } = call(["check", "shed.frame.yaml", "broken.frame.yaml", "shed.frame.yaml"]);
    expect(code).toBe(1);
    expect(out).toMatch(/in 2 files\.$/m);
    expect(out.match(/licensed engineer/g)).toHaveLength(1);
  });

  test("control characters of the file never reach the terminal", () => {
    const { out } = call(["check", "-"], { stdin: 'frame: x\n"foo\\x1b]0;y\\x07": 1\n' });
    expect(out).toContain("foo");
    expect(out.replaceAll("\n", "")).not.toMatch(/\p{Cc}/u);
  });

  test("standard input", () => {
    const { code, out } = call(["check", "-"], { stdin: BROKEN });
    expect(code).toBe(1);
    expect(out).toMatch(/^-:\d+:\d+ error /m);
  });

  test.each(["empty.frame.yaml", "noise.frame.yaml"])("%s is a finding, not a wrong call", (file) => {
    const { code, out, err } = call(["check", file]);
    expect(code).toBe(1);
    expect(err).toBe("");
    expect(out).toMatch(new RegExp(`^${file}:1:1 error `, "m"));
  });

  test("a byte order mark does not shift columns", () => {
    const plain = report("broken.frame.yaml").findings.map(({ line, column }) => [line, column]);
    expect(report("bom.frame.yaml").findings.map(({ line, column }) => [line, column])).toEqual(plain);
  });

  test("colours only where they are wanted", () => {
    expect(call(["check", "broken.frame.yaml"]).out).not.toContain("\u001b[");
    expect(call(["check", "broken.frame.yaml"], { color: true }).out).toContain("\u001b[31merror\u001b[39m");
  });

  test("what is accepted is listed with its reason and does not count", () => {
    const { out } = call(["check", "accepting.frame.yaml"]);
    expect(out).toMatch(
      /^accepting\.frame\.yaml:\d+:\d+ accepted grade-assumed .*Accepted because: sawn and looked over by the builder$/m,
    );
    expect(out).toMatch(/, 1 accepted in 1 file\.$/m);
    const { findings, accepted, counts } = report("accepting.frame.yaml");
    expect(findings.map(({ check }) => check)).not.toContain("grade-assumed");
    expect(accepted).toMatchObject([
      { check: "grade-assumed", because: "sawn and looked over by the builder" },
    ]);
    expect(counts.accepted).toBe(1);
  });
});

describe("check --format json", () => {
  test("follows its schema and names the place", () => {
    const { findings, counts } = report("broken.frame.yaml");
    const found = findings.find(({ check }) => check === "unreadable-quantity");
    expect(found).toMatchObject({ file: "broken.frame.yaml", level: "error", path: "/members/tie/section" });
    expect(counts.errors).toBe(findings.filter(({ level }) => level === "error").length);
  });

  test("gives number, limit and unit where there are some", () => {
    const thin = SHED.replaceAll(
      "tenon: {thickness: 2 in, length: 4 in}",
      "tenon: {thickness: 1 in, length: 4 in}",
    );
    const { out } = call(["check", "--format", "json", "-"], { stdin: thin });
    const value = JSON.parse(out) as Report;
    expect(validate(value), JSON.stringify(validate.errors)).toBe(true);
    expect(value.findings.find(({ check }) => check === "tenon-thin")).toMatchObject({
      value: 1,
      unit: "in",
    });
  });

  test("the schema tells a wrong report from a right one", () => {
    const { out } = call(["check", "--format", "json", "broken.frame.yaml"]);
    const value = JSON.parse(out) as { findings: { line: number }[] };
    for (const finding of value.findings) finding.line = 0;
    expect(validate(value)).toBe(false);
  });
});

describe("draw", () => {
  test("writes a picture that stands alone", () => {
    const { code, written, out } = call(["draw", "shed.frame.yaml", "--view", "1", "-o", "bent.svg"]);
    expect(code).toBe(0);
    expect(out).toBe("");
    expect(written["bent.svg"]).toMatch(/^(<\?xml[^>]*>\s*)?<svg[^>]*xmlns=/);
  });

  test("to standard output, the front when no view is named", () => {
    const { code, out } = call(["draw", "shed.frame.yaml", "-o", "-"]);
    expect(code).toBe(0);
    expect(out).toBe(call(["draw", "shed.frame.yaml", "--view", "front"]).out);
    expect(out).toContain("<svg");
  });

  test("an unknown view: those there are", () => {
    const { code, err } = call(["draw", "shed.frame.yaml", "--view", "C"]);
    expect(code).toBe(2);
    expect(err).toContain("front, side, 1, 2, A, B");
  });

  test("with forces over it, under the loads that are named", () => {
    const { code, out } = call([
      "draw",
      "shed.frame.yaml",
      "--view",
      "1",
      "--layer",
      "moment",
      "--case",
      "1",
    ]);
    expect(code).toBe(0);
    expect(out).toContain('class="force moment" data-id="tie@1"');
    expect(out).toContain(">Moment: D</text>");
    const drawn = (id: string): string =>
      call(["draw", "shed.frame.yaml", "--layer", "axial", "--case", id]).out;
    // the number and the id that the table of forces shows for one combination
    const [, number = "", id = ""] = / (\d+) +(5:W\S+) /.exec(call(["forces", "shed.frame.yaml"]).out) ?? [];
    expect(drawn(number)).toBe(drawn(id));
    expect(drawn(number)).not.toBe(drawn("1"));
    const worst = call(["draw", "shed.frame.yaml", "--layer", "axial", "--case", "worst"]);
    expect(worst.out).toContain("under the combination that gives it the most");
    expect(call(["draw", "shed.frame.yaml", "--layer", "none"]).out).toBe(
      call(["draw", "shed.frame.yaml"]).out,
    );
  });

  test.each([
    [["--layer", "torque"], "There is no layer `torque`; there are none, axial, shear, moment, deflected."],
    [
      ["--layer", "shear", "--case", "99"],
      "There is no combination `99` for the layer shear; this frame has worst, 1, 5:W/+x, 5:W/-x, ",
    ],
    [["--layer", "deflected", "--case", "worst"], "There is no combination `worst` for the layer deflected"],
    [["--case", "1"], "name one with --layer"],
  ])("a layer or loads that there are not: %j", (more, words) => {
    const { code, err, out } = call(["draw", "shed.frame.yaml", ...more]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain(words);
  });

  test("nothing to draw", () => {
    const { code, err, out } = call(["draw", "empty.frame.yaml"]);
    expect([code, out]).toEqual([1, ""]);
    expect(err).toContain("bentwright check empty.frame.yaml");
  });

  test("a place that cannot be written", () => {
    const { code, err } = call(["draw", "shed.frame.yaml", "-o", "locked.svg"]);
    expect(code).toBe(2);
    expect(err).toContain("locked.svg cannot be written: you have no permission.");
  });
});

describe("hover", () => {
  const lines = SHED.split("\n");
  const line = lines.findIndex((one) => one.includes("post-head:")) + 1;
  const column = (lines[line - 1] ?? "").indexOf("post-head") + 1;

  test("prints what an editor shows", () => {
    const { code, out } = call(["hover", `shed.frame.yaml:${line}:${column}`]);
    expect(code).toBe(0);
    expect(out).toContain("**post-head**");
    expect(out).toContain("tenon thickness");
  });

  test.each([`shed.frame.yaml:9999:1`, `shed.frame.yaml:${line}:9999`, `shed.frame.yaml:${line}:1`])(
    "nothing at %s, in words",
    (place) => {
      const { code, out } = call(["hover", place]);
      expect([code, out]).toEqual([0, `Nothing to say about ${place}.\n`]);
    },
  );

  test.each([
    [[]],
    [["shed.frame.yaml"]],
    [["shed.frame.yaml:0:1"]],
    [["shed.frame.yaml:1:x"]],
    [["none.yaml:1:1"]],
  ])("a wrong place: %j", (args) => {
    const { code, out, err } = call(["hover", ...args]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain("bentwright hover --help");
  });
});

describe("explain", () => {
  test("what, why, what to do and the source", () => {
    const { code, out } = call(["explain", "tenon-thin"]);
    expect(code).toBe(0);
    for (const word of ["tenon-thin", "What: ", "Why: ", "What to do: ", "Source: "])
      expect(out).toContain(word);
  });

  test("lists all, each of which it explains", () => {
    const { code, out } = call(["explain"]);
    expect(code).toBe(0);
    const ids = [...out.matchAll(/^ {2}([a-z-]+) /gm)].map((match) => match[1] ?? "");
    expect(ids.length).toBeGreaterThan(20);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(call(["explain", id]).code, id).toBe(0);
  });

  test("an unknown one: the nearest", () => {
    const { code, err } = call(["explain", "tenon-thn"]);
    expect(code).toBe(2);
    expect(err).toContain("`tenon-thin`");
  });
});

describe("the call", () => {
  test("without a command, and with help", () => {
    expect(call([])).toMatchObject({ code: 2, out: "" });
    expect(call(["--help"])).toMatchObject({ code: 0, err: "" });
    for (const command of ["check", "draw", "forces", "model", "hover", "explain"]) {
      expect(call(["--help"]).out).toContain(`  ${command}`);
      const { code, out } = call([command, "--help"]);
      expect(code).toBe(0);
      expect(out).toContain(`Usage: bentwright ${command}`);
      expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
    }
  });

  test("the version is the package's", () => {
    const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
    expect(call(["--version"])).toMatchObject({ code: 0, out: `${version}\n` });
  });

  test("an unknown command: the nearest", () => {
    const { code, err } = call(["chek", "shed.frame.yaml"]);
    expect(code).toBe(2);
    expect(err).toContain("Did you mean `check`?");
  });

  test.each([
    [["check"], "Name at least one frame file."],
    [["check", "--format", "xml", "shed.frame.yaml"], "There is no format `xml`"],
    [["check", "--colour", "shed.frame.yaml"], "--colour"],
    [["check", "none.frame.yaml"], "none.frame.yaml cannot be opened: there is no such file or folder."],
    [["check", "folder/"], "folder/ cannot be opened: it is a folder."],
    [["draw"], "Name one frame file."],
    [["draw", "shed.frame.yaml", "broken.frame.yaml"], "Name one frame file."],
    [
      ["explain", "tenon-thin", "brace-angle"],
      "brace-angle cannot be opened: there is no such file or folder.",
    ],
    [
      ["explain", "tenon-thin", "shed.frame.yaml", "broken.frame.yaml"],
      "Name one check and at most one file.",
    ],
  ])("%j", (args, words) => {
    const { code, err } = call(args);
    expect(code).toBe(2);
    expect(err).toContain(words);
    expect(err).not.toContain("    at ");
  });

  test("one file that cannot be opened does not hide the others", () => {
    const { code, out, err } = call(["check", "none.frame.yaml", "broken.frame.yaml"]);
    expect(code).toBe(2);
    expect(err).toContain("none.frame.yaml");
    expect(out).toContain("unreadable-quantity");
  });
});
